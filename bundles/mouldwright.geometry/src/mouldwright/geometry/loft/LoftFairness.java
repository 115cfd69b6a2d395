package mouldwright.geometry.loft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.section.SectionPlace;
import mouldwright.geometry.section.SectionShape;
import mouldwright.geometry.section.Standoff;

/** Compares the points of a station with the body its neighbours make without it. */
public final class LoftFairness {
    /** Neighbours to each side that take part: farther ones hardly move the spline. */
    private static final int REACH = 3;
    /** With fewer neighbours in all there is no curve to compare with. */
    private static final int LEAST = 4;

    private LoftFairness() { }

    /** Stand-offs along the body of the points of one station, in the plane of the station and along the outline's normal.
     *  Nothing for a station at an end, at or beside a crease or a pinch, or with too few neighbours.
     *  @param stations those that shape the body, without faults
     *  @param index    the station
     *  @param points   its points as given, metres; of a half section to starboard */
    public static List<Standoff> along(List<LoftStation> stations, int index, List<PlanePoint> points) {
        Optional<Loft> without = without(stations, index);
        if (without.isEmpty())
            return List.of();
        LoftStation station = stations.get(index);
        Slice fair = without.get().at(station.x());
        List<Standoff> found = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            SectionPlace place = station.section().nearest(points.get(i));
            SurfacePoint p = fair.point(place.stretch(), place.u());
            double length = Math.hypot(p.yu(), p.zu());
            double ny = p.zu() / length, nz = -p.yu() / length;
            double off = (points.get(i).y() - p.y()) * ny + (points.get(i).z() - p.z()) * nz;
            found.add(new Standoff(i, Math.abs(off), points.get(i).y() - off * ny, points.get(i).z() - off * nz));
        }
        return found;
    }

    private static Optional<Loft> without(List<LoftStation> stations, int index) {
        List<LoftStation> window = new ArrayList<>();
        if (index == 0 || index == stations.size() - 1 || !plain(stations.get(index)))
            return Optional.empty();
        int from = index, to = index;
        while (from > 0 && index - from < REACH && (from == index || plain(stations.get(from))))
            from--;
        while (to < stations.size() - 1 && to - index < REACH && (to == index || plain(stations.get(to))))
            to++;
        for (int i = from; i <= to; i++)
            if (i != index)
                window.add(new LoftStation(stations.get(i).x(), stations.get(i).section(), false));
        return window.size() < LEAST ? Optional.empty() : Loft.through(window).loft();
    }

    private static boolean plain(LoftStation station) {
        return !station.crease() && station.section().shape() == SectionShape.BODY;
    }
}
