package mouldwright.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Leans on the project file's own description. */
class ProjectFileTest {

    private static final Path FILE = Path.of("mouldwright.project");

    private static ProjectFile.Parsed parse(String text) {
        return ProjectFile.parse(FILE, text);
    }

    @Test
    void aProjectFileStatesNameUnitsLibrariesAndSeverities() {
        ProjectFile.Parsed parsed = parse("""
                # our canopies
                name = Canopies   # shown on the papers
                units = us
                library = ../shared-stock
                library = stock/own

                severity.MW412 = error
                severity.MW431=off
                """);

        assertThat(parsed.faults()).isEmpty();
        assertThat(parsed.settings()).isEqualTo(new ProjectSettings(Optional.of("Canopies"), Optional.of(OutputUnits.US),
                List.of("../shared-stock", "stock/own"),
                Map.of("MW412", SeveritySetting.ERROR, "MW431", SeveritySetting.OFF)));
    }

    @Test
    void anEmptyProjectFileSetsNothing() {
        assertThat(parse("")).isEqualTo(new ProjectFile.Parsed(ProjectSettings.NONE, List.of(), List.of()));
    }

    static Stream<Arguments> badLines() {
        String path = " is an absolute path; files are named from the project";
        return Stream.of(
                Arguments.of("colour = red", 1, "no setting \"colour\"; there are library, name, units and severity.MW..."),
                Arguments.of("= error", 1, "no setting \"\"; there are library, name, units and severity.MW..."),
                Arguments.of("  units metric", 3, "\"key = value\" expected"),
                Arguments.of("units = imperial", 9, "units are metric or us, not \"imperial\""),
                Arguments.of("units =", 7, "no value for \"units\""),
                Arguments.of("severity.MW412 = fatal", 18, "a severity is error, warning, info or off, not \"fatal\""),
                Arguments.of("severity.412 = error", 10, "code of a check expected, such as severity.MW412, not \"412\""),
                Arguments.of("library = /srv/stock", 11, "\"/srv/stock\"" + path),
                Arguments.of("library = C:/stock", 11, "\"C:/stock\"" + path),
                Arguments.of("library = ..\\stock", 11, "\"..\\stock\" has a \\ in it; folders are divided by /"));
    }

    @ParameterizedTest
    @MethodSource("badLines")
    void aLineThatCannotBeUnderstoodIsAFaultAtItsPlace(String line, int column, String message) {
        assertThat(parse("name = A\n" + line).faults()).containsExactly(new ProjectFault(FILE, 2, column, message));
    }

    @ParameterizedTest
    @ValueSource(strings = { "name = A\nname = B", "units = us\nunits = us", "library = a\nlibrary = a",
            "severity.MW412 = off\nseverity.MW412 = error" })
    void aSettingGivenTwiceIsAFault(String text) {
        assertThat(parse(text).faults()).singleElement()
                .matches(fault -> fault.line() == 2 && fault.message().contains("given twice"));
    }

    @Test
    void theFirstOfTwoSettingsHolds() {
        assertThat(parse("name = A\nname = B").settings().name()).hasValue("A");
        assertThat(parse("severity.MW412 = off\nseverity.MW412 = error").settings().severities())
                .containsExactly(Map.entry("MW412", SeveritySetting.OFF));
    }

    @Test
    void nothingAfterAFaultIsLost() {
        assertThat(parse("rubbish\r\nname = A\r\n").settings().name()).hasValue("A");
    }

    @Test
    void aHashInsideAWordIsNoComment() {
        assertThat(parse("name = Job#7 # seven").settings().name()).hasValue("Job#7");
    }

    @Test
    void aNameMayHaveAnEqualsSign() {
        assertThat(parse("name = a=b").settings().name()).hasValue("a=b");
    }

    @Property(tries = 200)
    void noTextMakesTheReaderThrow(@ForAll String text) {
        ProjectFile.Parsed parsed = parse(text);

        assertThat(parsed.faults()).allMatch(fault -> fault.line() >= 1 && fault.column() >= 1);
    }
}
