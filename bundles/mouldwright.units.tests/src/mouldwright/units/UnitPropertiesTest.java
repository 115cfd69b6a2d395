package mouldwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Closed forms: what goes to SI and back is what it was. */
class UnitPropertiesTest {

    @Provide
    Arbitrary<Unit> units() {
        return Arbitraries.of(Units.simpleUnits());
    }

    @Property(tries = 300)
    void aReadingComesBackFromSi(@ForAll("units") Unit unit, @ForAll @DoubleRange(min = -1e6, max = 1e6) @Scale(6) double value) {
        double scale = Math.abs(value) + Math.abs(unit.shift());

        assertThat(unit.fromSi(unit.toSi(value))).isCloseTo(value, within(scale * 1e-14));
    }

    @Property(tries = 200)
    void aDifferenceIsTheDifferenceOfTwoReadings(@ForAll("units") Unit unit,
            @ForAll @DoubleRange(min = -1e3, max = 1e3) @Scale(6) double a, @ForAll @DoubleRange(min = -1e3, max = 1e3) @Scale(6) double b) {
        double byReadings = unit.toSi(a) - unit.toSi(b);

        assertThat(unit.toSiDifference(a - b)).isCloseTo(byReadings, within(1e-12 * (1e4 * unit.factor())));
    }

    @Property(tries = 200)
    void aQuotientIsItsPartsDivided(@ForAll("units") Unit above, @ForAll("units") Unit below) {
        Units.find(above.symbol() + "/" + below.symbol()).ifPresent(unit -> {
            assertThat(unit.factor()).isCloseTo(above.factor() / below.factor(), within(unit.factor() * 1e-14));
            assertThat(unit.dimension().times(below.dimension())).isEqualTo(above.dimension());
        });
    }

    @Property(tries = 200)
    void noTextMakesTheReaderThrow(@ForAll String text) {
        assertThat(WrittenNumber.parse(text)).isNotNull();
        assertThat(Units.find(text)).isNotNull();
        assertThat(Units.suggest(text.substring(0, Math.min(12, text.length())))).isNotNull();
    }

    @Property(tries = 200)
    void aNumberShownIsWithinThreeFiguresOfItself(@ForAll @DoubleRange(min = 1e-6, max = 1e6) @Scale(9) double value) {
        assertThat(Double.parseDouble(Display.number(value))).isCloseTo(value, within(value * 0.005000001));
    }
}
