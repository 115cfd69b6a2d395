package mouldwright.check;

import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Station;
import mouldwright.plan.stage.ShapeMeasures;

/** MW105: mat does not follow a corner sharper than 3 mm outside or 12 mm inside: it bridges, and leaves air under the gel coat. Told once for a plug, at the first corner
 *  on the moulded face. */
final class CornerTooSharp implements Check {

    private static final double OUTSIDE = 0.003;
    private static final double INSIDE = 0.012;
    /** Points nearer than this are one, m. */
    private static final double SAME = 1e-6;
    /** Less of a turn than this mat lies over. */
    private static final double NO_CORNER = Math.toRadians(25);

    @Override public void examine(BuildPlan plan, Findings out) {
        if (plan.spec().skin().isEmpty())
            return;
        plan.measurements().find(ShapeMeasures.class).ifPresent(shape -> {
            for (Station station : plan.spec().body().stations())
                if (station.shapes() && (rounded(station, out) || sharp(station, shape, out)))
                    return;
        });
    }

    private static boolean rounded(Station station, Findings out) {
        if (!(station.form() instanceof Form.Points form))
            return false;
        for (Form.Point point : form.points())
            if (point.radius().isPresent() && point.radius().getAsDouble() < OUTSIDE) {
                out.warn("MW105", point.origin(), "corner of " + station.name() + " rounded to " + Findings.length(point.radius().getAsDouble()) + ", " + Findings.length(OUTSIDE)
                        + " at least outside and " + Findings.length(INSIDE) + " inside: mat bridges it", "state a larger `radius`", rounded(point, INSIDE));
                return true;
            }
        return false;
    }

    private static boolean sharp(Station station, ShapeMeasures shape, Findings out) {
        Slice slice = shape.part().at(station.x());
        if (slice.isDegenerate())
            return false;
        for (int j = 0; j + 1 < slice.stretches(); j++) {
            double turn = turn(slice.point(j, 1), slice.point(j + 1, 0));
            boolean moulded = !slice.isBare(slice.place(j, 1 - 1e-6), shape.bare()) && !slice.isBare(slice.place(j + 1, 1e-6), shape.bare());
            if (moulded && Math.abs(turn) > NO_CORNER) {
                double least = turn > 0 ? OUTSIDE : INSIDE;
                out.warn("MW105", station.origin(), (turn > 0 ? "outside" : "inside") + " corner of " + station.name() + " near " + place(slice.point(j, 1)) + " is sharp, radius "
                        + Findings.length(least) + " at least: mat bridges it", "round it: `knuckle radius " + Math.round(least * 1000) + "`", nearest(station, slice.point(j, 1), least));
                return true;
            }
        }
        return false;
    }

    private static Fix rounded(Form.Point point, double radius) {
        return Fix.of("round the corner to " + Findings.length(radius), new Remedy.Replace(point.origin(), Points.words(point, radius)));
    }

    /** The knuckle that makes a corner. The surface looked at is the part's, as the points are. */
    private static Fix[] nearest(Station station, SurfacePoint corner, double radius) {
        if (!(station.form() instanceof Form.Points form))
            return new Fix[0];
        return form.points().stream().filter(point -> point.knuckle() && Math.hypot(Math.abs(point.y()) - Math.abs(corner.y()), point.z() - corner.z()) < SAME)
                .map(point -> rounded(point, radius)).limit(1).toArray(Fix[]::new);
    }

    private static String place(SurfacePoint point) {
        return Findings.length(point.y()) + " out, " + Findings.length(point.z()) + " up";
    }

    /** How far the outline turns, radians; positive outward, as the outline runs counter-clockwise. */
    private static double turn(SurfacePoint end, SurfacePoint start) {
        return Math.atan2(end.yu() * start.zu() - end.zu() * start.yu(), end.yu() * start.yu() + end.zu() * start.zu());
    }
}
