package mouldwright.drawing.subject;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Lettering;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.Alignment;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.FrameMeasures;

/** One plate as it is set up, seen from aft with starboard to the right: its height line, half-breadths and top above the base, the diagonals from the
 *  datum points, the holes it is lined up by, and how a survey found it. */
final class SettingDrawing {

    private static final double WIDTH = 180;
    private static final double ROOM_ACROSS = 130;
    private static final double ROOM_UP = 130;
    private static final double FIGURE = 2.5;
    private static final Pen TAPE = Pen.dashed(Tone.ALARM, 0.3);

    private final BuildPlan plan;
    private final Alignment sheet;
    private final Alignment.Row row;
    private final FrameMeasures.Made made;
    private final Draughtsman board = new Draughtsman();
    private final Legend legend = new Legend();
    private final View view;

    private SettingDrawing(BuildPlan plan, Alignment sheet, Alignment.Row row, FrameMeasures.Made made) {
        this.plan = plan;
        this.sheet = sheet;
        this.row = row;
        this.made = made;
        this.view = new View(Scale.fitting(2 * sheet.half(), row.top() - Math.min(0, made.plate().cut().minZ()), ROOM_ACROSS, ROOM_UP), new Spot(0, 0));
    }

    /** A plate of a plan's frame. @param code of plug and revision */
    static Optional<Drawing> of(BuildPlan plan, Alignment.Row row, String code) {
        return plan.alignment().flatMap(sheet -> plan.measurements().find(FrameMeasures.class)
                .flatMap(frame -> frame.plates().stream().filter(one -> one.border().name().equals(row.station())).findFirst())
                .map(made -> new SettingDrawing(plan, sheet, row, made).draw(code)));
    }

    private Drawing draw(String code) {
        board.about("station." + row.station());
        plate();
        datum();
        dimensions();
        diagonals();
        said();
        board.about("");
        return SheetFrame.around(board, legend, "Setting up " + row.station() + " of " + plan.plug(), Said.fine(row.offset()) + " aft of the first line, stands " + row.stands()
                + " of its own; seen from aft, scale " + view.scale().words(), code, WIDTH, board.extent().orElseThrow().grown(1)).finish(words());
    }

    private String words() {
        return "Plate " + row.station() + " on the base: height line " + Said.fine(row.height()) + " above it, top " + Said.fine(row.top()) + ", diagonals " + Said.fine(row.toPort())
                + " to port and " + Said.fine(row.toStarboard()) + " to starboard";
    }

    private void plate() {
        List<Path> rings = view.rings(made.wood());
        Mark.Fill wood = new Mark.Fill.Even(Tone.WOOD, 0.28);
        board.draw(Role.AREA, new Mark.Area(rings, wood));
        rings.forEach(ring -> board.path(Role.PLATE, ring));
        legend.area(wood, Role.PLATE.pen(), "plate");
        made.plate().bevelLine().ifPresent(line -> {
            board.draw(Role.SCORE, new Mark.Line(view.ring(line), Role.SCORE.pen()));
            legend.line(Role.SCORE.pen(), "bevel line on the smaller face");
        });
        for (PlanePoint hole : made.holes())
            board.circle(Role.CUT, view.at(hole), view.scale().mm(plan.spec().frame().orElseThrow().fittings().holes().likely()) / 2);
        if (!made.holes().isEmpty())
            legend.line(Role.CUT.pen(), "holes that line the plates up on wires or rods, true to scale");
    }

    private void datum() {
        double base = view.at(0, 0).y(), out = view.scale().mm(sheet.half());
        board.line(Role.OUTLINE, new Spot(-out - 6, base), new Spot(out + 6, base));
        board.draw(Role.TEXT, new Mark.Words("base", new Spot(out - 2.5, base - 3.4), 2.3, Mark.Anchor.END, 0, Tone.SOFT));
        board.line(Role.AXIS, new Spot(0, Math.min(base, view.at(0, made.plate().cut().minZ()).y()) - 4), view.at(0, row.top()).plus(0, 4));
        for (double y : new double[] { -sheet.half(), sheet.half() }) {
            Spot at = view.at(y, 0);
            board.circle(Role.MARK, at, 1.6).line(Role.MARK, at.plus(0, -3), at.plus(0, 3));
            board.words(y < 0 ? "P" : "S", at.plus(y < 0 ? -2.2 : 2.2, 1.6), 3, y < 0 ? Mark.Anchor.END : Mark.Anchor.START);
        }
        legend.line(Role.MARK.pen(), "datum points P and S, on the base at the first line, " + Said.fine(row.offset()) + " forward of this plate");
    }

