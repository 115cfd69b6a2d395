package mouldwright.plan.ledger;

import java.util.Objects;

/** A figure measured on the geometry.
 *  @param value  SI
 *  @param error  estimate of its error, SI, not negative
 *  @param how    method, in words */
public record Measurement(double value, double error, String how) {
    /** Refuses figures that are not numbers. */
    public Measurement {
        Objects.requireNonNull(how, "how");
        if (!Double.isFinite(value) || !(error >= 0))
            throw new IllegalArgumentException("not a measure: " + value + " within " + error);
    }
}
