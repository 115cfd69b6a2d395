package mouldwright.drawing.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.FileFormat.NamedDrawing;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.plan.BuildPlan;
import org.junit.jupiter.api.Test;

/** Parting boards. A round body 600 mm long is parted at mid-height: two boards, each a rectangle of 600 mm by the flange of 75 mm. */
class BoardDrawingTest {

    private final BuildPlan plan = Plans.of("""
            hardener Mekp { }
            resin Ortho { catalyst Mekp 1 % to 2.5 % }
            mat Csm450 { areal 450 g/m2 }
            schedule Shell using Ortho { ply Csm450 }
            plug Tube {
                half sections
                station A at 0 superellipse 200 by 400 exponent 2
                station B at 300 like A
                station C at 600 like A
                mould Shell {
                    flange 75
                    half Upper pull up
                    half Lower pull down
                }
            }
            """);

    private static List<Path> cuts(Drawing drawing) {
        return Plans.items(drawing, Role.CUT).map(item -> ((Mark.Line) item.mark()).path()).toList();
    }

    @Test void aTemplateIsABoardAtFullSize() { // closed form
        List<NamedDrawing> templates = BoardTemplate.of(plan, "Tube 1");
        assertThat(templates).extracting(NamedDrawing::name).containsExactly("board.1", "board.2");
        assertThat(templates).allSatisfy(template -> {
            assertThat(cuts(template.drawing())).singleElement().satisfies(cut -> assertThat(Plans.area(List.of(cut))).isCloseTo(600 * 75, within(1.0)));
            assertThat(Plans.words(template.drawing()).map(Mark.Words::text)).contains("A", "B", "C");
        });
    }

    @Test void onTheOverviewTheyAreOfOneScale() { // 600 mm in 245 mm: 1 : 2.5
        Drawing drawing = Subjects.BOARDS.draw(plan, "Tube 1").getFirst().drawing();
        assertThat(Plans.items(drawing, Role.AREA).filter(item -> item.about().startsWith("board.")).map(item -> ((Mark.Area) item.mark()).rings()).toList()).hasSize(2)
                .allSatisfy(rings -> assertThat(Plans.area(rings) * 2.5 * 2.5).isCloseTo(600 * 75, within(1.0)));
        assertThat(Plans.words(drawing).map(Mark.Words::text)).anyMatch(words -> words.contains("scale 1 : 2.5"));
    }

    @Test void theEdgeAgainstTheCanopyIsAsLongAsItsPartingLine() { // lengths along the line are kept when it is laid out flat
        BuildPlan canopy = Plans.example("rain-canopy/canopy.plug");
        Drawing drawing = Subjects.BOARDS.draw(canopy, "Canopy 1").getFirst().drawing();
        double drawn = Plans.items(drawing, Role.SURFACE).map(item -> ((Mark.Line) item.mark()).path().flattened(0.001)).mapToDouble(BoardDrawingTest::length).sum();
        double reduction = Plans.words(drawing).map(Mark.Words::text).filter(words -> words.contains("scale 1 : ")).mapToDouble(words -> Double.parseDouble(words.split("scale 1 : ")[1])).findFirst().orElseThrow();
        assertThat(drawn * reduction / 1000).isCloseTo(canopy.quantity("mould.parting.length").orElseThrow().value(), within(1e-3));
    }

    private static double length(List<Spot> spots) {
        double length = 0;
        for (int i = 0; i + 1 < spots.size(); i++)
            length += spots.get(i).distance(spots.get(i + 1));
        return length;
    }

    @Test void aMouldInOnePieceHasNone() {
        assertThat(Subjects.BOARDS.draw(Plans.example("ten-lines/hatch.plug"), "Hatch 1")).isEmpty();
        assertThat(BoardTemplate.of(Plans.example("ten-lines/hatch.plug"), "Hatch 1")).isEmpty();
    }
}