    private void dimensions() {
        double out = view.scale().mm(sheet.half());
        Spot port = view.at(-row.port(), row.height()), starboard = view.at(row.starboard(), row.height()), middle = view.at(0, row.height());
        board.line(Role.AXIS, port.plus(-4, 0), starboard.plus(4, 0));
        board.dimension(port, middle, 5, Said.fine(row.port()), FIGURE);
        double room = 0.5 * (Lettering.width(Said.fine(row.port()), FIGURE) + Lettering.width(Said.fine(row.starboard()), FIGURE)) + 2;
        board.dimension(middle, starboard, port.distance(starboard) < 2 * room ? -8 : 5, Said.fine(row.starboard()), FIGURE);
        board.dimension(new Spot(-out, view.at(0, 0).y()), new Spot(-out, port.y()), 9, Said.fine(row.height()), FIGURE);
        board.dimension(new Spot(out, view.at(0, 0).y()), new Spot(out, view.at(0, row.top()).y()), -9, Said.fine(row.top()), FIGURE);
        double low = Math.min(view.at(0, 0).y(), view.at(0, made.plate().cut().minZ()).y()) - 8 - view.at(0, 0).y();
        board.dimension(view.at(-sheet.half(), 0), view.at(0, 0), low, Said.fine(sheet.half()), FIGURE);
        board.dimension(view.at(0, 0), view.at(sheet.half(), 0), low, Said.fine(sheet.half()), FIGURE);
        legend.line(Role.AXIS.pen(), "height line and centreline");
    }

    private void diagonals() {
        Labels labels = new Labels(board);
        board.written().forEach(labels::keepClear);
        tape(labels, view.at(sheet.half(), 0), view.at(-row.port(), row.height()), Said.fine(row.toPort()));
        tape(labels, view.at(-sheet.half(), 0), view.at(row.starboard(), row.height()), Said.fine(row.toStarboard()));
        legend.line(TAPE, "diagonals by the tape: S to the port edge " + Said.fine(row.toPort()) + ", P to the starboard edge " + Said.fine(row.toStarboard()) + ", at the height line and " + Said.fine(row.offset()) + " aft of the points");
    }

    private void tape(Labels labels, Spot from, Spot to, String words) {
        board.draw(Role.ALARM, new Mark.Line(Path.line(from, to), TAPE));
        board.circle(Role.MARK, to, 0.8);
        double turn = Math.toDegrees(Math.atan2(to.y() - from.y(), to.x() - from.x())), angle = Math.abs(turn) > 90 ? turn - Math.signum(turn) * 180 : turn;
        double ux = Math.cos(Math.toRadians(angle)), uy = Math.sin(Math.toRadians(angle));
        labels.place(DoubleStream.of(0.72, 0.68, 0.76, 0.64, 0.3, 0.25, 0.35, 0.2).boxed().map(share -> () ->
                new Mark.Words(words, from.toward(to, share).plus(-uy, ux), FIGURE, Mark.Anchor.MIDDLE, angle, Tone.ALARM)));
    }

    private void said() {
        row.reading().ifPresent(reading -> legend.note("as last surveyed: top " + Said.fine(Math.abs(reading.leans())) + (reading.leans() < 0 ? " forward" : " aft") + " of plumb, set "
                + Said.fine(Math.abs(reading.high())) + (reading.high() < 0 ? " low" : " high") + (reading.within() ? ", within tolerance" : ", out of tolerance")));
        legend.note("to " + Said.fine(sheet.tolerance()) + " everywhere; plumb by the line on both faces");
    }
}
