package mouldwright.report;

import java.util.List;
import java.util.Set;
import mouldwright.plan.OrderEntry;
import mouldwright.plan.Quantity;

/** What a paper leaves out because there is none of it. The plan keeps it, and so do files for other programs. */
final class Nothing {

    /** Kinds of figures that are worth a line only where there is something. Others, such as turnings of the plug, tell by being 0. */
    private static final Set<String> KINDS = Set.of("packing", "fill.packing", "fair.foam.volume");

    private Nothing() { }

    /** Whether a quantity is left out. */
    static boolean is(Quantity quantity) {
        return isAll(List.of(quantity));
    }

    /** Whether figures of one kind are left out, all of them. */
    static boolean isAll(List<Quantity> quantities) {
        return quantities.stream().allMatch(q -> q.high() == 0 && KINDS.stream().anyMatch(kind -> q.id().equals(kind) || q.id().endsWith("." + kind)));
    }

    /** Whether an order is left out. */
    static boolean is(OrderEntry order) {
        return order.high() == 0;
    }
}
