package mouldwright.drawing.subject;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Layer;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Role;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Hazard;
import mouldwright.plan.PourEntry;
import org.junit.jupiter.api.Test;

/** The pour of a block 600 mm broad and 250 mm high: with 10 mm of overfill all round its cavity is 620 by 270 mm. */
class PourDrawingTest {

    private static final String BLOCK = """
            foam Pour { expansion 25 density 45 kg/m3 ratio 100 to 100 by volume parts 1.1 kg/l and 1.2 kg/l cream 40 s rise 200 s firm 30 min carve after 24 h lift 100 mm at most pot 1 kg at most }
            plug Block {
                units mm
                half sections
                station A at 0 { 0 0  300 0 knuckle  300 250 knuckle  0 250 }
                station B at 400 like A
                fill Pour solid { overfill 10 }
            }
            """;

    /** 620 mm across 88, or up 110: 1 : 7.5 either way. */
    private static final double SCALE = 7.5;

    private static Drawing pour(BuildPlan plan) {
        return Subjects.POURS.draw(plan, "Block 1").getFirst().drawing();
    }

    private static List<Mark.Area> lifts(Drawing drawing) {
        return Plans.items(drawing, Role.AREA).map(Layer.Item::mark).map(Mark.Area.class::cast).toList();
    }

    @Test void theLiftsTogetherAreTheCavity() {
        assertThat(lifts(pour(Plans.of(BLOCK))).stream().mapToDouble(lift -> Plans.area(lift.rings())).sum() * SCALE * SCALE).isCloseTo(620 * 270, within(20.0));
    }

    @Test void liftsAreOfEqualHeightAndOnePour() {
        BuildPlan plan = Plans.of(BLOCK);
        List<Mark.Area> lifts = lifts(pour(plan));
        assertThat(lifts).hasSize(plan.pours().size()).hasSize(3);
        assertThat(lifts).allSatisfy(lift -> assertThat(lift.extent().height() * SCALE).isCloseTo(90, within(0.1)));
    }

    @Test void aBayThatIsPouredOnItsSideStandsOnItsSide() {
        Extent box = lifts(pour(Plans.of(BLOCK.replace("overfill 10", "overfill 10 bay A to B solid pour on side")))).stream().map(Mark::extent).reduce(Extent::with).orElseThrow();
        assertThat(box.height() * SCALE).isCloseTo(620, within(0.2));
        assertThat(box.width() * SCALE).isCloseTo(270, within(0.2));
    }

    @Test void whatGoesIntoEachLiftStandsBesideItInGrams() {
        BuildPlan plan = Plans.of(BLOCK);
        PourEntry first = plan.pours().getFirst();
        assertThat(Plans.words(pour(plan)).map(Mark.Words::text)).contains(String.format(Locale.ROOT, "A %.0f g, B %.0f g, %d %s", first.a() * 1000, first.b() * 1000, first.pots(), first.pots() == 1 ? "pot" : "pots"));
    }

    @Test void theCautionOfThePourIsOnItsDrawing() {
        String printed = String.join(" ", Plans.words(pour(Plans.of(BLOCK))).map(Mark.Words::text).toList());
        assertThat(printed).contains(Hazard.ISOCYANATE.words(), Hazard.EXOTHERM.words(), Hazard.DEFERENCE);
    }
}
