package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Carve;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.stage.Bay;
import mouldwright.plan.stage.ShapeMeasures;

/** The whole plug on one sheet: from the side, below it from above on the same x, and its stations over one another beside them; bays tinted by how
 *  far a board would leave the surface. */
final class LinesDrawing {

    private static final double WIDTH = 267;
    private static final double ACROSS = 243;
    private static final double UP = 150;
    private static final double GAP = 12;
    private static final double NAME = 2.3;
    private static final double FIGURE = 2.5;

    private final BuildPlan plan;
    private final ShapeMeasures shape;
    private final Silhouette silhouette;
    private final Draughtsman board = new Draughtsman();
    private final Labels labels = new Labels(board);
    private final Scale scale;
    private final View profile;
    private final View above;
    private final View sections;
    private final double names;

    private LinesDrawing(BuildPlan plan, ShapeMeasures shape) {
        this.plan = plan;
        this.shape = shape;
        List<Double> lines = new ArrayList<>(shape.stations().stream().map(at -> at.station().x() * shape.scale()).toList());
        shape.borders().forEach(border -> lines.add(border.plugX()));
        this.silhouette = new Silhouette(shape.plug(), lines);
        this.names = BodySections.room(shape);
        double length = shape.plug().endX() - shape.plug().startX(), breadth = silhouette.starboard() - silhouette.port();
        double height = silhouette.high() - Math.min(0, silhouette.low());
        this.scale = Scale.fitting(length + breadth, height + breadth, ACROSS - 2 * names - 2 * GAP, UP - GAP);
        this.profile = new View(scale, new Spot(-scale.mm(shape.plug().startX()), 0));
        this.above = new View(scale, new Spot(-scale.mm(shape.plug().startX()), scale.mm(Math.min(0, silhouette.low())) - GAP + scale.mm(silhouette.port())));
        this.sections = new View(scale, new Spot(scale.mm(length) + GAP + names - scale.mm(silhouette.port()), 0));
    }

    /** The lines of a plug. @param code of plug and revision */
    static Optional<Drawing> of(BuildPlan plan, String code) {
        return plan.measurements().find(ShapeMeasures.class).map(shape -> new LinesDrawing(plan, shape).draw(code));
    }

    private Drawing draw(String code) {
        CrownTint tint = tint();
        bays(tint);
        outlines();
        stations();
        lines();
        Extent body = BodySections.box(sections, silhouette);
        new BodySections(board, shape, sections, body.left() - 4, body.right() + 4).draw();
        axes(body);
        dimensions();
        legend(tint, body);
        Extent box = board.extent().orElseThrow();
        Legend legend = new Legend();
        return SheetFrame.around(board, legend, "Lines of " + plan.plug(), plan.spec().title().map(title -> title + "; ").orElse("") + "scale " + scale.words() + "; from the side, from above, and its stations from aft",
                code, WIDTH, box).finish(words());
    }

    private String words() {
        return "The plug from the side and from above, " + Said.mm(shape.plug().endX() - shape.plug().startX()) + " long, " + Said.mm(silhouette.starboard() - silhouette.port())
                + " broad and up to " + Said.mm(silhouette.high()) + " above the base, with " + shape.stations().size() + " stations and the crown of " + shape.bays().size() + " bays";
    }

    private double limit() {
        return plan.spec().carve().map(Carve::crownLimit).orElseGet(() -> Defaults.carve().crownLimit()).likely();
    }

    private CrownTint tint() {
        double most = shape.crowns().stream().mapToDouble(crown -> crown.crown().height()).max().orElse(0);
        return CrownTint.upTo(Math.max(most, limit()));
    }

    private void bays(CrownTint tint) {
        for (int i = 0; i < shape.bays().size(); i++) {
            Bay bay = shape.bays().get(i);
            double from = bay.fore().station().x() * shape.scale(), to = bay.aft().station().x() * shape.scale();
            Mark.Fill fill = tint.of(shape.crowns().get(i).crown().signedHeight());
            board.about("bay." + bay.name());
            board.draw(Role.AREA, new Mark.Area(List.of(Path.through(silhouette.profile(profile, from, to), true)), fill));
            board.draw(Role.AREA, new Mark.Area(List.of(Path.through(silhouette.plan(above, from, to), true)), fill));
        }
        board.about("");
    }

    private void outlines() {
        double from = shape.plug().startX(), to = shape.plug().endX();
        board.path(Role.SURFACE, Path.through(silhouette.profile(profile, from, to), true));
        board.path(Role.SURFACE, Path.through(silhouette.plan(above, from, to), true));
    }

