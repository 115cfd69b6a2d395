package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;

import java.util.List;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Measurement;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Given;
import mouldwright.units.Dimension;

/** Measures of the plug, taken at the likely shrink: where the shrink has a range, lengths grow as the plug's scale 1 / (1 - shrink)
 *  and areas as its square. */
final class Growth {

    private final Given shrink;
    private final Ledger ledger;

    Growth(Given shrink, Ledger ledger) {
        this.shrink = shrink;
        this.ledger = ledger;
    }

    /** Writes a measure of the plug as a listed figure.
     *  @param dimension of an area or a length */
    Node quantity(String id, String label, Dimension dimension, Measurement measured) {
        return write(ledger.quantity(id, label, dimension), label, dimension, measured);
    }

    /** The same, as a step between. */
    Node step(String label, Dimension dimension, Measurement measured) {
        return write(ledger.step(label, dimension), label, dimension, measured);
    }

    private Node write(Ledger.Entry entry, String label, Dimension dimension, Measurement measured) {
        if (!shrink.ranged())
            return entry.measured(measured);
        boolean area = dimension.equals(AREA);
        return entry.from("as measured x ((1 - likely shrink) / (1 - shrink))" + (area ? "^2" : ""),
                List.of(ledger.measured(label + ", as measured", dimension, measured), ledger.given(shrink)), v -> {
                    double scale = (1 - shrink.likely()) / (1 - v[1]);
                    return v[0] * scale * (area ? scale : 1);
                }).source("lengths grow as the plug's scale, areas as its square");
    }
}
