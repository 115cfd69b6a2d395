package mouldwright.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What nobody writes by hand is told at its place before the parser runs out of stack. The limits are our own. */
class NestingTest {

    private static final Path FILE = Path.of("tried.plug");

    @Test void aFormulaTooDeepIsToldAtTheParenthesisThatIsOneTooMany() {
        var finding = Nesting.finding(FILE, "plug P {\nlet a = " + "(".repeat(101) + "1" + ")".repeat(101) + " }").orElseThrow();
        assertThat(finding.line()).isEqualTo(2);
        assertThat(finding.column()).isEqualTo(8 + 101);
        assertThat(Nesting.finding(FILE, "let a = " + "(".repeat(100) + "1" + ")".repeat(100))).isEmpty();
    }

    @Test void aFormulaTooLongIsTold() {
        assertThat(Nesting.finding(FILE, "let a = (1" + "+1".repeat(501) + ")").orElseThrow().message()).contains("more than 500 terms");
        assertThat(Nesting.finding(FILE, "let a = (1" + "+1".repeat(500) + ")")).isEmpty();
    }

    @Test void textsAndCommentsAreNoFormulas() {
        assertThat(Nesting.finding(FILE, "// " + "(".repeat(500) + "\n/* " + "(".repeat(500) + " */ plug P \"" + "(".repeat(500) + "\" { }")).isEmpty();
    }

    @Test void manyPointsBelowZeroAreNoFormula() {
        assertThat(Nesting.finding(FILE, "{ " + "-1 -2\n".repeat(2000) + "}")).isEmpty();
    }
}
