package mouldwright.drawing.subject;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Lettering;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.geometry.plane.Outline;
import mouldwright.plan.Alignment;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Fittings;
import mouldwright.plan.stage.FrameMeasures;

/** What is laid off on the base before a plate stands, from the side and below it from above on the same x: the centreline, the first line squared by
 *  3, 4 and 5, the datum points, and how far aft each plate stands. */
final class AlignmentDrawing {

    private static final double WIDTH = 180;
    private static final double ACROSS = 146;
    private static final double UP = 170;
    private static final double GAP = 34;
    private static final double FIGURE = 2.5;
    private static final Pen TRIANGLE = Pen.full(Tone.ALARM, 0.35);

    private final BuildPlan plan;
    private final Alignment sheet;
    private final FrameMeasures frame;
    private final Draughtsman board = new Draughtsman();
    private final Labels labels = new Labels(board);
    private final Legend legend = new Legend();
    private final View side;
    private final View above;
    private final double from;
    private final double to;
    private final double half;

    private AlignmentDrawing(BuildPlan plan, Alignment sheet, FrameMeasures frame) {
        this.plan = plan;
        this.sheet = sheet;
        this.frame = frame;
        double margin = base().map(base -> base.margin().likely()).orElse(0.0);
        this.from = Math.min(frame.from(), sheet.x()) - margin - sheet.x();
        this.to = frame.to() + margin - sheet.x();
        double broadest = frame.plates().stream().map(FrameMeasures.Made::plate).mapToDouble(plate -> Math.max(plate.cut().maxY(), -plate.cut().minY())).max().orElse(0);
        this.half = Math.max(sheet.half(), broadest + margin);
        double top = sheet.rows().stream().mapToDouble(Alignment.Row::top).max().orElse(0);
        Scale scale = Scale.fitting(to - from, top + 2 * half, ACROSS, UP - GAP);
        this.side = new View(scale, new Spot(0, 0));
        this.above = new View(scale, new Spot(0, -GAP - scale.mm(half)));
    }

    /** The base of a plan's frame; nothing where fewer than two plates stand. @param code of plug and revision */
    static Optional<Drawing> of(BuildPlan plan, String code) {
        return plan.alignment().flatMap(sheet -> plan.measurements().find(FrameMeasures.class).map(frame -> new AlignmentDrawing(plan, sheet, frame).draw(code)));
    }

    private Optional<Fittings.Base> base() {
        return plan.spec().frame().flatMap(stated -> stated.fittings().base());
    }

    private Drawing draw(String code) {
        base().ifPresent(base -> {
            Mark.Fill wood = new Mark.Fill.Even(Tone.WOOD, 0.12);
            Path box = box(above, from, -half(base), to, half(base));
            board.draw(Role.AREA, new Mark.Area(List.of(box), wood)).path(Role.PLATE, box);
            legend.area(wood, Role.PLATE.pen(), "base board, " + base.sheet().name());
        });
        plates();
        heights();
        datum();
        square();
        offsets();
        notes();
        Extent box = board.extent().orElseThrow().grown(1);
        return SheetFrame.around(board, legend, "Setting up " + plan.plug(), "what is laid off on the base; from the side and from above, scale " + side.scale().words(), code, WIDTH, box)
                .finish(words());
    }

    private String words() {
        return "The base from the side and from above: " + sheet.rows().size() + " plates over " + Said.mm(sheet.rows().getLast().offset()) + ", datum points " + Said.fine(sheet.half())
                + " off the centreline at the first of them, and the triangle that squares its line";
    }

    private double half(Fittings.Base base) {
        return frame.plates().stream().map(FrameMeasures.Made::plate).mapToDouble(plate -> Math.max(plate.cut().maxY(), -plate.cut().minY())).max().orElse(0) + base.margin().likely();
    }

    private static Path box(View view, double left, double bottom, double right, double top) {
        Spot low = view.at(left, bottom), high = view.at(right, top);
        return Path.box(new Extent(low.x(), low.y(), high.x(), high.y()));
    }

    private void plates() {
        Mark.Fill wood = new Mark.Fill.Even(Tone.WOOD, 0.4);
        double base = side.at(0, 0).y();
        board.draw(Role.OUTLINE, new Mark.Line(Path.line(new Spot(side.at(from, 0).x() - 3, base), new Spot(side.at(to, 0).x() + 3, base)), Role.OUTLINE.pen()));
        board.draw(Role.TEXT, new Mark.Words("base", new Spot(side.at(to, 0).x() + 3.5, base - 1), 2.3, Mark.Anchor.START, 0, Tone.SOFT));
        for (FrameMeasures.Made one : frame.plates()) {
            Outline cut = one.plate().cut();
            double a = Math.min(one.plate().x(), one.plate().otherX()) - sheet.x(), b = Math.max(one.plate().x(), one.plate().otherX()) - sheet.x();
            board.about("station." + one.border().name());
            for (Path path : List.of(box(side, a, cut.minZ(), b, cut.maxZ()), box(above, a, cut.minY(), b, cut.maxY())))
                board.draw(Role.AREA, new Mark.Area(List.of(path), wood)).path(Role.PLATE, path);
            double line = one.plate().x() - sheet.x();
            board.line(Role.CUT, above.at(line, cut.minY()), above.at(line, cut.maxY())).line(Role.CUT, side.at(line, cut.minZ()), side.at(line, cut.maxZ()));
            Spot name = side.at(line, cut.maxZ()).plus(0, 2);
            labels.place(rows(name, one.border().name(), 3.4));
        }
        board.about("");
        legend.area(wood, Role.PLATE.pen(), "plate, by its thickness");
        legend.line(Role.CUT.pen(), "its line: the face that is set to the mark");
    }

