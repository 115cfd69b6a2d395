package mouldwright.geometry.fill;

/** From where to where a cavity reaches along the upward direction of an attitude.
 *
 *  @param low  metres from the origin
 *  @param high metres from the origin */
public record Extent(double low, double high) {
    /** Metres. */
    public double height() {
        return high - low;
    }
}
