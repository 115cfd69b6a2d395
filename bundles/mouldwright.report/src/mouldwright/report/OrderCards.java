package mouldwright.report;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.OrderEntry;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The order list to tick. */
final class OrderCards implements CardBook.Maker {

    @Override
    public String name() {
        return "orders";
    }

    @Override
    public List<Card> cards(Estimate estimate, Display display) {
        Table table = new Table("orders", "Order list").words("material").figures("packs").words("of").figures("needed").figures("at most");
        for (OrderEntry order : estimate.orders()) {
            if (Nothing.is(order)) {
                continue;
            }
            Optional<OrderEntry.Packing> packing = order.packing();
            String packs = packing.map(p -> p.high() > p.packs() ? p.packs() + "-" + p.high() : String.valueOf(p.packs())).orElse("");
            table.row(Cell.of(order.title().map(title -> order.name() + ", " + title).orElse(order.name())), Cell.of(packs),
                    Cell.of(packing.map(p -> words(display, p.size(), order.dimension())).orElse("")), Cell.of(words(display, order.amount(), order.dimension())),
                    Cell.of(order.low() < order.high() ? words(display, order.high(), order.dimension()) : ""));
        }
        if (table.rows().isEmpty()) {
            return List.of();
        }
        return List.of(new Card("Orders", "What to buy", "orders", List.of("Where two counts of packs stand, the second holds if all goes to the high end."),
                List.of(new Card.Rows(table, List.of("packs"))), List.of()));
    }

    private static String words(Display display, double amount, Dimension dimension) {
        return dimension.equals(Dimension.RATIO) ? Display.number(amount) + " pieces" : display.format(amount, dimension);
    }
}
