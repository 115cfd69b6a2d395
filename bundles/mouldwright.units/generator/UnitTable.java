import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import javax.measure.IncommensurableException;
import javax.measure.Unit;
import javax.measure.UnitConverter;

import si.uom.NonSI;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.Units;

/**
 * Writes the table of simple units as Java source, at build time, from the JSR 385 libraries; so the numbers are theirs
 * and starting the program costs nothing.
 *
 * <p>Arguments: the source folder to write into. Run as a single source file with the libraries in the class path.
 */
public final class UnitTable {

    /** One spelling: what it measures (a constant of Dimension), the library's unit, its SI unit, its UCUM code. */
    private record Row(String symbol, String dimension, Unit<?> unit, Unit<?> si, String ucum) { }

    private static final Unit<?> M = Units.METRE;
    private static final Unit<?> M3 = Units.CUBIC_METRE;
    private static final Unit<?> KG = Units.KILOGRAM;
    private static final Unit<?> S = Units.SECOND;
    private static final Unit<?> CUBIC_FOOT = USCustomary.FOOT.pow(3);

    /** Metric before US, and within each in the order a completion should show them. */
    private static final List<Row> ROWS = List.of(
            new Row("mm", "LENGTH", MILLI(Units.METRE), M, "mm"),
            new Row("cm", "LENGTH", CENTI(Units.METRE), M, "cm"),
            new Row("m", "LENGTH", M, M, "m"),
            new Row("um", "LENGTH", MICRO(Units.METRE), M, "um"),
            new Row("in", "LENGTH", USCustomary.INCH, M, "[in_i]"),
            new Row("ft", "LENGTH", USCustomary.FOOT, M, "[ft_i]"),
            new Row("yd", "LENGTH", USCustomary.YARD, M, "[yd_i]"),
            new Row("mil", "LENGTH", USCustomary.INCH.divide(1000), M, "[mil_i]"),
            new Row("thou", "LENGTH", USCustomary.INCH.divide(1000), M, "[mil_i]"),
            new Row("l", "VOLUME", Units.LITRE, M3, "l"),
            new Row("ml", "VOLUME", Units.LITRE.divide(1000), M3, "ml"),
            new Row("cl", "VOLUME", Units.LITRE.divide(100), M3, "cl"),
            new Row("gal", "VOLUME", USCustomary.GALLON_LIQUID, M3, "[gal_us]"),
            new Row("qt", "VOLUME", USCustomary.GALLON_LIQUID.divide(4), M3, "[qt_us]"),
            new Row("pt", "VOLUME", USCustomary.GALLON_LIQUID.divide(8), M3, "[pt_us]"),
            new Row("floz", "VOLUME", USCustomary.GALLON_LIQUID.divide(128), M3, "[foz_us]"),
            new Row("galUK", "VOLUME", Imperial.GALLON_UK, M3, "[gal_br]"),
            new Row("kg", "MASS", KG, KG, "kg"),
            new Row("g", "MASS", Units.GRAM, KG, "g"),
            new Row("mg", "MASS", MILLI(Units.GRAM), KG, "mg"),
            new Row("t", "MASS", NonSI.TONNE, KG, "t"),
            new Row("lb", "MASS", USCustomary.POUND, KG, "[lb_av]"),
            new Row("oz", "MASS", USCustomary.OUNCE, KG, "[oz_av]"),
            new Row("s", "TIME", S, S, "s"),
            new Row("min", "TIME", Units.MINUTE, S, "min"),
            new Row("h", "TIME", Units.HOUR, S, "h"),
            new Row("d", "TIME", Units.DAY, S, "d"),
            new Row("week", "TIME", Units.WEEK, S, "wk"),
            new Row("degC", "TEMPERATURE", Units.CELSIUS, Units.CELSIUS, "Cel"),
            new Row("degF", "TEMPERATURE", USCustomary.FAHRENHEIT, Units.CELSIUS, "[degF]"),
            new Row("K", "TEMPERATURE", Units.KELVIN, Units.CELSIUS, "K"),
            new Row("deg", "ANGLE", NonSI.DEGREE_ANGLE, Units.RADIAN, "deg"),
            new Row("rad", "ANGLE", Units.RADIAN, Units.RADIAN, "rad"),
            new Row("%", "RATIO", Units.PERCENT, AbstractUnit.ONE, "%"),
            new Row("ppm", "RATIO", AbstractUnit.ONE.divide(1_000_000), AbstractUnit.ONE, "[ppm]"),
            new Row("cfm", "VOLUME_RATE", CUBIC_FOOT.divide(Units.MINUTE), M3.divide(S), "[cft_i]/min"));

