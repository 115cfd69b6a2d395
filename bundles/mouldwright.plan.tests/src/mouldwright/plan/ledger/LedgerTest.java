package mouldwright.plan.ledger;

import static mouldwright.units.Dimension.DENSITY;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.VOLUME;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;
import org.junit.jupiter.api.Test;

class LedgerTest {

    private final Ledger ledger = new Ledger();

    @Test void liquidFoamIsTheCavityOverThirty() { // common practice: foam grows to about 30 times its liquid volume
        Node cavity = ledger.measured("cavity", VOLUME, new Measurement(0.3, 0, "closed form"));
        Node liquid = ledger.quantity("fill.liquid", "Foam, liquid", VOLUME)
                .from("cavity / expansion", List.of(cavity, given("expansion", RATIO, 30, 30, 30)), v -> v[0] / v[1])
                .source("common practice");
        assertThat(ledger.close().likely(liquid)).isCloseTo(0.010, within(1e-15));
    }

    @Test void aQuotientIsLowWhereItsDivisorIsHigh() { // interval arithmetic, closed form
        Node liquid = ledger.quantity("liquid", "Liquid", VOLUME)
                .from("cavity / expansion", List.of(given("cavity", VOLUME, 0.29, 0.3, 0.31),
                        given("expansion", RATIO, 28, 32, 33)), v -> v[0] / v[1]).source("test");
        Reckoning reckoning = ledger.close();
        assertThat(reckoning.low(liquid)).isEqualTo(0.29 / 33);
        assertThat(reckoning.high(liquid)).isEqualTo(0.31 / 28);
    }

    @Test void oneFigureThatEntersTwiceMovesBothTogether() { // x - x is nothing, whatever x is
        Node x = given("x", LENGTH, 1, 2, 3);
        Node nothing = ledger.quantity("nothing", "Nothing", LENGTH)
                .from("x - x", List.of(x, given("x", LENGTH, 1, 2, 3)), v -> v[0] - v[1]).source("test");
        Reckoning reckoning = ledger.close();
        assertThat(reckoning.low(nothing)).isZero();
        assertThat(reckoning.high(nothing)).isZero();
    }

    @Test void potsAreCountedUpAndTheirRangeComesFromTheMass() {
        // neither figure alone fills another pot, both together do
        Node mass = ledger.step("mass", MASS).from("volume x density",
                List.of(given("volume", VOLUME, 0.9, 1, 1.1), given("density", DENSITY, 0.9, 1, 1.1)), v -> v[0] * v[1]).source("test");
        Node pots = ledger.quantity("pots", "Pots", RATIO).from("mass / pot", List.of(mass), v -> v[0] / 1.15)
                .roundedUp().source("test");
        Reckoning reckoning = ledger.close();
        assertThat(reckoning.likely(pots)).isEqualTo(1);
        assertThat(reckoning.high(pots)).isEqualTo(2);
    }

    @Test void threeLiftsOfTwoHundredMillimetresFillSixHundred() { // and no fourth for the last bit of a double
        Node lifts = ledger.quantity("lifts", "Lifts", RATIO)
                .from("height / lift", List.of(given("height", LENGTH, 0.6, 0.6, 0.6)), v -> (v[0] + 1e-16) / 0.2)
                .roundedUp().source("test");
        assertThat(ledger.close().likely(lifts)).isEqualTo(3);
    }

    @Test void theSmallerSideOfAMaximumCountsWhereItTakesOver() {
        Node wait = ledger.quantity("wait", "Wait", LENGTH).from("max(a, b)",
                List.of(given("a", LENGTH, 1, 10, 11), given("b", LENGTH, 2, 5, 6)), v -> Math.max(v[0], v[1])).source("test");
        assertThat(ledger.close().low(wait)).isEqualTo(2);
    }

    @Test void aResultThatFallsOnBothSidesIsBoundedByItsSwings() {
        Node hill = ledger.quantity("hill", "Hill", RATIO)
                .from("1 - x^2", List.of(given("x", RATIO, -1, 0, 0.5)), v -> 1 - v[0] * v[0]).source("test");
        Reckoning reckoning = ledger.close();
        assertThat(reckoning.low(hill)).isZero();
        assertThat(reckoning.high(hill)).isEqualTo(1);
    }

    @Test void derivationsEndInStatedFiguresAndMeasures() {
        Node cavity = ledger.measured("cavity", VOLUME, new Measurement(0.3, 1e-6, "closed form"));
        Node liquid = ledger.quantity("liquid", "Liquid", VOLUME).from("cavity / expansion",
                List.of(cavity, given("expansion", RATIO, 28, 32, 33)), v -> v[0] / v[1]).source("the supplier");
        Derivation.Reckoned tree = (Derivation.Reckoned) ledger.close().derivation(liquid);
        assertThat(tree.inputs()).hasSize(2);
        assertThat(tree.inputs().get(0)).isInstanceOf(Derivation.Measured.class);
        assertThat(tree.inputs().get(1)).isInstanceOfSatisfying(Derivation.Stated.class,
                stated -> assertThat(stated.given().origin().words()).contains("canopy.plug:3:5"));
        assertThat(tree.source()).isEqualTo("the supplier");
    }

    @Test void derivationsSayInWordsHowLowAndHighCameAbout() {
        Node liquid = ledger.quantity("liquid", "Liquid", VOLUME).from("1 / expansion",
                List.of(given("expansion", RATIO, 28, 32, 33)), v -> 1 / v[0]).source("test");
        Derivation.Reckoned tree = (Derivation.Reckoned) ledger.close().derivation(liquid);
        assertThat(tree.bounds()).isEqualTo("low with expansion at 33; high with expansion at 28");
    }

    @Test void aDrawReckonsAllAgain() {
        Node x = given("x", LENGTH, 1, 2, 3);
        Node square = ledger.quantity("square", "Square", Dimension.AREA).from("x^2", List.of(x), v -> v[0] * v[0]).source("test");
        Reckoning.Draw draw = ledger.close().draw();
        assertThat(draw.with(new double[] {2.5}).value(square)).isEqualTo(6.25);
        assertThat(draw.with(new double[] {1.5}).value(square)).isEqualTo(2.25);
    }

    @Test void twoFiguresCannotHaveOneId() {
        ledger.quantity("a", "A", LENGTH).sum("none", List.of()).source("test");
        assertThatThrownBy(() -> ledger.quantity("a", "A", LENGTH)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test void thousandsOfFiguresMovedTheSameWayShareTheirCorners() {
        // every node must still get its own exact product
        Node a = given("a", RATIO, 1, 2, 3);
        Node b = given("b", RATIO, 2, 4, 5);
        List<Node> products = new java.util.ArrayList<>();
        for (int i = 0; i < 4000; i++) {
            double k = i + 1;
            products.add(i % 2 == 0
                    ? ledger.step("p", RATIO).from("k a b", List.of(a, b), v -> k * v[0] * v[1]).source("test")
                    : ledger.step("q", RATIO).from("k a / b", List.of(a, b), v -> k * v[0] / v[1]).source("test"));
        }
        Reckoning reckoning = ledger.close();
        assertThat(reckoning.high(products.get(10))).isEqualTo(11 * 15);
        assertThat(reckoning.high(products.get(11))).isEqualTo(12 * 1.5);
        assertThat(reckoning.low(products.get(3999))).isEqualTo(4000 * 1.0 / 5);
    }

    private Node given(String name, Dimension dimension, double low, double likely, double high) {
        return ledger.given(new Given(name, dimension, low, likely, high,
                new Origin.Text("canopy.plug", 3, 5, "    expansion 32 from 28 to 33")));
    }
}
