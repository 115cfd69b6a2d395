package mouldwright.geometry.section;

import mouldwright.geometry.curve.PlaneCurve;

/** A curve with its two coordinates exchanged. */
record ExchangedCurve(PlaneCurve of) implements PlaneCurve {
    @Override public double[] breaks() {
        return of.breaks();
    }

    @Override public void at(double t, double[] out) {
        of.at(t, out);
        for (int i = 0; i < 6; i += 2) {
            double y = out[i];
            out[i] = out[i + 1];
            out[i + 1] = y;
        }
    }
}
