package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import mouldwright.drawing.Spot;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.plane.Outline;

/** How far a body reaches at each x: what is seen of it from the side and from above. */
final class Silhouette {

    /** Between two stations; the spline between them bends once or twice. */
    private static final int PER_SPAN = 12;
    private static final double CHORD = 1e-4;

    /** Reach of a section. All in metres; {@code port} is the least half-breadth, negative to port. */
    record Reach(double x, double port, double starboard, double low, double high) { }

    private final Loft loft;
    private final List<Reach> reaches = new ArrayList<>();

    /** @param further x at which a sample is wanted besides stations and what lies between them */
    Silhouette(Loft loft, List<Double> further) {
        this.loft = loft;
        TreeSet<Double> places = new TreeSet<>(further);
        List<Double> stations = loft.stations();
        for (int i = 0; i + 1 < stations.size(); i++)
            for (int k = 0; k <= PER_SPAN; k++)
                places.add(stations.get(i) + (stations.get(i + 1) - stations.get(i)) * k / PER_SPAN);
        for (double x : places)
            if (x >= loft.startX() && x <= loft.endX())
                reaches.add(reach(x));
    }

    private Reach reach(double x) {
        Outline outline = at(x).outline(CHORD);
        return new Reach(x, outline.minY(), outline.maxY(), outline.minZ(), outline.maxZ());
    }

    private Slice at(double x) {
        return loft.at(x, x >= loft.endX() ? Side.FORWARD : Side.AFT);
    }

    List<Reach> between(double from, double to) {
        return reaches.stream().filter(reach -> reach.x >= from && reach.x <= to).toList();
    }

    List<Reach> all() {
        return reaches;
    }

    /** All round a stretch seen from the side. */
    List<Spot> profile(View view, double from, double to) {
        List<Spot> spots = new ArrayList<>();
        between(from, to).forEach(reach -> spots.add(view.at(reach.x, reach.low)));
        between(from, to).reversed().forEach(reach -> spots.add(view.at(reach.x, reach.high)));
        return spots;
    }

    /** All round a stretch seen from above, starboard down, as it lies when the profile is turned toward one. */
    List<Spot> plan(View view, double from, double to) {
        List<Spot> spots = new ArrayList<>();
        between(from, to).forEach(reach -> spots.add(view.at(reach.x, -reach.starboard)));
        between(from, to).reversed().forEach(reach -> spots.add(view.at(reach.x, -reach.port)));
        return spots;
    }

    /** Points of a named line on the starboard side, where it is known. */
    List<SurfacePoint> line(String name) {
        List<SurfacePoint> points = new ArrayList<>();
        for (Reach reach : reaches) {
            Slice slice = at(reach.x);
            if (slice.isDegenerate())
                continue;
            Optional<Double> share = slice.share(new GirthPlace.OnLine(name), false);
            share.map(s -> slice.placeAtShare(s, false)).ifPresent(place -> points.add(slice.point(place.stretch(), place.u())));
        }
        return points;
    }

    double low() {
        return reaches.stream().mapToDouble(Reach::low).min().orElse(0);
    }

    double high() {
        return reaches.stream().mapToDouble(Reach::high).max().orElse(0);
    }

    double port() {
        return reaches.stream().mapToDouble(Reach::port).min().orElse(0);
    }

    double starboard() {
        return reaches.stream().mapToDouble(Reach::starboard).max().orElse(0);
    }
}
