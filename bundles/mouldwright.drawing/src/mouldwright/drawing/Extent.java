package mouldwright.drawing;

/** An upright box on the paper, millimetres. */
public record Extent(double left, double bottom, double right, double top) {

    /** Refuses a box turned inside out. */
    public Extent {
        if (!(right >= left) || !(top >= bottom) || !Double.isFinite(right - left) || !Double.isFinite(top - bottom))
            throw new IllegalArgumentException("no box: " + left + ", " + bottom + " to " + right + ", " + top);
    }

    /** mm across. */
    public double width() {
        return right - left;
    }

    /** mm up. */
    public double height() {
        return top - bottom;
    }

    /** With a margin all round. @param margin mm, positive outward */
    public Extent grown(double margin) {
        return new Extent(left - margin, bottom - margin, right + margin, top + margin);
    }

    /** The least box round both. */
    public Extent with(Extent other) {
        return new Extent(Math.min(left, other.left), Math.min(bottom, other.bottom), Math.max(right, other.right), Math.max(top, other.top));
    }

    /** The least box round some places. */
    public static Extent of(Iterable<Spot> spots) {
        double left = Double.MAX_VALUE, bottom = Double.MAX_VALUE, right = -Double.MAX_VALUE, top = -Double.MAX_VALUE;
        for (Spot spot : spots) {
            left = Math.min(left, spot.x());
            right = Math.max(right, spot.x());
            bottom = Math.min(bottom, spot.y());
            top = Math.max(top, spot.y());
        }
        return new Extent(left, bottom, right, top);
    }
}
