package mouldwright.plan.draw;

/** What a figure came to over many draws. Each share is the least figure that no fewer than that share of the draws stay at or
 *  below, so it is a figure that was drawn: pots stay whole. SI.
 *  @param tenth  a tenth of the draws stay at or below this
 *  @param half   half of them do
 *  @param ninety nine in ten do: order this much to be 90 % sure */
public record Spread(double tenth, double half, double ninety) {

    /** Of drawn figures.
     *  @param sorted in rising order, one at least */
    static Spread of(double[] sorted) {
        return new Spread(at(sorted, 0.1), at(sorted, 0.5), at(sorted, 0.9));
    }

    /** The nearest rank: rank = ceil(share x n), counted from 1. */
    private static double at(double[] sorted, double share) {
        return sorted[(int) Math.ceil(share * sorted.length - 1e-9) - 1];
    }
}
