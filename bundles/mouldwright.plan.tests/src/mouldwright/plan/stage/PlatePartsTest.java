package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.frame.PlatePart.Opening;
import mouldwright.geometry.frame.PlatePart.Score;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Given;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class PlatePartsTest {

    private static Frame withBackbone(Given rim, double width, double depth, double above) {
        Frame plain = Specs.frame(0.0117, Frame.Edges.SQUARE, rim);
        return new Frame(plain.sheet(), plain.thickness(), plain.clearance(), plain.edges(), plain.rim(),
                List.of(new Frame.Backbone(Specs.given("w", Dimension.LENGTH, width), Specs.given("d", Dimension.LENGTH, depth),
                        Specs.given("h", Dimension.LENGTH, above), Specs.line(31, "backbone"))), plain.tolerance(), plain.origin());
    }

    private static PlatePart part(BuildPlan plan, String key) {
        return plan.parts().stream().filter(part -> part.key().equals(key)).findFirst().orElseThrow();
    }

    @Test void eachPlateIsAPartThatCanBeCut() {
        BuildPlan plan = plan(Specs.cone().frame(Specs.frame(0.012)));
        assertThat(plan.parts()).hasSameSizeAs(plan.plates()).allSatisfy(part -> {
            assertThat(part.flaw()).isEmpty();
            assertThat(part.kind()).isEqualTo(PlatePart.Kind.PLATE);
            assertThat(part.thickness()).isEqualTo(0.012);
        });
    }

    @Test void aSlotIsAsWideAsItsLayersMeasureAndTheClearance() { // closed form: 5 x 11.7 mm, not 60; common practice
        BuildPlan plan = plan(Specs.cylinder().frame(withBackbone(Defaults.rim(), 0.060, 0.090, 0.4)));
        PlatePart plate = plan.parts().getFirst();
        assertThat(plate.openings()).hasSize(1).first().satisfies(slot -> {
            assertThat(slot.use()).isEqualTo(Opening.Use.SLOT);
            assertThat(slot.ring().maxY() - slot.ring().minY()).isCloseTo(5 * 0.0117 + 0.0002, within(1e-7));
            assertThat(slot.ring().maxZ() - slot.ring().minZ()).isCloseTo(0.090 + 0.0002, within(1e-7));
        });
        assertThat(part(plan, "backbone.1").quantity()).isEqualTo(5);
    }

    @Test void aBackboneInAPocketStandsOnAPostOfWood() { // closed form: slot and a rim of 60 mm on both sides
        BuildPlan plan = plan(Specs.cylinder().frame(withBackbone(Specs.given("rim", Dimension.LENGTH, 0.06), 0.060, 0.090, 0.4)));
        PlatePart plate = plan.parts().getFirst();
        assertThat(plate.openings()).extracting(Opening::use).containsExactlyInAnyOrder(Opening.Use.POCKET, Opening.Use.SLOT);
        assertThat(plate.clear(new mouldwright.geometry.plane.PlanePoint(0.0293 + 0.030, 0.44))).isCloseTo(0.030, within(1e-3));
        assertThat(plate.clear(new mouldwright.geometry.plane.PlanePoint(0.0293 + 0.062, 0.44))).isNegative();
    }

    @Test void theCentrelineIsScoredAndAHeightOnEveryPlate() {
        BuildPlan plan = plan(Specs.cone().frame(Specs.frame(0.012)));
        assertThat(plan.parts()).allSatisfy(part -> {
            assertThat(part.scores()).anySatisfy(score -> {
                assertThat(score.use()).isEqualTo(Score.Use.CENTRELINE);
                assertThat(score.points()).allSatisfy(p -> assertThat(p.y()).isZero());
            });
            assertThat(part.scores()).anySatisfy(score -> {
                assertThat(score.use()).isEqualTo(Score.Use.HEIGHT);
                assertThat(score.points()).allSatisfy(p -> assertThat(p.z()).isCloseTo(0.6, within(1e-12))); // the axis of the cone
            });
        });
    }

    @Test void aBevelledEdgeIsMarkedWithItsBevel() { // closed form: a cone of slope 0.25
        BuildPlan plan = plan(Specs.cone().frame(Specs.frame(0.012, Frame.Edges.BEVELLED, Defaults.rim())));
        PlatePart plate = plan.parts().get(1);
        assertThat(plate.bevels()).isNotEmpty().allSatisfy(mark -> assertThat(Math.abs(mark.angle())).isCloseTo(Math.atan(0.25), within(1e-4)));
        assertThat(plate.scores()).extracting(Score::use).contains(Score.Use.BEVEL);
        assertThat(plan(Specs.cone().frame(Specs.frame(0.012))).parts().get(1).bevels()).isEmpty();
    }

    @Test void whatIsWrittenOnAPlateStandsInItsWood() {
        BuildPlan plan = plan(Specs.cylinder().frame(withBackbone(Specs.given("rim", Dimension.LENGTH, 0.06), 0.060, 0.090, 0.4)));
        assertThat(plan.parts()).allSatisfy(part -> assertThat(part.notes()).isNotEmpty().allSatisfy(note ->
                assertThat(part.clear(note.at())).as(part.key() + " " + note).isPositive()));
        assertThat(plan.parts().getFirst().notes()).extracting(PlatePart.Note::words)
                .contains(plan.plates().getFirst().station(), "aft face this side", "stands aft of its line");
    }

    @Test void thePartsOfPlatesWeighWhatThePlanSays() {
        BuildPlan plan = plan(Specs.cylinder().frame(withBackbone(Specs.given("rim", Dimension.LENGTH, 0.06), 0.060, 0.090, 0.4)));
        double mass = plan.parts().stream().mapToDouble(part -> part.area() * part.thickness() * part.quantity() * 695).sum();
        assertThat(Plans.value(plan, "frame.mass")).isCloseTo(mass, Percentage.withPercentage(0.001));
    }
}
