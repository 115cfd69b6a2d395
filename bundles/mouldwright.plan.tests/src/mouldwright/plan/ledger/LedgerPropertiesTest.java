package mouldwright.plan.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Properties that hold for whatever is written in a ledger; interval arithmetic is the outside reference. */
class LedgerPropertiesTest {

    @Property(tries = 200)
    void lowNeverExceedsLikelyNorLikelyHigh(@ForAll Random random, @ForAll @IntRange(min = 1, max = 8) int inputs) {
        Ledger ledger = new Ledger();
        Reckoning reckoning = randomLedger(ledger, random, inputs);
        for (Node node : reckoning.quantities()) {
            assertThat(reckoning.low(node)).isLessThanOrEqualTo(reckoning.likely(node));
            assertThat(reckoning.likely(node)).isLessThanOrEqualTo(reckoning.high(node));
        }
    }

    @Property(tries = 200)
    void theProductOfPositiveRangesIsTheProductOfTheirEnds(@ForAll @DoubleRange(min = 0.1, max = 10) double a,
            @ForAll @DoubleRange(min = 0, max = 5) double da, @ForAll @DoubleRange(min = 0.1, max = 10) double b,
            @ForAll @DoubleRange(min = 0, max = 5) double db) {
        Ledger ledger = new Ledger();
        Node product = ledger.quantity("product", "Product", Dimension.RATIO).from("a b",
                List.of(ledger.given(given("a", a, a + da / 2, a + da)), ledger.given(given("b", b, b + db / 3, b + db))),
                v -> v[0] * v[1]).source("test");
        Reckoning reckoning = ledger.close();
        assertThat(reckoning.low(product)).isEqualTo(a * b);
        assertThat(reckoning.high(product)).isEqualTo((a + da) * (b + db));
    }

    @Property(tries = 200)
    void aSwingTellsTheSignOfEachCoefficient(@ForAll @DoubleRange(min = -5, max = 5) double p,
            @ForAll @DoubleRange(min = -5, max = 5) double q) {
        Ledger ledger = new Ledger();
        Given a = given("a", 1, 2, 4);
        Given b = given("b", -3, 0, 1);
        Node sum = ledger.quantity("sum", "Sum", Dimension.RATIO)
                .from("p a + q b", List.of(ledger.given(a), ledger.given(b)), v -> p * v[0] + q * v[1]).source("test");
        Reckoning reckoning = ledger.close();
        assertThat(reckoning.direction(sum, a)).isEqualTo((int) Math.signum(p));
        assertThat(reckoning.direction(sum, b)).isEqualTo((int) Math.signum(q));
        assertThat(reckoning.low(sum)).isCloseTo(Math.min(p, 4 * p) + Math.min(-3 * q, q), within(1e-12));
    }

    @Property(tries = 100)
    void everyDrawOfAMonotoneResultLiesBetweenLowAndHigh(@ForAll Random random, @ForAll @IntRange(min = 1, max = 6) int inputs) {
        Ledger ledger = new Ledger();
        Reckoning reckoning = randomLedger(ledger, random, inputs);
        double[] draw = reckoning.uncertain().stream()
                .mapToDouble(g -> g.low() + random.nextDouble() * (g.high() - g.low())).toArray();
        Reckoning.Draw drawn = reckoning.draw().with(draw);
        for (Node node : reckoning.quantities()) {
            double slack = 1e-9 * Math.abs(reckoning.likely(node));
            assertThat(drawn.value(node)).isBetween(reckoning.low(node) - slack, reckoning.high(node) + slack);
        }
    }

    /** Products and quotients of inputs raised to fixed whole powers: each rises or falls with each input. */
    private static Reckoning randomLedger(Ledger ledger, Random random, int inputs) {
        List<Node> leaves = new ArrayList<>();
        for (int i = 0; i < inputs; i++) {
            double low = 0.5 + random.nextDouble();
            double likely = low + random.nextInt(3) * random.nextDouble();
            leaves.add(ledger.given(given("x" + i, low, likely, likely + random.nextInt(3) * random.nextDouble())));
        }
        for (int i = 0; i < 12; i++) {
            int[] powers = random.ints(inputs, -2, 3).toArray();
            var entry = ledger.quantity("q" + i, "Q", Dimension.RATIO).from("product of powers", leaves, v -> {
                double product = 1;
                for (int k = 0; k < v.length; k++)
                    product *= Math.pow(v[k], powers[k]);
                return product;
            });
            (random.nextBoolean() ? entry.roundedUp() : entry).source("test");
        }
        return ledger.close();
    }

    private static Given given(String name, double low, double likely, double high) {
        return new Given(name, Dimension.RATIO, low, likely, high, new Origin.Text("", 1, 1, name));
    }
}
