package mouldwright.check;

import java.util.List;
import java.util.Optional;
import mouldwright.geometry.section.Fairness;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.SectionKind;
import mouldwright.geometry.section.Standoff;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Station;
import mouldwright.plan.stage.ShapeMeasures;

/** MW106: a point that stands off the curve of its neighbours as a slip of the pen does; cut in plywood it is a bump for good. */
final class PointOffTheCurve implements Check {

    /** Less than this is within what a pencil and a batten do, m. */
    private static final double LEAST = 0.002;

    @Override public void examine(BuildPlan plan, Findings out) {
        if (plan.measurements().find(ShapeMeasures.class).isEmpty())
            return;
        SectionKind kind = plan.spec().body().sections() == Body.Sections.HALF ? SectionKind.HALF : SectionKind.FULL;
        for (Station station : plan.spec().body().stations())
            if (station.form() instanceof Form.Points points)
                examine(station, points, kind, out);
    }

    private static Fix[] fixes(Form.Point point, Standoff slip) {
        if (point.knuckle())
            return new Fix[0];
        return new Fix[] {Fix.of("move the point to the curve of its neighbours", new Remedy.Replace(point.origin(), fair(slip))),
            Fix.of("mark a knuckle", new Remedy.Replace(point.origin(), Points.knuckle(point)))};
    }

    /** To a tenth of a millimetre, which is what a section is drawn to. */
    private static String fair(Standoff slip) {
        return Findings.exact(slip.fairY(), 1) + " " + Findings.exact(slip.fairZ(), 1);
    }

    private static void examine(Station station, Form.Points form, SectionKind kind, Findings out) {
        List<OutlinePoint> points = form.points().stream()
                .map(p -> new OutlinePoint(p.y(), p.z(), p.knuckle(), p.radius().orElse(0), Optional.empty(), p.bare())).toList();
        for (Standoff slip : Fairness.slips(points, kind, LEAST))
            out.warn("MW106", form.points().get(slip.point()).origin(), "this point of " + station.name() + " stands " + Findings.length(slip.off())
                    + " off the curve of its neighbours, as a slip of the pen does", "the fair point is " + Findings.length(slip.fairY()) + ", " + Findings.length(slip.fairZ())
                    + "; or mark a knuckle", fixes(form.points().get(slip.point()), slip));
    }
}
