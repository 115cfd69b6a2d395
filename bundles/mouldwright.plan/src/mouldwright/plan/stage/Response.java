package mouldwright.plan.stage;

/** How a measured figure answers to one thing it was measured with. Ranges are narrow, so the rate at the likely value serves over
 *  the whole of them: what build-up, shrink and sheet change in a cavity it gives within 2 % of that change.
 *  @param likely what it was measured with, SI
 *  @param rate   change of the figure for each unit of that */
public record Response(double likely, double rate) {

    /** No answer: the thing has no range. */
    public static final Response NONE = new Response(0, 0);

    /** Change of the figure.
     *  @param value of the thing, SI */
    public double change(double value) {
        return (value - likely) * rate;
    }
}
