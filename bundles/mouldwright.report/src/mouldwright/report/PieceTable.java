package mouldwright.report;

import java.util.Comparator;
import java.util.List;
import mouldwright.plan.PieceEntry;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** The cut list: the pieces of mat in the order they come off the rolls, each with its number in the order of laying. */
final class PieceTable implements StageTable {

    private final String laminate;

    /** @param laminate whose pieces; its name begins with the stage it belongs to */
    PieceTable(String laminate) {
        this.laminate = laminate;
    }

    @Override
    public String stage() {
        return laminate.contains(".") ? laminate.substring(0, laminate.indexOf('.')) : laminate;
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        List<PieceEntry> pieces = estimate.pieces().stream().filter(piece -> piece.laminate().equals(laminate)).sorted(Comparator.comparing(PieceEntry::mat).thenComparingInt(PieceEntry::cut)
                .thenComparingDouble(PieceEntry::across)).toList();
        double largest = pieces.stream().mapToDouble(piece -> Math.max(piece.width(), piece.length())).max().orElse(0);
        Figure size = new Figure(display, largest, Dimension.LENGTH);
        Figure place = new Figure(display, pieces.stream().mapToDouble(PieceEntry::along).max().orElse(0), Dimension.LENGTH);
        Table table = new Table("pieces " + laminate, "Pieces of mat as they come off the rolls").words("mat").figures("roll").figures("cut").figures("from", place.unit()).figures("aside", size.unit())
                .figures("along", size.unit()).figures("round", size.unit()).figures("piece").figures("ply").words("laid on");
        for (PieceEntry piece : pieces) {
            table.row(Cell.of(piece.mat()), Cell.of(piece.roll()), Cell.of(piece.cut()), place.cell(piece.along()), size.cell(piece.across()),
                    size.cell(piece.length()), size.cell(piece.width()), Cell.of(piece.piece()), Cell.of(piece.ply()), Cell.of(piece.where()));
        }
        out.table(table);
    }
}
