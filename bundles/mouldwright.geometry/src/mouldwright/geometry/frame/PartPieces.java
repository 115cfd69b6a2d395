package mouldwright.geometry.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import mouldwright.geometry.frame.Jointing.Join;
import mouldwright.geometry.frame.Jointing.Joint;
import mouldwright.geometry.frame.PlatePart.Note;
import mouldwright.geometry.frame.PlatePart.Opening;
import mouldwright.geometry.frame.PlatePart.Score;
import mouldwright.geometry.plane.Crosscut;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;

/** Makes the pieces of a part that is jointed, each with what of the marks falls on it, and the straps over its butts. */
public final class PartPieces {
    /** Pieces and straps below this share of the largest come from rounding. */
    private static final double CRUMB = 1e-3;
    private static final double SAME = 1e-6;

    private final PlatePart part;
    private final List<Joint> joints;
    private final Join join;
    private final List<PlatePart> made = new ArrayList<>();

    private PartPieces(PlatePart part, List<Joint> joints, Join join) {
        this.part = part;
        this.joints = joints;
        this.join = join;
    }

    /** The pieces, then the straps.
     *  @param joints one at least, all level or all upright
     *  @param inset  how far a strap stays inside the edges, metres */
    public static List<PlatePart> of(PlatePart part, List<Joint> joints, Join join, double inset) {
        PartPieces pieces = new PartPieces(part, joints, join);
        pieces.cut();
        if (join instanceof Join.Strap(double length))
            pieces.straps(length, inset);
        return pieces.made;
    }

    /** The pieces alone: of a layer whose butts are held together by the layers it is glued to.
     *  @param joints one at least, all level or all upright */
    public static List<PlatePart> ofLayer(PlatePart part, List<Joint> joints, Join join) {
        PartPieces pieces = new PartPieces(part, joints, join);
        pieces.cut();
        return pieces.made;
    }

    private void cut() {
        List<Region> bands = Jointing.pieces(part.wood(), joints, join);
        List<Outline> outlines = new ArrayList<>();
        List<Region> regions = new ArrayList<>();
        for (Region band : bands) {
            Region wood = band.withoutCrumbs(CRUMB);
            for (Outline outline : wood.pieces()) {
                outlines.add(outline);
                regions.add(Region.of(outline, wood.holes().stream().filter(hole -> outline.contains(hole.centroid())).toList()));
            }
        }
        for (int k = 0; k < outlines.size(); k++)
            made.add(piece(k, outlines.size(), outlines.get(k), regions.get(k)));
    }

    private PlatePart piece(int k, int count, Outline outline, Region wood) {
        Predicate<PlanePoint> on = point -> outline.contains(point) || outline.distance(point) < SAME;
        String name = part.name() + " " + (k + 1) + "/" + count;
        List<String> words = new ArrayList<>(List.of(name));
        part.notes().stream().skip(1).map(Note::words).forEach(words::add);
        List<Score> scores = new ArrayList<>();
        for (Score score : part.scores())
            clip(score, on, scores);
        for (Joint joint : joints)
            for (double past : join.past() > 0 ? new double[] { -join.past(), join.past() } : new double[0])
                jointLine(joint, joint.at() + past, wood, scores);
        return new PlatePart(part.key() + "." + (k + 1), part.kind(), name, outline, openings(wood), part.bores().stream().filter(bore -> on.test(bore.centre())).toList(),
                scores, part.marks().stream().filter(mark -> on.test(mark.at())).toList(), part.bevels().stream().filter(mark -> on.test(mark.at())).toList(),
                NoteSpace.write(wood, words), part.sheet(), part.thickness(), part.quantity());
    }

    private List<Opening> openings(Region wood) {
        return wood.holes().stream().map(hole -> new Opening(part.openings().stream()
                .filter(opening -> opening.ring().contains(hole.centroid())).map(Opening::use).findFirst().orElse(Opening.Use.POCKET), hole)).toList();
    }

    /** Where the slope of a scarf begins or ends; past the piece there is none. */
    private static void jointLine(Joint joint, double at, Region wood, List<Score> scores) {
        for (var span : joint.upright() ? Crosscut.upright(wood, at) : Crosscut.level(wood, at))
            scores.add(new Score(Score.Use.JOINT, List.of(point(joint, at, span.from()), point(joint, at, span.to())), false, "scarf"));
    }

