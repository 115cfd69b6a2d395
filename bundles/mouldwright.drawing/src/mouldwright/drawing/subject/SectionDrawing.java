package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.offset.FoamSection;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.Region;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Station;
import mouldwright.plan.stage.Bay;
import mouldwright.plan.stage.FairMeasures;
import mouldwright.plan.stage.FillMeasures;
import mouldwright.plan.stage.FrameMeasures;
import mouldwright.plan.stage.ShapeMeasures;

/** A station at scale, seen from aft with starboard to the right: finished surface, plate, foam of the bay beside it, plies, what surveys found, and
 *  the neighbouring stations to compare with. */
final class SectionDrawing {

    private static final double WIDTH = 180;
    private static final double ROOM_ACROSS = 140;
    private static final double ROOM_UP = 150;
    private static final double BAND = 0.9;
    private static final double FIGURE = 2.5;
    private static final Pen BARE = Pen.dashed(Tone.SURFACE, 0.5);
    private static final Pen AFT = new Pen(Tone.FAINT, 0.3, List.of(1.2, 1.2));

    private final BuildPlan plan;
    private final ShapeMeasures shape;
    private final Station station;
    private final double x;
    private final Slice slice;
    private final Draughtsman board = new Draughtsman();
    private final Legend legend = new Legend();
    private final View view;
    private final Optional<FillMeasures.BayFill> fill;
    private double clear;

    private SectionDrawing(BuildPlan plan, ShapeMeasures shape, Station station) {
        this.plan = plan;
        this.shape = shape;
        this.station = station;
        this.x = shape.borders().stream().filter(border -> border.name().equals(station.name())).mapToDouble(border -> border.plugX()).findFirst()
                .orElse(station.x() * shape.scale());
        this.slice = shape.plug().at(x, side());
        this.fill = bay().flatMap(bay -> plan.measurements().find(FillMeasures.class).flatMap(all -> all.bays().stream().filter(one -> one.bay().equals(bay)).findFirst()));
        Outline all = slice.outline(1e-3);
        this.view = new View(Scale.fitting(all.maxY() - all.minY(), all.maxZ() - Math.min(0, all.minZ()), ROOM_ACROSS, ROOM_UP), new Spot(0, 0));
    }

    /** The section of a station.
     *  @param code of plug and revision
     *  @return nothing where the body has no section there */
    static Optional<Drawing> of(BuildPlan plan, String station, String code) {
        Optional<ShapeMeasures> shape = plan.measurements().find(ShapeMeasures.class);
        return shape.flatMap(measured -> measured.stations().stream().filter(at -> at.station().name().equals(station) && !at.pinched()).findFirst()
                .map(at -> new SectionDrawing(plan, measured, at.station()).draw(code)));
    }

    private Side side() {
        return x >= shape.plug().endX() ? Side.FORWARD : Side.AFT;
    }

    /** The bay aft of the station, or of the last one the bay forward of it. */
    private Optional<Bay> bay() {
        List<Bay> bays = shape.bays();
        return bays.stream().filter(bay -> bay.fore().name().equals(station.name())).findFirst()
                .or(() -> bays.stream().filter(bay -> bay.aft().name().equals(station.name())).findFirst());
    }

    private Drawing draw(String code) {
        board.about("station." + station.name());
        surface();
        plate();
        foam();
        plies();
        neighbours();
        axes();
        surveys();
        board.about("");
        Extent box = board.extent().orElseThrow();
        return SheetFrame.around(board, legend, "Station " + station.name() + " of " + plan.plug(),
                "at " + Said.mm(x) + " aft of the datum, lowest " + Said.mm(slice.outline(1e-3).minZ()) + " above base; seen from aft, scale " + view.scale().words(), code, WIDTH, box).finish(words());
    }

    private String words() {
        Outline all = slice.outline(1e-3);
        return "The section at station " + station.name() + ", " + Said.mm(all.maxY() - all.minY()) + " broad and from " + Said.mm(all.minZ()) + " to " + Said.mm(all.maxZ())
                + " above the base" + (fill.isPresent() ? ", with the foam of " + fill.get().bay().words() : "");
    }

