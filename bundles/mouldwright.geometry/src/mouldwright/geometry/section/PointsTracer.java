package mouldwright.geometry.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.curve.CurvePart;
import mouldwright.geometry.curve.LineCurve;

/** Traces an outline through points: checks them, splines each knuckle-delimited group, rounds corners and cuts the groups
 *  where named lines cross. */
final class PointsTracer {
    private final SectionKind kind;
    private final SectionRules rules;
    private final List<SectionFault> faults;

    PointsTracer(SectionKind kind, SectionRules rules, List<SectionFault> faults) {
        this.kind = kind;
        this.rules = rules;
        this.faults = faults;
    }

    Optional<Trace> trace(List<OutlinePoint> points) {
        PointsInspection inspection = new PointsInspection(kind, points);
        if (!inspection.examine(faults))
            return Optional.empty();
        if (inspection.knifeEdge())
            return Optional.of(knifeEdge(points));
        return kind == SectionKind.HALF ? Optional.of(half(points)) : Optional.of(full(points));
    }

    /** Straight pieces out and perhaps back, whatever the kind; a full one given one way only returns by itself. */
    private Trace knifeEdge(List<OutlinePoint> given) {
        List<OutlinePoint> points = new ArrayList<>(given);
        if (kind == SectionKind.FULL && PointsInspection.gap(points.getFirst(), points.getLast()) > 0)
            points.add(OutlinePoint.smooth(given.getFirst().y(), given.getFirst().z()));
        List<Trace.Piece> pieces = new ArrayList<>();
        List<Mark> marks = new ArrayList<>(List.of(mark(points.getFirst())));
        List<CurvePart> parts = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            OutlinePoint a = points.get(i - 1), b = points.get(i);
            parts.add(CurvePart.whole(new LineCurve(a.y(), a.z(), b.y(), b.z())));
            if (b.knuckle() || b.line().isPresent() || i == points.size() - 1) {
                pieces.add(new Trace.Piece(parts, b.bare()));
                marks.add(mark(b));
                parts = new ArrayList<>();
            }
        }
        return new Trace(pieces, marks, SectionShape.KNIFE_EDGE);
    }

    private Trace half(List<OutlinePoint> points) {
        int last = points.size() - 1;
        List<PointGroup> groups = new ArrayList<>();
        int start = 0;
        for (int i = 1; i <= last; i++)
            if (i == last || points.get(i).knuckle()) {
                List<Integer> members = new ArrayList<>();
                for (int k = start; k <= i; k++)
                    members.add(k);
                groups.add(PointGroup.open(points, members, start == 0 && mirrored(points, 0),
                        i == last && mirrored(points, last)));
                start = i;
            }
        CornerRounding rounding = new CornerRounding(points, faults);
        if (onCentreline(points, 0) && points.getFirst().knuckle())
            rounding.atBottomCentre(groups.getFirst());
        for (int i = 0; i + 1 < groups.size(); i++)
            rounding.between(groups.get(i), groups.get(i + 1));
        if (onCentreline(points, last) && points.get(last).knuckle())
            rounding.atTopCentre(groups.getLast());
        return assemble(points, groups, -1);
    }

    private static boolean mirrored(List<OutlinePoint> points, int i) {
        return !points.get(i).knuckle() && onCentreline(points, i);
    }

    private static boolean onCentreline(List<OutlinePoint> points, int i) {
        return Math.abs(points.get(i).y()) <= Section.ROUNDING * PointsInspection.size(points);
    }

    /** The ring of points without its repeated last one. A corner marked at either end of the list is one at the seam. */
    private Trace full(List<OutlinePoint> given) {
        List<OutlinePoint> ring = new ArrayList<>(given.subList(0, given.size() - 1));
        OutlinePoint first = given.getFirst(), last = given.getLast();
        ring.set(0, new OutlinePoint(first.y(), first.z(), first.knuckle() || last.knuckle(),
                Math.max(first.radius(), last.radius()), first.line().or(last::line), last.bare()));
        int n = ring.size();
        List<Integer> corners = new ArrayList<>();
        for (int i = 0; i < n; i++)
            if (ring.get(i).knuckle())
                corners.add(i);
        List<PointGroup> groups = new ArrayList<>();
        if (corners.isEmpty())
            groups.add(PointGroup.closed(ring));
        for (int c = 0; c < corners.size(); c++) {
            int from = corners.get(c);
            int to = c + 1 < corners.size() ? corners.get(c + 1) : corners.getFirst() + n;
            List<Integer> members = new ArrayList<>();
            for (int k = from; k <= to; k++)
                members.add(k % n);
            groups.add(PointGroup.open(ring, members, false, false));
        }
        CornerRounding rounding = new CornerRounding(ring, faults);
        for (int c = 0; c < corners.size(); c++)
            rounding.between(groups.get((c + corners.size() - 1) % corners.size()), groups.get(c));
        return assemble(ring, groups, 0);
    }

    /** Cuts the groups at named points and at the seam, and puts what starts at the seam first.
     *  @param seam index of the seam point of a ring, or -1 */
    private Trace assemble(List<OutlinePoint> points, List<PointGroup> groups, int seam) {
        List<Trace.Piece> pieces = new ArrayList<>();
        List<Integer> starts = new ArrayList<>();
        for (PointGroup group : groups) {
            group.reportOvershoot(rules.overshootLimit(), faults);
            boolean bareGroup = points.get(group.lastPoint()).bare() && (seam < 0 || groups.size() > 1);
            int from = 0;
            for (int k = 1; k < group.size(); k++) {
                OutlinePoint p = points.get(group.point(k));
                if (k + 1 < group.size() && p.line().isEmpty() && group.point(k) != seam)
                    continue;
                if (!group.keeps(k))
                    faults.add(new SectionFault.RadiusDoesNotFit(group.point(k), group.cornerRadius(), 0));
                pieces.add(new Trace.Piece(group.parts(from, k), bareGroup || p.bare()));
                starts.add(group.point(from));
                from = k;
            }
        }
        List<Mark> marks = new ArrayList<>();
        int first = Math.max(0, starts.indexOf(Math.max(seam, 0)));
        List<Trace.Piece> ordered = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            ordered.add(pieces.get((first + i) % pieces.size()));
            marks.add(mark(points.get(starts.get((first + i) % pieces.size()))));
        }
        marks.add(mark(seam < 0 ? points.getLast() : points.get(seam)));
        return new Trace(ordered, marks, SectionShape.BODY);
    }

    private static Mark mark(OutlinePoint point) {
        return new Mark(point.line(), point.knuckle());
    }
}
