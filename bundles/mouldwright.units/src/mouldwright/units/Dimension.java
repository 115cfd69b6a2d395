package mouldwright.units;

import java.util.Map;

/**
 * What kind of thing a number measures: whole exponents over length, mass, time, temperature and angle.
 *
 * <p>Angle has an exponent of its own, though SI calls it dimensionless, so that {@code 2 deg} is never taken for
 * {@code 2 %}. Money is not here: an amount of money is a plain number beside a currency. A volume per area is a length
 * (1 l/m2 is a film of 1 mm) and an area per volume its inverse, as the arithmetic has it.
 *
 * @param length      exponent of the metre
 * @param mass        exponent of the kilogram
 * @param time        exponent of the second
 * @param temperature exponent of the degree
 * @param angle       exponent of the radian
 */
public record Dimension(int length, int mass, int time, int temperature, int angle) {

    /** A plain number or a percentage. */
    public static final Dimension RATIO = new Dimension(0, 0, 0, 0, 0);
    /** Metre. */
    public static final Dimension LENGTH = new Dimension(1, 0, 0, 0, 0);
    /** Square metre. */
    public static final Dimension AREA = new Dimension(2, 0, 0, 0, 0);
    /** Cubic metre. */
    public static final Dimension VOLUME = new Dimension(3, 0, 0, 0, 0);
    /** Kilogram. */
    public static final Dimension MASS = new Dimension(0, 1, 0, 0, 0);
    /** Second. */
    public static final Dimension TIME = new Dimension(0, 0, 1, 0, 0);
    /** A temperature read off a thermometer, degC inside. */
    public static final Dimension TEMPERATURE = new Dimension(0, 0, 0, 1, 0);
    /** Radian. */
    public static final Dimension ANGLE = new Dimension(0, 0, 0, 0, 1);
    /** Mat and cloth, kg/m2. */
    public static final Dimension AREAL_MASS = new Dimension(-2, 1, 0, 0, 0);
    /** kg/m3. */
    public static final Dimension DENSITY = new Dimension(-3, 1, 0, 0, 0);
    /** Bar and stringer, kg/m. */
    public static final Dimension LINEAR_MASS = new Dimension(-1, 1, 0, 0, 0);
    /** Carving, laying up and sanding, m2/s. */
    public static final Dimension AREA_RATE = new Dimension(2, 0, -1, 0, 0);
    /** Spread of a coating by mass, m2/kg. */
    public static final Dimension COVERAGE_MASS = new Dimension(2, -1, 0, 0, 0);
    /** Spread of a coating by volume, m2/m3, which is one over a film thickness. */
    public static final Dimension COVERAGE_VOLUME = new Dimension(-1, 0, 0, 0, 0);
    /** kg/s. */
    public static final Dimension MASS_RATE = new Dimension(0, 1, -1, 0, 0);
    /** Air flow, m3/s. */
    public static final Dimension VOLUME_RATE = new Dimension(3, 0, -1, 0, 0);
    /** m/s. */
    public static final Dimension SPEED = new Dimension(1, 0, -1, 0, 0);
    /** Volume per mass, m3/kg, such as millilitres of catalyst to the kilogram. */
    public static final Dimension SPECIFIC_VOLUME = new Dimension(3, -1, 0, 0, 0);

    private static final Map<Dimension, String> WORDS = Map.ofEntries(
            Map.entry(RATIO, "plain number"),
            Map.entry(LENGTH, "length"),
            Map.entry(AREA, "area"),
            Map.entry(VOLUME, "volume"),
            Map.entry(MASS, "mass"),
            Map.entry(TIME, "time"),
            Map.entry(TEMPERATURE, "temperature"),
            Map.entry(ANGLE, "angle"),
            Map.entry(AREAL_MASS, "mass per area"),
            Map.entry(DENSITY, "density"),
            Map.entry(LINEAR_MASS, "mass per length"),
            Map.entry(AREA_RATE, "area per time"),
            Map.entry(COVERAGE_MASS, "area per mass"),
            Map.entry(COVERAGE_VOLUME, "area per volume"),
            Map.entry(MASS_RATE, "mass per time"),
            Map.entry(VOLUME_RATE, "volume per time"),
            Map.entry(SPEED, "speed"),
            Map.entry(SPECIFIC_VOLUME, "volume per mass"));

    /** The trade's word without an article, {@code "mass per area"}; what has no word is named by its SI unit. */
    public String word() {
        String word = WORDS.get(this);
        return word != null ? word : "quantity in " + ucum();
    }

    /** The word with its article, {@code "a mass per area"}, {@code "an area"}. */
    public String withArticle() {
        String word = word();
        return ("aeio".indexOf(word.charAt(0)) >= 0 ? "an " : "a ") + word;
    }

    /**
     * The message for a number of the wrong dimension: {@code "length expected, 450 g/m2 is a mass per area"}.
     *
     * @param written the number as it stands in the text
     * @param actual  what it measures
     */
    public String expectedBut(String written, Dimension actual) {
        return word() + " expected, " + written + " is " + actual.withArticle();
    }

    /** The dimension of a product. */
    public Dimension times(Dimension other) {
        return new Dimension(length + other.length, mass + other.mass, time + other.time,
                temperature + other.temperature, angle + other.angle);
    }

    /** The dimension of a quotient. */
    public Dimension over(Dimension other) {
        return times(other.power(-1));
    }

    /** The dimension raised to a whole exponent. */
    public Dimension power(int exponent) {
        return new Dimension(length * exponent, mass * exponent, time * exponent,
                temperature * exponent, angle * exponent);
    }

    /** The UCUM code of the unit all inside code keeps this dimension in: {@code m}, {@code kg/m2}, {@code Cel}, {@code 1}. */
    public String ucum() {
        int[] exponents = {length, mass, time, temperature, angle};
        String[] codes = {"m", "kg", "s", "Cel", "rad"};
        StringBuilder above = new StringBuilder();
        StringBuilder below = new StringBuilder();
        for (int i = 0; i < codes.length; i++) {
            int exponent = Math.abs(exponents[i]);
            String code = codes[i] + (exponent > 1 ? exponent : "");
            if (exponents[i] > 0) {
                above.append(above.isEmpty() ? "" : ".").append(code);
            } else if (exponents[i] < 0) {
                below.append('/').append(code);
            }
        }
        return (above.isEmpty() ? (below.isEmpty() ? "1" : "") : above.toString()) + below;
    }
}
