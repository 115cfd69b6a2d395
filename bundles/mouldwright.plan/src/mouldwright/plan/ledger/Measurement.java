package mouldwright.plan.ledger;

import java.util.List;
import java.util.Objects;

/** A figure measured on the geometry.
 *  @param value   SI
 *  @param error   estimate of its error, SI, not negative
 *  @param how     method, in words
 *  @param grounds what it rests on; a ledger puts what draws the shape where a stage names nothing nearer */
public record Measurement(double value, double error, String how, List<Ground> grounds) {
    /** Refuses figures that are not numbers. */
    public Measurement {
        Objects.requireNonNull(how, "how");
        grounds = List.copyOf(grounds);
        if (!Double.isFinite(value) || !(error >= 0))
            throw new IllegalArgumentException("not a measure: " + value + " within " + error);
    }

    /** A measure that rests on the shape as a whole. */
    public Measurement(double value, double error, String how) {
        this(value, error, how, List.of());
    }

    /** The same measure with what it rests on. */
    public Measurement on(List<Ground> rests) {
        return new Measurement(value, error, how, rests);
    }
}