    private void stations() {
        double top = profile.at(0, silhouette.high()).y();
        for (ShapeMeasures.AtStation at : shape.stations()) {
            double x = at.station().x() * shape.scale();
            Silhouette.Reach reach = silhouette.between(x, x).getFirst();
            board.about("station." + at.station().name());
            Pen pen = at.station().plated() ? Pen.full(Tone.SOFT, 0.18) : new Pen(Tone.SOFT, 0.18, List.of(0.7, 1.0));
            board.draw(Role.OUTLINE, new Mark.Line(Path.line(profile.at(x, reach.low()), profile.at(x, reach.high())), pen));
            board.draw(Role.OUTLINE, new Mark.Line(Path.line(above.at(x, -reach.starboard()), above.at(x, -reach.port())), pen));
            Spot foot = new Spot(profile.at(x, 0).x(), top + 2.5);
            Stream<Supplier<Mark.Words>> places = Stream.of(0, 1, 2).map(row -> () -> new Mark.Words(at.station().name(), foot.plus(0, row * 3.6), NAME, Mark.Anchor.MIDDLE, 0, Tone.INK));
            if (labels.place(places))
                board.draw(Role.FAINT, new Mark.Line(Path.line(profile.at(x, reach.high()), foot.plus(0, -0.8)), new Pen(Tone.FAINT, 0.15, List.of(0.6, 0.8))));
        }
        board.about("");
    }

    private void lines() {
        Pen pen = Pen.dashed(Tone.SCORE, 0.25);
        for (Body.Line line : plan.spec().body().lines()) {
            List<SurfacePoint> points = silhouette.line(line.name());
            if (points.size() < 2)
                continue;
            board.about("line." + line.name());
            board.draw(Role.SCORE, new Mark.Line(Path.through(points.stream().map(p -> profile.at(p.x(), p.z())).toList(), false), pen));
            board.draw(Role.SCORE, new Mark.Line(Path.through(points.stream().map(p -> above.at(p.x(), -p.y())).toList(), false), pen));
            labels.place(Stream.of(0.5, 0.42, 0.58, 0.3, 0.7, 0.15, 0.85).flatMap(share -> {
                SurfacePoint at = points.get((int) (share * (points.size() - 1)));
                return Stream.of(0.9, -3.2).map(up -> (Supplier<Mark.Words>) () -> new Mark.Words(line.name(), profile.at(at.x(), at.z()).plus(0, up), NAME, Mark.Anchor.MIDDLE, 0, Tone.SCORE));
            }));
        }
        board.about("");
    }

    private void axes(Extent body) {
        double before = profile.at(shape.plug().startX(), 0).x() - 3, after = profile.at(shape.plug().endX(), 0).x() + 3;
        board.line(Role.AXIS, new Spot(before, profile.zero().y()), new Spot(after, profile.zero().y()));
        board.line(Role.AXIS, new Spot(before, above.zero().y()), new Spot(after, above.zero().y()));
        board.line(Role.AXIS, new Spot(body.left() - 2, sections.zero().y()), new Spot(body.right() + 2, sections.zero().y()));
        board.line(Role.AXIS, new Spot(sections.zero().x(), body.bottom() - 2), new Spot(sections.zero().x(), body.top() + 2));
        board.draw(Role.TEXT, new Mark.Words("base", new Spot(after + 0.8, profile.zero().y() - 1), 2.2, Mark.Anchor.START, 0, Tone.SOFT));
    }

    private void dimensions() {
        double from = shape.plug().startX(), to = shape.plug().endX();
        Spot left = above.at(from, -silhouette.starboard()), right = above.at(to, -silhouette.starboard());
        board.dimension(left, right, -5, Said.mm(to - from), FIGURE);
        double x = above.at(from, 0).x();
        board.dimension(new Spot(x, above.at(0, -silhouette.starboard()).y()), new Spot(x, above.at(0, -silhouette.port()).y()), 6, Said.mm(silhouette.starboard() - silhouette.port()), FIGURE);
        board.dimension(new Spot(x, profile.at(0, silhouette.low()).y()), new Spot(x, profile.at(0, silhouette.high()).y()), 6, Said.mm(silhouette.high() - silhouette.low()), FIGURE);
    }

    /** Below the stations, beside the plan. */
    private void legend(CrownTint tint, Extent body) {
        Legend legend = new Legend();
        legend.line(Role.SURFACE.pen(), "surface of the plug").line(Pen.full(Tone.SOFT, 0.18), "station with a plate");
        if (shape.stations().stream().anyMatch(at -> !at.station().plated()))
            legend.line(new Pen(Tone.SOFT, 0.18, List.of(0.7, 1.0)), "station that only shapes");
        if (!plan.spec().body().lines().isEmpty())
            legend.line(Pen.dashed(Tone.SCORE, 0.25), "line along the body");
        double left = scale.mm(shape.plug().endX() - shape.plug().startX()) + GAP;
        double at = legend.draw(board, new Spot(left, body.bottom() - 10), Math.max(99, body.right() - left), 2);
        tint.legend(board, new Spot(left, at - 14), "limit " + Said.figure(limit() * 1000, 1) + " mm");
    }
}
