package mouldwright.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleFunction;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.LoftResult;
import mouldwright.geometry.loft.LoftStation;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionForm;
import mouldwright.geometry.section.SectionKind;
import mouldwright.geometry.section.SectionResult;
import mouldwright.geometry.section.SectionRules;

/** Bodies of known size for the tests. */
public final class Bodies {
    public static final BooleanSupplier NEVER = () -> false;

    private Bodies() { }

    public static Section half(SectionForm form) {
        return section(form, SectionKind.HALF);
    }

    public static Section full(SectionForm form) {
        return section(form, SectionKind.FULL);
    }

    public static Section section(SectionForm form, SectionKind kind) {
        SectionResult result = Section.of(form, kind, SectionRules.LENIENT);
        return result.section().orElseThrow(() -> new AssertionError(result.faults()));
    }

    public static Loft loft(List<LoftStation> stations) {
        LoftResult result = Loft.through(stations);
        return result.loft().orElseThrow(() -> new AssertionError(result.faults()));
    }

    public static Loft loft(DoubleFunction<Section> at, double... xs) {
        List<LoftStation> stations = new ArrayList<>();
        for (double x : xs)
            stations.add(new LoftStation(x, at.apply(x), false));
        return loft(stations);
    }

    public static double[] spread(double from, double to, int count) {
        double[] xs = new double[count];
        for (int i = 0; i < count; i++)
            xs[i] = i == count - 1 ? to : from + (to - from) * i / (count - 1);
        return xs;
    }

    /** A circle about y = 0, z = height; a nose if the radius is 0. */
    public static SectionForm circle(double radius, double height) {
        return radius == 0 ? new SectionForm.Nose(0, height)
                : new SectionForm.Superellipse(radius, 2 * radius, 2, height - radius);
    }

    /** A cone frustum along x, axis at height 1, stations 0 to length. */
    public static Loft frustum(double foreRadius, double aftRadius, double length, int stations) {
        return loft(x -> half(circle(foreRadius + (aftRadius - foreRadius) * x / length, 1)), spread(0, length, stations));
    }

    /** Ellipsoid of semi-axes a along, b across, c up, about the origin, with pointed ends. */
    public static Loft ellipsoid(double a, double b, double c, int stations) {
        return loft(x -> {
            double r = Math.sqrt(Math.max(0, 1 - x * x / (a * a)));
            return half(r == 0 ? new SectionForm.Nose(0, 0) : new SectionForm.Superellipse(b * r, 2 * c * r, 2, -c * r));
        }, spread(-a, a, stations));
    }

    /** Wigley's parabolic hull, y = B/2 (1 - (2x/L)^2)(1 - (z/T)^2), open at its waterline z = 0, with knife-edged ends. */
    public static Loft wigley(double length, double breadth, double draught, int stations) {
        return loft(x -> half(wigleySection(x, length, breadth, draught)), spread(-length / 2, length / 2, stations));
    }

    public static SectionForm wigleySection(double x, double length, double breadth, double draught) {
        List<OutlinePoint> points = new ArrayList<>();
        double along = Math.max(0, 1 - 4 * x * x / (length * length));
        for (double z : spread(-draught, 0, 11))
            points.add(OutlinePoint.smooth(breadth / 2 * along * (1 - z * z / (draught * draught)), z));
        points.set(0, OutlinePoint.knuckle(0, -draught));
        return new SectionForm.Points(points);
    }

    /** An upright rectangle of a half-breadth from a height up. */
    public static SectionForm box(double halfBreadth, double bottom, double top) {
        return SectionForm.Points.of(OutlinePoint.smooth(0, bottom), OutlinePoint.knuckle(halfBreadth, bottom),
                OutlinePoint.knuckle(halfBreadth, top), OutlinePoint.smooth(0, top));
    }

    /** A closed ring of points, starboard first, from a half section's points. */
    public static SectionForm mirroredRing(List<OutlinePoint> half) {
        List<OutlinePoint> ring = new ArrayList<>(half);
        for (int i = half.size() - 2; i >= 0; i--) {
            OutlinePoint p = half.get(i);
            ring.add(new OutlinePoint(-p.y(), p.z(), p.knuckle(), p.radius(), p.line(), p.bare()));
        }
        return new SectionForm.Points(ring);
    }

    /** Points on the right half of a circle about the origin, bottom to top. */
    public static List<OutlinePoint> halfCircle(double radius, int count) {
        List<OutlinePoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double angle = Math.PI * i / (count - 1);
            points.add(OutlinePoint.smooth(i == 0 || i == count - 1 ? 0 : radius * Math.sin(angle), -radius * Math.cos(angle)));
        }
        return points;
    }
}
