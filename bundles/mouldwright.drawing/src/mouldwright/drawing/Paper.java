package mouldwright.drawing;

/** Paper to print on. ISO 216 and ANSI sizes, portrait; a roll is as long as it has to be, five metres at most a piece. */
public enum Paper {
    /** 210 by 297 mm. */ A4(210, 297),
    /** 297 by 420 mm. */ A3(297, 420),
    /** 8.5 by 11 inches. */ LETTER(215.9, 279.4),
    /** Of a plotter, 24 inches wide. */ ROLL(609.6, 5000);

    private final double width;
    private final double height;

    Paper(double width, double height) {
        this.width = width;
        this.height = height;
    }

    /** mm across. */
    public double width() {
        return width;
    }

    /** mm up. */
    public double height() {
        return height;
    }

    /** How long a page is that shows something: of a roll as long as it has to be, but with room for the square to measure.
     *  @param needed margins and all, mm
     *  @return mm */
    double lengthFor(double needed) {
        return this == ROLL ? Math.min(height, Math.max(SHORTEST, needed)) : height;
    }

    private static final double SHORTEST = 150;
}
