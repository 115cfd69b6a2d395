package mouldwright.geometry.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;

/** Draws the {@link Silhouette} of a part at an angle. A strip takes up what lies inside at its middle height, and the full run of every edge, grown to a
 *  round-ended bar, within it: whatever else of the part is in the strip lies straight above or below one of these. */
final class SilhouetteTracer {
    /** Of a unit: less than this over a whole number is rounding. */
    private static final double ROUNDING = 1e-3;
    /** Metres; an edge on the border of two strips belongs to the one it bounds. */
    private static final double BORDER = 1e-10;

    private final List<PlanePoint[]> rings = new ArrayList<>();
    private final double grown, left, foot;
    private final int degrees, width, height, strip, count;
    private final List<List<double[]>> strips = new ArrayList<>();
    private final double shiftX, shiftY;

    private SilhouetteTracer(NestPart part, int degrees, double kerf, int strip) {
        this.degrees = degrees;
        this.strip = strip;
        this.grown = 0.5 * kerf;
        rings.add(turned(part.outer()));
        part.openings().forEach(opening -> rings.add(turned(opening)));
        double minX = least(0, true), minY = least(0, false);
        shiftX = -minX;
        shiftY = -minY;
        left = minX - grown;
        foot = minY - grown;
        width = up(most(0, true) - minX + kerf);
        height = up(most(0, false) - minY + kerf);
        count = (height + strip - 1) / strip;
        for (int i = 0; i < count; i++)
            strips.add(new ArrayList<>());
    }

    /** @param part    what is drawn
     *  @param degrees it is turned by
     *  @param kerf    metres
     *  @param strip   height of a strip, units */
    static Silhouette trace(NestPart part, int degrees, double kerf, int strip) {
        if (part.openings().isEmpty())
            return new SilhouetteTracer(part, degrees, kerf, strip).silhouette(Optional.empty());
        NestPart filled = new NestPart(part.key(), part.outer(), List.of(), part.turns());
        return new SilhouetteTracer(part, degrees, kerf, strip).silhouette(Optional.of(trace(filled, degrees, kerf, strip)));
    }

    /** Whether a part lies within a sheet, alone; units. */
    static boolean fits(NestPart part, int degrees, double kerf, int length, int width) {
        PlanePoint[] ring = part.outer().points().stream().map(p -> Placement.turned(p, degrees)).toArray(PlanePoint[]::new);
        var along = Arrays.stream(ring).mapToDouble(PlanePoint::y).summaryStatistics();
        var across = Arrays.stream(ring).mapToDouble(PlanePoint::z).summaryStatistics();
        return up(along.getMax() - along.getMin() + kerf) <= length && up(across.getMax() - across.getMin() + kerf) <= width;
    }

    private PlanePoint[] turned(Outline ring) {
        return ring.points().stream().map(p -> Placement.turned(p, degrees)).toArray(PlanePoint[]::new);
    }

    private double least(int ring, boolean along) {
        return Arrays.stream(rings.get(ring)).mapToDouble(p -> along ? p.y() : p.z()).min().orElseThrow();
    }

    private double most(int ring, boolean along) {
        return Arrays.stream(rings.get(ring)).mapToDouble(p -> along ? p.y() : p.z()).max().orElseThrow();
    }

    private static int up(double metres) {
        return (int) Math.ceil(metres * Silhouette.UNIT - ROUNDING);
    }

    private static int down(double metres) {
        return (int) Math.floor(metres * Silhouette.UNIT + ROUNDING);
    }

    private double bottom(int i) {
        return foot + i * (double) strip / Silhouette.UNIT;
    }

    private double top(int i) {
        return foot + Math.min((i + 1.0) * strip, height) / Silhouette.UNIT;
    }

