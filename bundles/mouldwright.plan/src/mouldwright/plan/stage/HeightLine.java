package mouldwright.plan.stage;

import java.util.Optional;

/** The height that is marked across the plates, so that they are set by one level line. */
final class HeightLine {

    /** It is a whole number of centimetres, so that it is easily set off. */
    private static final double PER_METRE = 100;

    private HeightLine() { }

    /** The height halfway over what all plates reach, to the nearest 10 mm; empty where no height is common to all. */
    static Optional<Double> of(FrameMeasures made) {
        if (made.plates().isEmpty())
            return Optional.empty();
        double low = made.plates().stream().mapToDouble(one -> one.plate().cut().minZ()).max().orElse(0);
        double high = made.plates().stream().mapToDouble(one -> one.plate().cut().maxZ()).min().orElse(0);
        double height = Math.rint(0.5 * (low + high) * PER_METRE) / PER_METRE;
        return low < height && height < high ? Optional.of(height) : Optional.empty();
    }
}
