package mouldwright.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mouldwright.plan.OrderEntry;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The order list: what the whole job needs, and the packs that hold it. */
final class OrderTable implements TextReport.StageTable {

    private static final int NAME = 24;

    @Override
    public String stage() {
        return "orders";
    }

    @Override
    public void print(Estimate estimate, Display display, StringBuilder out) {
        Table table = new Table().words("order").figures("needed").figures("at most").words("").figures("packs").figures("at most").figures("price")
                .figures("cost").figures("left");
        for (OrderEntry order : estimate.orders()) {
            Optional<OrderEntry.Packing> packing = order.packing();
            double size = packing.map(OrderEntry.Packing::size).orElse(0.0);
            Figure need = Figure.beside(display, order.amount(), size, order.dimension());
            Figure pack = Figure.beside(display, size, order.amount(), order.dimension());
            String name = Printable.of(order.name());
            table.row(List.of(name.length() <= NAME ? name : name.substring(0, NAME - 2).stripTrailing() + "..", need.of(order.amount()),
                    order.low() < order.high() ? need.of(order.high()) : "", order.dimension().equals(Dimension.RATIO) ? "pieces" : need.unit(),
                    packing.map(p -> String.valueOf(p.packs())).orElse("-"), packing.filter(p -> p.high() > p.packs()).map(p -> String.valueOf(p.high())).orElse(""),
                    packing.map(p -> money(p.price())).orElse("-"),
                    packing.map(p -> p.cost().isPresent() ? money(p.cost().getAsDouble()) : p.currency() + "?").orElse("-"),
                    packing.map(p -> pack.of(p.left())).orElse("-")));
        }
        table.print("  ", out);
        if (estimate.orders().stream().anyMatch(order -> order.packing().isEmpty())) {
            Paragraph.print("  ", "  ", "- no pack is stated.", out);
        }
    }

    private static String money(double amount) {
        return String.format(Locale.ROOT, "%.2f", amount);
    }
}
