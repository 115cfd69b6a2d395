package mouldwright.plan.stage;

/** How a measured figure answers to one thing it was measured with, found by measuring again at both ends of its range.
 *  @param likely  what it was measured with, SI
 *  @param below   change of the figure for each unit below that
 *  @param above   change of the figure for each unit above that */
public record Response(double likely, double below, double above) {

    /** No answer: the thing has no range. */
    public static final Response NONE = new Response(0, 0, 0);

    /** From three measures.
     *  @param low    end of the range
     *  @param atLow  figure there
     *  @param likely value worked with
     *  @param at     figure there
     *  @param high   end of the range
     *  @param atHigh figure there */
    public static Response of(double low, double atLow, double likely, double at, double high, double atHigh) {
        return new Response(likely, low < likely ? (at - atLow) / (likely - low) : 0,
                high > likely ? (atHigh - at) / (high - likely) : 0);
    }

    /** Change of the figure.
     *  @param value of the thing, SI */
    public double change(double value) {
        return (value - likely) * (value < likely ? below : above);
    }
}
