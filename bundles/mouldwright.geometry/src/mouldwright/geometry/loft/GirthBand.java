package mouldwright.geometry.loft;

/** A band along the body between two places of the girth, on both sides.
 *
 *  @param from one edge
 *  @param to   the other; the order does not matter */
public record GirthBand(GirthPlace from, GirthPlace to) {
    /** The whole girth. */
    public static final GirthBand WHOLE = new GirthBand(GirthPlace.BOTTOM, GirthPlace.TOP);
}
