package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.draft.DraftOrder;
import mouldwright.geometry.draft.PartEdge;
import mouldwright.geometry.draft.PartEdges;
import mouldwright.geometry.draft.PartLine;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.measure.Measured;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Stiffener;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/** Measures stiffeners over the face of each part: round the girth at places spread evenly along the body, or along the body at even shares of the
 *  part's girth. The face is taken for the mould's back, which a laminate of some millimetres makes a little too short on a convex body. */
final class StiffenerMeasuring {

    /** Places looked at for the widest girth. */
    private static final int LOOKS = 16;
    /** More stiffeners of one kind than any part has. */
    static final int MOST = 200;

    private static final Display WORDS = Display.of(UnitSystem.METRIC);

    private final Loft plug;
    private final BooleanSupplier cancelled;

    StiffenerMeasuring(Loft plug, BooleanSupplier cancelled) {
        this.plug = plug;
        this.cancelled = cancelled;
    }

    List<MouldMeasures.Stiffened> measure(List<Stiffener> stated, List<MouldMeasures.Piece> pieces, List<DraftOrder> orders) {
        List<MouldMeasures.Stiffened> all = new ArrayList<>();
        for (Stiffener stiffener : stated) {
            List<MouldMeasures.Rib> ribs = new ArrayList<>();
            for (int i = 0; i < pieces.size(); i++)
                ribs.addAll(stiffener.run() == Stiffener.Run.ACROSS ? across(stiffener, pieces.get(i), orders.get(i)) : along(stiffener, pieces.get(i), orders.get(i)));
            all.add(new MouldMeasures.Stiffened(stiffener, ribs, layings(stiffener, ribs, all.size() + 1)));
        }
        return all;
    }

    private List<MouldMeasures.Rib> across(Stiffener stiffener, MouldMeasures.Piece piece, DraftOrder order) {
        double from = Math.max(order.region().fromX(), plug.startX()), to = Math.min(order.region().toX(), plug.endX());
        int count = count(stiffener, to - from);
        List<MouldMeasures.Rib> ribs = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            double x = from + (to - from) * i / (count + 1);
            rib(piece, "across, " + WORDS.format(x, Dimension.LENGTH) + " aft", girth(order, x), ribs);
        }
        return ribs;
    }

    private List<MouldMeasures.Rib> along(Stiffener stiffener, MouldMeasures.Piece piece, DraftOrder order) {
        double from = Math.max(order.region().fromX(), plug.startX()), to = Math.min(order.region().toX(), plug.endX());
        double widest = 0;
        for (int i = 0; i <= LOOKS; i++)
            widest = Math.max(widest, girth(order, from + (to - from) * i / LOOKS));
        int count = count(stiffener, widest);
        List<MouldMeasures.Rib> ribs = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            double share = i / (count + 1.0);
            double length = PartLine.along(plug, order, share, cancelled).map(line -> line.length()).orElse(0.0);
            rib(piece, "along, at " + WORDS.format(share, Dimension.RATIO) + " of its girth", length, ribs);
        }
        return ribs;
    }

    private static void rib(MouldMeasures.Piece piece, String where, double length, List<MouldMeasures.Rib> ribs) {
        if (length > 0)
            ribs.add(new MouldMeasures.Rib(piece.part(), where + ", " + piece.words(), length));
    }

    /** The outline of a part at one place, m. */
    private double girth(DraftOrder order, double x) {
        Side side = x >= plug.endX() ? Side.FORWARD : Side.AFT;
        return PartEdges.round(plug, order, x, side, PartEdge.Kind.OPEN).stream().mapToDouble(edge -> edge.line().length()).sum();
    }

    /** So many that none stands farther from the next, or from the edge, than stated; one at least. */
    static int count(Stiffener stiffener, double length) {
        return switch (stiffener.pitch()) {
            case Stiffener.Pitch.Count(var count) -> (int) Math.rint(count.likely());
            case Stiffener.Pitch.Every(var spacing) -> (int) Math.clamp(Math.ceil(length / spacing.likely() - 1e-9) - 1, 1, MOST);
        };
    }

    /** Width of the mat over a stiffener: up, over and down its core, and a lap on either side. */
    static double strip(Stiffener stiffener) {
        return stiffener.width().likely() + 2 * stiffener.height().likely() + 2 * stiffener.lap().likely();
    }

    private static List<SkinMeasures.Laying> layings(Stiffener stiffener, List<MouldMeasures.Rib> ribs, int number) {
        double width = strip(stiffener);
        List<SkinMeasures.Field> fields = ribs.stream().map(rib -> new SkinMeasures.Field("stiffener " + rib.where(), new Measured(width * rib.length(), 0),
                new GirthRuns(List.of(width), false), rib.length(), rib.length())).toList();
        List<SkinMeasures.Laying> layings = new ArrayList<>();
        for (Mat mat : stiffener.plies()) {
            SkinMeasures.Laying last = layings.isEmpty() ? null : layings.getLast();
            if (last != null && last.mat().equals(mat))
                layings.set(layings.size() - 1, new SkinMeasures.Laying(mat, last.count() + 1, false, last.words(), fields));
            else
                layings.add(new SkinMeasures.Laying(mat, 1, false, "over stiffeners " + number, fields));
        }
        return layings;
    }
}
