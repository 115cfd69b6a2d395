package mouldwright.geometry.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;

/** Cuts a part that is larger than its sheet into pieces that fit one, and says where their joints lie. */
public final class Jointing {
    /** More pieces than these are no plate any more. */
    private static final int MOST = 8;
    /** How far a joint may be moved to keep clear of slots and holes, as a share of a piece. */
    private static final double[] NUDGES = { 0, -0.05, 0.05, -0.10, 0.10, -0.15, 0.15, -0.20, 0.20, -0.25, 0.25, -0.30, 0.30 };
    private static final int TURNS = 90;

    private Jointing() { }

    /** A straight joint.
     *  @param upright whether it runs upright, else level
     *  @param at      breadth or height of its middle, metres */
    public record Joint(boolean upright, double at) { }

    /** How pieces are joined. */
    public sealed interface Join {
        /** How far a piece reaches past the middle of the joint, metres. */
        double past();

        /** What of the part the joint takes on both sides of its middle, metres. */
        double half();

        /** How far joints of two layers glued to each other stay apart, middle to middle, metres: where one is jointed the other runs through over as
         *  much glue line as the joint itself has; common practice. */
        double apart();

        /** Both are planed to a slope and lie over each other.
         *  @param length of the slope, metres */
        record Scarf(double length) implements Join {
            @Override public double past() { return length / 2; }

            @Override public double half() { return length / 2; }

            @Override public double apart() { return 2 * length; }
        }

        /** They meet in a butt, and a strap is glued over it. @param length of the strap across the joint, metres */
        record Strap(double length) implements Join {
            @Override public double past() { return 0; }

            @Override public double half() { return length / 2; }

            @Override public double apart() { return length; }
        }
    }

    /** Whether a ring can be laid on a sheet, turned as it may be.
     *  @param width @param length of the sheet, metres, edges taken off */
    public static boolean fits(Outline outline, double width, double length) {
        for (int turn = 0; turn < TURNS; turn++) {
            double angle = Math.PI / 2 * turn / TURNS, c = Math.cos(angle), s = Math.sin(angle);
            double across = -outline.lowest(c, s) - outline.lowest(-c, -s), along = -outline.lowest(-s, c) - outline.lowest(s, -c);
            if (across <= width && along <= length || along <= width && across <= length)
                return true;
        }
        return false;
    }

    /** The fewest joints after which every piece fits; level ones before upright ones, clear of slots and bores where that is possible.
     *  @param part   that does not fit whole
     *  @param width  @param length of the sheet, metres, edges taken off
     *  @param join   how its pieces are joined
     *  @return the joints, in order; empty where no pieces fit */
    public static Optional<List<Joint>> joints(PlatePart part, double width, double length, Join join) {
        return joints(part, width, length, join, List.of(), 0);
    }

    /** The same for a layer that is glued to one jointed elsewhere.
     *  @param others joints of its neighbour
     *  @param apart  how far its own stay away from these, middle to middle, metres */
    public static Optional<List<Joint>> joints(PlatePart part, double width, double length, Join join, List<Joint> others, double apart) {
        for (int pieces = 2; pieces <= MOST; pieces++)
            for (boolean strict : new boolean[] { true, false })
                for (boolean upright : new boolean[] { false, true }) {
                    List<Joint> joints = joints(part, pieces, upright, join, strict, others, apart);
                    if (joints.size() == pieces - 1 && pieces(part.wood(), joints, join).stream().flatMap(piece -> piece.pieces().stream())
                            .allMatch(piece -> fits(piece, width, length)))
                        return Optional.of(joints);
                }
        return Optional.empty();
    }

    private static List<Joint> joints(PlatePart part, int pieces, boolean upright, Join join, boolean strict, List<Joint> others, double apart) {
        double low = upright ? part.outer().minY() : part.outer().minZ(), high = upright ? part.outer().maxY() : part.outer().maxZ();
        double pitch = (high - low) / pieces;
        List<Joint> joints = new ArrayList<>();
        for (int k = 1; k < pieces; k++)
            for (double nudge : NUDGES) {
                Joint joint = new Joint(upright, low + (k + nudge) * pitch);
                boolean away = others.stream().allMatch(other -> other.upright() == joint.upright() && Math.abs(other.at() - joint.at()) >= apart);
                if (away && (!strict || clear(part, joint, join))) {
                    joints.add(joint);
                    break;
                }
            }
        return joints;
    }

    private static boolean clear(PlatePart part, Joint joint, Join join) {
        double low = joint.at() - join.half(), high = joint.at() + join.half();
        for (PlatePart.Opening opening : part.openings())
            if (opening.use() == PlatePart.Opening.Use.SLOT && overlap(joint.upright() ? opening.ring().minY() : opening.ring().minZ(),
                    joint.upright() ? opening.ring().maxY() : opening.ring().maxZ(), low, high))
                return false;
        for (PlatePart.Bore bore : part.bores()) {
            double at = joint.upright() ? bore.centre().y() : bore.centre().z();
            if (overlap(at - bore.diameter(), at + bore.diameter(), low, high))
                return false;
        }
        return true;
    }

    private static boolean overlap(double aLow, double aHigh, double bLow, double bHigh) {
        return aLow < bHigh && bLow < aHigh;
    }

    /** What of a region lies between neighbouring joints, each reaching as far past them as the join asks for.
     *  @return one more than there are joints */
    public static List<Region> pieces(Region wood, List<Joint> joints, Join join) {
        List<Region> pieces = new ArrayList<>();
        for (int k = 0; k <= joints.size(); k++) {
            double from = k == 0 ? Double.NEGATIVE_INFINITY : joints.get(k - 1).at() - join.past();
            double to = k == joints.size() ? Double.POSITIVE_INFINITY : joints.get(k).at() + join.past();
            pieces.add(band(wood, joints.getFirst().upright(), from, to));
        }
        return pieces;
    }

    /** What of a region lies in a band. @param upright whether its sides run upright @param from @param to metres */
    public static Region band(Region wood, boolean upright, double from, double to) {
        double low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY, left = low, right = high;
        for (Outline piece : wood.pieces()) {
            low = Math.min(low, piece.minZ());
            high = Math.max(high, piece.maxZ());
            left = Math.min(left, piece.minY());
            right = Math.max(right, piece.maxY());
        }
        double past = 1 + right - left + high - low;
        double y0 = upright ? Math.max(from, left - past) : left - past, y1 = upright ? Math.min(to, right + past) : right + past;
        double z0 = upright ? low - past : Math.max(from, low - past), z1 = upright ? high + past : Math.min(to, high + past);
        return wood.intersection(Region.of(Outline.of(List.of(new PlanePoint(y0, z0), new PlanePoint(y1, z0), new PlanePoint(y1, z1), new PlanePoint(y0, z1)))));
    }
}
