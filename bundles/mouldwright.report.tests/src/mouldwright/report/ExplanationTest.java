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

    @Test void aMeasureEndsInTheLinesThatDrawTheShape() {
        assertThat(EXPLANATION.print(Plans.hatch(), "shape.volume").orElseThrow())
                .contains("on hatch.plug:2 | station S1 at 0 like S0", "on hatch.plug:3 | station S2 at 500 like S1");
    }

    @Test void aMeasureNamesItsDefaultsAndTheFiguresItWasTakenWith() {
        assertThat(EXPLANATION.print(Plans.grounded(2), "sum").orElseThrow())
                .contains("on board 1200 mm   assumed: a common board", "on build-up 1.4 mm   (shape.buildup)");
    }

    @Test void ofManyStationsTwelveAreNamedAndTheRestCounted() {
        String tree = EXPLANATION.print(Plans.grounded(20), "sum").orElseThrow();
        assertThat(tree).contains("station S12 at 1200", "and 8 more").doesNotContain("station S13");
    }

    @Test void whatTwoMeasuresRestOnIsNamedOnce() {
        String tree = EXPLANATION.print(Plans.grounded(3), "sum").orElseThrow();
        assertThat(tree.split("station S2 at", -1)).hasSize(2);
        assertThat(tree).contains("on what is named above");
    }
}
