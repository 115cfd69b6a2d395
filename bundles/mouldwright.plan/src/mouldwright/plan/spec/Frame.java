package mouldwright.plan.spec;

import java.util.ArrayList;
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
 *  @param fittings   how parts are joined, lined up and set up
 *  @param origin     of the block */
public record Frame(Sheet sheet, Given thickness, Given clearance, Edges edges, Given rim, List<Backbone> backbones,
        Given tolerance, Fittings fittings, Origin origin) {

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
     *  @param above  height of its lower edge above base
     *  @param timber of that width, not layers of the sheet
     *  @param halved into the plates, which are slotted from below; else threaded through closed slots */
    public record Backbone(Given width, Given depth, Given above, boolean timber, boolean halved, Origin origin) {
        /** Layers of sheet, threaded through. */
        public Backbone(Given width, Given depth, Given above, Origin origin) {
            this(width, depth, above, false, false, origin);
        }
    }

    /** Every sheet material its parts are cut from, each once: that of the plates first. */
    public List<Sheet> sheets() {
        List<Sheet> sheets = new ArrayList<>(List.of(sheet));
        fittings.base().map(Fittings.Base::sheet).filter(other -> !other.name().equals(sheet.name())).ifPresent(sheets::add);
        return sheets;
    }

    /** Layers of the sheet a backbone is glued up of: as many as come nearest to its width, one at least. */
    public int layers(Backbone backbone) {
        return (int) Math.max(1, Math.rint(backbone.width().likely() / thickness.likely()));
    }

    /** What a backbone measures across: its layers, or its timber, m. */
    public double builtWidth(Backbone backbone) {
        return backbone.timber() ? backbone.width().likely() : layers(backbone) * thickness.likely();
    }

    /** A frame with fittings of which nothing is stated. */
    public Frame(Sheet sheet, Given thickness, Given clearance, Edges edges, Given rim, List<Backbone> backbones, Given tolerance, Origin origin) {
        this(sheet, thickness, clearance, edges, rim, backbones, tolerance, Fittings.assumed(), origin);
    }

    /** Copies its list. */
    public Frame {
        Objects.requireNonNull(sheet, "sheet");
        Objects.requireNonNull(edges, "edges");
        Objects.requireNonNull(fittings, "fittings");
        backbones = List.copyOf(backbones);
    }
}
