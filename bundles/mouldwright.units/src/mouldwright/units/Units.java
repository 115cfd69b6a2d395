package mouldwright.units;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The spellings a spec may use for units.
 *
 * <p>A unit is a simple one ({@code mm}, {@code floz}), a simple length or time with {@code 2} or {@code 3} behind it
 * ({@code ft2}), or a quotient of up to three such parts ({@code oz/ft2}, {@code kg/m2/h}). Units are no keywords of the
 * language; a name is one only where it stands behind a number. {@code oz} is a mass, {@code floz} a volume, {@code gal}
 * the US gallon and {@code galUK} the imperial one. Both code points of mu are read, and so are the raised 2 and 3.
 */
public final class Units {

    private static final int PARTS_AT_MOST = 3;

    /** Quotients the trade uses, for completion and suggestions; the language understands any other as well. */
    private static final List<String> QUOTIENTS = List.of(
            "g/m2", "kg/m2", "oz/ft2", "oz/yd2", "lb/ft2",
            "kg/m3", "g/cm3", "kg/l", "g/l", "g/ml", "lb/ft3", "lb/gal", "oz/in3",
            "kg/m", "g/m", "lb/ft",
            "m2/h", "ft2/h", "m2/min",
            "m2/kg", "ft2/lb", "m2/l", "ft2/gal",
            "kg/h", "kg/min", "lb/h", "m3/h", "m3/s", "l/min",
            "m/s", "ml/kg", "l/kg");

    private static final Map<String, Unit> SIMPLE = simple();
    private static final List<String> OFFERED = offered();

    private Units() { }

    private static Map<String, Unit> simple() {
        Map<String, Unit> units = new LinkedHashMap<>();
        for (Unit unit : UnitTable.rows()) {
            units.put(unit.symbol(), unit);
        }
        return units;
    }

    private static List<String> offered() {
        Set<String> spellings = new LinkedHashSet<>();
        for (Unit unit : SIMPLE.values()) {
            spellings.add(unit.symbol());
            if (unit.dimension().equals(Dimension.LENGTH) && !unit.symbol().equals("um") && !unit.symbol().equals("mil")
                    && !unit.symbol().equals("thou")) {
                spellings.add(unit.symbol() + "2");
                spellings.add(unit.symbol() + "3");
            }
        }
        spellings.addAll(QUOTIENTS);
        return List.copyOf(spellings);
    }

    /** The unit of a spelling; empty if it is none. The unit's symbol is the plain spelling: {@code "°C"} finds {@code degC}. */
    public static Optional<Unit> find(String spelling) {
        String plain = plain(spelling);
        Unit simple = SIMPLE.get(plain);
        if (simple != null) {
            return Optional.of(simple);
        }
        String[] parts = plain.split("/", -1);
        if (parts.length > PARTS_AT_MOST) {
            return Optional.empty();
        }
        Optional<Unit> unit = power(parts[0]);
        for (int i = 1; i < parts.length && unit.isPresent(); i++) {
            Optional<Unit> below = power(parts[i]);
            Unit above = unit.get();
            unit = below.flatMap(b -> Composition.quotient(above, b));
        }
        return unit;
    }

    /** Whether a spelling is a unit. */
    public static boolean isUnit(String spelling) {
        return find(spelling).isPresent();
    }

    /**
     * A reading in SI: metres, kilograms, seconds, degC, radians, fractions.
     *
     * @throws NotANumber if the result is not a finite number
     */
    public static double toSi(double value, Unit unit) {
        return unit.toSi(value);
    }

    /**
     * A difference of two readings in SI.
     *
     * @throws NotANumber if the result is not a finite number
     */
    public static double toSiDifference(double value, Unit unit) {
        return unit.toSiDifference(value);
    }

    /** The spellings a completion offers for a dimension, metric before US; empty if the trade has none. */
    public static List<String> unitsOf(Dimension dimension) {
        return OFFERED.stream().filter(s -> find(s).orElseThrow().dimension().equals(dimension)).toList();
    }

    /** Every simple unit, in the order of the table. */
    public static List<Unit> simpleUnits() {
        return List.copyOf(SIMPLE.values());
    }

    /**
     * The units most like a word that is none, nearest first, three at most; empty if nothing is near. A difference in
     * case counts least ({@code KG} is {@code kg}).
     */
    public static List<String> suggest(String word) {
        String plain = plain(word);
        if (plain.equals("C") || plain.equals("F")) {
            return List.of("deg" + plain);
        }
        int allowed = 2 * Math.max(1, plain.length() / 3);
        record Near(String spelling, int distance) { }
        List<Near> near = new ArrayList<>();
        for (String spelling : OFFERED) {
            int distance = SpellingDistance.between(plain, spelling);
            if (distance <= allowed && distance > 0) {
                near.add(new Near(spelling, distance));
            }
        }
        near.sort(Comparator.comparingInt(Near::distance));
        return near.stream().limit(3).map(Near::spelling).toList();
    }

    private static Optional<Unit> power(String part) {
        Unit simple = SIMPLE.get(part);
        if (simple != null) {
            return Optional.of(simple);
        }
        int exponent = part.endsWith("2") ? 2 : part.endsWith("3") ? 3 : 0;
        if (exponent == 0) {
            return Optional.empty();
        }
        return Optional.ofNullable(SIMPLE.get(part.substring(0, part.length() - 1)))
                .flatMap(unit -> Composition.power(unit, exponent));
    }

    /** One code point for mu, the plain degree units, and figures for the raised ones. */
    private static String plain(String spelling) {
        return spelling.replace('\u00b5', 'u').replace('\u03bc', 'u')
                .replace("\u00b0C", "degC").replace("\u00b0F", "degF").replace('\u00b2', '2').replace('\u00b3', '3');
    }
}