    private void surface() {
        SurfaceRuns runs = new SurfaceRuns(slice, shape.bare());
        for (List<SurfaceRuns.Edge> run : runs.moulded(GirthBand.WHOLE))
            board.path(Role.SURFACE, path(run, 0));
        legend.line(Role.SURFACE.pen(), "finished surface");
        List<List<SurfaceRuns.Edge>> bare = runs.bare();
        for (List<SurfaceRuns.Edge> run : bare)
            board.draw(Role.SURFACE, new Mark.Line(path(run, 0), BARE));
        if (!bare.isEmpty())
            legend.line(BARE, "bare: no skin");
    }

    /** @param out how far outside, mm on paper */
    private Path path(List<SurfaceRuns.Edge> run, double out) {
        return Path.through(run.stream().map(edge -> view.at(edge.y(), edge.z()).plus(out * edge.ny(), out * edge.nz())).toList(), false);
    }

    private void plate() {
        Optional<FrameMeasures.Made> made = plan.measurements().find(FrameMeasures.class)
                .flatMap(frame -> frame.plates().stream().filter(one -> one.border().name().equals(station.name())).findFirst());
        made.ifPresent(one -> {
            List<Path> rings = view.rings(one.wood());
            Mark.Fill wood = new Mark.Fill.Even(Tone.WOOD, 0.28);
            board.draw(Role.AREA, new Mark.Area(rings, wood));
            rings.forEach(ring -> board.path(Role.PLATE, ring));
            legend.area(wood, Role.PLATE.pen(), "plate" + cutOut(one) + "; stands " + (one.plate().side() == Side.AFT ? "aft" : "forward")
                    + " of its line");
            one.plate().bevelLine().ifPresent(line -> {
                board.draw(Role.SCORE, new Mark.Line(view.ring(line), Role.SCORE.pen()));
                legend.line(Role.SCORE.pen(), "bevel line on the smaller face");
            });
        });
    }

    private String cutOut(FrameMeasures.Made plate) {
        boolean slotted = plan.spec().frame().filter(frame -> !frame.backbones().isEmpty()).isPresent();
        return plate.pocketed() ? slotted ? " with pocket and slots" : " with pocket" : slotted ? " with slots" : "";
    }

    private void foam() {
        FoamSection foam = FoamSection.of(shape.plug(), x, side(), shape.buildUp(), 1e-4);
        List<Path> line = view.rings(foam.foam().region());
        line.forEach(ring -> board.draw(Role.FOAM, new Mark.Line(ring, Pen.full(Tone.FOAM, 0.2))));
        legend.line(Pen.full(Tone.FOAM, 0.2), plan.quantity("shape.buildup").map(q -> "foam line, " + Said.fine(q.value()) + " of skin and surfacer inside the surface, true to scale")
                .orElse("foam line"));
        fill.ifPresent(bay -> {
            double overfill = plan.spec().fill().orElseThrow().overfill().likely();
            board.about("bay." + bay.bay().name());
            if (bay.core() instanceof Fill.Core.Shell(var thickness)) {
                Region pocket = foam.within(thickness.likely()).region();
                if (!pocket.isEmpty()) {
                    Mark.Fill hatch = new Mark.Fill.Hatch(Pen.full(Tone.FOAM, 0.12), 3.2, 45);
                    List<Path> rings = new ArrayList<>(line);
                    rings.addAll(view.rings(pocket));
                    board.draw(Role.FOAM, new Mark.Area(rings, hatch));
                    view.rings(pocket).forEach(ring -> board.draw(Role.FOAM, new Mark.Line(ring, Pen.dashed(Tone.FOAM, 0.3))));
                    legend.area(hatch, Pen.dashed(Tone.FOAM, 0.3), "foam shell of " + bay.bay().words() + ", " + Said.mm(thickness.likely()) + " thick");
                }
            } else
                legend.note("foam of " + bay.bay().words() + ": solid");
            if (overfill > 0) {
                Pen pen = new Pen(Tone.FOAM, 0.3, List.of(0.6, 1.0));
                view.rings(foam.grown(overfill).region()).forEach(ring -> board.draw(Role.FOAM, new Mark.Line(ring, pen)));
                legend.line(pen, "overfill, " + Said.mm(overfill) + ", carved off again");
                clear = view.scale().mm(overfill);
            }
            board.about("station." + station.name());
        });
    }

