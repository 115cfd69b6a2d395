package mouldwright.report;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.Quantity;
import mouldwright.plan.spec.Airing;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** Styrene session by session: what goes off, and how fast. */
final class AirTable implements StageTable {

    static final String PREFIX = "air.session.";
    private static final String STYRENE = ".styrene";
    private static final String RATE = ".rate";
    private static final int NAME = 60;

    @Override
    public String stage() {
        return "air";
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        List<Quantity> released = estimate.quantities().stream().filter(q -> q.id().startsWith(PREFIX) && q.id().endsWith(STYRENE)).toList();
        Figure mass = new Figure(display, released.stream().mapToDouble(Quantity::value).max().orElse(0), Dimension.MASS);
        Figure rate = new Figure(display, released.stream().map(q -> rate(estimate, q)).flatMap(Optional::stream).mapToDouble(Quantity::value).max().orElse(0),
                Dimension.MASS_RATE);
        Table table = new Table("sessions", "Styrene of each session").words("session", NAME).figures("styrene", mass.unit()).figures("rate", rate.unit());
        for (Quantity session : released) {
            table.row(Cell.of(session.label().replaceFirst("^Styrene, ", "")), mass.cell(session.value()),
                    rate(estimate, session).map(q -> rate.cell(q.value())).orElse(Cell.of("-")));
        }
        out.table(table);
        if (!released.isEmpty()) {
            Airing air = estimate.plan().spec().shop().air();
            out.note("Thinned out to " + Display.number(air.limit().likely() * 1e6) + " ppm with a mixing factor of "
                    + Display.number(air.mixing().likely()) + " at " + display.format(air.temperature().likely(), Dimension.TEMPERATURE)
                    + ": state another in `air { }`.");
        }
    }

    private static Optional<Quantity> rate(Estimate estimate, Quantity session) {
        String id = session.id().substring(0, session.id().length() - STYRENE.length()) + RATE;
        return estimate.quantities().stream().filter(q -> q.id().equals(id)).findFirst();
    }
}
