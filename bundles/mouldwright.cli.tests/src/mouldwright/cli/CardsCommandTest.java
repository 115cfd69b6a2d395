package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cards for the shop, as Poppler reads them. */
class CardsCommandTest {

    private static final Path EXAMPLES = Path.of("../../examples").toAbsolutePath().normalize();

    @TempDir
    private Path folder;

    private String text(String... arguments) throws Exception {
        Path cards = folder.resolve("cards.pdf");
        String[] all = java.util.stream.Stream.concat(java.util.stream.Stream.of("cards", "--out", cards.toString()), java.util.stream.Stream.of(arguments)).toArray(String[]::new);
        Run run = Run.in(EXAMPLES, all);
        assertThat(run.code()).as(run.err()).isZero();
        Process process = new ProcessBuilder("pdftotext", "-layout", cards.toString(), "-").redirectErrorStream(true).start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(text).isZero();
        return text;
    }

    @Test void eachLiftOfEachBayHasItsCardAfterTheTrialCup() throws Exception { // two bays of one lift, 371 g of A and 404 g of B each
        String[] pages = text("ten-lines/hatch.plug", "--only", "pours").split("\f");
        assertThat(pages).hasSize(3);
        assertThat(pages[0]).contains("Trial cup", "Mixed 20 s", "height risen");
        assertThat(pages[1]).contains("Bay Fore-Mid, lift 1 of 1", "Fore-Mid/1", "371", "404", "firm after", "isocyanate", "upright");
        assertThat(pages[2]).contains("Bay Mid-Aft, lift 1 of 1", "card 3 of 3");
    }

    @Test void cardsMayBeSmallerAndInUsUnits() throws Exception {
        assertThat(text("ten-lines/hatch.plug", "--only", "pours", "--paper", "a5").split("\f")).hasSize(3);
        assertThat(text("ten-lines/hatch.plug", "--only", "pours", "--units", "us")).contains("oz", "degF");
    }

    @Test void aTerminalCannotShowCards() {
        Run run = Run.with(new Cli(), EXAMPLES, Map.of(), true, "cards", "ten-lines/hatch.plug");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("a terminal cannot show cards", "--out cards.pdf");
    }

    @Test void aPlanWithoutTheWorkHasNoCardsOfIt() {
        Specs.write(folder, "box.plug", Specs.BOX);
        Run run = Run.in(folder, "cards", "box.plug", "--only", "pours", "--out", "cards.pdf");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("nothing in this plan for cards of pours");
        assertThat(Files.exists(folder.resolve("cards.pdf"))).isFalse();
    }

    @Test void platesAreSetUpByADrawingOfTheBase() throws Exception { // the square and the datum points of the canopy's sheet
        String[] pages = text("rain-canopy/canopy.plug", "--only", "alignment").split("\f");
        assertThat(pages[0]).contains("Lay off the base", "Setting up RainCanopy", "720 mm", "first line square: 540.0, 720.0, 900.0 mm", "datum points P and S");
        assertThat(pages[1]).contains("Set up the plates", "diag p");
    }
}
