package mouldwright.check;

import static mouldwright.check.Tried.STOCK;
import static mouldwright.check.Tried.cylinder;
import static mouldwright.check.Tried.found;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What a spec accepts is not told, and an acceptance of nothing is. Each is told with figure, limit and place, and not in a spec without it;
 *  limits are common practice unless a test says otherwise. */
class AcceptanceTest {

    @Test void anAcceptedFindingIsNotTold() {
        assertThat(found(cylinder("carve { board 350 } accept MW431 \"two boards are joined\""))).isEmpty();
    }

    @Test void anAcceptanceWhoseDayHasPassedNoLongerHolds() {
        assertThat(found(cylinder("carve { board 350 } accept MW431 \"two boards are joined\" until 2001-01-01"))).hasSize(3).last().asString()
                .startsWith("MW935 `MW431` was accepted until 2001-01-01");
    }

    @Test void anAcceptanceOfNothingIsTold() {
        assertThat(found(cylinder("carve { board 1200 } accept MW431 \"two boards are joined\""))).singleElement().asString()
                .startsWith("MW923 nothing is found that `MW431` would accept");
    }

    private static final String TINY = STOCK.replace("pot 1 kg at most", "pot 1 g at most") + """
            plug P {
                half sections
                station A at 0 superellipse 200 by 400 exponent 2
                station B at 300 like A
                ACCEPT
            }
            """;

    @Test void aFindingOfTheTextIsAcceptedWhereAPlugOfTheFileDoesSo() { // a pot of a gram is no pot: 50 g at least are met
        assertThat(found(TINY.replace("ACCEPT", ""))).singleElement().asString().startsWith("MW930 1 g is far from what is met");
        assertThat(found(TINY.replace("ACCEPT", "accept MW930 \"a trial of pots\""))).isEmpty();
    }

    @Test void anAcceptanceOfATextFindingRunsOutLikeAnyOther() {
        assertThat(found(TINY.replace("ACCEPT", "accept MW930 \"a trial of pots\" until 2001-01-01"))).hasSize(2)
                .satisfiesExactly(kept -> assertThat(kept).startsWith("MW930"), over -> assertThat(over).startsWith("MW935 `MW930` was accepted until 2001-01-01"));
    }

    @Test void whatStandsInAPlugIsForThatPlugToAccept() { // a decimal comma is read and told
        String two = """
                plug P { half sections station A at 0 superellipse 200 by 400 station B at 300,5 like A %s }
                plug Q { half sections station A at 0 superellipse 200 by 400 station B at 300 like A %s }
                """;
        String accept = "accept MW908 \"typed on a continental keyboard\"";
        assertThat(found(two.formatted(accept, ""))).isEmpty();
        assertThat(found(two.formatted("", accept))).hasSize(2).anyMatch(finding -> finding.startsWith("MW908")).anyMatch(finding -> finding.startsWith("MW923"));
    }

    @Test void anErrorOfTheTextCannotBeAccepted() {
        assertThat(found(cylinder("crew 0 accept MW915 \"it builds itself\""))).singleElement().asString().startsWith("MW915 0 is no count");
    }

    @Test void anAcceptanceUntilNoDayIsToldAsThatAlone() {
        assertThat(found(cylinder("carve { board 350 } accept MW431 \"two boards are joined\" until 2027-02-30"))).singleElement().asString().startsWith("MW916");
    }

    @Test void withAnErrorNobodyKnowsWhatAnAcceptanceIsGoodFor() { // more catalyst that gels later is a slip, and the skin is not reckoned
        assertThat(found(cylinder("skin OnePly { lap 30 } accept MW505 \"a narrow plug\"").replace("25 degC 2 % 12 min", "25 degC 2 % 72 min"))).singleElement().asString().startsWith("MW604");
    }
}
