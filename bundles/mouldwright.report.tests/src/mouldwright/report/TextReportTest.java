package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import mouldwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** How an estimate looks at a terminal. The golden files were read by a person; they hold the look, the figures are made up. */
class TextReportTest {

    private static String print(UnitSystem system, Estimate estimate) {
        return new TextReport(system, new PathNames(Plans.FOLDER)).print(estimate);
    }

    @Test void aWholeEstimateLooksAsItDidWhenSomebodyLastLooked() {
        Golden.compare("hatch-metric.txt", print(UnitSystem.METRIC, Plans.estimate()));
    }

    @Test void anEstimateInUsUnitsLooksAsItDidWhenSomebodyLastLooked() {
        Golden.compare("hatch-us.txt", print(UnitSystem.US, Plans.estimate()));
    }

    @Test void anEstimateWithDrawsLooksAsItDidWhenSomebodyLastLooked() {
        Golden.compare("hatch-draws.txt", print(UnitSystem.METRIC, Plans.drawn()));
    }

    @Test void noLineIsWiderThanAHundredColumns() { // what the reports are made for
        assertThat(print(UnitSystem.METRIC, Plans.estimate()).lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test void oneStageAloneShowsNoFigureOfAnother() {
        String fill = print(UnitSystem.METRIC, Plans.estimate().only("fill"));
        assertThat(fill).contains("fill.liquid", "pour into bay").doesNotContain("shape.volume", "Csm450", "stands");
    }

    @Test void whereverAPotIsShownTheCautionStandsBesideIt() { // isocyanate with foam, peroxide and styrene with resin
        assertThat(print(UnitSystem.METRIC, Plans.estimate().only("fill"))).contains("isocyanate", "supplier's data sheet", "local codes");
        assertThat(print(UnitSystem.METRIC, Plans.estimate().only("skin"))).contains("peroxide", "Styrene", "no permission");
        assertThat(print(UnitSystem.METRIC, Plans.estimate().only("frame"))).contains("lifting");
    }

    @Test void aShapeAloneNeedsNoCaution() {
        assertThat(print(UnitSystem.METRIC, Plans.estimate().only("shape"))).doesNotContain("!");
    }

    @Test void theSameEstimateGivesTheSameTextInEveryLocale() {
        String here = print(UnitSystem.METRIC, Plans.estimate());
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(print(UnitSystem.METRIC, Plans.estimate())).isEqualTo(here);
            Locale.setDefault(Locale.forLanguageTag("tr"));
            assertThat(print(UnitSystem.METRIC, Plans.estimate())).isEqualTo(here);
        } finally {
            Locale.setDefault(before);
        }
    }
}
