package mouldwright.report;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.Quantity;
import mouldwright.plan.spec.Airing;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** Styrene session by session: what goes off, and how fast. */
final class AirTable implements TextReport.StageTable {

    static final String PREFIX = "air.session.";
    private static final String STYRENE = ".styrene";
    private static final String RATE = ".rate";
    private static final int NAME = 60;

    @Override
    public String stage() {
        return "air";
    }

    @Override
    public void print(Estimate estimate, Display display, StringBuilder out) {
        List<Quantity> released = estimate.quantities().stream().filter(q -> q.id().startsWith(PREFIX) && q.id().endsWith(STYRENE)).toList();
        Figure mass = new Figure(display, released.stream().mapToDouble(Quantity::value).max().orElse(0), Dimension.MASS);
        Figure rate = new Figure(display, released.stream().map(q -> rate(estimate, q)).flatMap(Optional::stream).mapToDouble(Quantity::value).max().orElse(0),
                Dimension.MASS_RATE);
        Table table = new Table().words("session").figures("styrene", mass.unit()).figures("rate", rate.unit());
        for (Quantity session : released) {
            String words = Printable.of(session.label().replaceFirst("^Styrene, ", ""));
            table.row(List.of(words.length() <= NAME ? words : words.substring(0, NAME - 2).stripTrailing() + "..", mass.of(session.value()),
                    rate(estimate, session).map(q -> rate.of(q.value())).orElse("-")));
        }
        table.print("  ", out);
        if (!released.isEmpty()) {
            Airing air = estimate.plan().spec().shop().air();
            Paragraph.print("  ", "  ", "Thinned out to " + Display.number(air.limit().likely() * 1e6) + " ppm with a mixing factor of "
                    + Display.number(air.mixing().likely()) + " at " + display.format(air.temperature().likely(), Dimension.TEMPERATURE)
                    + ": state another in `air { }`.", out);
        }
    }

    private static Optional<Quantity> rate(Estimate estimate, Quantity session) {
        String id = session.id().substring(0, session.id().length() - STYRENE.length()) + RATE;
        return estimate.quantities().stream().filter(q -> q.id().equals(id)).findFirst();
    }
}
