package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mouldwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cards for the shop, read by the Poppler programs. */
class CardBookTest {

    @TempDir
    private Path folder;

    private byte[] write(PdfPaper paper, UnitSystem system, String kind) {
        try {
            byte[] bytes = new CardBook(system, paper).print(Plans.estimate(), Optional.of(kind).filter(word -> !word.isEmpty())).orElseThrow();
            Files.write(folder.resolve("cards.pdf"), bytes);
            return bytes;
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private String[] pages() {
        return Tool.run(folder, "pdftotext", "-layout", "cards.pdf", "-").split("\f");
    }

    /** Heights of the boxes round words, points; those of a font's ascent and descent, some more than its size. */
    private List<Double> heights() {
        Matcher word = Pattern.compile("<word xMin=\"[\\d.]+\" yMin=\"([\\d.]+)\" xMax=\"[\\d.]+\" yMax=\"([\\d.]+)\">").matcher(Tool.run(folder, "pdftotext", "-bbox", "cards.pdf", "-"));
        return word.results().map(one -> Double.parseDouble(one.group(2)) - Double.parseDouble(one.group(1))).toList();
    }

    @Test void everyPlyHasItsCardAndEveryCardItsPage() { // one laying a ply, as nothing was measured of them
        write(PdfPaper.A4, UnitSystem.METRIC, "lay-up");
        assertThat(pages()).hasSize(2).allSatisfy(page -> assertThat(page).contains("Hatch 3fa9c0d1 skin/", "peroxide", "vapour", "licensed"));
        assertThat(pages()[0]).contains("card 1 of 2");
    }

    @Test void everyPotHasItsRowWithItsCatalystByWeightAndByMeasure() { // three pots, a small one first
        write(PdfPaper.A4, UnitSystem.METRIC, "lay-up");
        assertThat(pages()[0]).containsPattern("1 +1 +400 +5\\.6 +4\\.83").containsPattern("2 +1 +757 +10\\.6 +9\\.13").containsPattern("3 +1 +757 +10\\.6 +9\\.13");
    }

    @Test void aCardIsReadAtArmsLength() { // 14 point is what large print begins with; figures twice that
        for (PdfPaper paper : PdfPaper.values()) {
            write(paper, UnitSystem.METRIC, "lay-up");
            assertThat(heights().stream().mapToDouble(height -> height).max().orElseThrow()).as(paper + "").isGreaterThanOrEqualTo(28);
        }
    }

    @Test void nothingLiesOutsideThePaper() {
        for (PdfPaper paper : PdfPaper.values()) {
            write(paper, UnitSystem.METRIC, "");
            Matcher word = Pattern.compile("<word xMin=\"([-\\d.]+)\" yMin=\"([-\\d.]+)\" xMax=\"([\\d.]+)\" yMax=\"([\\d.]+)\">").matcher(Tool.run(folder, "pdftotext", "-bbox", "cards.pdf", "-"));
            assertThat(word.results().toList()).isNotEmpty().allSatisfy(one -> {
                assertThat(Double.parseDouble(one.group(1))).isGreaterThanOrEqualTo(10);
                assertThat(Double.parseDouble(one.group(2))).isGreaterThanOrEqualTo(10);
                assertThat(Double.parseDouble(one.group(3))).isLessThanOrEqualTo(paper.width() - 10);
                assertThat(Double.parseDouble(one.group(4))).isLessThanOrEqualTo(paper.height() - 5);
            });
        }
    }

    @Test void theProgrammeAndTheOrderListHaveBoxesToTick() {
        write(PdfPaper.A4, UnitSystem.METRIC, "programme");
        assertThat(pages()[0]).contains("Pour bay S1 to S2, lift 1", "2027-03-01", "Make a crate");
        write(PdfPaper.A4, UnitSystem.METRIC, "orders");
        assertThat(pages()[0]).containsPattern("Csm450, Chopped strand +1 +28 kg").contains("release film");
    }

    @Test void aPlanWithoutPoursHasNoCardsForThem() {
        assertThat(new CardBook(UnitSystem.METRIC, PdfPaper.A4).print(Plans.estimate().only("skin"), Optional.of("pours"))).isEmpty();
    }

    @Test void theSamePlanGivesTheSameBytes() {
        assertThat(write(PdfPaper.A4, UnitSystem.METRIC, "")).isEqualTo(write(PdfPaper.A4, UnitSystem.METRIC, ""));
    }
}
