package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.draft.DraftOrder;
import mouldwright.geometry.draft.PartAreas;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.measure.Measured;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.MouldDefaults;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Spec;

/** Lays out the mat of a mould: each part in lengths that one person can lay, its ends, and strips turned out on the flanges.
 *  Strips are cut across the roll, so many to its width. */
final class MouldLayings {

    private final Spec spec;
    private final Mould mould;
    private final ShapeMeasures shape;
    private final PartAreas areas;

    MouldLayings(Spec spec, ShapeMeasures shape, PartAreas areas) {
        this.spec = spec;
        this.mould = spec.mould().orElseThrow();
        this.shape = shape;
        this.areas = areas;
    }

    /** What is laid, in order: neighbouring plies of one mat are laid alike until a wait. */
    List<SkinMeasures.Laying> of(List<MouldMeasures.Piece> pieces, List<DraftOrder> orders) {
        List<SkinMeasures.Field> fields = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++)
            fields(pieces.get(i), orders.get(i), fields);
        List<SkinMeasures.Laying> layings = new ArrayList<>();
        int session = 1;
        boolean fresh = true;
        for (Schedule.Layer layer : mould.schedule().layers()) {
            if (layer instanceof Schedule.Layer.Wait && !layings.isEmpty() && !fresh) {
                session++;
                fresh = true;
            } else if (layer instanceof Schedule.Layer.Ply ply) {
                SkinMeasures.Laying last = fresh ? null : layings.getLast();
                if (last != null && !last.first() && last.mat().equals(ply.mat()))
                    layings.set(layings.size() - 1, laying(ply.mat(), last.count() + 1, false, session, fields));
                else
                    layings.add(laying(ply.mat(), 1, layings.isEmpty(), session, fields));
                fresh = false;
            }
        }
        return layings;
    }

    private static SkinMeasures.Laying laying(Mat mat, int count, boolean first, int session, List<SkinMeasures.Field> fields) {
        return new SkinMeasures.Laying(mat, count, first, "of the mould, session " + session, fields);
    }

    private void fields(MouldMeasures.Piece piece, DraftOrder order, List<SkinMeasures.Field> fields) {
        double from = order.region().fromX(), to = order.region().toX();
        int lengths = (int) Math.max(1, Math.ceil((to - from) / MouldDefaults.mouldPiece().likely() - 1e-9));
        for (int i = 0; i < lengths; i++)
            face(piece, order, from + (to - from) * i / lengths, from + (to - from) * (i + 1) / lengths, i + 1).ifPresent(fields::add);
        for (MouldMeasures.EndShare end : piece.ends())
            fields.add(new SkinMeasures.Field("end at " + end.station() + " of " + piece.words(), new Measured(end.area(), 0),
                    new GirthRuns(List.of(end.across()), false), end.along(), end.along()));
        double flange = mould.flange().likely();
        strip("flange of " + piece.words(), piece.parting(), flange, fields);
        strip("return flange of " + piece.words(), piece.open(),
                flange + spec.body().runOut().map(runOut -> runOut.likely()).orElse(0.0), fields);
    }

    private static void strip(String words, double length, double width, List<SkinMeasures.Field> fields) {
        if (length > 0 && width > 0)
            fields.add(new SkinMeasures.Field(words, new Measured(length * width, 0), new GirthRuns(List.of(length), false), width, width));
    }

    private Optional<SkinMeasures.Field> face(MouldMeasures.Piece piece, DraftOrder order, double from, double to, int number) {
        Measured area = areas.area(order, from, to);
        GirthRuns middle = runs(order, shape.plug().at((from + to) / 2));
        GirthRuns widest = middle;
        for (double x : new double[] {from, to})
            if (!shape.plug().at(x).isDegenerate()) {
                GirthRuns runs = runs(order, shape.plug().at(x));
                widest = runs.total() > widest.total() ? runs : widest;
            }
        if (!(area.value() > 0) || !(middle.total() > 0))
            return Optional.empty();
        double length = Math.max(to - from, area.value() / middle.total());
        double longest = new DevelopedLength(shape.plug(), shape.bare(), order.region().band()).longest(from, to);
        return Optional.of(new SkinMeasures.Field(piece.words() + ", length " + number, area, widest, length, Math.max(length, longest)));
    }

    private GirthRuns runs(DraftOrder order, Slice slice) {
        return order.starboard() && order.port() ? GirthRuns.of(slice, shape.bare(), order.region().band())
                : GirthRuns.ofSide(slice, shape.bare(), order.region().band(), order.port());
    }
}
