package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import mouldwright.drawing.subject.Subjects;
import mouldwright.plan.Alignment;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** What the plates are set up by, to tick plate by plate. */
final class AlignmentCards implements CardBook.Maker {

    @Override
    public String name() {
        return "alignment";
    }

    @Override
    public List<Card> cards(Estimate estimate, Display display) {
        return estimate.alignment().map(sheet -> List.of(base(estimate, sheet, display), card(sheet, display))).orElse(List.of());
    }

    /** What is done before the first plate stands. */
    private static Card base(Estimate estimate, Alignment sheet, Display display) {
        AlignmentTable.Length all = new AlignmentTable.Length(display, sheet);
        List<Card.Piece> pieces = new ArrayList<>(Subjects.ALIGNMENT.draw(estimate.plan(), estimate.plan().plug() + " " + estimate.revision()).stream().limit(1)
                .map(one -> (Card.Piece) new Card.Picture(one.drawing())).toList());
        pieces.add(new Card.Ticks(List.of("base level and out of wind, centreline snapped", "first line square: " + all.of(sheet.square().across()) + ", " + all.of(sheet.square().along()) + ", "
                + all.of(sheet.square().diagonal()) + " " + all.unit(), "datum points P and S marked, " + all.of(sheet.half()) + " " + all.unit() + " off the centreline")));
        return new Card("Alignment", "Lay off the base", "alignment.base", List.of(), pieces, List.of(Caution.LIFTING));
    }

    private static Card card(Alignment sheet, Display display) {
        AlignmentTable.Length all = new AlignmentTable.Length(display, sheet);
        Table table = new Table("alignment", "Setting up").words("plate").figures("aft").figures("line").figures("port").figures("stbd").figures("diag p").figures("diag s").figures("top");
        for (Alignment.Row row : sheet.rows()) {
            table.row(List.of(row.station(), all.of(row.offset()), all.of(row.height()), all.of(row.port()), all.of(row.starboard()), all.of(row.toPort()),
                    all.of(row.toStarboard()), all.of(row.top())));
        }
        List<String> under = new ArrayList<>();
        under.add("All in " + all.unit() + ", to " + display.format(sheet.tolerance(), Dimension.LENGTH) + ". Datum points: on the base at the first plate, " + all.of(sheet.half())
                + " off the centreline. Square: " + all.of(sheet.square().across()) + ", " + all.of(sheet.square().along()) + " and " + all.of(sheet.square().diagonal()) + ".");
        under.add("aft: of the first plate. line: its height, with the edge to port and to starboard there. diag p, diag s: to that edge from the datum point of the other side.");
        return new Card("Alignment", "Set up the plates", "alignment", under, List.of(new Card.Rows(table, List.of("aft"))), List.of(Caution.LIFTING));
    }
}
