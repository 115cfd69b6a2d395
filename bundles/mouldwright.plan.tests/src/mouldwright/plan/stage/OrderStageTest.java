package mouldwright.plan.stage;

import static mouldwright.plan.stage.Fakes.hours;
import static mouldwright.plan.stage.Plans.value;
import static mouldwright.plan.stage.Stated.LIBRARY;
import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.DENSITY;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;
import static mouldwright.units.Dimension.VOLUME;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.OrderEntry;
import mouldwright.plan.PlanFault;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Consumable;
import mouldwright.plan.spec.Filler;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Material;
import mouldwright.units.Dimension;
import org.junit.jupiter.api.Test;

/** Orders and cost of needs a test states. All by hand. */
class OrderStageTest {

    private static Material.Stock pack(Dimension dimension, double size, double price, String currency) {
        return new Material.Stock(Optional.empty(), Optional.of(new Material.Pack(Given.of("pack", dimension, size, LIBRARY), price, currency)),
                Optional.empty(), Optional.empty(), LIBRARY);
    }

    /** Filler in tins of 3 l at 22.00. */
    private static Filler filler(Optional<Given> density, String currency) {
        return new Filler("BodyFiller", density, Optional.empty(), Optional.empty(), Optional.empty(), pack(VOLUME, 0.003, 22, currency));
    }

    private static Filler filler() {
        return filler(Optional.empty(), "EUR");
    }

    private static Node litres(Ledger ledger, double litres) {
        return ledger.measured("need", VOLUME, Places.exact(litres / 1000, "given by the test"));
    }

    private static BuildPlan plan(Specs specs, Stage... stages) {
        List<Stage> all = new ArrayList<>(Arrays.asList(stages));
        all.addAll(List.of(new ProgrammeStage(), new OrderStage(), new CostStage()));
        return new Planner(all).plan(specs.carve(0.001).build(), () -> false);
    }

    private static OrderEntry only(BuildPlan plan) {
        assertThat(plan.orders()).hasSize(1);
        return plan.orders().getFirst();
    }

    @Test void whatTwoStagesNeedOfATinIsOneTin() { // 1.2 l and 1.5 l: 2.7 l, one tin of 3 l; rounded apart it would be two
        BuildPlan plan = plan(Specs.box(), Fakes.using("carve", (ledger, orders) -> orders.need(filler(), litres(ledger, 1.2))),
                Fakes.using("finish", (ledger, orders) -> orders.need(filler(), litres(ledger, 1.5))));
        OrderEntry order = only(plan);
        assertThat(order.packing().orElseThrow().packs()).isEqualTo(1);
        assertThat(order.packing().orElseThrow().left()).isCloseTo(0.0003, within(1e-12));
        assertThat(order.stages()).containsExactly("carve", "finish");
        assertThat(value(plan, "order.BodyFiller.need")).isCloseTo(0.0027, within(1e-12));
    }

    @Test void aNeedOfExactlyThreeTinsIsThreeTins() {
        BuildPlan plan = plan(Specs.box(), Fakes.using("finish", (ledger, orders) -> orders.need(filler(), litres(ledger, 9))));
        assertThat(only(plan).packing().orElseThrow().packs()).isEqualTo(3);
    }

    @Test void aMassIsTurnedIntoTinsByTheDensity() { // 9 kg at 1.8 kg/l are 5 l: two tins
        Filler dense = filler(Optional.of(Given.of("filler density", DENSITY, 1800, LIBRARY)), "EUR");
        BuildPlan plan = plan(Specs.box(), Fakes.using("finish", (ledger, orders) ->
                orders.need(dense, ledger.measured("need", MASS, Places.exact(9, "given by the test")))));
        assertThat(only(plan).amount()).isCloseTo(0.005, within(1e-12));
        assertThat(only(plan).packing().orElseThrow().packs()).isEqualTo(2);
    }

    @Test void aMassWithoutADensityIsAFaultAndNoFigure() {
        BuildPlan plan = plan(Specs.box(), Fakes.using("finish", (ledger, orders) ->
                orders.need(filler(), ledger.measured("need", MASS, Places.exact(9, "given by the test")))));
        assertThat(plan.faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.PACK_MEASURE);
    }

    @Test void matOffTheRollIsOrderedByMass() { // 10 m x 1.25 m x 0.450 kg/m2 = 5.625 kg
        BuildPlan plan = plan(Specs.box(), Fakes.using("skin", (ledger, orders) ->
                orders.need(Materials.csm450(), ledger.measured("need", LENGTH, Places.exact(10, "given by the test")))));
        assertThat(only(plan).dimension()).isEqualTo(MASS);
        assertThat(only(plan).amount()).isCloseTo(5.625, within(1e-12));
    }

    @Test void resinIsOrderedWithItsWaste() { // Gougeon and Jamestown: about 15 %, 15 to 20 %
        BuildPlan plan = plan(Specs.box(), Fakes.using("skin", (ledger, orders) ->
                orders.need(Materials.resin(), ledger.measured("need", MASS, Places.exact(10, "given by the test")))));
        assertThat(only(plan).amount()).isCloseTo(11.5, within(1e-9));
        assertThat(only(plan).high()).isCloseTo(12.0, within(1e-9));
    }

