package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import mouldwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** How a figure came about, down to what somebody stated. */
class ExplanationTest {

    private static final Explanation EXPLANATION = new Explanation(UnitSystem.METRIC);

    @Test void theTreeLooksAsItDidWhenSomebodyLastLooked() {
        Golden.compare("explain-fill-pots.txt", EXPLANATION.print(Plans.hatch(), "fill.pots").orElseThrow());
    }

    @Test void itEndsInSpecLinesLibraryEntriesAndDefaultsWithTheirReason() {
        String tree = EXPLANATION.print(Plans.hatch(), "fill.pots").orElseThrow();
        assertThat(tree).contains("stock/foam.plug:14", "stock.foam Pour36", "| expansion 32 from 28 to 33", "hatch.plug:9",
                "assumed: common practice at 20 degC");
    }

    @Test void anUnknownIdHasNoTreeButNeighbours() {
        assertThat(EXPLANATION.print(Plans.hatch(), "fill.liquids")).isEmpty();
        assertThat(Explanation.nearest(Plans.hatch(), "fill.liquids")).startsWith("fill.liquid");
        assertThat(Explanation.nearest(Plans.hatch(), "fill")).containsExactly("fill.pots", "fill.cavity", "fill.liquid");
        assertThat(Explanation.nearest(Plans.hatch(), "zzzzzzzzzzzzzzzzzzzz")).isEmpty();
    }

    @Test void whatIsSharedIsToldOnce() {
        String tree = EXPLANATION.print(Plans.twice(), "sum").orElseThrow();
        assertThat(tree.split("plug:7", -1)).hasSize(2);
        assertThat(tree).contains("as above");
    }
}
