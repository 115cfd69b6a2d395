package mouldwright.geometry.frame;

/** How the edge of a plate is cut. */
public enum EdgeForm {
    /** Square to the sheet and never proud of the foam line; a gap remains on the larger face. */
    SQUARE,
    /** To the larger outline, then bevelled to the other face's line. */
    BEVELLED
}
