package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.PourEntry;
import mouldwright.plan.Quantity;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Given;
import mouldwright.process.Pour;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** A card for the trial cup and for each lift of each bay, in the order of pouring. */
final class PourCards implements CardBook.Maker {

    private static final List<Caution> CAUTIONS = List.of(Caution.ISOCYANATE, Caution.EXOTHERM);

    @Override
    public String name() {
        return "pours";
    }

    @Override
    public List<Card> cards(Estimate estimate, Display display) {
        List<Card> cards = new ArrayList<>();
        for (PourSteps.Line line : PourSteps.of(estimate)) {
            if (line.act().equals("trial")) {
                cards.add(trial(estimate, display, cards.size() + 1));
            } else if (line.act().equals("pour")) {
                int number = cards.size() + 1;
                estimate.pours().stream().filter(pour -> pour.bay().equals(line.bays()) && pour.lift() == line.lift()).findFirst()
                        .ifPresent(pour -> cards.add(pour(estimate, display, pour, line, number)));
            }
        }
        return cards;
    }

    private static Card trial(Estimate estimate, Display display, int number) {
        List<Card.Key> weights = new ArrayList<>();
        quantity(estimate, "fill.trial.a").ifPresent(a -> weights.add(key("A", a.value(), display, Dimension.MASS)));
        quantity(estimate, "fill.trial.b").ifPresent(b -> weights.add(key("B", b.value(), display, Dimension.MASS)));
        return new Card("Pour " + number, "Trial cup", "trial", under(estimate, display, ""), List.of(new Card.Keys(weights), times(estimate, display, Optional.empty()),
                new Card.Ticks(List.of("A and B weighed apart, at the warmth of the shop", mixed(display) + ", left to rise in a cup with straight walls",
                        "Height risen measured when firm")),
                new Card.Blanks(List.of("shop at", "mixed at", "creamed at", "risen at", "height risen"))), CAUTIONS);
    }

    private static Card pour(Estimate estimate, Display display, PourEntry pour, PourSteps.Line line, int number) {
        int pots = Math.max(1, pour.pots());
        String each = pots > 1 ? ", each pot" : "";
        boolean last = line.lift() == line.lifts();
        double wait = quantity(estimate, last ? "fill.firm" : "bay." + pour.bay() + ".wait").map(Quantity::value).orElse(0.0);
        List<Card.Piece> pieces = new ArrayList<>();
        pieces.add(new Card.Keys(List.of(key("A" + each, pour.a() / pots, display, Dimension.MASS), key("B" + each, pour.b() / pots, display, Dimension.MASS),
                key("together" + each, pour.mass() / pots, display, Dimension.MASS))));
        if (pots > 1) {
            pieces.add(new Card.Boxes("Pots, one after the other", pots));
        }
        pieces.add(times(estimate, display, Optional.of(key(last ? "before a neighbour" : "before next lift", wait, display, Dimension.TIME))));
        pieces.add(new Card.Ticks(List.of(
                line.lift() == 1 ? "Bay shuttered, film on, stand-offs in" : "Lift " + (line.lift() - 1) + " of this bay has cooled as long as its card says",
                "A and B weighed apart", mixed(display) + ", poured at once")));
        pieces.add(new Card.Blanks(List.of("shop at", "mixed at", "creamed at", "risen at")));
        return new Card("Pour " + number, "Bay " + pour.bay() + ", lift " + line.lift() + " of " + line.lifts(), pour.bay() + "/" + pour.lift(),
                under(estimate, display, "Plug lies " + line.lies() + ". "), pieces, CAUTIONS);
    }

    private static String mixed(Display display) {
        return "Mixed " + display.format(Pour.MIXING_TIME, Dimension.TIME);
    }

    private static List<String> under(Estimate estimate, Display display, String lies) {
        String foam = estimate.plan().spec().fill().map(fill -> fill.foam().name() + ". ").orElse("");
        return List.of(lies + foam + "Reckoned for a shop at " + display.format(estimate.plan().spec().shop().temperature().likely(), Dimension.TEMPERATURE) + ".");
    }

    private static Card.Keys times(Estimate estimate, Display display, Optional<Card.Key> after) {
        List<Card.Key> keys = new ArrayList<>();
        Optional<Fill> fill = estimate.plan().spec().fill();
        fill.flatMap(f -> f.foam().cream()).map(Given::likely).ifPresent(time -> keys.add(key("creams after", time, display, Dimension.TIME)));
        fill.flatMap(f -> f.foam().rise()).map(Given::likely).ifPresent(time -> keys.add(key("risen after", time, display, Dimension.TIME)));
        quantity(estimate, "fill.firm").ifPresent(firm -> keys.add(key("firm after", firm.value(), display, Dimension.TIME)));
        after.filter(key -> keys.stream().noneMatch(other -> other.label().equals("firm after") && other.value().equals(key.value()) && other.unit().equals(key.unit())))
                .ifPresent(keys::add);
        return new Card.Keys(keys);
    }

    static Card.Key key(String label, double si, Display display, Dimension dimension) {
        String words = display.format(si, dimension);
        int space = words.lastIndexOf(' ');
        return new Card.Key(label, words.substring(0, space), words.substring(space + 1));
    }

    private static Optional<Quantity> quantity(Estimate estimate, String id) {
        return estimate.plan().quantity(id);
    }
}
