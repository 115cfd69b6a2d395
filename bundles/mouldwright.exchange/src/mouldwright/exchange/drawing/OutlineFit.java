package mouldwright.exchange.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import mouldwright.exchange.Corners;
import mouldwright.exchange.SectionPoint;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionForm;
import mouldwright.geometry.section.SectionKind;
import mouldwright.geometry.section.SectionRules;

/** Chooses points on a chain of curves so that a section through them follows the drawing within a tolerance: few to begin with, and more wherever
 *  the section leaves the drawing. Where an edge of a polyline turns a little at an end, it stands for a chord of a smooth curve, and the section
 *  passes its ends alone. */
final class OutlineFit {

    private static final int ROUNDS = 14;
    private static final int MOST = 600;

    /** Straight edges that turn less than this are one straight line or a tangent, radians: one degree. */
    private static final double STRAIGHT_ON = Math.toRadians(1);

    private final List<Curve> curves;
    private final double metre;
    private final double tolerance;
    private final boolean full;
    private final boolean[] corner;                 // before each curve, and after the last
    private final boolean[] chord;                  // curves that stand for a chord of a smooth line
    private final List<TreeSet<Double>> places = new ArrayList<>();

    OutlineFit(Chain chain, double metre, double tolerance, boolean full) {
        this.curves = chain.curves();
        this.metre = metre;
        this.tolerance = tolerance;
        this.full = full;
        corner = new boolean[curves.size() + 1];
        chord = new boolean[curves.size()];
        for (int i = 1; i < curves.size(); i++)
            joint(i - 1, i, i);
        if (full) {
            joint(curves.size() - 1, 0, 0);
            corner[curves.size()] = corner[0];
        } else {
            corner[0] = centre(curves.getFirst().start(), curves.getFirst().direction(false), chord[0]);
            corner[curves.size()] = centre(curves.getLast().end(), curves.getLast().direction(true), chord[chord.length - 1]);
        }
        for (Curve curve : curves) {
            TreeSet<Double> own = new TreeSet<>();
            for (int k = 0; k <= curve.pieces(); k++)
                own.add((double) k / curve.pieces());
            places.add(own);
        }
    }

    private void joint(int before, int after, int border) {
        Curve a = curves.get(before), b = curves.get(after);
        double turn = a.direction(true).turn(b.direction(false));
        boolean edges = a instanceof Straight && b instanceof Straight;
        double shorter = Math.min(a.start().distance(a.end()), b.start().distance(b.end())) * metre;
        corner[border] = edges ? Corners.betweenChords(turn, shorter) : turn >= Corners.BETWEEN_CURVES;
        if (edges && !corner[border] && turn > STRAIGHT_ON)
            chord[before] = chord[after] = true;
    }

    /** Half of an outline meets its mirror image at the centreline; a line that does not reach it is no corner. */
    private boolean centre(Point end, Point direction, boolean chord) {
        return Math.abs(end.x()) * metre <= tolerance && Corners.atCentreline(Math.abs(Math.atan2(direction.y(), direction.x())),
                chord ? Corners.BETWEEN_EDGES : Corners.BETWEEN_CURVES);
    }

    List<SectionPoint> points() {
        List<SectionPoint> points = collect();
        for (int round = 0; round < ROUNDS && points.size() < MOST; round++) {
            Optional<Section> section = Section.of(new SectionForm.Points(points.stream().map(OutlineFit::point).toList()),
                    full ? SectionKind.FULL : SectionKind.HALF, SectionRules.LENIENT).section();
            if (section.isEmpty() || !refine(section.get().outline(tolerance / 10)))
                break;
            points = collect();
        }
        return points;
    }

    private static OutlinePoint point(SectionPoint point) {
        return new OutlinePoint(point.y(), point.z(), point.knuckle(), 0, Optional.empty(), false);
    }

    /** Halves every span that the section leaves. @return whether there was one */
    private boolean refine(Outline outline) {
        boolean any = false;
        for (int i = 0; i < curves.size(); i++) {
            if (chord[i])
                continue;
            List<Double> own = List.copyOf(places.get(i));
            for (int k = 1; k < own.size(); k++) {
                double from = own.get(k - 1), to = own.get(k);
                if (leaves(curves.get(i), from, to, outline)) {
                    places.get(i).add(0.5 * (from + to));
                    any = true;
                }
            }
        }
        return any;
    }

    private boolean leaves(Curve curve, double from, double to, Outline outline) {
        for (int q = 1; q <= 3; q++) {
            Point at = curve.at(from + q / 4.0 * (to - from));
            if (outline.distance(new PlanePoint(at.x() * metre, at.y() * metre)) > 0.9 * tolerance)
                return true;
        }
        return false;
    }

    private List<SectionPoint> collect() {
        List<SectionPoint> points = new ArrayList<>();
        int last = curves.size() - 1;
        for (int i = 0; i <= last; i++)
            for (double t : places.get(i)) {
                if (t == 1 && i < last)
                    continue;
                Point here = curves.get(i).at(t);
                boolean joint = t == 0 && i > 0;
                Point at = joint ? middle(here, curves.get(i - 1).end()) : here;
                boolean end = i == 0 && t == 0 || i == last && t == 1;
                points.add(point(at, end, t == 0 ? corner[i] : t == 1 && corner[last + 1]));
            }
        if (full)
            points.set(points.size() - 1, points.getFirst());
        return points;
    }

    /** An end that lies on the centreline within the tolerance lies on it. */
    private SectionPoint point(Point at, boolean end, boolean knuckle) {
        double y = at.x() * metre;
        double placed = full ? (end ? 0 : y) : end && Math.abs(y) <= tolerance || y < 0 ? 0 : y;
        return new SectionPoint(placed + 0.0, at.y() * metre + 0.0, knuckle, Optional.empty());
    }

    private static Point middle(Point a, Point b) {
        return new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    }
}
