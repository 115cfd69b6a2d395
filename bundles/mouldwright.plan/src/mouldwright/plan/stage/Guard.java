package mouldwright.plan.stage;

import java.util.Optional;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Given;

/** Looks at stated figures before a stage reckons with them, so that a nonsensical one becomes a fault with its place and
 *  never an exception. */
final class Guard {

    /** Smallest size looked at, m. */
    static final double SMALLEST = 1e-6;
    /** Largest size looked at, m. */
    static final double LARGEST = 1000;

    /** Bounds of any figure in SI, far outside what a workshop meets, within which products stay numbers. */
    private static final double LEAST = 1e-12;
    private static final double MOST = 1e12;

    private final Measurements measurements;
    private boolean clear = true;

    Guard(Measurements measurements) {
        this.measurements = measurements;
    }

    /** @return whether every figure looked at made sense */
    boolean clear() {
        return clear;
    }

    /** Above zero over its whole range. */
    Guard positive(Given given) {
        return hold(given, given.low() >= LEAST && given.high() <= MOST, "above zero, and a figure met in a workshop",
                given.low() < LEAST ? 0 : MOST);
    }

    /** Above zero, where it is stated. */
    Guard positive(Optional<Given> given) {
        given.ifPresent(this::positive);
        return this;
    }

    /** Zero or more over its whole range. */
    Guard notNegative(Given given) {
        return hold(given, given.low() >= 0 && given.high() <= MOST, "zero or more, and a figure met in a workshop",
                given.low() < 0 ? 0 : MOST);
    }

    /** Zero or more, where it is stated. */
    Guard notNegative(Optional<Given> given) {
        given.ifPresent(this::notNegative);
        return this;
    }

    /** A size a plug's parts may have: a thousandth of a millimetre to a kilometre. */
    Guard size(Given given) {
        positive(given);
        return given.low() > 0 ? hold(given, given.low() >= SMALLEST && given.high() <= LARGEST,
                "a size that can be built", given.low() < SMALLEST ? SMALLEST : LARGEST) : this;
    }

    /** The same, or nothing at all. */
    Guard sizeOrNone(Given given) {
        return given.low() == 0 && given.high() == 0 ? this : notNegative(given).hold(given, given.high() <= LARGEST,
                "a size that can be built", LARGEST);
    }

    /** Between 0 and 1, neither included. */
    Guard fraction(Given given) {
        return hold(given, given.low() > 0 && given.high() < 1, "above 0 % and under 100 %", 1);
    }

    /** Between 0 and 1, where it is stated. */
    Guard fraction(Optional<Given> given) {
        given.ifPresent(this::fraction);
        return this;
    }

    /** From 0 to below a bound. */
    Guard below(Given given, double bound) {
        return hold(given, given.low() >= 0 && given.high() < bound, "zero or more and under " + bound, bound);
    }

    /** No more than another figure. */
    Guard atMost(Given given, Given other) {
        return hold(given, given.likely() <= other.likely(), "no more than " + other.name(), other.likely());
    }

    /** Above a bound over its whole range. */
    Guard above(Given given, double bound) {
        return hold(given, given.low() > bound && given.high() <= MOST, "above " + bound + ", and a figure met in a workshop", bound);
    }

    private Guard hold(Given given, boolean holds, String wanted, double limit) {
        if (!holds) {
            clear = false;
            double figure = given.low() <= limit && limit == 0 ? given.low() : given.likely();
            measurements.report(PlanFault.of(PlanFault.Kind.FIGURE, given.origin(), given.name(),
                    given.name() + " must be " + wanted, "correct the figure")
                    .at(figure, given.dimension()).against(limit, given.dimension()));
        }
        return this;
    }
}
