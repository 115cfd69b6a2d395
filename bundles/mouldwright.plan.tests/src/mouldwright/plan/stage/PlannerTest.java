package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.ledger.Derivation;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Given;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A full spec with all that can be stated, planned once. */
class PlannerTest {

    private static BuildPlan plan;

    @BeforeAll static void planCanopy() {
        plan = plan(Specs.canopy());
    }

    @Test void everyIdOfTheContractIsThere() { // the ids the command line promises, for the stages there are
        List<String> ids = new ArrayList<>(List.of("shape.length", "shape.volume", "shape.area", "shape.area.moulded", "shape.centroid.x",
                "shape.centroid.z", "frame.sheets", "frame.mass", "fair.filler.volume", "fill.cavity", "fill.trim", "fill.liquid", "fill.mass", "fill.mass.a",
                "fill.mass.b", "fill.pots", "skin.thickness", "skin.area", "skin.uncovered.area", "skin.short.area",
                "skin.mat.Csm450.mass", "skin.mat.Csm450.length", "skin.resin.mass", "skin.catalyst.mass", "skin.pots"));
        List<String> stations = List.of("S1", "S2", "S2a", "S3", "S4", "S5", "R1", "R2", "R3", "S6");
        for (String station : stations)
            Stream.of("area", "girth", "bevel.max").forEach(figure -> ids.add("station." + station + "." + figure));
        for (int i = 1; i < stations.size(); i++)
            for (String figure : List.of("volume", "clear", "crown", "stations", "cavity", "liquid", "lifts"))
                ids.add("bay." + stations.get(i - 1) + "-" + stations.get(i) + "." + figure);
        assertThat(plan.quantities()).extracting(Quantity::id).containsAll(ids).doesNotHaveDuplicates();
    }

    @Test void aSoundSpecHasNoFault() {
        assertThat(plan.faults()).isEmpty();
    }

    @Test void quantitiesComeInTheOrderOfTheBuild() {
        assertThat(plan.quantities().stream().map(Quantity::stage).distinct()).containsExactly("shape", "frame", "fill", "carve", "fair", "skin");
    }

    @Test void noQuantityIsBelowItsLowOrAboveItsHigh() {
        assertThat(plan.quantities()).allSatisfy(q -> {
            assertThat(q.low()).isLessThanOrEqualTo(q.value());
            assertThat(q.value()).isLessThanOrEqualTo(q.high());
        });
    }

    @Test void whateverRestsOnARangeHasOne() {
        Reckoning reckoning = plan.reckoning();
        for (String id : List.of("fill.mass", "fill.liquid", "fill.mass.a", "bay.S3-S4.liquid", "skin.resin.mass", "skin.catalyst.mass"))
            assertThat(reckoning.find(id)).hasValueSatisfying(node -> assertThat(reckoning.low(node)).isLessThan(reckoning.high(node)));
    }

    @Test void everyDerivationEndsInFiguresWithAnOriginOrInMeasures() {
        for (Quantity quantity : plan.quantities())
            assertThat(leaves(plan.derivation(quantity.id()).orElseThrow())).isNotEmpty().allSatisfy(leaf -> {
                switch (leaf) {
                    case Derivation.Stated(Given given) -> assertThat(given.origin().words()).isNotBlank();
                    case Derivation.Measured measured -> assertThat(measured.measurement().how()).isNotBlank();
                    case Derivation.Reckoned reckoned -> throw new AssertionError("rests on nothing: " + reckoned.label());
                }
            });
    }

    @Test void everyReckonedFigureNamesFormulaAndSource() {
        for (Quantity quantity : plan.quantities())
            if (plan.derivation(quantity.id()).orElseThrow() instanceof Derivation.Reckoned reckoned) {
                assertThat(reckoned.formula()).isNotBlank();
                assertThat(reckoned.source()).isNotBlank();
                assertThat(reckoned.bounds()).isNotBlank();
            }
    }

    @Test void everyDefaultThatIsUsedIsListedWithItsReason() {
        assertThat(plan.assumed()).extracting(a -> a.name()).doesNotHaveDuplicates()
                .contains("share of the yield reached in practice", "glass density", "cured resin density", "share of a sheet used");
        assertThat(plan.assumed()).allSatisfy(a -> assertThat(a.reason()).isNotBlank());
    }

    @Test void timesArePublishedInMinutes() { // UCUM code min
        Quantity gel = plan.quantity("skin.gel").orElseThrow();
        assertThat(gel.ucum()).isEqualTo("min");
        assertThat(gel.published(gel.value())).isCloseTo(25, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test void theSameSpecGivesTheSamePlan() {
        BuildPlan again = plan(Specs.canopy());
        for (int i = 0; i < plan.quantities().size(); i++)
            assertThat(again.quantities().get(i)).isEqualTo(plan.quantities().get(i));
        for (int i = 0; i < plan.plates().size(); i++)
            assertThat(again.plates().get(i).outline().equals(plan.plates().get(i).outline()))
                    .as("outline of %s", plan.plates().get(i).station()).isTrue();
        assertThat(again.pours()).isEqualTo(plan.pours());
    }

    @Test void theSameSpecGivesTheSamePlanEveryTime() { // to the last bit, or a comparison of two revisions would be noise
        for (int i = 0; i < 12; i++) {
            BuildPlan again = plan(Specs.canopy());
            assertThat(again.quantities().equals(plan.quantities())).as("figures of plan %d", i).isTrue();
            assertThat(again.plates().equals(plan.plates())).as("plates of plan %d", i).isTrue();
            assertThat(again.pours()).isEqualTo(plan.pours());
        }
    }

    @Test void aDrawAtLikelyValuesGivesTheLikelyPlan() {
        Reckoning reckoning = plan.reckoning();
        Reckoning.Draw draw = reckoning.draw().with(reckoning.uncertain().stream().mapToDouble(Given::likely).toArray());
        for (var node : reckoning.quantities())
            assertThat(draw.value(node)).isEqualTo(reckoning.likely(node));
    }

    @Test void aCancelledPlanEnds() {
        assertThatThrownBy(() -> new Planner().plan(Specs.canopy(), () -> true)).isInstanceOf(CancellationException.class);
    }

    private static List<Derivation> leaves(Derivation derivation) {
        return derivation instanceof Derivation.Reckoned reckoned && !reckoned.inputs().isEmpty()
                ? reckoned.inputs().stream().flatMap(input -> leaves(input).stream()).toList() : List.of(derivation);
    }
}