    /** The first free place above a spot. */
    private static Stream<Supplier<Mark.Words>> rows(Spot at, String words, double step) {
        return IntStream.range(0, 8).mapToObj(k -> () -> new Mark.Words(words, at.plus(0, k * step), FIGURE, Mark.Anchor.MIDDLE, 0, Tone.INK));
    }

    private void heights() {
        double first = sheet.rows().getFirst().height();
        if (sheet.rows().stream().allMatch(row -> Math.abs(row.height() - first) < 1e-9)) {
            board.line(Role.AXIS, side.at(from, first).plus(-3, 0), side.at(to, first).plus(3, 0));
            Spot foot = side.at(from, 0);
            board.dimension(foot, side.at(from, first), 7, Said.fine(first), FIGURE);
            legend.line(Role.AXIS.pen(), "height line across every plate, and centreline");
        } else
            for (Alignment.Row row : sheet.rows())
                board.line(Role.MARK, side.at(row.offset(), row.height()).plus(-2, 0), side.at(row.offset(), row.height()).plus(2, 0));
    }

    private void datum() {
        board.line(Role.AXIS, above.at(from, 0).plus(-3, 0), above.at(to, 0).plus(3, 0));
        board.line(Role.MARK, above.at(0, -sheet.half()).plus(0, -4), above.at(0, sheet.half()).plus(0, 4));
        for (double y : new double[] { -sheet.half(), sheet.half() }) {
            Spot at = above.at(0, y);
            board.circle(Role.MARK, at, 1.6).line(Role.MARK, at.plus(-3, 0), at.plus(3, 0));
            board.words(y < 0 ? "P" : "S", at.plus(2.6, y < 0 ? -4.6 : 1.6), 3, Mark.Anchor.START);
        }
        double left = above.at(from, 0).x() - 7;
        board.dimension(new Spot(above.at(0, 0).x(), above.at(0, 0).y()), above.at(0, sheet.half()), above.at(0, 0).x() - left, Said.fine(sheet.half()), FIGURE);
        board.dimension(above.at(0, -sheet.half()), above.at(0, 0), above.at(0, 0).x() - left, Said.fine(sheet.half()), FIGURE);
        legend.line(Role.MARK.pen(), "first line, with the datum points P to port and S to starboard");
    }

    /** On the port side, where the figures of the half-breadths are not. */
    private void square() {
        Alignment.Square square = sheet.square();
        Spot corner = above.at(0, 0), across = above.at(0, -square.across()), along = above.at(square.along(), 0);
        board.draw(Role.ALARM, new Mark.Line(Path.through(List.of(corner, across, along), true), TRIANGLE));
        legend.line(TRIANGLE, "square when " + Said.mm(square.across()) + " along the line and " + Said.mm(square.along()) + " along the centreline are " + Said.mm(square.diagonal()) + " apart (3, 4 and 5)");
        board.written().forEach(labels::keepClear);
        double lean = Math.toDegrees(Math.atan2(along.y() - across.y(), along.x() - across.x()));
        beside(across, along, Said.mm(square.diagonal()), lean, -1);
        beside(corner, along, Said.mm(square.along()), 0, 1);
        beside(across, corner, Said.mm(square.across()), 90, -1);
    }

    /** Along a line, to one side of it, where its plates leave room. @param sign 1 to the left of the way, -1 to the right */
    private void beside(Spot a, Spot b, String words, double angle, int sign) {
        double length = a.distance(b), ux = (b.x() - a.x()) / length, uy = (b.y() - a.y()) / length, off = sign > 0 ? 1.2 : -1.2 - FIGURE;
        labels.place(Stream.of(0.5, 0.4, 0.6, 0.3, 0.7).map(share -> () -> new Mark.Words(words, a.toward(b, share).plus(-uy * off, ux * off), FIGURE, Mark.Anchor.MIDDLE, angle, Tone.ALARM)));
    }

    /** From the first line to each, one below the other where they stand close: upright words, read from the right. */
    private void offsets() {
        double top = side.at(0, 0).y() - 2;
        for (Alignment.Row row : sheet.rows()) {
            String words = Said.figure(row.offset() * 1000, 1);
            double x = side.at(row.offset(), 0).x(), width = Lettering.width(words, FIGURE);
            board.about("station." + row.station());
            board.line(Role.DIMENSION, new Spot(x, side.at(0, 0).y() - 0.5), new Spot(x, side.at(0, 0).y() - 5));
            labels.place(Stream.of(0.0, -14.0).map(down -> () -> new Mark.Words(words, new Spot(x + FIGURE / 2, top - 4 - width + down), FIGURE, Mark.Anchor.START, 90, Tone.INK)));
        }
        board.about("");
        legend.note("figures under the base: how far aft of the first line each plate stands, mm");
    }

    private void notes() {
        legend.note("diagonals of each plate are taken from P and S to where its edge meets the height line on the other side; each plate has a drawing of its own");
        legend.note("to " + Said.fine(sheet.tolerance()) + " everywhere; measure every figure from the first line, never from plate to plate");
    }
}
