package mouldwright.plan.stage;

import java.util.Optional;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Given;

/** Looks at stated figures before a stage reckons with them, so that a nonsensical one becomes a fault with its place and
 *  never an exception. */
final class Guard {

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
        return hold(given, given.low() > 0, "above zero", 0);
    }

    /** Above zero, where it is stated. */
    Guard positive(Optional<Given> given) {
        given.ifPresent(this::positive);
        return this;
    }

    /** Zero or more over its whole range. */
    Guard notNegative(Given given) {
        return hold(given, given.low() >= 0, "zero or more", 0);
    }

    /** Zero or more, where it is stated. */
    Guard notNegative(Optional<Given> given) {
        given.ifPresent(this::notNegative);
        return this;
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

    /** Above a bound over its whole range. */
    Guard above(Given given, double bound) {
        return hold(given, given.low() > bound, "above " + bound, bound);
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
