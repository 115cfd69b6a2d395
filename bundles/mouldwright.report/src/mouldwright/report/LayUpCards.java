package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.PieceEntry;
import mouldwright.plan.PotEntry;
import mouldwright.plan.TaskEntry;
import mouldwright.plan.stage.MouldMeasures;
import mouldwright.plan.stage.SkinMeasures;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** A card for each laying of a laminate: its pots, one after the other, and the catalyst of each, by weight and by measure. */
final class LayUpCards implements CardBook.Maker {

    private static final List<Caution> CAUTIONS = List.of(Caution.STYRENE, Caution.PEROXIDE, Caution.EXOTHERM);

    @Override
    public String name() {
        return "lay-up";
    }

    @Override
    public List<Card> cards(Estimate estimate, Display display) {
        List<Card> cards = new ArrayList<>();
        for (String laminate : List.of("skin", "mould")) {
            List<PotEntry> plies = estimate.pots().stream().filter(entry -> entry.laminate().equals(laminate)).toList();
            int next = 0;
            int session = 0;
            for (int count : layings(estimate, laminate, plies.size())) {
                List<PotEntry> laid = plies.subList(next, Math.min(plies.size(), next + count));
                next += laid.size();
                session++;
                if (!laid.isEmpty()) {
                    cards.add(card(estimate, display, laminate, session, laid));
                }
            }
        }
        return cards;
    }

    /** How many plies each laying has; where nothing was measured, each ply is one. */
    private static List<Integer> layings(Estimate estimate, String laminate, int plies) {
        var measured = estimate.plan().measurements();
        Optional<List<SkinMeasures.Laying>> layings = laminate.equals("skin") ? measured.find(SkinMeasures.class).map(SkinMeasures::layings)
                : measured.find(MouldMeasures.class).map(MouldMeasures::layings);
        return layings.map(all -> all.stream().map(SkinMeasures.Laying::count).toList()).orElseGet(() -> java.util.Collections.nCopies(plies, 1));
    }

    private static Card card(Estimate estimate, Display display, String laminate, int session, List<PotEntry> plies) {
        String id = laminate + ".lay." + session;
        Optional<TaskEntry> task = estimate.tasks().stream().filter(entry -> entry.id().equals(id)).findFirst();
        double resin = plies.stream().mapToDouble(PotEntry::resin).sum();
        PotEntry first = plies.getFirst();
        List<Card.Piece> pieces = new ArrayList<>(List.of(
                new Card.Keys(List.of(PourCards.key("resin in all", resin, display, Dimension.MASS),
                        new Card.Key("pots in all", String.valueOf(plies.stream().mapToInt(PotEntry::pots).sum()), ""),
                        PourCards.key("lay a pot within", first.working(), display, Dimension.TIME), PourCards.key("gels after", first.gel(), display, Dimension.TIME))),
                new Card.Rows(pots(display, plies), List.of("resin", "catalyst", "or")),
                new Card.Blanks(List.of("shop at", "first pot at", "gelled at"))));
        String mats = laminate.equals("skin") ? mats(estimate, plies) : "";
        return new Card("Lay up", task.map(TaskEntry::name).orElse("Ply " + first.ply() + ", " + first.mat()), laminate + "/" + session,
                List.of(mats + "Reckoned for a shop at " + display.format(estimate.plan().spec().shop().temperature().likely(), Dimension.TEMPERATURE)
                        + (plies.getFirst().ply() == 1 ? "; the first pot shows whether that holds." : ".")), pieces, CAUTIONS);
    }

    private static String mats(Estimate estimate, List<PotEntry> plies) {
        List<Integer> numbers = estimate.pieces().stream().filter(piece -> plies.stream().anyMatch(entry -> entry.ply() == piece.ply())).map(PieceEntry::piece).sorted().toList();
        if (numbers.isEmpty()) {
            return "";
        }
        return numbers.size() == 1 ? "Piece " + numbers.getFirst() + " of the cut list. " : "Pieces " + numbers.getFirst() + " to " + numbers.getLast() + " of the cut list. ";
    }

    private static Table pots(Display display, List<PotEntry> plies) {
        double largest = plies.stream().mapToDouble(entry -> Math.max(entry.first().resin(), entry.further().resin())).max().orElse(0);
        double catalyst = plies.stream().mapToDouble(entry -> Math.max(entry.first().catalyst(), entry.further().catalyst())).max().orElse(0);
        double measure = plies.stream().mapToDouble(entry -> Math.max(entry.first().catalystVolume(), entry.further().catalystVolume())).max().orElse(0);
        Figure mass = new Figure(display, largest, Dimension.MASS);
        Figure drops = new Figure(display, catalyst, Dimension.MASS);
        Figure volume = new Figure(display, measure, Dimension.VOLUME);
        Table table = new Table("pots", "Pots").figures("pot").figures("ply").figures("resin", mass.unit()).figures("catalyst", drops.unit()).figures("or", volume.unit());
        int number = 0;
        for (PotEntry entry : plies) {
            for (int n = 0; n < entry.pots(); n++) {
                PotEntry.Pot pot = n == 0 ? entry.first() : entry.further();
                table.row(Cell.of(++number), Cell.of(entry.ply()), mass.cell(pot.resin()), drops.cell(pot.catalyst()), volume.cell(pot.catalystVolume()));
            }
        }
        return table;
    }
}
