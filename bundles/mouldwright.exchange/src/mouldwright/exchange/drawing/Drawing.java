package mouldwright.exchange.drawing;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.exchange.Fault;
import mouldwright.units.Unit;

/** What was read of a drawing.
 *  @param unit   its lengths are in, if it says so
 *  @param layers what lies on each layer, in the order they come up */
public record Drawing(Optional<Unit> unit, Map<String, Layer> layers) {

    /** What lies on a layer.
     *  @param curves in the drawing's units
     *  @param faults of entities that cannot be read */
    public record Layer(List<Curve> curves, List<Fault> faults) {
        /** Keeps its own copies. */
        public Layer {
            curves = List.copyOf(curves);
            faults = List.copyOf(faults);
        }
    }

    /** The names of its layers. */
    public List<String> names() {
        return List.copyOf(layers.keySet());
    }
}
