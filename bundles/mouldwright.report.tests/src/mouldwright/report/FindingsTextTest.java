package mouldwright.report;

import mouldwright.check.Severity;
import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Findings as a good compiler prints them. */
class FindingsTextTest {

    private static final PathNames NAMES = new PathNames(Plans.FOLDER);

    private static String print(String text, TextFinding finding) {
        return new FindingsText(NAMES, Map.of(Plans.FILE, text), Ink.NONE).print(List.of(finding));
    }

    private static TextFinding at(int line, int column, int length) {
        return new TextFinding("MW412", Severity.WARNING, "crown of 3.1 mm", Plans.FILE, line, column, length, Optional.empty());
    }

    @Test void aFindingHasAPlaceAFigureALimitAndAWayOut() {
        assertThat(print("plug Hatch {\n\n    station S2 at 500\n}\n", Plans.WARNING)).isEqualTo("""
                hatch.plug:3:5  warning MW412  crown of 3.1 mm between S1 and S2, 1.5 mm at most: a straight board would flatten it
                    3 |     station S2 at 500
                      |     ^^^^^^^
                   fix: insert a station at 823 mm with the lofted section
                """);
    }

    @Test void theMarkStandsUnderItsWordAfterTabsToo() {
        assertThat(print("\t\tstation S2", at(1, 3, 7))).endsWith("    1 |   station S2\n      |   ^^^^^^^\n");
    }

    @Test void aFindingAtTheEndOfTheTextHasOneMark() {
        assertThat(print("plug", at(1, 5, 0))).endsWith("    1 | plug\n      |     ^\n");
    }

    @Test void aFindingThatRunsOverItsLineIsMarkedToTheEndOfIt() {
        assertThat(print("plug\nBox", at(1, 2, 7))).endsWith("    1 | plug\n      |  ^^^\n");
    }

    @Test void aLineTooLongToReadIsCutRoundThePlace() {
        String printed = print("x".repeat(5000) + "station" + "y".repeat(5000), at(1, 5001, 7));
        assertThat(printed.lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(180));
        assertThat(printed).contains("station").contains("^^^^^^^");
    }

    @Test void aTextCannotPlayWithTheTerminal() {
        assertThat(print("station \u001b[2J\u202e", at(1, 1, 7))).doesNotContain("\u001b").doesNotContain("\u202e");
    }

    @Test void aFileThatWasNotReadShowsNoLine() {
        TextFinding finding = TextFinding.ofFile("MW990", Severity.ERROR, "it is a folder", Path.of("/elsewhere/a.plug"));
        assertThat(print("", finding)).isEqualTo("/elsewhere/a.plug:1:1  error MW990  it is a folder\n");
    }

    @Test void theSummaryCountsInWords() {
        TextFinding error = TextFinding.ofFile("MW990", Severity.ERROR, "x", Plans.FILE);
        assertThat(FindingsText.summary(List.of(error, error, Plans.WARNING))).isEqualTo("2 errors, 1 warning");
        assertThat(FindingsText.summary(List.of(Plans.WARNING.weighing(Severity.INFO)))).isEqualTo("1 note");
        assertThat(FindingsText.summary(List.of())).isEqualTo("no findings");
    }

    @Test void coloursAreForTerminalsOnly() {
        FindingsText coloured = new FindingsText(NAMES, Map.of(), Ink.TERMINAL);
        assertThat(coloured.print(List.of(Plans.WARNING))).contains("\u001b[1;33mwarning\u001b[0m");
        assertThat(print("", Plans.WARNING)).doesNotContain("\u001b");
    }

    @Test void findingsAsJsonAreAnArrayWithTheirPlaces() {
        assertThat(new FindingsJson(NAMES).print(List.of(Plans.WARNING))).isEqualTo("""
                [
                  {
                    "code": "MW412",
                    "severity": "warning",
                    "message": "crown of 3.1 mm between S1 and S2, 1.5 mm at most: a straight board would flatten it",
                    "file": "hatch.plug",
                    "line": 3,
                    "column": 5,
                    "length": 7,
                    "fix": "insert a station at 823 mm with the lofted section"
                  }
                ]
                """);
        assertThat(new FindingsJson(NAMES).print(List.of())).isEqualTo("[]\n");
    }
}
