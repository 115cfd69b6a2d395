package mouldwright.units;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import javax.measure.IncommensurableException;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import si.uom.NonSI;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/** Leans on the JSR 385 libraries: indriya, si-units, systems-common. */
class UnitTableTest {

    private static final Map<Dimension, javax.measure.Unit<?>> SI = Map.of(
            Dimension.LENGTH, Units.METRE,
            Dimension.VOLUME, Units.CUBIC_METRE,
            Dimension.MASS, Units.KILOGRAM,
            Dimension.TIME, Units.SECOND,
            Dimension.TEMPERATURE, Units.CELSIUS,
            Dimension.ANGLE, Units.RADIAN,
            Dimension.RATIO, AbstractUnit.ONE,
            Dimension.VOLUME_RATE, Units.CUBIC_METRE.divide(Units.SECOND));

    private static final Map<String, javax.measure.Unit<?>> LIBRARY = Map.ofEntries(
            Map.entry("mm", MILLI(Units.METRE)), Map.entry("cm", CENTI(Units.METRE)), Map.entry("m", Units.METRE),
            Map.entry("um", MICRO(Units.METRE)), Map.entry("in", USCustomary.INCH), Map.entry("ft", USCustomary.FOOT),
            Map.entry("yd", USCustomary.YARD), Map.entry("mil", MILLI(USCustomary.INCH)),
            Map.entry("thou", MILLI(USCustomary.INCH)),
            Map.entry("l", Units.LITRE), Map.entry("ml", MILLI(Units.LITRE)), Map.entry("cl", CENTI(Units.LITRE)),
            Map.entry("gal", USCustomary.GALLON_LIQUID), Map.entry("qt", USCustomary.PINT.multiply(2)),
            Map.entry("pt", USCustomary.PINT), Map.entry("floz", USCustomary.FLUID_OUNCE),
            Map.entry("galUK", Imperial.GALLON_UK),
            Map.entry("kg", Units.KILOGRAM), Map.entry("g", Units.GRAM), Map.entry("mg", MILLI(Units.GRAM)),
            Map.entry("t", NonSI.TONNE), Map.entry("lb", USCustomary.POUND), Map.entry("oz", USCustomary.OUNCE),
            Map.entry("s", Units.SECOND), Map.entry("min", Units.MINUTE), Map.entry("h", Units.HOUR),
            Map.entry("d", Units.DAY), Map.entry("week", Units.WEEK),
            Map.entry("degC", Units.CELSIUS), Map.entry("degF", USCustomary.FAHRENHEIT), Map.entry("K", Units.KELVIN),
            Map.entry("deg", NonSI.DEGREE_ANGLE), Map.entry("rad", Units.RADIAN),
            Map.entry("%", Units.PERCENT), Map.entry("ppm", AbstractUnit.ONE.divide(1_000_000)),
            Map.entry("cfm", USCustomary.CUBIC_FOOT.divide(Units.MINUTE)));

    static Stream<Unit> rows() {
        return mouldwright.units.Units.simpleUnits().stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyUnitConvertsAsTheLibraryDoes(Unit row) throws IncommensurableException {
        double library = LIBRARY.get(row.symbol()).getConverterToAny(SI.get(row.dimension())).convert(123.456);

        assertThat(row.toSi(123.456)).isCloseTo(library, within(Math.abs(library) * 1e-14));
    }

    @ParameterizedTest
    @MethodSource("rows")
    void everyUnitComesBackFromSi(Unit row) {
        assertThat(row.fromSi(row.toSi(37.5))).isCloseTo(37.5, within(1e-12)); // closed form
    }

    @Test
    void theTableAndTheLibrariesHaveTheSameUnits() {
        assertThat(rows().map(Unit::symbol).collect(Collectors.toSet())).isEqualTo(LIBRARY.keySet());
    }
}
