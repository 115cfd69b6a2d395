package mouldwright.plan.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.spec.Spec;
import mouldwright.units.Dimension;
import org.junit.jupiter.api.Test;

class BoundlessFigureTest {

    /** A stage whose only figure is larger than any number. */
    private static final class Boundless implements Stage {

        @Override public String name() {
            return "boundless";
        }

        @Override public boolean wantedBy(Spec spec) {
            return true;
        }

        @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) { }

        @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
            ledger.quantity("boundless.time", "Time", Dimension.TIME).from("1 over nothing", List.of(ledger.given(Specs.given("nothing", Dimension.RATIO, 0))), v -> 1 / v[0])
                    .source("definition");
        }
    }

    @Test void aFigureThatGrowsPastAnyNumberIsAFaultOfThePlugAndLeavesNoFigures() {
        BuildPlan plan = new Planner(List.of(new Boundless())).plan(Specs.box().build(), () -> false);
        assertThat(plan.quantities()).isEmpty();
        assertThat(plan.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(PlanFault.Kind.FIGURE);
            assertThat(fault.message()).contains("boundless.time", "past any number");
        });
    }
}
