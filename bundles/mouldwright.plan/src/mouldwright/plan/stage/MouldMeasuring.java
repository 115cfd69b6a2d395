package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.draft.DraftOrder;
import mouldwright.geometry.draft.Drafts;
import mouldwright.geometry.draft.LongLine;
import mouldwright.geometry.draft.PartAreas;
import mouldwright.geometry.draft.PartEdge;
import mouldwright.geometry.draft.PartEdges;
import mouldwright.geometry.draft.PartingStrip;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.measure.Measured;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Spec;

/** Measures the mould, once: draft, edges and fields of mat, part by part. */
final class MouldMeasuring {

    /** Places nearer than this are one, m: half of what a saw cuts away. */
    private static final double ONE = 1e-3;

    private final Spec spec;
    private final Mould mould;
    private final ShapeMeasures shape;
    private final BooleanSupplier cancelled;
    private final List<Mould.Part> parts;
    private final MouldParts cover;

    MouldMeasuring(Spec spec, ShapeMeasures shape, BooleanSupplier cancelled) {
        this.spec = spec;
        this.mould = spec.mould().orElseThrow();
        this.shape = shape;
        this.cancelled = cancelled;
        this.parts = MouldParts.stated(mould);
        this.cover = new MouldParts(shape, mould.draft().likely());
    }

    MouldMeasures measure() {
        List<DraftOrder> orders = parts.stream().map(cover::order).toList();
        List<EndFace> faces = shape.moulded().stream().map(end -> new EndFace(shape, end)).toList();
        List<MouldMeasures.Piece> pieces = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++)
            pieces.add(piece(parts.get(i), orders.get(i), faces));
        PartAreas areas = new PartAreas(shape.plug(), shape.bare(), cancelled);
        double ends = shape.moulded().stream().mapToDouble(ShapeMeasures.End::area).sum() * shape.scale() * shape.scale()
                - pieces.stream().flatMap(piece -> piece.ends().stream()).mapToDouble(MouldMeasures.EndShare::area).sum();
        return new MouldMeasures(pieces, new MouldLayings(spec, shape, areas).of(pieces, orders),
                new StiffenerMeasuring(shape.plug(), cancelled).measure(mould.stiffeners(), pieces, orders), boards(pieces),
                areas.uncovered(orders).plus(new Measured(Math.max(0, ends), 0)),
                areas.doubled(orders).plus(new Measured(Math.max(0, -ends), 0)));
    }

    private MouldMeasures.Piece piece(Mould.Part part, DraftOrder order, List<EndFace> faces) {
        List<PartEdge> edges = new ArrayList<>(PartEdges.along(shape.plug(), order, cancelled));
        edges.addAll(across(order));
        double parting = length(edges, PartEdge.Kind.PARTING), open = length(edges, PartEdge.Kind.OPEN);
        List<MouldMeasures.EndShare> shares = new ArrayList<>();
        for (EndFace face : faces) {
            EndFace.Cut cut = face.cut(part, order);
            cut.share().ifPresent(shares::add);
            parting += cut.parting();
            open += cut.open();
        }
        boolean alone = parts.size() == 1;
        return new MouldMeasures.Piece(part, Drafts.examine(shape.plug(), order, cancelled), shares, edges, alone ? 0 : parting,
                alone ? open + parting : open);
    }

    /** A board for each parting line, with the half named first: the flange laid up on it is the pattern of the other. */
    private List<MouldMeasures.Board> boards(List<MouldMeasures.Piece> pieces) {
        if (pieces.size() < 2)
            return List.of();
        List<MouldMeasures.Board> boards = new ArrayList<>();
        List<LongLine> lines = new ArrayList<>();
        for (MouldMeasures.Piece piece : pieces)
            for (PartEdge edge : piece.edges())
                if (edge.kind() == PartEdge.Kind.PARTING && lines.stream().noneMatch(line -> same(line, edge.line()))) {
                    lines.add(edge.line());
                    PartingStrip.of(edge.line(), MouldParts.pull(piece.part().pull()), mould.flange().likely())
                            .ifPresent(strip -> boards.add(new MouldMeasures.Board(piece.part(), edge.port(), strip)));
                }
        return boards;
    }

    /** Whether two lines are one, told by their ends and their length. */
    private static boolean same(LongLine a, LongLine b) {
        return Math.abs(a.length() - b.length()) < ONE && distance(a.points().getFirst(), b.points().getFirst()) < ONE
                && distance(a.points().getLast(), b.points().getLast()) < ONE
                && distance(a.points().get(a.points().size() / 2), b.points().get(b.points().size() / 2)) < ONE;
    }

    private static double distance(SurfacePoint p, SurfacePoint q) {
        return Math.hypot(Math.hypot(p.x() - q.x(), p.y() - q.y()), p.z() - q.z());
    }

    private static double length(List<PartEdge> edges, PartEdge.Kind kind) {
        return edges.stream().filter(edge -> edge.kind() == kind).mapToDouble(edge -> edge.line().length()).sum();
    }

    /** The edges round a part at the planes where it, or the body, ends. */
    private List<PartEdge> across(DraftOrder order) {
        Loft plug = shape.plug();
        List<PartEdge> edges = new ArrayList<>();
        double from = order.region().fromX(), to = order.region().toX();
        if (from > plug.startX())
            edges.addAll(PartEdges.round(plug, order, from, Side.AFT, PartEdge.Kind.PARTING));
        else if (!spec.body().forward().moulded())
            edges.addAll(PartEdges.round(plug, order, from, Side.AFT, PartEdge.Kind.OPEN));
        if (to < plug.endX())
            edges.addAll(PartEdges.round(plug, order, to, Side.FORWARD, PartEdge.Kind.PARTING));
        else if (!spec.body().aft().moulded())
            edges.addAll(PartEdges.round(plug, order, to, Side.FORWARD, PartEdge.Kind.OPEN));
        return edges;
    }
}
