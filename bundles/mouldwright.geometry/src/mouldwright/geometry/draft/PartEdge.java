package mouldwright.geometry.draft;

/** A stretch of the edge of a part of a mould, running along the body or round it.
 *
 *  @param kind what lies on the other side
 *  @param port whether it lies on the port side
 *  @param line where it runs */
public record PartEdge(Kind kind, boolean port, LongLine line) {
    /** What lies on the other side of an edge. */
    public enum Kind {
        /** Another moulded surface: the parting line. */
        PARTING,
        /** Nothing that is moulded: the mould ends here, and the part is trimmed. */
        OPEN
    }
}
