package mouldwright.geometry.measure;

/** The lofted surface of a span, both sides, without end faces; square metres.
 *
 *  @param moulded what gets skin and mould
 *  @param bare    bare stretches and bands, without closures
 *  @param closure the straight closures to the centreline of half sections, always bare */
public record AreaSplit(Measured moulded, Measured bare, Measured closure) {
    /** All of it. */
    public Measured total() {
        return moulded.plus(bare).plus(closure);
    }
}
