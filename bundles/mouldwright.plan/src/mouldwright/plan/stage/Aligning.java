package mouldwright.plan.stage;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mouldwright.geometry.plane.Crosscut;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.Region;
import mouldwright.plan.Alignment;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Survey;

/** Works out what the plates are set up by: heights, offsets and diagonals by Pythagoras. */
final class Aligning {

    /** Datum points are set off in whole numbers of these, one at least past the broadest plate, m. */
    private static final double STEP = 0.050;
    /** The unit of the 3-4-5 triangle is a whole number of these, m. */
    private static final double UNIT = 0.010;
    /** What a point is marked inside the edge of the board, m: a pencil cross has room there. */
    private static final double EDGE = 0.010;

    private final Spec spec;
    private final Frame frame;
    private final FrameMeasures made;

    Aligning(Spec spec, Frame frame, FrameMeasures made) {
        this.spec = spec;
        this.frame = frame;
        this.made = made;
    }

    /** Nothing where fewer than two plates stand. */
    Optional<Alignment> alignment() {
        if (made.plates().size() < 2)
            return Optional.empty();
        double x = made.plates().getFirst().plate().x();
        double half = half(frame, made);
        double unit = Math.max(1, Math.floor(Math.min(half / 3, (made.plates().getLast().plate().x() - x) / 4) / UNIT)) * UNIT;
        Optional<Double> common = HeightLine.of(made);
        return Optional.of(new Alignment(x, half, new Alignment.Square(3 * unit, 4 * unit, 5 * unit), frame.tolerance().likely(), holes(),
                made.plates().stream().map(one -> row(one, x, half, common)).toList()));
    }

    /** How far the datum points lie off the centreline, m: past the broadest plate, and on the board where there is one. */
    static double half(Frame frame, FrameMeasures made) {
        double broadest = made.plates().stream().map(one -> one.plate().cut()).mapToDouble(cut -> Math.max(cut.maxY(), -cut.minY())).max().orElse(0);
        double half = (Math.ceil(broadest / STEP) + 1) * STEP;
        double board = frame.fittings().base().map(base -> Math.floor((broadest + base.margin().likely() - EDGE) / UNIT + 1e-9) * UNIT).orElse(half);
        return board > broadest ? Math.min(half, board) : half;
    }

    private List<Alignment.Hole> holes() {
        return made.holes().stream().map(place -> new Alignment.Hole(place.y(), place.z(), frame.fittings().holes().likely(),
                made.plates().stream().filter(one -> !one.holes().contains(place)).map(one -> one.border().name()).toList())).toList();
    }

    private Alignment.Row row(FrameMeasures.Made one, double x, double half, Optional<Double> common) {
        Outline edge = one.atLine();
        double height = common.filter(at -> at > edge.minZ() && at < edge.maxZ()).orElse(0.5 * (edge.minZ() + edge.maxZ()));
        List<Crosscut.Span> spans = Crosscut.level(Region.of(edge), height);
        double port = spans.isEmpty() ? 0 : -spans.getFirst().from(), starboard = spans.isEmpty() ? 0 : spans.getLast().to();
        double offset = one.plate().x() - x;
        return new Alignment.Row(one.border().name(), one.plate().side().name().toLowerCase(Locale.ROOT), offset, height, port, starboard,
                diagonal(offset, half + port, height), diagonal(offset, half + starboard, height), edge.maxZ(), reading(one.border().name()));
    }

    private static double diagonal(double along, double across, double up) {
        return Math.sqrt(along * along + across * across + up * up);
    }

    private Optional<Alignment.Reading> reading(String station) {
        double tolerance = frame.tolerance().likely();
        return spec.surveys().stream().sorted(Comparator.comparing(Survey::day)).flatMap(survey -> survey.readings().stream())
                .filter(Survey.Reading.Setting.class::isInstance).map(Survey.Reading.Setting.class::cast).filter(setting -> setting.station().equals(station))
                .reduce((earlier, later) -> later)
                .map(last -> new Alignment.Reading(last.leans(), last.high(), Math.max(Math.abs(last.leans()), Math.abs(last.high())) <= tolerance));
    }
}
