package mouldwright.plan.draw;

import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.CancellationException;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import org.junit.jupiter.api.Test;

class DrawsTest {

    private final Ledger ledger = new Ledger();

    private Node given(String name, double low, double likely, double high) {
        return ledger.given(new Given(name, LENGTH, low, likely, high, new Origin.Text("test.plug", 1, 1, name)));
    }

    private Draws drawn(int count, long seed) {
        return Draws.of(ledger.close(), count, seed, () -> false);
    }

    private Spread spread(String id, int count) {
        return drawn(count, 7).spread(id).orElseThrow();
    }

    @Test void aSingleFigureSpreadsLikeItsTriangle() {
        // closed form for low 0, likely 1, high 3: sqrt(p x 3 x 1) below the peak, 3 - sqrt((1 - p) x 3 x 2) above it
        ledger.quantity("x", "X", LENGTH).same(given("x", 0, 1, 3)).source("test");
        Spread spread = spread("x", 20_000);
        assertThat(spread.tenth()).isCloseTo(Math.sqrt(0.3), within(0.02));
        assertThat(spread.half()).isCloseTo(3 - Math.sqrt(3), within(0.02));
        assertThat(spread.ninety()).isCloseTo(3 - Math.sqrt(0.6), within(0.02));
    }

    @Test void twoFiguresAreSeldomBothAtTheirWorst() {
        // closed form: two triangles of 0, 1, 2 have a variance of 1/6 each, so their sum stands 1.2816 x sqrt(1/3) = 0.74 off its mean at 90 %
        ledger.quantity("sum", "Sum", LENGTH).sum("a + b", List.of(given("a", 0, 1, 2), given("b", 0, 1, 2))).source("test");
        assertThat(spread("sum", 20_000).ninety()).isCloseTo(2.74, within(0.04));
    }

    @Test void aFigureThatEntersTwiceIsDrawnOnce() { // x - x is nothing, whatever x is
        Node x = given("x", 1, 2, 3);
        ledger.quantity("nothing", "Nothing", LENGTH).from("x - x", List.of(x, given("x", 1, 2, 3)), v -> v[0] - v[1]).source("test");
        assertThat(spread("nothing", 100)).isEqualTo(new Spread(0, 0, 0));
    }

    @Test void potsStayWhole() {
        ledger.quantity("pots", "Pots", RATIO).from("x / 0.3", List.of(given("x", 1, 2, 3)), v -> v[0] / 0.3).roundedUp().source("test");
        Spread spread = spread("pots", 999);
        assertThat(List.of(spread.tenth(), spread.half(), spread.ninety())).allSatisfy(pots -> assertThat(pots).isEqualTo(Math.rint(pots)));
        assertThat(spread.ninety()).isGreaterThan(spread.tenth());
    }

    @Test void whatIsCertainDoesNotSpread() {
        ledger.quantity("sure", "Sure", LENGTH).same(given("sure", 2, 2, 2)).source("test");
        ledger.quantity("other", "Other", LENGTH).same(given("other", 1, 2, 3)).source("test");
        assertThat(spread("sure", 100)).isEqualTo(new Spread(2, 2, 2));
        assertThat(drawn(100, 1).figures()).isEqualTo(1);
    }

    @Test void theLikelyValueMayStandAtAnEnd() { // spoilt mat: none likely, 15 % at most
        ledger.quantity("spoilt", "Spoilt", LENGTH).same(given("spoilt", 0, 0, 1)).source("test");
        assertThat(spread("spoilt", 20_000).ninety()).isCloseTo(1 - Math.sqrt(0.1), within(0.01)); // closed form
    }

    @Test void sharesAreFiguresThatWereDrawn() { // nearest rank, textbook: of ten the first, the fifth and the ninth
        assertThat(Spread.of(new double[] {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})).isEqualTo(new Spread(1, 5, 9));
    }

    @Test void theSameSeedGivesTheSameFiguresAndAnotherSeedOthers() {
        ledger.quantity("x", "X", LENGTH).same(given("x", 0, 1, 3)).source("test");
        assertThat(drawn(200, 5)).isEqualTo(drawn(200, 5));
        assertThat(drawn(200, 5).spread("x")).isNotEqualTo(drawn(200, 6).spread("x"));
    }

    @Test void aFigureThatSomeDrawHasNoneForIsLeftOut() {
        ledger.quantity("odd", "Odd", LENGTH).from("1 / whether x is below 2", List.of(given("x", 1, 1, 3)), v -> v[0] < 2 ? 1 : Double.NaN).source("test");
        assertThat(drawn(100, 1).spread("odd")).isEmpty();
    }

    @Test void tooFewDrawsSayNothingOfATenth() {
        assertThatThrownBy(() -> drawn(9, 1)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("10");
    }

    @Test void drawingEndsWhenItIsCancelled() {
        assertThatThrownBy(() -> Draws.of(ledger.close(), 100, 1, () -> true)).isInstanceOf(CancellationException.class);
    }
}
