package mouldwright.geometry.curve;

/** A curve in a section plane by a parameter of its own. */
public interface PlaneCurve {
    /** Parameters where the curve begins, where its smoothness drops, and where it ends; increasing. */
    double[] breaks();

    /** The curve at a parameter.
     *  @param t   parameter
     *  @param out filled with y, z, their first and their second derivatives */
    void at(double t, double[] out);
}
