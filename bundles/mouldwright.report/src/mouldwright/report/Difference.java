package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.Quantity;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/**
 * A changed figure in print: old, new and the difference in one unit.
 *
 * @param label      in words
 * @param id         of the figure
 * @param before     as it was; a dash where there was none
 * @param after      as it is
 * @param difference with its sign; empty where one is missing
 * @param unit       of all three
 */
record Difference(String label, String id, String before, String after, String difference, String unit) {

    private static final String NONE = "-";

    /** The figures that differ when printed; smaller changes are left to the JSON. */
    static List<Difference> of(Comparison comparison, Display display) {
        List<Difference> printed = new ArrayList<>();
        for (Comparison.Change change : comparison.figures()) {
            Difference difference = of(change, display);
            if (!difference.before().equals(difference.after()))
                printed.add(difference);
        }
        return printed;
    }

    static Difference of(Comparison.Change change, Display display) {
        Quantity any = change.any();
        double largest = Math.max(size(change.before()), size(change.after()));
        Figure figure = !any.currency().isEmpty() ? Figure.money(any.currency())
                : any.dimension().equals(Dimension.TIME) && any.id().startsWith("plan.labour") ? Figure.hours(largest) : new Figure(display, largest, any.dimension());
        String difference = change.difference().map(d -> (d > 0 ? "+" : "") + figure.of(d)).orElse("");
        return new Difference(any.label(), change.id(), change.before().map(q -> figure.of(q.value())).orElse(NONE), change.after().map(q -> figure.of(q.value())).orElse(NONE),
                difference, figure.unit());
    }

    private static double size(Optional<Quantity> quantity) {
        return quantity.map(q -> Math.abs(q.value())).orElse(0.0);
    }

    /** Such as {@code +1.2 kg}. */
    String words() {
        return difference + (unit.isEmpty() ? "" : " " + unit);
    }
}
