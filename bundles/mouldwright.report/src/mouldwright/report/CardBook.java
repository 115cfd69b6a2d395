package mouldwright.report;

import java.util.List;
import java.util.Optional;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/** The cards of a plan, as one PDF. A new kind of card is one class and one line in {@link #ALL}. */
public final class CardBook {

    /** Cards of one kind. */
    interface Maker {
        /** As people ask for it. */
        String name();

        /** The cards, in the order of the work; none where the plan has nothing for them. */
        List<Card> cards(Estimate estimate, Display display);
    }

    private static final List<Maker> ALL = List.of(new PourCards(), new LayUpCards(), new AlignmentCards(), new ProgrammeCards(), new OrderCards());

    private final UnitSystem system;
    private final PdfPaper paper;

    /** @param system family of units the figures are shown in */
    public CardBook(UnitSystem system, PdfPaper paper) {
        this.system = system;
        this.paper = paper;
    }

    /** The kinds there are. */
    public static List<String> kinds() {
        return ALL.stream().map(Maker::name).toList();
    }

    /** The whole file; empty where the plan has nothing for such cards.
     *  @param kind one of {@link #kinds()}; empty for all */
    public Optional<byte[]> print(Estimate estimate, Optional<String> kind) {
        Display display = Display.of(system);
        List<Card> cards = ALL.stream().filter(maker -> kind.isEmpty() || kind.get().equals(maker.name()))
                .flatMap(maker -> maker.cards(estimate, display).stream()).toList();
        return cards.isEmpty() ? Optional.empty() : Optional.of(new CardPrinter(estimate, paper).print(cards));
    }
}
