package mouldwright.drawing.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.FileFormat.NamedDrawing;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.plan.Alignment;
import mouldwright.plan.BuildPlan;
import org.junit.jupiter.api.Test;

/** Three plates of 300 by 400 mm, 500 mm apart, standing 100 mm above the base. Datum points stand at the next 50 mm but one past the broadest
 *  plate, at 200 mm, so that 3, 4 and 5 are 180, 240 and 300 mm at most. All figures are closed forms. */
class AlignmentDrawingTest {

    private static final String BOX = """
            sheet Ply { thickness 12 mm }
            plug Box {
                units mm
                half sections
                station A at 0 { 0 100 150 100 knuckle 150 500 knuckle 0 500 }
                station B at 500 like A
                station C at 1000 like A
                frame { sheet Ply measured 12 tolerance 1.5 base Ply margin 100 }
            }
            survey Box on 2027-03-09 { station B leans 2.5 high 1 }
            """;

    /** 1200 mm in 146 mm across: 1 : 10. */
    private static final double SCALE = 10;

    private final BuildPlan plan = Plans.of(BOX);
    private final List<NamedDrawing> drawings = Subjects.ALIGNMENT.draw(plan, "Box 1");

    private static List<String> words(Drawing drawing) {
        return Plans.words(drawing).map(Mark.Words::text).toList();
    }

    @Test void theBaseComesFirstAndThenEveryPlate() {
        assertThat(drawings).extracting(NamedDrawing::name).containsExactly("alignment", "alignment-A", "alignment-B", "alignment-C");
    }

    @Test void theTriangleOfTheFirstLineIsRightByPythagoras() {
        Path triangle = Plans.items(drawings.getFirst().drawing(), Role.ALARM).map(item -> ((Mark.Line) item.mark()).path()).findFirst().orElseThrow();
        List<Spot> corners = triangle.flattened(0.01);
        double across = corners.get(0).distance(corners.get(1)), along = corners.get(2).distance(corners.get(0)), diagonal = corners.get(1).distance(corners.get(2));
        assertThat(diagonal).isCloseTo(Math.hypot(across, along), within(1e-9));
        assertThat(across / diagonal).isCloseTo(0.6, within(1e-9));
        assertThat(words(drawings.getFirst().drawing())).contains(Said.mm(across * SCALE / 1000), Said.mm(along * SCALE / 1000), Said.mm(diagonal * SCALE / 1000));
    }

    @Test void platesStandAtTheirOffsetsFromTheFirstLine() {
        Drawing base = drawings.getFirst().drawing();
        assertThat(words(base)).contains("0.0", "500.0", "1000.0", "200.0 mm", "300.0 mm");
        double a = left(base, "station.A"), c = left(base, "station.C");
        assertThat((c - a) * SCALE).isCloseTo(1000, within(0.01));
    }

    /** The line on its own face, which is drawn twice: from the side and from above. */
    private static double left(Drawing drawing, String about) {
        List<Extent> lines = Plans.items(drawing, Role.CUT).filter(item -> item.about().equals(about)).map(item -> item.mark().extent()).toList();
        assertThat(lines).hasSize(2);
        assertThat(lines.get(0).left()).isEqualTo(lines.get(1).left());
        return lines.getFirst().left();
    }

    @Test void theBaseBoardGoesRoundThePlatesWithItsMargin() { // the plates stand between their lines; 100 mm on all sides
        Extent board = Plans.items(drawings.getFirst().drawing(), Role.AREA).map(item -> item.mark().extent()).max((one, other) -> Double.compare(one.width(), other.width())).orElseThrow();
        assertThat(board.width() * SCALE).isCloseTo(1000 + 2 * 100, within(0.01));
        assertThat(board.height() * SCALE).isCloseTo(300 + 2 * 100, within(0.01));
    }

    @Test void aPlateIsDimensionedByItsHeightItsBreadthAndItsDiagonals() { // sqrt(500^2 + (200 + 150)^2 + 300^2) = 680.1 mm
        Alignment.Row row = plan.alignment().orElseThrow().rows().get(1);
        double diagonal = Math.sqrt(500 * 500 + 350 * 350 + 300 * 300);
        assertThat(row.toPort() * 1000).isCloseTo(diagonal, within(1e-6));
        assertThat(words(drawings.get(2).drawing())).contains("300.0 mm", "150.0 mm", "500.0 mm").contains(Said.fine(diagonal / 1000));
    }

    @Test void whatTheSurveyReadStandsBesideTheFigures() {
        assertThat(String.join(" ", words(drawings.get(2).drawing()))).contains("top 2.5 mm aft of plumb, set 1.0 mm high, out of tolerance");
        assertThat(String.join(" ", words(drawings.get(1).drawing()))).doesNotContain("plumb, set");
    }

    @Test void onePlateAloneIsNotLinedUp() {
        assertThat(Subjects.ALIGNMENT.draw(Plans.of(BOX.replace("station C at 1000 like A", "station C at 1000 like A unplated").replace("station B at 500 like A", "station B at 500 like A unplated")), "x")).isEmpty();
    }
}