    private static PlanePoint point(Joint joint, double at, double along) {
        return joint.upright() ? new PlanePoint(at, along) : new PlanePoint(along, at);
    }

    /** What of a line falls on a piece: its pieces between the corners and where it crosses the bounds of the bands. */
    private void clip(Score score, Predicate<PlanePoint> on, List<Score> into) {
        List<PlanePoint> points = new ArrayList<>();
        int count = score.closed() ? score.points().size() + 1 : score.points().size();
        for (int i = 0; i < count; i++) {
            PlanePoint to = score.points().get(i % score.points().size());
            if (i > 0)
                points.addAll(crossings(score.points().get(i - 1), to));
            points.add(to);
        }
        List<PlanePoint> run = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i++) {
            PlanePoint a = points.get(i), b = points.get(i + 1);
            boolean inside = on.test(new PlanePoint(0.5 * (a.y() + b.y()), 0.5 * (a.z() + b.z())));
            if (inside && run.isEmpty())
                run.add(a);
            if (inside)
                run.add(b);
            if (!inside || i + 2 == points.size())
                flush(score, run, into);
        }
    }

    private static void flush(Score score, List<PlanePoint> run, List<Score> into) {
        if (run.size() > 1)
            into.add(new Score(score.use(), run, false, score.label()));
        run.clear();
    }

    private List<PlanePoint> crossings(PlanePoint a, PlanePoint b) {
        List<PlanePoint> crossings = new ArrayList<>();
        for (Joint joint : joints)
            for (double at : join.past() > 0 ? new double[] { joint.at() - join.past(), joint.at() + join.past() } : new double[] { joint.at() }) {
                double from = joint.upright() ? a.y() : a.z(), to = joint.upright() ? b.y() : b.z();
                if (from < at != to < at) {
                    double w = (at - from) / (to - from);
                    crossings.add(new PlanePoint(a.y() + w * (b.y() - a.y()), a.z() + w * (b.z() - a.z())));
                }
            }
        crossings.sort((p, q) -> Double.compare(p.distance(a), q.distance(a)));
        return crossings;
    }

    /** Over each stretch of wood a butt runs through, inside its edges so that the foam and the skin pass over it. */
    private void straps(double length, double inset) {
        Region within = part.wood().shrunk(inset);
        int number = 0;
        for (Joint joint : joints) {
            Region strap = Jointing.band(within, joint.upright(), joint.at() - length / 2, joint.at() + length / 2).withoutCrumbs(CRUMB);
            for (Outline outline : strap.pieces()) {
                double low = joint.upright() ? outline.minY() : outline.minZ(), high = joint.upright() ? outline.maxY() : outline.maxZ();
                if (low >= joint.at() || high <= joint.at())
                    continue;
                made.add(strap(++number, joint, Region.of(outline, strap.holes().stream().filter(hole -> outline.contains(hole.centroid())).toList())));
            }
        }
    }

    private PlatePart strap(int number, Joint joint, Region wood) {
        Outline outline = wood.pieces().getFirst();
        String name = part.name() + " strap " + number;
        List<Score> scores = new ArrayList<>();
        for (var span : joint.upright() ? Crosscut.upright(wood, joint.at()) : Crosscut.level(wood, joint.at()))
            scores.add(new Score(Score.Use.JOINT, List.of(point(joint, joint.at(), span.from()), point(joint, joint.at(), span.to())), false, "butt"));
        List<PlatePart.Bore> bores = part.bores().stream().filter(bore -> outline.contains(bore.centre()) && wood.clear(bore.centre()) > bore.diameter() / 2).toList();
        return new PlatePart(part.key() + ".strap." + number, PlatePart.Kind.STRAP, name, outline,
                wood.holes().stream().map(hole -> new Opening(Opening.Use.POCKET, hole)).toList(), bores, scores, List.of(), List.of(),
                NoteSpace.write(wood, List.of(name)), part.sheet(), part.thickness(), part.quantity());
    }
}
