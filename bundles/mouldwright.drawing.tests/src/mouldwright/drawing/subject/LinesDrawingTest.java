package mouldwright.drawing.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Role;
import org.junit.jupiter.api.Test;

/** The lines of a frustum 900 mm long, 400 mm broad and high at one end and 200 mm at the other. */
class LinesDrawingTest {

    private static final String FRUSTUM = """
            plug Frustum {
                units mm
                half sections
                line waist
                station A at 0 superellipse 200 by 400 exponent 2 above 20 { waist at girth 50 % }
                station B at 450 superellipse 150 by 300 exponent 2 above 70 { waist at girth 50 % }
                station C at 900 superellipse 100 by 200 exponent 2 above 120 { waist at girth 50 % }
            }
            """;

    /** 1300 mm across and 820 up in 243 and 150 mm less names and gaps: 1 : 7.5. */
    private static final double SCALE = 7.5;

    private final Drawing drawing = Subjects.LINES.draw(Plans.of(FRUSTUM), "Frustum 1").getFirst().drawing();

    @Test void profileAndPlanShareTheirXAndHaveItsLength() {
        var outlines = Plans.items(drawing, Role.SURFACE).map(item -> item.mark().extent()).filter(box -> Math.abs(box.width() * SCALE - 900) < 1).toList();
        assertThat(outlines).hasSize(2);
        assertThat(outlines.get(0).left()).isEqualTo(outlines.get(1).left());
        assertThat(outlines).allSatisfy(box -> assertThat(box.height() * SCALE).isCloseTo(400, within(0.5)));
        assertThat(outlines.get(0).bottom()).isGreaterThan(outlines.get(1).top());
    }

    @Test void theBaysTogetherAreTheTrapeziumSeenFromTheSide() {
        double area = Plans.items(drawing, Role.AREA).filter(item -> item.about().startsWith("bay.")).mapToDouble(item -> Plans.area(((Mark.Area) item.mark()).rings())).sum();
        // (400 + 200) / 2 x 900 mm, from the side and from above.
        assertThat(area * SCALE * SCALE).isCloseTo(2 * 270_000, within(200.0));
    }

    @Test void everyStationIsNamedAboveTheProfileAndBesideItsSection() {
        assertThat(Plans.words(drawing).map(Mark.Words::text).filter(text -> text.equals("B"))).hasSize(2);
    }

    @Test void aLineAlongTheBodyIsDrawnFromTheSideAndFromAbove() {
        var lines = Plans.items(drawing, Role.SCORE).filter(item -> item.about().equals("line.waist")).map(item -> item.mark().extent()).toList();
        assertThat(lines).hasSize(2);
        // Half way round a circle is its side, on the axis 220 mm above the base.
        assertThat(lines.get(0).height() * SCALE).isCloseTo(0, within(0.5));
        assertThat(lines.get(1).height() * SCALE).isCloseTo(100, within(0.5));
    }

    @Test void sectionsStandToTheirSide() {
        Extent a = Plans.items(drawing, Role.SURFACE).filter(item -> item.about().equals("station.A")).map(item -> item.mark().extent()).reduce(Extent::with).orElseThrow();
        assertThat(a.width() * SCALE).as("the largest on both sides").isCloseTo(400, within(0.5));
        Extent c = Plans.items(drawing, Role.SURFACE).filter(item -> item.about().equals("station.C")).map(item -> item.mark().extent()).reduce(Extent::with).orElseThrow();
        assertThat(c.width() * SCALE).as("an after one to port only").isCloseTo(100, within(0.5));
    }
}
