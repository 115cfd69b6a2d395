package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Given;
import mouldwright.units.Dimension;

/** MW306: foam poured colder or warmer than its maker says rises less, or too fast to be poured. */
final class ShopOutsideFoam implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        Given shop = plan.spec().shop().temperature();
        plan.spec().fill().ifPresent(fill -> {
            double least = fill.foam().coldest().map(Given::likely).orElse(Double.NEGATIVE_INFINITY);
            double most = fill.foam().warmest().map(Given::likely).orElse(Double.POSITIVE_INFINITY);
            if (shop.likely() >= least && shop.likely() <= most)
                return;
            boolean cold = shop.likely() < least;
            out.warn("MW306", shop.assumed() ? fill.origin() : shop.origin(), "shop at " + Findings.figure(shop.likely(), Dimension.TEMPERATURE) + ", " + fill.foam().name() + " asks for "
                    + Findings.figure(cold ? least : most, Dimension.TEMPERATURE) + (cold ? " at least: it would rise less" : " at most: it would cream too soon"),
                    cold ? "warm the shop and the liquids" : "pour at a cooler hour");
        });
    }
}
