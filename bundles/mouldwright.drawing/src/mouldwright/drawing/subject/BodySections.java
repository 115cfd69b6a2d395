package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Lettering;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.section.SectionKind;
import mouldwright.plan.stage.ShapeMeasures;

/** All stations over one another, seen from aft. Of a body that is alike on both sides the forward stations stand to starboard and the after ones to
 *  port, the largest on both; their names stand beside them with a leader each. */
final class BodySections {

    /** Height of a name with its leading, mm. */
    private static final double LINE = 3.6;
    private static final double LETTERS = 2.3;
    private static final double CHORD = 1e-4;

    private record Section(String name, Outline outline) { }

    private final Draughtsman board;
    private final ShapeMeasures shape;
    private final View view;
    private final double left;
    private final double right;

    /** @param left  where names to port end, mm on the paper
     *  @param right where names to starboard begin */
    BodySections(Draughtsman board, ShapeMeasures shape, View view, double left, double right) {
        this.board = board;
        this.shape = shape;
        this.view = view;
        this.left = left;
        this.right = right;
    }

    void draw() {
        List<Section> sections = new ArrayList<>();
        for (ShapeMeasures.AtStation at : shape.stations())
            if (!at.pinched()) {
                double x = at.station().x() * shape.scale();
                sections.add(new Section(at.station().name(), shape.plug().at(x, x >= shape.plug().endX() ? Side.FORWARD : Side.AFT).outline(CHORD)));
            }
        int largest = 0;
        for (int i = 0; i < sections.size(); i++)
            largest = sections.get(i).outline.area() > sections.get(largest).outline.area() ? i : largest;
        boolean half = shape.plug().kind() == SectionKind.HALF;
        List<Section> starboard = half ? sections.subList(0, Math.min(sections.size(), largest + 1)) : sections;
        List<Section> port = half ? sections.subList(Math.min(sections.size(), largest), sections.size()) : List.of();
        starboard.forEach(section -> line(section, half ? 1 : 0));
        port.forEach(section -> line(section, -1));
        names(starboard, 1);
        names(port, -1);
    }

    /** @param side 1 starboard half, -1 port half, 0 both */
    private void line(Section section, int side) {
        board.about("station." + section.name);
        Pen pen = Pen.full(Tone.SURFACE, 0.28);
        if (side == 0)
            board.draw(Role.SURFACE, new Mark.Line(view.ring(section.outline), pen));
        else {
            // The outline runs from bottom centre by starboard to top centre, and back alike.
            List<PlanePoint> points = section.outline.points();
            List<Spot> spots = new ArrayList<>();
            for (PlanePoint point : points.subList(0, points.size() / 2 + 1))
                if (point.y() >= 0)
                    spots.add(view.at(side * point.y(), point.z()));
            if (spots.size() > 1)
                board.draw(Role.SURFACE, new Mark.Line(Path.through(spots, false), pen));
        }
        board.about("");
    }

    private void names(List<Section> sections, int side) {
        if (sections.isEmpty())
            return;
        List<Section> ordered = new ArrayList<>(sections);
        ordered.sort(Comparator.comparingDouble((Section s) -> s.outline.maxZ()).reversed());
        double top = view.at(0, ordered.getFirst().outline.maxZ()).y(), low = sections.stream().mapToDouble(s -> view.at(0, s.outline.minZ()).y()).min().orElseThrow();
        int each = (int) Math.ceil(ordered.size() * LINE / Math.max(LINE, top - low));
        int shown = (ordered.size() + each - 1) / each;
        double step = Math.min(2 * LINE, (top - low) / shown);
        for (int i = 0; i < shown; i++)
            name(ordered.get(i * each), side, top - step * (i + 0.5));
    }

    private void name(Section section, int side, double y) {
        board.about("station." + section.name);
        Outline o = section.outline;
        double height = (y - view.zero().y()) * view.scale().reduction() / 1000, inset = 0.03 * (o.maxZ() - o.minZ());
        double z = Math.clamp(height, o.minZ() + inset, o.maxZ() - inset), out = 0;
        for (int i = 0; i < o.size(); i++) {
            int j = (i + 1) % o.size();
            if (o.z(i) <= z != o.z(j) <= z)
                out = Math.max(out, side * (o.y(i) + (o.y(j) - o.y(i)) * (z - o.z(i)) / (o.z(j) - o.z(i))));
        }
        Spot on = view.at(side * out, z);
        double edge = side > 0 ? right : left;
        board.draw(Role.DIMENSION, new Mark.Line(Path.line(on, new Spot(edge - side * 1.2, y)), Role.DIMENSION.pen()));
        board.draw(Role.DIMENSION, new Mark.Circle(on, 0.4, Role.DIMENSION.pen()));
        board.words(section.name, new Spot(edge, y - LETTERS / 2), LETTERS, side > 0 ? Mark.Anchor.START : Mark.Anchor.END);
        board.about("");
    }

    /** How wide the names are, mm. */
    static double room(ShapeMeasures shape) {
        return 4 + shape.stations().stream().mapToDouble(at -> Lettering.width(at.station().name(), LETTERS)).max().orElse(0);
    }

    /** The box the sections take, names left out. */
    static Extent box(View view, Silhouette silhouette) {
        Spot low = view.at(silhouette.port(), Math.min(0, silhouette.low())), high = view.at(silhouette.starboard(), silhouette.high());
        return new Extent(low.x(), low.y(), high.x(), high.y());
    }
}
