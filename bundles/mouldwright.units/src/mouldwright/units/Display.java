package mouldwright.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Shows SI figures in the units of the trade, to three figures, whole numbers in full: {@code 13.2 mm}, {@code 0.43 m3},
 * {@code 24 min}, {@code 1234 mm}. The same figure always gives the same text, in every locale.
 *
 * <p>A figure shown is for reading. Cut lists and anything computed on go by the SI figure itself.
 */
public final class Display {

    private static final int FIGURES = 3;

    /** A unit and the SI size up to which it is used. */
    private record Step(double below, String unit) { }

    private static final Map<Dimension, List<Step>> METRIC = Map.ofEntries(
            Map.entry(Dimension.LENGTH, List.of(new Step(10, "mm"), always("m"))),
            Map.entry(Dimension.AREA, List.of(new Step(0.01, "cm2"), always("m2"))),
            Map.entry(Dimension.VOLUME, List.of(new Step(1e-3, "ml"), new Step(0.1, "l"), always("m3"))),
            Map.entry(Dimension.MASS, List.of(new Step(1, "g"), always("kg"))),
            Map.entry(Dimension.TEMPERATURE, List.of(always("degC"))),
            Map.entry(Dimension.AREAL_MASS, List.of(new Step(1, "g/m2"), always("kg/m2"))),
            Map.entry(Dimension.DENSITY, List.of(new Step(800, "kg/m3"), always("kg/l"))),
            Map.entry(Dimension.LINEAR_MASS, List.of(new Step(1, "g/m"), always("kg/m"))),
            Map.entry(Dimension.AREA_RATE, List.of(always("m2/h"))),
            Map.entry(Dimension.COVERAGE_MASS, List.of(always("m2/kg"))),
            Map.entry(Dimension.COVERAGE_VOLUME, List.of(always("m2/l"))),
            Map.entry(Dimension.MASS_RATE, List.of(always("kg/h"))),
            Map.entry(Dimension.VOLUME_RATE, List.of(always("m3/h"))),
            Map.entry(Dimension.SPEED, List.of(always("m/s"))),
            Map.entry(Dimension.SPECIFIC_VOLUME, List.of(always("l/kg"))));

    private static final Map<Dimension, List<Step>> US = Map.ofEntries(
            Map.entry(Dimension.LENGTH, List.of(new Step(10 * 0.3048, "in"), always("ft"))),
            Map.entry(Dimension.AREA, List.of(new Step(0.09290304, "in2"), always("ft2"))),
            Map.entry(Dimension.VOLUME, List.of(new Step(0.25 * 3.785411784e-3, "floz"), new Step(0.1, "gal"), always("ft3"))),
            Map.entry(Dimension.MASS, List.of(new Step(0.45359237, "oz"), always("lb"))),
            Map.entry(Dimension.TEMPERATURE, List.of(always("degF"))),
            Map.entry(Dimension.AREAL_MASS, List.of(always("oz/ft2"))),
            Map.entry(Dimension.DENSITY, List.of(new Step(800, "lb/ft3"), always("lb/gal"))),
            Map.entry(Dimension.LINEAR_MASS, List.of(always("lb/ft"))),
            Map.entry(Dimension.AREA_RATE, List.of(always("ft2/h"))),
            Map.entry(Dimension.COVERAGE_MASS, List.of(always("ft2/lb"))),
            Map.entry(Dimension.COVERAGE_VOLUME, List.of(always("ft2/gal"))),
            Map.entry(Dimension.MASS_RATE, List.of(always("lb/h"))),
            Map.entry(Dimension.VOLUME_RATE, List.of(always("cfm"))),
            Map.entry(Dimension.SPEED, List.of(always("ft/s"))),
            Map.entry(Dimension.SPECIFIC_VOLUME, List.of(always("floz/lb"))));

    private static final Map<Dimension, List<Step>> BOTH = Map.of(
            Dimension.TIME, List.of(new Step(119.5, "s"), new Step(7170, "min"), new Step(172_800, "h"), always("d")),
            Dimension.ANGLE, List.of(always("deg")),
            Dimension.RATIO, List.of(new Step(2, "%")));

    private final Map<Dimension, List<Step>> steps;

    private Display(Map<Dimension, List<Step>> steps) {
        this.steps = steps;
    }

    /** The display in a family of units. */
    public static Display of(UnitSystem system) {
        return new Display(system == UnitSystem.US ? US : METRIC);
    }

    /**
     * A figure with its unit. A dimension the trade has no unit for is shown in SI with its UCUM code. A ratio below 2 is
     * shown as a percentage, a larger one, such as the 32 of a foam's expansion, as a bare number.
     *
     * @param si        the figure in SI, temperatures in degC; what is not finite is shown as {@code "unknown"}
     * @param dimension what it measures
     */
    public String format(double si, Dimension dimension) {
        if (!Double.isFinite(si)) {
            return "unknown";
        }
        return unitFor(si, dimension).map(unit -> in(si, unit))
                .orElseGet(() -> dimension.equals(Dimension.RATIO) ? number(si) : number(si) + " " + dimension.ucum());
    }

    /** A figure in a unit of the caller's choice: {@code in(0.0002, um)} is {@code "200 um"}. */
    public String in(double si, Unit unit) {
        return number(unit.fromSi(si)) + " " + unit.symbol();
    }

    /** The unit a figure of that size is shown in; empty if the trade has none for the dimension, or none is shown. */
    public Optional<Unit> unitFor(double si, Dimension dimension) {
        List<Step> choice = steps.getOrDefault(dimension, BOTH.getOrDefault(dimension, List.of()));
        double size = Math.abs(si);
        return choice.stream().filter(step -> size < step.below()).findFirst().flatMap(step -> Units.find(step.unit()));
    }

    /** A bare number to three figures, whole numbers in full, without an exponent unless it is beyond a billion either way. */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            return "unknown";
        }
        BigDecimal exact = new BigDecimal(value);
        int wholeDigits = exact.precision() - exact.scale();
        BigDecimal rounded = wholeDigits >= FIGURES ? exact.setScale(0, RoundingMode.HALF_UP)
                : exact.round(new MathContext(FIGURES, RoundingMode.HALF_UP));
        if (rounded.signum() == 0) {
            return "0";
        }
        boolean extreme = Math.abs(value) >= 1e9 || Math.abs(value) < 1e-9;
        BigDecimal shown = extreme ? exact.round(new MathContext(FIGURES, RoundingMode.HALF_UP)) : rounded;
        return extreme ? shown.stripTrailingZeros().toString() : shown.stripTrailingZeros().toPlainString();
    }

    private static Step always(String unit) {
        return new Step(Double.POSITIVE_INFINITY, unit);
    }
}
