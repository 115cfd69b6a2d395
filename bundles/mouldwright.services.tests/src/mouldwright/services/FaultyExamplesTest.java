package mouldwright.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import mouldwright.check.CheckPage;
import mouldwright.check.Severity;
import mouldwright.check.TextFix;
import mouldwright.report.TextFinding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The examples of what is found: each has its findings in the lines whose comments name them and nowhere else, and each fix mends its finding. */
class FaultyExamplesTest {

    private static final Path FAULTY = Path.of("../../examples/faulty").toAbsolutePath().normalize();
    private static final SpecSession SESSION = SpecSession.start();

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(FAULTY)) {
            return files.filter(file -> file.toString().endsWith(".plug")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void hasItsFindingsWhereItsCommentsSay(Path file) throws IOException {
        List<String> marked = new ArrayList<>();
        List<String> lines = Files.readString(file).lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            int comment = lines.get(i).indexOf("// MW");
            if (comment >= 0) {
                for (String code : lines.get(i).substring(comment + 3).strip().split(" ")) {
                    marked.add(i + 1 + " " + code);
                }
            }
        }
        List<String> found = SESSION.check(file, () -> false).findings().stream().map(finding -> finding.line() + " " + finding.code()).toList();
        assertThat(found).containsExactlyInAnyOrderElementsOf(marked);
        String code = file.getFileName().toString().substring(0, 5).toUpperCase(Locale.ROOT);
        assertThat(marked).anySatisfy(mark -> assertThat(mark).endsWith(code));
    }

    @ParameterizedTest
    @MethodSource("files")
    void eachOfItsFixesMendsItsFindingAndBringsNoNewError(Path file) throws IOException {
        String text = Files.readString(file);
        Checked before = SESSION.check(file, () -> false);
        List<String> failed = new ArrayList<>();
        for (TextFinding finding : before.findings()) {
            for (TextFix fix : finding.fixes()) {
                Checked after = SESSION.checkText(file, fix.applyTo(text), () -> false);
                if (count(after, finding.code()) >= count(before, finding.code()) || errors(after) > errors(before)) {
                    failed.add(finding.code() + " " + fix + " leaves " + after.findings());
                }
            }
        }
        assertThat(failed).isEmpty();
    }

    private static long count(Checked checked, String code) {
        return checked.findings().stream().filter(finding -> finding.code().equals(code)).count();
    }

    private static long errors(Checked checked) {
        return checked.findings().stream().filter(finding -> finding.severity() == Severity.ERROR).count();
    }

    /** Those that the catalogue promises a fix for, by the examples that show it. */
    @ParameterizedTest
    @MethodSource("promised")
    void whatIsPromisedAFixHasOne(String example) throws IOException {
        List<Path> shown = files().stream().filter(f -> f.getFileName().toString().startsWith(example)).toList();
        String code = example.substring(0, 5).toUpperCase(Locale.ROOT);
        assertThat(shown).isNotEmpty().allSatisfy(file -> assertThat(SESSION.check(file, () -> false).findings().stream().filter(finding -> finding.code().equals(code)))
                .anyMatch(finding -> !finding.fixes().isEmpty()));
    }

    static List<String> promised() {
        return List.of("mw101-doubled", "mw101-reversed", "mw102", "mw103-order", "mw103-knuckle", "mw103-line", "mw105", "mw106", "mw203", "mw207", "mw211", "mw308", "mw309", "mw310",
                "mw312", "mw317", "mw412", "mw431", "mw441", "mw443", "mw501", "mw502", "mw505", "mw507", "mw509", "mw520", "mw602", "mw605", "mw610", "mw701", "mw704", "mw706", "mw707", "mw708", "mw709",
                "mw710", "mw715", "mw901", "mw902", "mw903", "mw905", "mw908", "mw923", "mw930", "mw931");
    }

    /** What no spec of one file can show, with the reason. */
    private static final Map<String, String> WITHOUT_EXAMPLE = Map.of("MW801", "tasks are made by the stages, and no spec orders them", "MW900", "every finding has a code of its own so far",
            "MW990", "a file that cannot be read", "MW991", "a line of the project file", "MW992", "an empty file has no line to mark", "MW993", "deeper nesting than a file to be read by people has");

    @Test
    void everyCodeOfTheReferenceHasAnExampleOrAReason() throws IOException {
        Set<String> shown = files().stream().map(file -> file.getFileName().toString().substring(0, 5).toUpperCase(Locale.ROOT)).collect(Collectors.toSet());
        assertThat(CheckPage.all().stream().map(CheckPage::code).filter(code -> !shown.contains(code))).containsExactlyInAnyOrderElementsOf(WITHOUT_EXAMPLE.keySet());
    }
}
