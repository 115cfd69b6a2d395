package mouldwright.geometry.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.curve.ArcPath;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;

/** The outline of a body at a station: stretches of smooth curve between marks, and the straight closures to the centreline
 *  of a half section that does not reach it. */
public final class Section {
    /** Share of its size within which a section counts as reaching the centreline, closing, or being straight: what is lost
     *  when millimetres are converted and scaled. */
    static final double ROUNDING = 1e-9;

    /** Places looked at in a stretch before the nearest is refined. */
    private static final int LOOKS = 64;

    private final SectionKind kind;
    private final SectionShape shape;
    private final List<Stretch> stretches;
    private final double bottomClosure;
    private final double topClosure;
    private final double outlineLength;
    private final double area;
    private final PlanePoint centroid;

    Section(SectionKind kind, Trace trace) {
        this.kind = kind;
        this.shape = trace.shape();
        List<Stretch> made = new ArrayList<>();
        for (int i = 0; i < trace.pieces().size(); i++)
            made.add(new Stretch(new ArcPath(trace.pieces().get(i).parts()), trace.marks().get(i), trace.marks().get(i + 1),
                    trace.pieces().get(i).bare()));
        stretches = List.copyOf(made);
        outlineLength = stretches.stream().mapToDouble(Stretch::length).sum();
        bottomClosure = closure(stretches.getFirst().at(0).y());
        topClosure = closure(stretches.getLast().at(1).y());
        double sides = kind == SectionKind.HALF ? 2 : 1;
        double oriented = sides * sum((y, z, dy, dz) -> y * dz);
        area = shape == SectionShape.BODY ? oriented : 0;
        centroid = shape == SectionShape.BODY && area != 0
                ? new PlanePoint(kind == SectionKind.HALF ? 0 : sum((y, z, dy, dz) -> y * y / 2 * dz) / area,
                        sides * sum((y, z, dy, dz) -> y * z * dz) / area)
                : middle();
    }

    private double closure(double y) {
        return kind == SectionKind.FULL ? 0 : y;
    }

    private double sum(ArcPath.Integrand figure) {
        return stretches.stream().mapToDouble(s -> s.path().integral(figure)).sum();
    }

    private PlanePoint middle() {
        CurvePoint first = stretches.getFirst().at(0);
        double minY = first.y(), maxY = minY, minZ = first.z(), maxZ = minZ;
        for (Stretch stretch : stretches)
            for (double u : new double[] { 0, 0.5, 1 }) {
                CurvePoint p = stretch.at(u);
                minY = Math.min(minY, p.y());
                maxY = Math.max(maxY, p.y());
                minZ = Math.min(minZ, p.z());
                maxZ = Math.max(maxZ, p.z());
            }
        return new PlanePoint(kind == SectionKind.HALF ? 0 : (minY + maxY) / 2, (minZ + maxZ) / 2);
    }

    /** Builds a section.
     *  @param form  how its outline is given, metres
     *  @param kind  half or full
     *  @param rules what is checked beyond what must hold
     *  @return the section with what was found; never an exception, whatever the figures */
    public static SectionResult of(SectionForm form, SectionKind kind, SectionRules rules) {
        List<SectionFault> faults = new ArrayList<>();
        Optional<Section> section = new Tracer(kind, rules, faults).trace(form)
                .filter(t -> faults.stream().noneMatch(SectionFault::blocking))
                .map(t -> new Section(kind, t));
        section.filter(s -> s.shape == SectionShape.BODY).ifPresent(s -> new SectionInspection(s).examine(faults));
        return new SectionResult(section.filter(s -> faults.stream().noneMatch(SectionFault::blocking)), faults);
    }

    /** Half or full. */
    public SectionKind kind() { return kind; }

    /** Body, knife edge or point. */
    public SectionShape shape() { return shape; }

    /** The stretches in order, cut at every knuckle and every named line. */
    public List<Stretch> stretches() { return stretches; }

    /** Length of the straight closure at bottom centre, one side, metres; 0 for a full section. */
    public double bottomClosure() { return bottomClosure; }

    /** Length of the straight closure at top centre, one side, metres; 0 for a full section. */
    public double topClosure() { return topClosure; }

    /** Length of the stretches alone as given (one side of a half section), without closures, metres. */
    public double outlineLength() { return outlineLength; }

    /** Length of the whole outline, both sides, closures counted, metres. */
    public double girth() {
        return kind == SectionKind.FULL ? outlineLength : 2 * (bottomClosure + outlineLength + topClosure);
    }

    /** Area inside the whole outline, both sides, square metres. */
    public double area() { return area; }

    /** Centroid of that area; of a point or knife edge the middle of its extent. */
    public PlanePoint centroid() { return centroid; }

    /** The place of the stretches nearest to a point; of a half section the point is to lie to starboard. */
    public SectionPlace nearest(PlanePoint point) {
        SectionPlace best = new SectionPlace(0, 0, Double.POSITIVE_INFINITY);
        for (int s = 0; s < stretches.size(); s++) {
            double step = 1.0 / LOOKS;
            for (int i = 0; i <= LOOKS; i++)
                best = closer(best, s, i * step, point);
            for (double h = step; h > 1e-9 && best.stretch() == s; h /= 2)
                best = closer(closer(best, s, best.u() - h, point), s, best.u() + h, point);
        }
        return best;
    }

    private SectionPlace closer(SectionPlace best, int stretch, double u, PlanePoint point) {
        double inside = Math.clamp(u, 0.0, 1.0);
        CurvePoint p = stretches.get(stretch).at(inside);
        double distance = Math.hypot(p.y() - point.y(), p.z() - point.z());
        return distance < best.distance() ? new SectionPlace(stretch, inside, distance) : best;
    }

    /** The whole outline as straight pieces, counter-clockwise seen from aft; a point or knife edge has the area 0.
     *  @param tolerance how far the curve may leave its chords, metres, positive */
    public Outline outline(double tolerance) {
        List<PlanePoint> points = new ArrayList<>();
        for (Stretch stretch : stretches)
            ChordSampler.sample(stretch, tolerance, points);
        if (kind == SectionKind.HALF) {
            for (int i = points.size() - 1; i >= 0; i--)
                points.add(new PlanePoint(-points.get(i).y(), points.get(i).z()));
        }
        return Outline.of(points);
    }
}
