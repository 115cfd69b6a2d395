package mouldwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** What holds for any path. */
class PathTest {

    @Property
    void chordsOfAnArcLeaveItByLessThanTheTolerance(@ForAll @DoubleRange(min = 0.01, max = 3) double bulge, @ForAll boolean right,
            @ForAll @DoubleRange(min = 0.01, max = 1) double tolerance) {
        Stroke.Arc arc = new Stroke.Arc(new Spot(100, 30), right ? -bulge : bulge);
        Path path = new Path(new Spot(0, 0), List.of(arc), false);
        List<Spot> corners = path.flattened(tolerance);
        Spot centre = Flattening.centre(path.start(), arc);
        double radius = centre.distance(arc.end());
        for (int i = 0; i + 1 < corners.size(); i++)
            assertThat(radius - corners.get(i).toward(corners.get(i + 1), 0.5).distance(centre)).isBetween(-1e-6, tolerance + 1e-6);
    }

    @Property
    void aCircleOfAnySizeHasItsArea(@ForAll @DoubleRange(min = 1, max = 1000) double radius) {
        List<Spot> corners = Path.circle(new Spot(3, -7), radius).flattened(radius / 1e5);
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Spot a = corners.get(i), b = corners.get((i + 1) % corners.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        assertThat(twice / 2 / (Math.PI * radius * radius)).isBetween(0.9999, 1.0);
    }
}
