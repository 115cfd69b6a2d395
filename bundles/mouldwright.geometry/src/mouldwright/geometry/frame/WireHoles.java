package mouldwright.geometry.frame;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import mouldwright.geometry.plane.Crosscut;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;

/** Finds two places off the centreline at one height, the same on every plate, where holes line all plates up on two wires, two rods
 *  or the beam of a laser. */
public final class WireHoles {
    /** Places are whole numbers of these, metres, so that they are easily set off on the base too. */
    private static final double STEP = 0.005;
    private static final int ACROSS = 12;
    private static final int UP = 24;

    private final List<Region> woods;
    private final double clear;

    private WireHoles(List<Region> woods, double clear) {
        this.woods = woods;
        this.clear = clear;
    }

    /** A pair of places that might do. @param most how many plates it can fit at best */
    private record Pair(double y, double z, int most) { }

    /** The pair that fits the most plates, of several the widest apart, of those the lowest.
     *  @param woods of the plates
     *  @param diameter of the hole, metres
     *  @param web wood left round it, metres
     *  @return port then starboard; nothing where no two plates share a pair */
    public static List<PlanePoint> common(List<Region> woods, double diameter, double web) {
        List<Region> there = woods.stream().filter(wood -> !wood.isEmpty()).toList();
        return there.size() < 2 ? List.of() : new WireHoles(there, diameter / 2 + web).best();
    }

    /** Whether a hole leaves its web in a plate. */
    public static boolean fits(Region wood, PlanePoint place, double diameter, double web) {
        return wood.clear(place) >= diameter / 2 + web;
    }

    private List<PlanePoint> best() {
        List<Pair> pairs = candidates();
        pairs.sort(Comparator.comparingInt(Pair::most).reversed().thenComparing(Comparator.comparingDouble(Pair::y).reversed()).thenComparingDouble(Pair::z));
        Pair best = null;
        long fit = 1;
        for (Pair pair : pairs) {
            if (pair.most() <= fit)
                break;
            long fits = woods.stream().filter(wood -> wood.clear(new PlanePoint(pair.y(), pair.z())) >= clear
                    && wood.clear(new PlanePoint(-pair.y(), pair.z())) >= clear).count();
            if (fits > fit) {
                fit = fits;
                best = pair;
            }
        }
        return best == null ? List.of() : List.of(new PlanePoint(-best.y(), best.z()), new PlanePoint(best.y(), best.z()));
    }

    /** Seen along level and upright lines alone, which is quick; how far round is looked at afterwards, best first. */
    private List<Pair> candidates() {
        double broad = 0, low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY;
        for (Region wood : woods) {
            broad = Math.max(broad, wood.pieces().getFirst().maxY());
            low = Math.min(low, wood.pieces().getFirst().minZ());
            high = Math.max(high, wood.pieces().getFirst().maxZ());
        }
        double across = step(broad / ACROSS), up = step((high - low) / UP);
        int columns = (int) (broad / across), rows = (int) ((high - low) / up);
        double bottom = Math.ceil(low / up) * up;
        int[][] most = new int[columns + 1][rows + 1];
        for (Region wood : woods) {
            boolean[][] fits = level(wood, across, bottom, up, columns, rows);
            for (int c = 1; c <= columns; c++) {
                List<Crosscut.Span> starboard = Crosscut.upright(wood, c * across), port = Crosscut.upright(wood, -c * across);
                for (int r = 0; r <= rows; r++)
                    if (fits[c][r] && holds(starboard, bottom + r * up) && holds(port, bottom + r * up))
                        most[c][r]++;
            }
        }
        List<Pair> pairs = new ArrayList<>();
        for (int c = 1; c <= columns; c++)
            for (int r = 0; r <= rows; r++)
                if (most[c][r] > 1)
                    pairs.add(new Pair(tidy(c * across), tidy(bottom + r * up), most[c][r]));
        return pairs;
    }

    private boolean[][] level(Region wood, double across, double bottom, double up, int columns, int rows) {
        boolean[][] fits = new boolean[columns + 1][rows + 1];
        for (int r = 0; r <= rows; r++) {
            List<Crosscut.Span> spans = Crosscut.level(wood, bottom + r * up);
            for (int c = 1; c <= columns; c++)
                fits[c][r] = holds(spans, c * across) && holds(spans, -c * across);
        }
        return fits;
    }

    private boolean holds(List<Crosscut.Span> spans, double at) {
        return spans.stream().anyMatch(span -> span.holds(at - clear, at + clear));
    }

    /** Without the digits that multiplying leaves behind. */
    private static double tidy(double place) {
        return Math.rint(place * 1e4) / 1e4;
    }

    private static double step(double size) {
        return Math.max(1, Math.ceil(size / STEP)) * STEP;
    }
}
