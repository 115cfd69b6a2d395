package mouldwright.drawing;

/** What the marks of a layer are for. Machines go by the name of the layer; people by its pen. */
public enum Role {
    /** To be cut. */ CUT("CUT", Pen.full(Tone.CUT, 0.35)),
    /** To be scored or drawn on the part. */ SCORE("SCORE", Pen.dashed(Tone.SCORE, 0.25)),
    /** Ticks and crosses to line up with. */ MARK("MARK", Pen.full(Tone.SCORE, 0.25)),
    /** Words on the part. */ TEXT("TEXT", Pen.full(Tone.INK, 0.2)),
    /** The finished surface. */ SURFACE("SURFACE", Pen.full(Tone.SURFACE, 0.5)),
    /** Edges of plates. */ PLATE("PLATE", Pen.full(Tone.WOOD, 0.35)),
    /** Foam and cavities. */ FOAM("FOAM", Pen.full(Tone.FOAM, 0.25)),
    /** Plies, films and pieces of mat. */ LAMINATE("LAMINATE", Pen.full(Tone.LAMINATE, 0.35)),
    /** Outlines of anything else. */ OUTLINE("OUTLINE", Pen.full(Tone.INK, 0.25)),
    /** What lies behind. */ HIDDEN("HIDDEN", Pen.dashed(Tone.SOFT, 0.2)),
    /** Neighbours, to compare with. */ FAINT("FAINT", Pen.full(Tone.FAINT, 0.2)),
    /** Axes and centrelines. */ AXIS("AXIS", Pen.chain(Tone.SOFT, 0.18)),
    /** Figures with their lines. */ DIMENSION("DIMENSION", Pen.full(Tone.SOFT, 0.18)),
    /** Filled areas. */ AREA("AREA", Pen.full(Tone.FAINT, 0.13)),
    /** What wants attention. */ ALARM("ALARM", Pen.full(Tone.ALARM, 0.5)),
    /** The edge of the paper, its title and what the drawing is checked by. */ SHEET("SHEET", Pen.full(Tone.SOFT, 0.25));

    private final String layer;
    private final Pen pen;

    Role(String layer, Pen pen) {
        this.layer = layer;
        this.pen = pen;
    }

    /** Name of the layer in files. */
    public String layer() {
        return layer;
    }

    /** What its lines are drawn with. */
    public Pen pen() {
        return pen;
    }
}
