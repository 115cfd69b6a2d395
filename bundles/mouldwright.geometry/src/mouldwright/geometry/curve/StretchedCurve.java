package mouldwright.geometry.curve;

/** A curve stretched along the axes and shifted. */
record StretchedCurve(PlaneCurve of, double breadth, double depth, double shiftY, double shiftZ) implements PlaneCurve {
    @Override public double[] breaks() {
        return of.breaks();
    }

    @Override public void at(double t, double[] out) {
        of.at(t, out);
        out[0] = breadth * out[0] + shiftY;
        out[1] = depth * out[1] + shiftZ;
        out[2] *= breadth;
        out[3] *= depth;
        out[4] *= breadth;
        out[5] *= depth;
    }
}
