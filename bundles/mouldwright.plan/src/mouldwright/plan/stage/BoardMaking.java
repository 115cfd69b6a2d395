package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.draft.LongLine;
import mouldwright.geometry.draft.PartEdge;
import mouldwright.geometry.draft.PartingStrip;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.section.SectionKind;
import mouldwright.plan.stage.MouldMeasures.Board;
import mouldwright.plan.stage.MouldMeasures.FaceCut;

/** Makes the parting boards of a mould: one for each parting line, with the half named first, for the flange laid up on it is the pattern of the other.
 *  Where the line goes on over a moulded end face, so does the board; the corner between the two is filled by the one on the face. */
final class BoardMaking {

    /** Places nearer than this are one, m: half of what a saw cuts away. */
    private static final double ONE = 1e-3;

    private final ShapeMeasures shape;
    private final double flange;
    private final List<Board> boards = new ArrayList<>();
    private final List<LongLine> lines = new ArrayList<>();
    private final List<FaceCut> cuts = new ArrayList<>();

    /** @param flange its width, m */
    BoardMaking(ShapeMeasures shape, double flange) {
        this.shape = shape;
        this.flange = flange;
    }

    List<Board> of(List<MouldMeasures.Piece> pieces) {
        if (pieces.size() < 2)
            return List.of();
        for (MouldMeasures.Piece piece : pieces)
            piece.edges().stream().filter(edge -> edge.kind() == PartEdge.Kind.PARTING).forEach(edge -> along(piece, edge));
        for (MouldMeasures.Piece piece : pieces)
            piece.ends().forEach(end -> end.cuts().forEach(cut -> over(piece, end.station(), cut)));
        return boards;
    }

    private void along(MouldMeasures.Piece piece, PartEdge edge) {
        if (lines.stream().anyMatch(line -> same(line, edge.line())))
            return;
        lines.add(edge.line());
        PartingStrip.of(edge.line(), MouldParts.pull(piece.part().pull()), flange)
                .ifPresent(strip -> boards.add(new Board(piece.part(), runs(edge), Optional.empty(), strip, marks(strip))));
    }

    private void over(MouldMeasures.Piece piece, String station, FaceCut cut) {
        if (cut.length() < ONE || cuts.stream().anyMatch(other -> same(other, cut)))
            return;
        cuts.add(cut);
        boards.add(new Board(piece.part(), Board.Runs.END, Optional.of(station), PartingStrip.straight(cut.length(), flange, meets(cut, cut.from()), meets(cut, cut.to())), List.of()));
    }

    private List<MouldMeasures.StationMark> marks(PartingStrip strip) {
        List<MouldMeasures.StationMark> marks = new ArrayList<>();
        shape.borders().forEach(border -> strip.at(border.station().x() * shape.scale()).ifPresent(rung -> marks.add(new MouldMeasures.StationMark(border.name(), rung))));
        return marks;
    }

    /** A line in the middle of the body runs along its top or its bottom. */
    private Board.Runs runs(PartEdge edge) {
        List<SurfacePoint> points = edge.line().points();
        SurfacePoint first = points.getFirst(), last = points.getLast(), middle = points.get(points.size() / 2);
        if (Math.abs(last.x() - first.x()) < ONE)
            return Board.Runs.ROUND;
        if (Math.abs(middle.ny()) <= Math.abs(middle.nz()))
            return middle.nz() > 0 ? Board.Runs.TOP : Board.Runs.BOTTOM;
        return edge.port() ? Board.Runs.PORT : Board.Runs.STARBOARD;
    }

    /** Whether a board along the body ends where a cut over a face does. */
    private boolean meets(FaceCut cut, PlanePoint at) {
        double y = half() ? Math.abs(at.y()) : at.y();
        SurfacePoint corner = new SurfacePoint(cut.x(), y, at.z(), 0, 0, 0, 0, 0, 0, 0);
        return lines.stream().anyMatch(line -> distance(line.points().getFirst(), corner) < ONE || distance(line.points().getLast(), corner) < ONE);
    }

    private boolean half() {
        return shape.plug().kind() == SectionKind.HALF;
    }

    /** Whether two lines are one, told by their ends and their length. */
    private static boolean same(LongLine a, LongLine b) {
        return Math.abs(a.length() - b.length()) < ONE && distance(a.points().getFirst(), b.points().getFirst()) < ONE
                && distance(a.points().getLast(), b.points().getLast()) < ONE
                && distance(a.points().get(a.points().size() / 2), b.points().get(b.points().size() / 2)) < ONE;
    }

    /** Whether two cuts are one; each half sees it from its own side. */
    private static boolean same(FaceCut a, FaceCut b) {
        return Math.abs(a.x() - b.x()) < ONE && (near(a.from(), b.from()) && near(a.to(), b.to()) || near(a.from(), b.to()) && near(a.to(), b.from()));
    }

    private static boolean near(PlanePoint p, PlanePoint q) {
        return Math.hypot(p.y() - q.y(), p.z() - q.z()) < ONE;
    }

    private static double distance(SurfacePoint p, SurfacePoint q) {
        return Math.hypot(Math.hypot(p.x() - q.x(), p.y() - q.y()), p.z() - q.z());
    }
}
