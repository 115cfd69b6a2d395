package mouldwright.geometry.loft;

import java.util.List;

/** What of a body gets neither skin nor surfacer, besides closures and the stretches its sections mark as bare (a stretch
 *  is bare between two stations where both mark it so; a pointed end goes with its neighbour).
 *
 *  @param bands bare along the whole body */
public record Bare(List<GirthBand> bands) {
    /** No band is bare. */
    public static final Bare NONE = new Bare(List.of());

    /** Keeps its own copy. */
    public Bare { bands = List.copyOf(bands); }
}
