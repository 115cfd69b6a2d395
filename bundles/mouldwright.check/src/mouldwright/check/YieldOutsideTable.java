package mouldwright.check;

import java.util.DoubleSummaryStatistics;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Given;
import mouldwright.units.Dimension;

/** MW318: at a temperature its table does not reach, what a foam yields is a guess: the nearest row is taken. */
final class YieldOutsideTable implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().fill().ifPresent(fill -> examine(fill, plan.spec().shop().temperature(), out));
    }

    /** A shop the foam is not made for is told by itself. */
    private static void examine(Fill fill, Given shop, Findings out) {
        Foam foam = fill.foam();
        boolean made = shop.likely() >= foam.coldest().map(Given::likely).orElse(Double.NEGATIVE_INFINITY)
                && shop.likely() <= foam.warmest().map(Given::likely).orElse(Double.POSITIVE_INFINITY);
        if (!made || foam.yield().isEmpty())
            return;
        DoubleSummaryStatistics rows = foam.yield().stream().mapToDouble(Foam.YieldRow::temperature).summaryStatistics();
        if (shop.likely() >= rows.getMin() && shop.likely() <= rows.getMax())
            return;
        boolean cold = shop.likely() < rows.getMin();
        out.warn("MW318", shop.assumed() ? fill.origin() : shop.origin(), "shop at " + Findings.figure(shop.likely(), Dimension.TEMPERATURE) + ", the yield table of " + foam.name()
                + (cold ? " begins at " : " ends at ") + Findings.figure(cold ? rows.getMin() : rows.getMax(), Dimension.TEMPERATURE) + ": the yield of that row is taken"
                + (cold ? ", and the foam will rise less" : ""), "add rows from the supplier's sheet, or bring the shop to a temperature it has");
    }
}
