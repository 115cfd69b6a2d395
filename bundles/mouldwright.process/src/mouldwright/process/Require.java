package mouldwright.process;

/** Refuses figures that cannot be, at the door. */
final class Require {

    private Require() { }

    static double positive(double value, String what) {
        if (!(value > 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(what + " must be above zero: " + value);
        }
        return value;
    }

    static double notNegative(double value, String what) {
        if (!(value >= 0 && Double.isFinite(value))) {
            throw new IllegalArgumentException(what + " must not be below zero: " + value);
        }
        return value;
    }

    static double finite(double value, String what) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(what + " must be a number: " + value);
        }
        return value;
    }

    /** Above 0 and at most 1. */
    static double share(double value, String what) {
        if (!(value > 0 && value <= 1)) {
            throw new IllegalArgumentException(what + " must be above 0 and at most 1: " + value);
        }
        return value;
    }

    /** Between 0 and 1, neither included. */
    static double fraction(double value, String what) {
        if (!(value > 0 && value < 1)) {
            throw new IllegalArgumentException(what + " must be between 0 and 1: " + value);
        }
        return value;
    }
}
