package mouldwright.drawing;

/** A place on the paper. @param x millimetres to the right @param y millimetres up */
public record Spot(double x, double y) {

    /** Refuses what is no place. */
    public Spot {
        if (!Double.isFinite(x) || !Double.isFinite(y))
            throw new IllegalArgumentException("no place: " + x + ", " + y);
    }

    /** This place, moved. */
    public Spot plus(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    /** Straight distance, mm. */
    public double distance(Spot other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    /** The place a share of the way to another. */
    public Spot toward(Spot other, double share) {
        return new Spot(x + (other.x - x) * share, y + (other.y - y) * share);
    }
}
