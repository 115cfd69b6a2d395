package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.draft.DraftOrder;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePlace;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.section.SectionKind;
import mouldwright.plan.spec.Mould;

/** A moulded end face of the plug, and what of it a part of the mould covers: the face is cut straight from edge to edge. */
final class EndFace {

    /** How far chords may leave the outline, m. */
    private static final double CHORD = 1e-4;
    /** How far past a border it is looked whether the surface goes on, as a share of the half girth. */
    private static final double PAST = 1e-5;

    private final ShapeMeasures.End end;
    private final boolean forward;
    private final Slice slice;
    private final List<PlanePoint> outline;

    EndFace(ShapeMeasures shape, ShapeMeasures.End end) {
        this.end = end;
        double x = end.station().x() * shape.scale();
        this.forward = x <= shape.plug().startX() + Guard.SMALLEST;
        this.slice = shape.plug().at(x, forward ? Side.AFT : Side.FORWARD);
        this.outline = slice.outline(CHORD).points();
    }

    /** What a part covers of a face, with the edges it has there.
     *  @param share   empty where it does not reach the face
     *  @param cuts    its parting lines over the face
     *  @param open    length of the face's edge beyond which nothing is moulded, m */
    record Cut(Optional<MouldMeasures.EndShare> share, List<MouldMeasures.FaceCut> cuts, double open) {
        double parting() {
            return cuts.stream().mapToDouble(MouldMeasures.FaceCut::length).sum();
        }
    }

    Cut cut(Mould.Part part, DraftOrder order) {
        boolean reached = forward ? order.region().fromX() <= slice.x() : order.region().toX() >= slice.x();
        if (!reached)
            return new Cut(Optional.empty(), List.of(), 0);
        Optional<double[]> line = line(part, order);
        List<PlanePoint> kept = line.map(this::kept).orElse(outline);
        double area = line.isPresent() ? slice.area() * area(kept) / area(outline) : slice.area();
        double breadth = extent(kept, true), height = extent(kept, false);
        double draft = Math.asin(Math.clamp(order.pull().x() * (forward ? -1 : 1), -1.0, 1.0));
        List<MouldMeasures.FaceCut> cuts = line.map(this::cuts).orElse(List.of());
        return new Cut(area > 0 ? Optional.of(new MouldMeasures.EndShare(end.station().name(), area, Math.min(breadth, height),
                Math.max(breadth, height), draft, cuts)) : Optional.empty(), cuts, bareEdge(order, line.isPresent()));
    }

    /** The straight cut a y + b z + c = 0, with what is kept on its positive side; empty where the part takes the whole face. */
    private Optional<double[]> line(Mould.Part part, DraftOrder order) {
        if (order.starboard() != order.port())
            return Optional.of(upright(order.starboard() ? 1 : -1));
        Optional<GirthPlace> border = MouldParts.border(part).filter(place -> goesOn(place, MouldParts.above(part), order));
        if (border.isEmpty())
            return Optional.empty();
        SurfacePoint starboard = point(border.get(), false);
        SurfacePoint port = point(border.get(), true);
        double portY = slice.loft().kind() == SectionKind.HALF ? -port.y() : port.y();
        double a = -(starboard.z() - port.z()), b = starboard.y() - portY;
        double sign = MouldParts.above(part) == b > 0 ? 1 : -1;
        return Optional.of(new double[] {sign * a, sign * b, -sign * (a * starboard.y() + b * starboard.z())});
    }

    /** From the lowest to the highest place, which on a half body lie in the middle.
     *  @param sign 1 to keep what lies to starboard */
    private double[] upright(int sign) {
        if (slice.loft().kind() == SectionKind.HALF)
            return new double[] {sign, 0, 0};
        SurfacePlace from = slice.lowest(), to = slice.highest();
        SurfacePoint low = slice.point(from.stretch(), from.u()), high = slice.point(to.stretch(), to.u());
        double a = high.z() - low.z(), b = low.y() - high.y();
        return new double[] {sign * a, sign * b, -sign * (a * low.y() + b * low.z())};
    }

    private SurfacePoint point(GirthPlace place, boolean port) {
        SurfacePlace at = slice.placeAtShare(slice.share(place, port).orElse(0.0), port);
        return slice.point(at.stretch(), at.u());
    }

    /** Whether the moulded surface goes on past a border: if not, the part takes what is left of the face too. */
    private boolean goesOn(GirthPlace place, boolean above, DraftOrder order) {
        double share = slice.share(place, false).orElse(0.0) + (above ? -PAST : PAST);
        return share > 0 && share < 1 && !slice.isBare(slice.placeAtShare(share, false), order.bare())
                && Math.abs(slice.placeAtShare(share, false).share() - share) < PAST / 2;
    }

    /** What of the outline lies on the positive side; a polygon clipped by a half plane. */
    private List<PlanePoint> kept(double[] line) {
        List<PlanePoint> kept = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            PlanePoint p = outline.get(i), q = outline.get((i + 1) % outline.size());
            double at = value(line, p), next = value(line, q);
            if (at >= 0)
                kept.add(p);
            if (at < 0 != next < 0)
                kept.add(between(p, q, at / (at - next)));
        }
        return kept;
    }

    /** The cut inside the outline, in as many lengths as the outline leaves it. */
    private List<MouldMeasures.FaceCut> cuts(double[] line) {
        List<PlanePoint> crossings = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            PlanePoint p = outline.get(i), q = outline.get((i + 1) % outline.size());
            double at = value(line, p), next = value(line, q);
            if (at < 0 != next < 0)
                crossings.add(between(p, q, at / (at - next)));
        }
        crossings.sort(Comparator.comparingDouble(c -> line[1] * c.y() - line[0] * c.z()));
        List<MouldMeasures.FaceCut> cuts = new ArrayList<>();
        for (int i = 0; i + 1 < crossings.size(); i += 2)
            cuts.add(new MouldMeasures.FaceCut(slice.x(), crossings.get(i), crossings.get(i + 1)));
        return cuts;
    }

    private double bareEdge(DraftOrder order, boolean cut) {
        GirthBand band = cut && order.starboard() && order.port() ? order.region().band() : GirthBand.WHOLE;
        double half = slice.girth() / 2, bare = 0;
        for (boolean port : new boolean[] {false, true})
            if (port ? order.port() : order.starboard()) {
                double all = slice.shares(band, port).intervals().stream().mapToDouble(i -> i.high() - i.low()).sum() * half;
                bare += Math.max(0, all - GirthRuns.ofSide(slice, order.bare(), band, port).total());
            }
        return bare > 1e-6 * half ? bare : 0;
    }

    private static double value(double[] line, PlanePoint p) {
        return line[0] * p.y() + line[1] * p.z() + line[2];
    }

    private static PlanePoint between(PlanePoint p, PlanePoint q, double share) {
        return new PlanePoint(p.y() + share * (q.y() - p.y()), p.z() + share * (q.z() - p.z()));
    }

    private static double area(List<PlanePoint> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            PlanePoint p = ring.get(i), q = ring.get((i + 1) % ring.size());
            twice += p.y() * q.z() - q.y() * p.z();
        }
        return Math.abs(twice) / 2;
    }

    private static double extent(List<PlanePoint> points, boolean breadth) {
        double low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY;
        for (PlanePoint p : points) {
            low = Math.min(low, breadth ? p.y() : p.z());
            high = Math.max(high, breadth ? p.y() : p.z());
        }
        return Math.max(0, high - low);
    }
}
