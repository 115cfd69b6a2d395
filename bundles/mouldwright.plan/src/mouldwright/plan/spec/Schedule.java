package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;

/** A laminate: what is laid, in order, with included schedules and counts written out.
 *  @param name    its name
 *  @param resin   what wets it
 *  @param layers  innermost first
 *  @param origin  where declared */
public record Schedule(String name, Resin resin, List<Layer> layers, Origin origin) {

    /** One step of a schedule. */
    public sealed interface Layer {
        /** A ply of mat. */
        record Ply(Mat mat, Origin origin) implements Layer { }

        /** A coat. */
        record Coat(Coating coating, Origin origin) implements Layer { }

        /** A wait for cure.
         *  @param time s */
        record Wait(Given time) implements Layer { }
    }

    /** Copies its list. */
    public Schedule {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(resin, "resin");
        layers = List.copyOf(layers);
    }

    /** @return its plies, innermost first */
    public List<Layer.Ply> plies() {
        return layers.stream().filter(Layer.Ply.class::isInstance).map(Layer.Ply.class::cast).toList();
    }
}
