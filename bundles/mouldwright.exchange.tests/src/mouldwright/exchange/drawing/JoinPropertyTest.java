package mouldwright.exchange.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import mouldwright.exchange.SectionPoint;
import mouldwright.units.Units;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** In whatever order and whichever way round the lines of a section were drawn, it is one outline. */
class JoinPropertyTest {

    private static List<SectionPoint> outline(List<Curve> curves) {
        OutlineResult result = DrawnSection.of("A", new Drawing.Layer(curves, List.of()), Units.find("mm").orElseThrow(), false, DrawnSection.TOLERANCE);
        assertThat(result.faults()).isEmpty();
        return result.points();
    }

    @Property(tries = 100)
    void shuffledAndReversedLinesJoinToTheSameOutline(@ForAll @IntRange(min = 3, max = 12) int corners, @ForAll long seed) {
        Random random = new Random(seed);
        List<Curve> curves = new ArrayList<>();
        Point before = new Point(0, 0);
        for (int i = 1; i <= corners; i++) {
            double angle = Math.PI * i / corners, out = 300 * (0.7 + 0.3 * random.nextDouble());
            Point next = i == corners ? new Point(0, 600) : new Point(out * Math.sin(angle), 300 - out * Math.cos(angle));
            curves.add(random.nextInt(3) == 0 ? Bow.bulged(before, next, 0.1) : new Straight(before, next));
            before = new Point(next.x() + 0.02 * random.nextDouble(), next.y());
        }
        List<SectionPoint> inOrder = outline(curves);
        List<Curve> loose = new ArrayList<>(curves.stream().map(curve -> random.nextBoolean() ? curve.reversed() : curve).toList());
        Collections.shuffle(loose, random);
        List<SectionPoint> again = outline(loose);
        assertThat(again).hasSameSizeAs(inOrder);
        for (int i = 0; i < again.size(); i++) {
            assertThat(again.get(i).distance(inOrder.get(i))).isLessThan(1e-9);
            assertThat(again.get(i).knuckle()).isEqualTo(inOrder.get(i).knuckle());
        }
    }
}
