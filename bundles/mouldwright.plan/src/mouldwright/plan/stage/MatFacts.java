package mouldwright.plan.stage;

import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.LaminateDefaults;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Resin;

/** What a mat or a resin states, or the defaults. */
final class MatFacts {

    private MatFacts() { }

    static Given rollWidth(Mat mat) {
        return mat.rollWidth().orElseGet(LaminateDefaults::rollWidth);
    }

    /** Length of a roll, m; infinite where it is not stated. */
    static double rollLength(Mat mat) {
        return mat.rollLength().map(Given::likely).orElse(Double.POSITIVE_INFINITY);
    }

    static Given layRate(Mat mat) {
        return mat.lay().orElseGet(LaminateDefaults::layRate);
    }

    static Given pot(Resin resin) {
        return resin.pot().orElseGet(LaminateDefaults::resinPot);
    }

    static Given hardenerDensity(Resin resin) {
        return resin.hardener().map(hardener -> hardener.density()).orElseGet(LaminateDefaults::hardenerDensity);
    }
}
