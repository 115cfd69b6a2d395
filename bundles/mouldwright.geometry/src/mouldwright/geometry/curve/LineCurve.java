package mouldwright.geometry.curve;

/** A straight piece, or a single point when both its ends are one; parameter 0 to 1. */
public record LineCurve(double fromY, double fromZ, double toY, double toZ) implements PlaneCurve {
    @Override public double[] breaks() {
        return new double[] { 0, 1 };
    }

    @Override public void at(double t, double[] out) {
        out[2] = toY - fromY;
        out[3] = toZ - fromZ;
        out[0] = t == 1 ? toY : fromY + t * out[2];
        out[1] = t == 1 ? toZ : fromZ + t * out[3];
        out[4] = out[5] = 0;
    }
}