    private void plies() {
        SurfaceRuns runs = new SurfaceRuns(slice, shape.bare());
        double out = Math.max(clear, 0) + 1.2;
        for (SectionPlies.Plies plies : SectionPlies.at(plan.spec(), station.x())) {
            Pen pen = Pen.full(Tone.LAMINATE, 0.45);
            for (List<SurfaceRuns.Edge> run : runs.moulded(plies.band()))
                board.draw(Role.LAMINATE, new Mark.Line(path(run, out), pen));
            legend.line(pen, plies.words() + " (band outside, not to scale)");
            out += BAND;
        }
    }

    private void neighbours() {
        List<ShapeMeasures.AtStation> stations = shape.stations();
        for (int i = 0; i < stations.size(); i++)
            if (stations.get(i).station().name().equals(station.name())) {
                neighbour(stations, i - 1, Role.FAINT.pen(), "forward: ");
                neighbour(stations, i + 1, AFT, "aft: ");
            }
    }

    private void neighbour(List<ShapeMeasures.AtStation> stations, int i, Pen pen, String where) {
        if (i < 0 || i >= stations.size() || stations.get(i).pinched())
            return;
        Station other = stations.get(i).station();
        board.about("station." + other.name());
        board.draw(Role.FAINT, new Mark.Line(view.ring(shape.plug().at(other.x() * shape.scale(), i + 1 == stations.size() ? Side.FORWARD : Side.AFT).outline(1e-4)), pen));
        board.about("station." + station.name());
        legend.line(pen, "neighbour " + where + other.name());
    }

    private void axes() {
        Extent box = board.extent().orElseThrow().grown(3);
        Outline all = slice.outline(1e-4);
        double base = view.at(0, 0).y();
        board.line(Role.AXIS, new Spot(view.zero().x(), Math.min(box.bottom(), base - 2)), new Spot(view.zero().x(), box.top()));
        board.line(Role.AXIS, new Spot(box.left(), base), new Spot(box.right(), base));
        board.draw(Role.TEXT, new Mark.Words("base", new Spot(box.right(), base + 0.8), 2.3, Mark.Anchor.END, 0, Tone.SOFT));
        double left = box.left() - 3, below = Math.min(box.bottom(), base) - 7.5;
        double widest = view.at(all.minY(), 0).x();
        board.dimension(view.at(all.minY(), (all.minZ() + all.maxZ()) / 2), view.at(all.maxY(), (all.minZ() + all.maxZ()) / 2),
                below - view.at(0, (all.minZ() + all.maxZ()) / 2).y(), Said.mm(all.maxY() - all.minY()), FIGURE);
        board.dimension(new Spot(widest, view.at(0, all.minZ()).y()), new Spot(widest, view.at(0, all.maxZ()).y()), widest - left, Said.mm(all.maxZ() - all.minZ()), FIGURE);
    }

    private void surveys() {
        plan.measurements().find(FairMeasures.class).ifPresent(fair -> {
            fair.plates().stream().filter(plate -> plate.station().equals(station.name())).forEach(plate -> legend.note("as surveyed: top "
                    + Said.fine(Math.abs(plate.lean().likely())) + (plate.lean().likely() < 0 ? " forward" : " aft") + " of plumb, set " + Said.fine(Math.abs(plate.high().likely()))
                    + (plate.high().likely() < 0 ? " low" : " high") + "; the surface is off by " + Said.fine(Math.abs(plate.error()))));
            double[] reach = reach();
            fair.places().stream().filter(place -> place.x() >= reach[0] && place.x() < reach[1]).forEach(place -> new SurveyMark(shape, view).draw(board, legend, place));
        });
    }

    /** Places nearer to this station than to another are shown with it. */
    private double[] reach() {
        double from = Double.NEGATIVE_INFINITY, to = Double.POSITIVE_INFINITY;
        for (ShapeMeasures.AtStation other : shape.stations()) {
            double at = other.station().x() * shape.scale();
            if (at < x && !other.station().name().equals(station.name()))
                from = (at + x) / 2;
            else if (at > x && !other.station().name().equals(station.name()))
                to = Math.min(to, (at + x) / 2);
        }
        return new double[] {from, to};
    }
}