    private UnitTable() { }

    public static void main(String[] arguments) throws IOException, IncommensurableException {
        StringBuilder rows = new StringBuilder();
        for (Row row : ROWS) {
            rows.append(rows.isEmpty() ? "" : ",\n").append(line(row));
        }
        String source = """
                package mouldwright.units;

                import java.util.List;

                /** The simple units, generated from the JSR 385 libraries when the bundle is built. */
                final class UnitTable {

                    private UnitTable() { }

                    static List<Unit> rows() {
                        return List.of(
                %s);
                    }
                }
                """.formatted(rows);
        Path file = Path.of(arguments[0], "mouldwright", "units", "UnitTable.java");
        Files.createDirectories(file.getParent());
        // An unchanged file keeps its date, so that nothing is compiled anew for it.
        if (!Files.exists(file) || !Files.readString(file, StandardCharsets.UTF_8).equals(source)) {
            Files.writeString(file, source, StandardCharsets.UTF_8);
        }
    }

    private static String line(Row row) throws IncommensurableException {
        UnitConverter toSi = row.unit().getConverterToAny(row.si());
        Number atZero = toSi.convert((Number) 0);
        Factor factor = decimal(atZero).signum() == 0 ? factor(toSi.convert((Number) 1), toSi)
                : fraction(decimal(toSi.convert((Number) 1)).subtract(decimal(atZero)));
        return "                new Unit(\"%s\", Dimension.%s, %s, %s, %s, \"%s\")".formatted(row.symbol(), row.dimension(),
                literal(factor.multiplier()), literal(factor.divisor()), literal(shift(decimal(atZero), factor)), row.ucum());
    }

    /** A factor to SI as multiplier over divisor. */
    private record Factor(BigDecimal multiplier, BigDecimal divisor) { }

    private static Factor factor(Number one, UnitConverter toSi) {
        if (one instanceof RationalNumber ratio) {
            return new Factor(new BigDecimal(ratio.getDividend()), new BigDecimal(ratio.getDivisor()));
        }
        if (one instanceof Integer || one instanceof Long || one instanceof BigInteger) {
            return new Factor(new BigDecimal(one.toString()), BigDecimal.ONE);
        }
        // What is left is the degree: half a turn is pi, so pi over 180 rounds once only.
        BigDecimal halfTurn = decimal(toSi.convert((Number) 180)).round(MathContext.DECIMAL64);
        return new Factor(halfTurn, BigDecimal.valueOf(180));
    }

    /** The fraction with the smallest divisor that a long decimal stands for; the library hands 5/9 out as one. */
    private static Factor fraction(BigDecimal decimal) {
        BigDecimal near = new BigDecimal("1e-20");
        for (int divisor = 1; divisor <= 1000; divisor++) {
            BigDecimal multiplier = decimal.multiply(BigDecimal.valueOf(divisor));
            BigDecimal whole = multiplier.setScale(0, RoundingMode.HALF_EVEN);
            if (multiplier.subtract(whole).abs().compareTo(near) < 0) {
                return new Factor(whole, BigDecimal.valueOf(divisor));
            }
        }
        throw new IllegalStateException("no small fraction: " + decimal);
    }

    /** What is added to a reading before the factor: the SI figure of zero, taken back through the factor. */
    private static BigDecimal shift(BigDecimal atZero, Factor factor) {
        return atZero.multiply(factor.divisor()).divide(factor.multiplier(), MathContext.DECIMAL128)
                .round(MathContext.DECIMAL64).stripTrailingZeros();
    }

    private static String literal(BigDecimal number) {
        String plain = number.toPlainString();
        return plain.contains(".") ? plain : plain + ".0";
    }

    private static BigDecimal decimal(Number number) {
        return number instanceof RationalNumber ratio ? ratio.bigDecimalValue() : new BigDecimal(number.toString());
    }
}
