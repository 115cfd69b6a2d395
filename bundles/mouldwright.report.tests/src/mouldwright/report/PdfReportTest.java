package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import mouldwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The estimate as a PDF, read by the Poppler programs. */
class PdfReportTest {

    @TempDir
    private Path folder;

    private static byte[] print(UnitSystem system, Estimate estimate) {
        return new PdfReport(system, new PathNames(Plans.FOLDER)).print(estimate);
    }

    private String read(UnitSystem system, Estimate estimate, String... command) throws IOException {
        Files.write(folder.resolve("plan.pdf"), print(system, estimate));
        return Tool.run(folder, command);
    }

    @Test void everyPageCarriesPlugRevisionAndItsNumber() throws IOException {
        String[] pages = read(UnitSystem.METRIC, Plans.estimate(), "pdftotext", "-layout", "plan.pdf", "-").split("\f");
        assertThat(pages).hasSizeGreaterThan(1);
        for (int i = 0; i < pages.length; i++) {
            assertThat(pages[i]).contains("Hatch", Plans.REVISION, "page " + (i + 1) + " of " + pages.length);
        }
    }

    @Test void figuresUnitsAndCautionsStandThere() throws IOException {
        assertThat(read(UnitSystem.METRIC, Plans.estimate(), "pdftotext", "-layout", "plan.pdf", "-")).containsPattern("Foam, liquid +2\\.95 +l +2\\.58 +4\\.05 +fill\\.liquid")
                .contains("isocyanate", "licensed practice", "MW412", "shop temperature");
    }

    @Test void aFileToKeepHasItsTitleItsLanguageAndItsFonts() throws IOException { // ISO 32000: fonts embedded, as archives ask
        assertThat(read(UnitSystem.METRIC, Plans.estimate(), "pdfinfo", "plan.pdf")).contains("Hatch, build plan, revision " + Plans.REVISION).contains("595.276 x 841.89");
        List<String> fonts = Tool.run(folder, "pdffonts", "plan.pdf").lines().skip(2).toList();
        assertThat(fonts).isNotEmpty().allSatisfy(font -> assertThat(font).matches(".* yes +yes +yes .*"));
    }

    @Test void peopleWithUsUnitsPrintOnLetter() throws IOException { // 8.5 x 11 in
        assertThat(read(UnitSystem.US, Plans.estimate(), "pdfinfo", "plan.pdf")).contains("612 x 792");
    }

    @Test void aNameThatNoFontHasIsStillPrinted() throws IOException {
        Estimate estimate = Estimate.of(Plans.single("x", "Pl\u00e4tte \ud83d\udee0 \u202e<b>", 1, OptionalDouble.empty()), "r", List.of());
        assertThat(read(UnitSystem.METRIC, estimate, "pdftotext", "-layout", "plan.pdf", "-")).contains("Pl\u00e4tte", "<b>");
    }

    @Test void theSameEstimateGivesTheSameBytes() {
        assertThat(print(UnitSystem.METRIC, Plans.estimate())).isEqualTo(print(UnitSystem.METRIC, Plans.estimate()));
    }
}
