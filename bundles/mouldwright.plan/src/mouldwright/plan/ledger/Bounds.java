package mouldwright.plan.ledger;

/** Low, likely and high of every node, and the direction in which each uncertain figure moves it.
 *  @param signs one row for each uncertain figure, one sign for each node */
record Bounds(double[] low, double[] likely, double[] high, byte[][] signs) {

    int sign(int node, int uncertain) {
        return signs[uncertain][node];
    }
}
