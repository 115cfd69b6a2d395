package mouldwright.drawing.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Layer;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Role;
import mouldwright.plan.BuildPlan;
import org.junit.jupiter.api.Test;

/** Plies unrolled. The hatch of the README is 450 mm long with a station in the middle, and laid all round in one ply of mat lapped by 50 mm. */
class PlyDrawingTest {

    private final BuildPlan plan = Plans.example("ten-lines/hatch.plug");
    private final Drawing drawing = Subjects.PLIES.draw(plan, "Hatch 1").getFirst().drawing();

    /** The girth of 1108 mm in 130 mm: 1 : 10. */
    private static final double SCALE = 10;

    private List<Extent> pieces() {
        return Plans.items(drawing, Role.LAMINATE).filter(item -> item.about().startsWith("bay.")).map(Layer.Item::mark).map(Mark::extent).toList();
    }

    @Test void everyPieceIsDrawnAsLongAsItsBayAndALap() {
        assertThat(pieces()).hasSize(plan.pieces().size()).allSatisfy(piece -> assertThat(piece.width() * SCALE).isCloseTo(225 + 50, within(0.1)));
    }

    @Test void everyPieceIsAsBroadAsInTheCutList() {
        for (int i = 0; i < plan.pieces().size(); i++)
            assertThat(pieces().get(i).height() * SCALE).isCloseTo(plan.pieces().get(i).width() * 1000, within(0.1));
    }

    @Test void theNumbersAreThoseOfTheCutList() {
        assertThat(Plans.words(drawing).map(Mark.Words::text)).contains("1", "2");
    }

    @Test void theMouldedSurfaceIsAllOfIt() {
        double area = Plans.items(drawing, Role.AREA).mapToDouble(item -> Plans.area(((Mark.Area) item.mark()).rings())).sum();
        // 1.1 m of girth by 0.45 m; the strips between sections are straight, so a little is lost.
        assertThat(area * SCALE * SCALE / 1e6).isCloseTo(plan.quantity("shape.area.moulded").orElseThrow().value(), within(0.002));
    }
}
