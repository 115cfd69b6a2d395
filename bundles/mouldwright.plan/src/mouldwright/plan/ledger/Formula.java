package mouldwright.plan.ledger;

/** A pure function of SI figures. It must answer for any figures within the ranges of its inputs, since it is asked
 *  again for every draw, and must answer the same to the same figures. */
@FunctionalInterface
public interface Formula {
    /** Reckons.
     *  @param v the inputs in the order they were named; not to be kept or changed
     *  @return SI */
    double of(double[] v);
}
