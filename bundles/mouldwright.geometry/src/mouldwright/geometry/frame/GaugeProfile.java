package mouldwright.geometry.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;

/** The inside edge of a female gauge: what a template that is pushed on level from one side can follow of a section. Where the section
 *  is hollow under an overhang, the gauge passes the overhang. */
public final class GaugeProfile {

    private GaugeProfile() { }

    /** One half of a gauge, its body straight-edged.
     *  @param section finished section
     *  @param port    the half pushed on from port, else from starboard
     *  @param low     height where it ends below, metres
     *  @param high    height where it ends above, metres
     *  @param depth   of its body behind the broadest place, metres, positive
     *  @return its outline; past the section it reaches to the centreline */
    public static Outline half(Outline section, boolean port, double low, double high, double depth) {
        double hand = port ? -1 : 1;
        List<PlanePoint> edge = shadow(section, hand, Math.max(low, section.minZ()), Math.min(high, section.maxZ()));
        double back = edge.stream().mapToDouble(PlanePoint::y).max().orElse(0) + depth;
        List<PlanePoint> points = new ArrayList<>();
        if (low < section.minZ()) {
            points.add(new PlanePoint(0, low));
            points.add(new PlanePoint(0, section.minZ()));
        }
        points.addAll(edge);
        if (high > section.maxZ()) {
            points.add(new PlanePoint(0, section.maxZ()));
            points.add(new PlanePoint(0, high));
        }
        points.add(new PlanePoint(back, high));
        points.add(new PlanePoint(back, low));
        return Outline.of(points.stream().map(p -> new PlanePoint(hand * p.y(), p.z())).toList());
    }

    /** The outermost line of one side, going up, from height to height; level steps where the section overhangs. */
    private static List<PlanePoint> shadow(Outline section, double hand, double low, double high) {
        TreeSet<Double> levels = new TreeSet<>(List.of(low, high));
        for (int i = 0; i < section.size(); i++)
            if (section.z(i) > low && section.z(i) < high)
                levels.add(section.z(i));
        List<PlanePoint> edge = new ArrayList<>();
        Double from = null;
        for (Double to : levels) {
            if (from != null)
                outermost(section, hand, from, to, edge);
            from = to;
        }
        return edge;
    }

    /** Between two levels with no corner between them each edge runs straight, so the outermost one is so at both. */
    private static void outermost(Outline section, double hand, double from, double to, List<PlanePoint> edge) {
        double middle = 0.5 * (from + to), most = Double.NEGATIVE_INFINITY;
        int outer = -1;
        for (int i = 0; i < section.size(); i++) {
            int j = (i + 1) % section.size();
            if (section.z(i) <= middle != section.z(j) <= middle && at(section, hand, i, j, middle) > most) {
                most = at(section, hand, i, j, middle);
                outer = i;
            }
        }
        if (outer < 0)
            return;
        int next = (outer + 1) % section.size();
        add(edge, new PlanePoint(Math.max(0, at(section, hand, outer, next, from)), from));
        add(edge, new PlanePoint(Math.max(0, at(section, hand, outer, next, to)), to));
    }

    private static double at(Outline section, double hand, int i, int j, double z) {
        double w = (z - section.z(i)) / (section.z(j) - section.z(i));
        return hand * (section.y(i) + w * (section.y(j) - section.y(i)));
    }

    private static void add(List<PlanePoint> edge, PlanePoint point) {
        if (edge.isEmpty() || edge.getLast().distance(point) > 1e-9)        // two neighbours meet there but for rounding
            edge.add(point);
    }
}
