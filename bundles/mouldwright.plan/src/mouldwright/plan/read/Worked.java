package mouldwright.plan.read;

import mouldwright.units.Amount;
import mouldwright.units.Dimension;
import mouldwright.units.Unit;

/** What a small formula comes to: an amount, or a bare number whose unit its surroundings decide. In a sum or comparison
 *  with a length a bare number is a length in the plug's units; in a product it is a plain factor. */
sealed interface Worked {

    /** A number without a unit. */
    record Bare(double value) implements Worked { }

    /** A number with its dimension. */
    record Of(Amount amount) implements Worked { }

    /** The amount beside another, as a sum needs it.
     *  @param beside    the other
     *  @param bareUnit  the plug's unit of length */
    default Amount beside(Worked beside, Unit bareUnit) {
        return switch (this) {
            case Of(Amount amount) -> amount;
            case Bare(double value) -> beside instanceof Of(Amount other) && other.dimension().equals(Dimension.LENGTH)
                    ? Amount.of(value, bareUnit) : Amount.plain(value);
        };
    }

    /** The amount as a factor. */
    default Amount factor() {
        return switch (this) {
            case Of(Amount amount) -> amount;
            case Bare(double value) -> Amount.plain(value);
        };
    }

    /** @return whether both are bare, so that the result is bare too */
    static boolean bothBare(Worked a, Worked b) {
        return a instanceof Bare && b instanceof Bare;
    }
}
