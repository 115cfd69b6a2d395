package mouldwright.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import mouldwright.check.Severity;
import mouldwright.check.TextFix;
import mouldwright.report.TextFinding;
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
        String code = file.getFileName().toString().substring(0, 5).toUpperCase(java.util.Locale.ROOT);
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

    /** Those that the catalogue promises a fix for. */
    @ParameterizedTest
    @MethodSource("promised")
    void whatIsPromisedAFixHasOne(String code) throws IOException {
        Path file = files().stream().filter(f -> f.getFileName().toString().startsWith(code.toLowerCase(java.util.Locale.ROOT))).findFirst().orElseThrow();
        assertThat(SESSION.check(file, () -> false).findings().stream().filter(finding -> finding.code().equals(code))).anyMatch(finding -> !finding.fixes().isEmpty());
    }

    static List<String> promised() {
        return List.of("MW103", "MW105", "MW106", "MW211", "MW308", "MW309", "MW310", "MW412", "MW431", "MW501", "MW502", "MW505", "MW509", "MW610", "MW704", "MW706", "MW707",
                "MW708", "MW710", "MW715", "MW901", "MW902", "MW903", "MW905", "MW908", "MW923", "MW931");
    }
}