    @Test void whatNoLibraryHasIsListedWithoutPacks() {
        BuildPlan plan = plan(Specs.box(), Fakes.using("fill", (ledger, orders) ->
                orders.need("release film of the forms", ledger.measured("need", AREA, Places.exact(4, "given by the test")))));
        assertThat(only(plan).packing()).isEmpty();
        assertThat(plan.quantity("order.release-film-of-the-forms.need")).isPresent();
        assertThat(plan.quantity("plan.cost")).isEmpty();
    }

    @Test void aPriceInAnotherCurrencyIsAFaultAndLeftOutOfTheCost() {
        BuildPlan plan = plan(Specs.box(), Fakes.using("carve", (ledger, orders) -> orders.need(filler(Optional.empty(), "USD"), litres(ledger, 1))));
        assertThat(plan.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(PlanFault.Kind.OTHER_CURRENCY);
            assertThat(fault.message()).contains("USD", "EUR");
        });
        assertThat(only(plan).packing().orElseThrow().cost()).isEmpty();
        assertThat(plan.quantity("plan.cost")).isEmpty();
    }

    @Test void costIsWholePacksAndHoursAtTheWage() { // 2 tins at 22 and 3 h at 28: 44 + 84
        BuildPlan plan = plan(Specs.box().wage(28), Fakes.using("carve", (ledger, orders) -> orders.need(filler(), litres(ledger, 4))),
                Fakes.doing("finish", (ledger, tasks) -> tasks.add(Task.of("a", "A", hours(ledger, 3)))));
        assertThat(value(plan, "plan.cost")).isCloseTo(128, within(1e-9));
        assertThat(plan.quantity("plan.cost").orElseThrow().ucum()).isEqualTo("EUR");
    }

    @Test void theCostOfTheStagesAddsUpToTheWhole() {
        BuildPlan plan = Plans.plan(Specs.canopy());
        BuildPlan priced = plan(Specs.box().wage(30), Fakes.using("carve", (ledger, orders) -> orders.need(filler(), litres(ledger, 1))),
                Fakes.using("finish", (ledger, orders) -> orders.need(filler(), litres(ledger, 3))),
                Fakes.doing("skin", (ledger, tasks) -> tasks.add(Task.of("a", "A", hours(ledger, 2)))));
        double sum = priced.quantities().stream().filter(q -> q.id().startsWith("cost.stage.")).mapToDouble(q -> q.value()).sum();
        assertThat(sum).isCloseTo(value(priced, "plan.cost"), within(1e-9));
        assertThat(value(priced, "cost.stage.finish")).isCloseTo(33, within(1e-9)); // three quarters of two tins
        assertThat(plan.quantity("plan.cost")).isEmpty(); // nothing is priced there
    }

    private static Consumable rollers(Optional<Given> area, Optional<Given> labour, Optional<Given> pours, Optional<Given> pots) {
        return new Consumable("Rollers", area, labour, pours, pots, pack(RATIO, 10, 12, "EUR"));
    }

    @Test void oneRollerWearsOutForEachFiveSquareMetresOfMat() { // 10 m x 1.25 m = 12.5 m2: 2.5 rollers, one pack of ten
        BuildPlan plan = plan(Specs.box().consumes(rollers(Optional.of(Given.of("area", AREA, 5, LIBRARY)), Optional.empty(), Optional.empty(), Optional.empty())),
                Fakes.using("skin", (ledger, orders) -> orders.need(Materials.csm450(), ledger.measured("need", LENGTH, Places.exact(10, "given by the test")))));
        assertThat(value(plan, "order.Rollers.need")).isCloseTo(2.5, within(1e-9));
        assertThat(value(plan, "order.Rollers.packs")).isEqualTo(1);
    }

    @Test void glovesAreCountedByLabour() { // 45 h at one for each 2 h: 22.5, three packs of ten
        BuildPlan plan = plan(Specs.box().consumes(rollers(Optional.empty(), Optional.of(Given.of("labour", TIME, 7200, LIBRARY)), Optional.empty(), Optional.empty())),
                Fakes.doing("fill", (ledger, tasks) -> tasks.add(Task.of("a", "A", hours(ledger, 45)))));
        assertThat(value(plan, "order.Rollers.packs")).isEqualTo(3);
    }

    @Test void cupsAreCountedByPotsAndPours() {
        Specs specs = Specs.cylinder().fill(Blocks.solid(Materials.foam(32, 36), 0.015)).consumes(rollers(Optional.empty(), Optional.empty(),
                Optional.of(Given.of("pours", RATIO, 2, LIBRARY)), Optional.of(Given.of("pots", RATIO, 1, LIBRARY))));
        BuildPlan plan = Plans.plan(specs);
        assertThat(value(plan, "order.Rollers.need")).isCloseTo(plan.pours().size() / 2.0 + value(plan, "fill.pots"), within(1e-9));
    }

    @Test void aConsumableThatIsNotUsedIsNotOrdered() {
        BuildPlan plan = plan(Specs.box().consumes(rollers(Optional.of(Given.of("area", AREA, 5, LIBRARY)), Optional.empty(), Optional.empty(), Optional.empty())));
        assertThat(plan.orders()).isEmpty();
    }
}