    private Silhouette silhouette(Optional<Silhouette> solid) {
        for (PlanePoint[] ring : rings)
            for (int i = 0; i < ring.length; i++)
                edge(ring[i], ring[(i + 1) % ring.length]);
        for (int i = 0; i < count; i++)
            inside(0.5 * (bottom(i) + top(i)), strips.get(i));
        int[] begins = new int[count + 1];
        List<int[]> all = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            all.addAll(joined(strips.get(i)));
            begins[i + 1] = all.size();
        }
        Silhouette.Room[] rooms = new Silhouette.Room[rings.size() - 1];
        for (int k = 1; k < rings.size(); k++)
            rooms[k - 1] = new Silhouette.Room(strip * Math.ceilDiv(up(least(k, false) + grown - foot), strip),
                    strip * (down(most(k, false) - grown - foot) / strip), down(most(k, true) - least(k, true) - 2 * grown));
        return new Silhouette(degrees, width, height, strip, begins, all.stream().mapToInt(s -> s[0]).toArray(), all.stream().mapToInt(s -> s[1]).toArray(),
                rooms, shiftX, shiftY, solid);
    }

    /** What an edge, grown, takes up of each strip it comes into. */
    private void edge(PlanePoint p, PlanePoint q) {
        double lowest = Math.min(p.z(), q.z()) - grown, highest = Math.max(p.z(), q.z()) + grown, size = strip / Silhouette.UNIT;
        int first = Math.clamp((int) Math.floor((lowest - foot) / size) - 1, 0, count - 1), last = Math.clamp((int) ((highest - foot) / size) + 1, 0, count - 1);
        double dx = q.y() - p.y(), dy = q.z() - p.z(), length = Math.hypot(dx, dy);
        double nx = length == 0 ? 0 : -dy / length * grown, ny = length == 0 ? 0 : dx / length * grown;
        for (int i = first; i <= last; i++) {
            Run run = new Run(bottom(i) + BORDER, top(i) - BORDER);
            run.disc(p.y(), p.z(), grown);
            run.disc(q.y(), q.z(), grown);
            run.line(p.y() + nx, p.z() + ny, q.y() + nx, q.z() + ny);
            run.line(p.y() - nx, p.z() - ny, q.y() - nx, q.z() - ny);
            run.line(p.y() + nx, p.z() + ny, p.y() - nx, p.z() - ny);
            run.line(q.y() + nx, q.z() + ny, q.y() - nx, q.z() - ny);
            if (run.from <= run.to)
                strips.get(i).add(new double[] { run.from, run.to });
        }
    }

    /** What lies inside at a height. */
    private void inside(double level, List<double[]> spans) {
        List<Double> cuts = new ArrayList<>();
        for (PlanePoint[] ring : rings)
            for (int i = 0; i < ring.length; i++) {
                PlanePoint p = ring[i], q = ring[(i + 1) % ring.length];
                if (p.z() <= level != q.z() <= level)
                    cuts.add(p.y() + (q.y() - p.y()) * (level - p.z()) / (q.z() - p.z()));
            }
        cuts.sort(Comparator.naturalOrder());
        for (int k = 0; k + 1 < cuts.size(); k += 2)
            spans.add(new double[] { cuts.get(k), cuts.get(k + 1) });
    }

    /** In whole units, in order, apart; gaps narrower than a strip is high are filled, since hardly anything fits there. */
    private List<int[]> joined(List<double[]> spans) {
        spans.sort(Comparator.<double[]>comparingDouble(s -> s[0]).thenComparingDouble(s -> s[1]));
        List<int[]> joined = new ArrayList<>();
        for (double[] span : spans) {
            int from = Math.max(0, down(span[0] - left)), to = Math.min(width, up(span[1] - left));
            if (!joined.isEmpty() && from - joined.getLast()[1] < strip)
                joined.getLast()[1] = Math.max(joined.getLast()[1], to);
            else
                joined.add(new int[] { from, to });
        }
        return joined;
    }

    /** How far things reach within a band of heights. */
    private static final class Run {
        private final double low, high;
        double from = Double.POSITIVE_INFINITY, to = Double.NEGATIVE_INFINITY;

        Run(double low, double high) {
            this.low = low;
            this.high = high;
        }

        void disc(double x, double y, double radius) {
            double off = Math.max(0, Math.max(low - y, y - high));
            if (off <= radius) {
                double half = Math.sqrt(radius * radius - off * off);
                reach(x - half);
                reach(x + half);
            }
        }

        void line(double x0, double y0, double x1, double y1) {
            if (Math.max(y0, y1) < low || Math.min(y0, y1) > high)
                return;
            reach(end(x0, y0, x1, y1));
            reach(end(x1, y1, x0, y0));
        }

        /** Where a line enters the band, coming from its first end; that end itself if it lies within. */
        private double end(double x0, double y0, double x1, double y1) {
            double level = Math.clamp(y0, low, high);
            return level == y0 ? x0 : x0 + (x1 - x0) * (level - y0) / (y1 - y0);
        }

        private void reach(double x) {
            from = Math.min(from, x);
            to = Math.max(to, x);
        }
    }
}
