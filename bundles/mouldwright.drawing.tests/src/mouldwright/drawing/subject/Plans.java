package mouldwright.drawing.subject;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Layer;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.plan.BuildPlan;
import mouldwright.services.Checked;
import mouldwright.services.SpecSession;

/** Plans of specs, and what is found on drawings. */
final class Plans {

    private Plans() { }

    /** The plan of a spec's only plug. */
    static BuildPlan of(String text) {
        try {
            Path folder = Files.createTempDirectory("plug");
            Path file = Files.writeString(folder.resolve("test.plug"), text);
            Checked checked = SpecSession.start().check(file, () -> false);
            Files.delete(file);
            Files.delete(folder);
            if (checked.plans().size() != 1)
                throw new AssertionError(checked.findings().toString());
            return checked.plans().values().iterator().next();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The plan of an example. */
    static BuildPlan example(String name) {
        return SpecSession.start().check(Path.of("../../examples", name).toAbsolutePath().normalize(), () -> false).plans().values().iterator().next();
    }

    static Stream<Layer.Item> items(Drawing drawing, Role role) {
        return drawing.layers().stream().filter(layer -> layer.role() == role).flatMap(layer -> layer.items().stream());
    }

    static Stream<Mark.Words> words(Drawing drawing) {
        return drawing.layers().stream().flatMap(layer -> layer.items().stream()).map(Layer.Item::mark).filter(Mark.Words.class::isInstance).map(Mark.Words.class::cast);
    }

    /** Inside rings, holes taken off, mm2. */
    static double area(List<mouldwright.drawing.Path> rings) {
        double sum = 0;
        for (mouldwright.drawing.Path ring : rings) {
            List<Spot> spots = ring.flattened(0.001);
            double twice = 0;
            for (int i = 0; i < spots.size(); i++) {
                Spot a = spots.get(i), b = spots.get((i + 1) % spots.size());
                twice += a.x() * b.y() - b.x() * a.y();
            }
            sum = sum == 0 ? Math.abs(twice / 2) : sum - Math.abs(twice / 2);
        }
        return sum;
    }
}
