package mouldwright.plan.ledger;

import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/** Figures in words for derivations, in metric trade units; a plain number stays a plain number. */
public final class Figures {

    private static final Display METRIC = Display.of(UnitSystem.METRIC);

    private Figures() { }

    /** A figure with its unit; ratios up to 1 as a percentage, larger ones as a plain number.
     *  @param si in SI */
    public static String words(double si, Dimension dimension) {
        if (dimension.equals(Dimension.RATIO) && Math.abs(si) > 1)
            return Display.number(si);
        return METRIC.format(si, dimension);
    }
}
