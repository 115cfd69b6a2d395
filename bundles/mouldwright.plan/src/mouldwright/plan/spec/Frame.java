package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;

/** How the bulkheads are made. Lengths in metres.
 *  @param sheet      what the plates are cut from
 *  @param thickness  of the sheet as measured, or its nominal one, assumed
 *  @param clearance  play of a slot over the measured thickness
 *  @param edges      square or bevelled
 *  @param rim        width of wood left round a plate's pocket
 *  @param backbones  lengthwise members
 *  @param tolerance  of setting up: lean and height
 *  @param origin     of the block */
public record Frame(Sheet sheet, Given thickness, Given clearance, Edges edges, Given rim, List<Backbone> backbones,
        Given tolerance, Origin origin) {

    /** What is done to a plate's edge. */
    public enum Edges {
        /** Cut square: the plate never stands proud, and a gap is left along one face. */
        SQUARE,
        /** Cut to the larger face and bevelled to the smaller. */
        BEVELLED
    }

    /** A lengthwise member let through the plates, on the centreline.
     *  @param width  across
     *  @param depth  upright
     *  @param above  height of its lower edge above base */
    public record Backbone(Given width, Given depth, Given above, Origin origin) { }

    /** Layers of the sheet a backbone is glued up of: as many as come nearest to its width, one at least. */
    public int layers(Backbone backbone) {
        return (int) Math.max(1, Math.rint(backbone.width().likely() / thickness.likely()));
    }

    /** What those layers measure across, m. */
    public double gluedWidth(Backbone backbone) {
        return layers(backbone) * thickness.likely();
    }

    /** Copies its list. */
    public Frame {
        Objects.requireNonNull(sheet, "sheet");
        Objects.requireNonNull(edges, "edges");
        backbones = List.copyOf(backbones);
    }
}
