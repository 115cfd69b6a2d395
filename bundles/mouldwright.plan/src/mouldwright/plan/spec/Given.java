package mouldwright.plan.spec;

import java.util.Objects;
import mouldwright.units.Dimension;

/** A figure somebody stated, or a default: what the engine starts from.
 *  A figure without a range has {@code low == likely == high}, and {@link #ranged()} says so.
 *
 *  @param name       what it is in the words of the trade, such as "expansion"
 *  @param dimension  its dimension
 *  @param low        least value expected, SI
 *  @param likely     value to work with, SI
 *  @param high       greatest value expected, SI
 *  @param origin     where it came from */
public record Given(String name, Dimension dimension, double low, double likely, double high, Origin origin) {

    /** Refuses figures that are not numbers and ranges that do not hold their likely value. */
    public Given {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(dimension, "dimension");
        Objects.requireNonNull(origin, "origin");
        if (!(Double.isFinite(low) && Double.isFinite(likely) && Double.isFinite(high)))
            throw new IllegalArgumentException(name + " is not a number");
        if (low > likely || likely > high)
            throw new IllegalArgumentException(name + ": " + likely + " is outside " + low + " to " + high);
    }

    /** A figure without a range.
     *  @param value SI */
    public static Given of(String name, Dimension dimension, double value, Origin origin) {
        return new Given(name, dimension, value, value, value, origin);
    }

    /** A figure that nobody stated.
     *  @param value  SI
     *  @param reason why it is this and no other */
    static Given byDefault(String name, Dimension dimension, double value, String reason) {
        return of(name, dimension, value, new Origin.Assumed(reason));
    }

    /** @return true where a low and a high were stated that differ */
    public boolean ranged() {
        return low < high;
    }

    /** @return true where this is a default rather than something stated */
    public boolean assumed() {
        return origin instanceof Origin.Assumed;
    }
}
