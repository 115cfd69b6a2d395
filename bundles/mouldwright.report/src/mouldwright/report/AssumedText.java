package mouldwright.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import mouldwright.plan.Assumption;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/** Prints what the plan assumes because the spec is silent: the name, the value and why. */
final class AssumedText {

    private static final int NAME_AT_MOST = 40;

    private final UnitSystem system;

    AssumedText(UnitSystem system) {
        this.system = system;
    }

    void print(List<Assumption> assumed, StringBuilder out) {
        if (assumed.isEmpty()) {
            return;
        }
        TextReport.heading("Assumed, since the spec does not say", out);
        int width = assumed.stream().mapToInt(a -> a.name().length()).filter(length -> length <= NAME_AT_MOST).max().orElse(0);
        for (Assumption assumption : assumed) {
            String name = assumption.name() + " ".repeat(Math.max(0, width - assumption.name().length()));
            Paragraph.print("  " + name + "   ", " ".repeat(width + 5), words(assumption) + ": " + assumption.reason(), out);
        }
    }

    /** The words of the plan are metric; in US units the likely value is given first. */
    String words(Assumption assumption) {
        Optional<Dimension> dimension = dimension(assumption.unit());
        if (system == UnitSystem.METRIC || assumption.value().isEmpty() || dimension.isEmpty() || dimension.get().equals(Dimension.RATIO)) {
            return assumption.words();
        }
        String us = Display.of(system).format(assumption.value().getAsDouble(), dimension.get());
        return us.equals(assumption.words()) ? us : us + " [" + assumption.words() + "]";
    }

    private static Optional<Dimension> dimension(String ucum) {
        return Stream.of(Dimension.RATIO, Dimension.LENGTH, Dimension.AREA, Dimension.VOLUME, Dimension.MASS, Dimension.TIME,
                Dimension.TEMPERATURE, Dimension.ANGLE, Dimension.AREAL_MASS, Dimension.DENSITY, Dimension.LINEAR_MASS,
                Dimension.AREA_RATE, Dimension.MASS_RATE, Dimension.VOLUME_RATE, Dimension.SPEED)
                .filter(dimension -> dimension.ucum().equals(ucum)).findFirst();
    }
}
