package mouldwright.report;

import java.util.List;
import mouldwright.plan.spec.Stiffener;
import mouldwright.plan.stage.MouldMeasures;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The stiffeners of a mould, each with its length over the face. */
final class RibTable implements StageTable {

    @Override
    public String stage() {
        return "mould";
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        List<MouldMeasures.Stiffened> kinds = estimate.plan().measurements().find(MouldMeasures.class).map(MouldMeasures::stiffened).orElse(List.of());
        Figure length = new Figure(display, kinds.stream().flatMap(kind -> kind.ribs().stream()).mapToDouble(MouldMeasures.Rib::length).max().orElse(0), Dimension.LENGTH);
        Figure section = new Figure(display, kinds.stream().mapToDouble(kind -> Math.max(kind.stated().width().likely(), kind.stated().height().likely())).max().orElse(0),
                Dimension.LENGTH);
        Table table = new Table("stiffeners", "Stiffeners").figures("stiffener").figures("wide", section.unit()).figures("high", section.unit()).words("over").figures("long", length.unit()).words("where");
        for (int i = 0; i < kinds.size(); i++) {
            Stiffener stated = kinds.get(i).stated();
            for (MouldMeasures.Rib rib : kinds.get(i).ribs()) {
                table.row(Cell.of(i + 1), section.cell(stated.width().likely()), section.cell(stated.height().likely()), Cell.of(core(stated)), length.cell(rib.length()),
                        Cell.of(rib.where()));
            }
        }
        out.table(table);
    }

    private static String core(Stiffener stiffener) {
        return switch (stiffener.core()) {
            case Stiffener.Core.Hollow hollow -> "former";
            case Stiffener.Core.Cut(var sheet) -> sheet.name();
        };
    }
}
