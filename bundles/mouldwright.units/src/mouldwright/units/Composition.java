package mouldwright.units;

import java.util.Optional;

/** Powers and quotients of simple units. */
final class Composition {

    /** Whole numbers up to here are exact in a double. */
    private static final double EXACT = 0x1p53;

    private Composition() { }

    /** A length or a time to the power of 2 or 3; no other unit has powers in this trade. */
    static Optional<Unit> power(Unit unit, int exponent) {
        if (!unit.dimension().equals(Dimension.LENGTH) && !unit.dimension().equals(Dimension.TIME)) {
            return Optional.empty();
        }
        return Optional.of(reduced(unit.symbol() + exponent, unit.dimension().power(exponent),
                Math.pow(unit.multiplier(), exponent), Math.pow(unit.divisor(), exponent), unit.ucum() + exponent));
    }

    /** A quotient; temperatures, which are readings, and shares such as percent have none. */
    static Optional<Unit> quotient(Unit above, Unit below) {
        if (!divisible(above) || !divisible(below)) {
            return Optional.empty();
        }
        return Optional.of(reduced(above.symbol() + "/" + below.symbol(), above.dimension().over(below.dimension()),
                above.multiplier() * below.divisor(), above.divisor() * below.multiplier(),
                above.ucum() + "/" + below.ucum()));
    }

    private static boolean divisible(Unit unit) {
        boolean share = unit.dimension().equals(Dimension.RATIO) && !unit.symbol().contains("/");
        return unit.dimension().temperature() == 0 && !share;
    }

    /** Cancels what both parts of the factor share, so that 1 kg/l is 1000/1 and not a million over a thousand. */
    private static Unit reduced(String symbol, Dimension dimension, double multiplier, double divisor, String ucum) {
        double common = common(multiplier, divisor);
        return new Unit(symbol, dimension, multiplier / common, divisor / common, 0, ucum);
    }

    private static double common(double a, double b) {
        if (a > EXACT || b > EXACT || a != Math.rint(a) || b != Math.rint(b)) {
            return 1;
        }
        double larger = a;
        double smaller = b;
        while (smaller != 0) {
            double rest = larger % smaller;
            larger = smaller;
            smaller = rest;
        }
        return larger;
    }
}
