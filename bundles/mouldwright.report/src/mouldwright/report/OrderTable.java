package mouldwright.report;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.OrderEntry;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The order list: what the whole job needs, and the packs that hold it. */
final class OrderTable implements StageTable {

    private static final int NAME = 24;
    private static final Cell UNKNOWN = Cell.of("-");
    private static final Figure MONEY = Figure.money("");

    @Override
    public String stage() {
        return "orders";
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        Table table = new Table("orders", "Order list").words("order", NAME).figures("needed").figures("at most").words("").figures("packs").figures("at most").figures("price")
                .figures("cost").figures("left");
        for (OrderEntry order : estimate.orders()) {
            if (Nothing.is(order)) {
                continue;
            }
            Optional<OrderEntry.Packing> packing = order.packing();
            double size = packing.map(OrderEntry.Packing::size).orElse(0.0);
            Figure need = Figure.beside(display, order.amount(), size, order.dimension());
            Figure pack = Figure.beside(display, size, order.amount(), order.dimension());
            table.row(Cell.of(order.name()), need.cell(order.amount()),
                    order.low() < order.high() ? need.cell(order.high()) : Cell.NONE, Cell.of(order.dimension().equals(Dimension.RATIO) ? "pieces" : need.unit()),
                    packing.map(p -> Cell.of(p.packs())).orElse(UNKNOWN), packing.filter(p -> p.high() > p.packs()).map(p -> Cell.of(p.high())).orElse(Cell.NONE),
                    packing.map(p -> MONEY.cell(p.price())).orElse(UNKNOWN),
                    packing.map(p -> p.cost().isPresent() ? MONEY.cell(p.cost().getAsDouble()) : Cell.of(p.currency() + "?")).orElse(UNKNOWN),
                    packing.map(p -> pack.cell(p.left())).orElse(UNKNOWN));
        }
        out.table(table);
        List<String> unpriced = estimate.orders().stream().filter(order -> order.packing().isEmpty() && !Nothing.is(order)).map(OrderEntry::name).toList();
        if (!unpriced.isEmpty()) {
            out.note("- no pack and price is stated: the cost leaves out " + String.join(", ", unpriced) + ".");
        }
    }
}
