package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mouldwright.geometry.draft.DraftOrder;
import mouldwright.geometry.draft.Pull;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.measure.SurfaceRegion;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Mould;

/** Says which part of the plug each part of a mould covers. A half that names no line covers what lies on the side it is pulled
 *  to: to port or starboard of the middle, of a full body of the highest and lowest place of each section, above or below the broadest place of each section, where the normal stands square to
 *  the pull, or forward or aft of the largest section. */
final class MouldParts {

    /** Sections looked at in a span for the largest. */
    private static final int LOOKS = 16;

    private final ShapeMeasures shape;
    private final double limit;

    MouldParts(ShapeMeasures shape, double limit) {
        this.shape = shape;
        this.limit = limit;
    }

    /** The parts of a mould; one piece pulled up where it names none. */
    static List<Mould.Part> stated(Mould mould) {
        return mould.parts().isEmpty() ? List.of(Defaults.onePiece()) : mould.parts();
    }

    /** Whether each half has a name of its own; two of one name are reported. */
    static boolean ownNames(Mould mould, Measurements measurements) {
        Set<String> seen = new HashSet<>();
        for (Mould.Part part : mould.parts())
            if (!seen.add(part.name().orElse(""))) {
                measurements.report(PlanFault.of(PlanFault.Kind.NAME, part.origin(), "half " + part.name().orElse(""),
                        part.name().map(name -> "two halves are called " + name).orElse("a mould is made in one piece only once"),
                        "give each half a name of its own"));
                return false;
            }
        return true;
    }

    DraftOrder order(Mould.Part part) {
        Loft plug = shape.plug();
        double from = plug.startX(), to = plug.endX();
        Mould.Pull pull = part.pull();
        boolean side = part.reach() instanceof Mould.Reach.PullSide;
        if (side && (pull == Mould.Pull.FORWARD || pull == Mould.Pull.AFT)) {
            double largest = largest();
            from = pull == Mould.Pull.AFT ? largest : from;
            to = pull == Mould.Pull.FORWARD ? largest : to;
        }
        return new DraftOrder(new SurfaceRegion(from, to, band(part)), !(side && pull == Mould.Pull.PORT),
                !(side && pull == Mould.Pull.STARBOARD), true, shape.bare(), pull(pull), limit);
    }

    /** The places of the girth at which a part ends, before top or bottom centre. */
    static Optional<GirthPlace> border(Mould.Part part) {
        return switch (part.reach()) {
            case Mould.Reach.Everything everything -> Optional.empty();
            case Mould.Reach.Above above -> Optional.of(Places.of(above.place()));
            case Mould.Reach.Below below -> Optional.of(Places.of(below.place()));
            case Mould.Reach.PullSide side -> part.pull() == Mould.Pull.UP || part.pull() == Mould.Pull.DOWN
                    ? Optional.of(new GirthPlace.Broadest()) : Optional.empty();
        };
    }

    /** Whether a part lies above its border. */
    static boolean above(Mould.Part part) {
        return part.reach() instanceof Mould.Reach.Above
                || part.reach() instanceof Mould.Reach.PullSide && part.pull() == Mould.Pull.UP;
    }

    private static GirthBand band(Mould.Part part) {
        return border(part).map(border -> above(part) ? new GirthBand(border, GirthPlace.TOP) : new GirthBand(GirthPlace.BOTTOM, border))
                .orElse(GirthBand.WHOLE);
    }

    static Pull pull(Mould.Pull pull) {
        return switch (pull) {
            case UP -> Pull.UP;
            case DOWN -> Pull.DOWN;
            case PORT -> Pull.PORT;
            case STARBOARD -> Pull.STARBOARD;
            case FORWARD -> Pull.FORWARD;
            case AFT -> Pull.AFT;
        };
    }

    /** Where the section is largest, m aft on the plug; the foremost of equal ones. */
    private double largest() {
        Loft plug = shape.plug();
        List<Double> places = new ArrayList<>(plug.stations());
        for (int i = 0; i + 1 < plug.stations().size(); i++)
            for (int k = 1; k < LOOKS; k++)
                places.add(plug.stations().get(i) + (plug.stations().get(i + 1) - plug.stations().get(i)) * k / LOOKS);
        places.sort(Double::compare);
        double at = plug.startX(), most = 0;
        for (double x : places) {
            double area = plug.at(x).area();
            if (area > most * (1 + 1e-9)) {
                most = area;
                at = x;
            }
        }
        return at;
    }
}
