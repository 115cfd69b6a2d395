package mouldwright.drawing;

import java.util.List;

/**
 * How a line is drawn.
 *
 * @param tone  its colour
 * @param width mm on paper; a screen draws it at least a pixel wide
 * @param dash  mm drawn and left out in turn; empty for a full line
 */
public record Pen(Tone tone, double width, List<Double> dash) {

    /** Takes a copy. */
    public Pen {
        if (!(width > 0))
            throw new IllegalArgumentException("a line " + width + " mm wide");
        dash = List.copyOf(dash);
    }

    /** A full line. */
    public static Pen full(Tone tone, double width) {
        return new Pen(tone, width, List.of());
    }

    /** A dashed line. */
    public static Pen dashed(Tone tone, double width) {
        return new Pen(tone, width, List.of(3.0, 1.5));
    }

    /** A line of long and short dashes, as centrelines are drawn. */
    public static Pen chain(Tone tone, double width) {
        return new Pen(tone, width, List.of(8.0, 1.5, 1.0, 1.5));
    }
}
