package mouldwright.check;

import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.OrderEntry;

/** MW805: a cost that leaves something out looks like a low one. Where nothing at all is priced, no cost is asked for. */
final class PriceMissing implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        List<String> priceless = plan.orders().stream().filter(order -> order.stocked() && order.packing().isEmpty() && order.amount() > 0).map(OrderEntry::name).toList();
        boolean priced = plan.orders().stream().anyMatch(order -> order.packing().isPresent());
        if (priced && !priceless.isEmpty())
            out.add(new Finding("MW805", Severity.INFO, plan.spec().origin(), String.join(", ", priceless) + (priceless.size() == 1 ? " is" : " are")
                    + " ordered without a pack and its price: the cost leaves " + (priceless.size() == 1 ? "it" : "them") + " out",
                    "state `pack` and price in the library"));
    }
}
