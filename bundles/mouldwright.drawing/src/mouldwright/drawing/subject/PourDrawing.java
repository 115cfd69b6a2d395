package mouldwright.drawing.subject;

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
import mouldwright.geometry.fill.Attitude;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Hazard;
import mouldwright.plan.PourEntry;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.stage.FillMeasures;
import mouldwright.plan.stage.ShapeMeasures;

/** The cavity of a bay as it lies while it is poured, cut half way along it, with its lifts and what goes into each. */
final class PourDrawing {

    private static final double WIDTH = 180;
    private static final double ROOM_ACROSS = 88;
    private static final double ROOM_UP = 110;
    private static final double LETTERS = 2.5;
    private static final double LINE = 4.2;
    private static final Pen LIFT = new Pen(Tone.INK, 0.3, List.of(2.0, 1.0));

    private final BuildPlan plan;
    private final ShapeMeasures shape;
    private final FillMeasures.BayFill fill;
    private final List<PourEntry> pours;
    private final Draughtsman board = new Draughtsman();
    private final Legend legend = new Legend();
    private final Region cavity;
    private final Outline surface;
    private final double low;
    private final double high;
    private final Turned turned;
    private final Extent room;

    private PourDrawing(BuildPlan plan, ShapeMeasures shape, FillMeasures.BayFill fill, List<PourEntry> pours) {
        this.plan = plan;
        this.shape = shape;
        this.fill = fill;
        this.pours = pours;
        double middle = (fill.bay().fore().plugX() + fill.bay().aft().plugX()) / 2;
        this.cavity = fill.cavity().at(middle);
        this.surface = shape.plug().at(middle, Side.AFT).outline(1e-4);
        Attitude attitude = attitude(fill.attitude());
        this.low = fill.cavity().extent(attitude).low();
        this.high = fill.cavity().extent(attitude).high();
        Turned unscaled = new Turned(new View(new Scale(1), new Spot(0, 0)), attitude);
        double left = Double.MAX_VALUE, right = -Double.MAX_VALUE;
        for (Outline ring : cavity.pieces())
            for (PlanePoint point : ring.points()) {
                left = Math.min(left, unscaled.right(point));
                right = Math.max(right, unscaled.right(point));
            }
        Scale scale = Scale.fitting(right - left, high - low, ROOM_ACROSS, ROOM_UP);
        this.turned = new Turned(new View(scale, new Spot(-scale.mm(left), -scale.mm(low))), attitude);
        this.room = new Extent(0, 0, scale.mm(right - left), scale.mm(high - low));
    }

    /** The pour of a bay; nothing where it is not poured. @param code of plug and revision */
    static Optional<Drawing> of(BuildPlan plan, String bay, String code) {
        List<PourEntry> pours = plan.pours().stream().filter(pour -> pour.bay().equals(bay)).toList();
        Optional<FillMeasures.BayFill> fill = plan.measurements().find(FillMeasures.class).flatMap(all -> all.bays().stream().filter(one -> one.bay().name().equals(bay)).findFirst());
        return fill.filter(one -> !pours.isEmpty() && !one.cavity().at((one.bay().fore().plugX() + one.bay().aft().plugX()) / 2).isEmpty())
                .flatMap(one -> plan.measurements().find(ShapeMeasures.class).map(shape -> new PourDrawing(plan, shape, one, pours).draw(code)));
    }

    private static Attitude attitude(Fill.Attitude lying) {
        return switch (lying) {
            case UPRIGHT -> Attitude.UPRIGHT;
            case UPSIDE_DOWN -> Attitude.UPSIDE_DOWN;
            case ON_SIDE -> Attitude.ON_SIDE;
        };
    }

    private Drawing draw(String code) {
        board.about("bay." + fill.bay().name());
        for (int i = 0; i < pours.size(); i++)
            lift(i);
        turned.rings(cavity).forEach(ring -> board.draw(Role.FOAM, new Mark.Line(ring, Pen.full(Tone.FOAM, 0.4))));
        board.draw(Role.SURFACE, new Mark.Line(turned.ring(surface), Pen.dashed(Tone.SURFACE, 0.25)));
        board.dimension(new Spot(room.left(), 0), new Spot(room.left(), room.top()), 7, Said.mm(high - low), LETTERS);
        words();
        board.about("");
        legend();
        double whole = fill.poured().value();
        return SheetFrame.around(board, legend, "Pour of " + fill.bay().words() + ", " + plan.plug(), "cut half way along, as it lies: " + lies() + "; scale " + turned.view().scale().words(), code, WIDTH,
                board.extent().orElseThrow()).finish("The cavity of " + fill.bay().words() + ", " + Said.litres(whole) + ", in " + pours.size() + (pours.size() == 1 ? " lift" : " lifts"));
    }

    private String lies() {
        return switch (fill.attitude()) {
            case UPRIGHT -> "upright, on its base";
            case UPSIDE_DOWN -> "upside down, base uppermost";
            case ON_SIDE -> "on side, starboard uppermost";
        };
    }

    private double height(int lift) {
        return low + (high - low) * lift / pours.size();
    }

    private void lift(int i) {
        Region part = turned.between(cavity, height(i), height(i + 1));
        if (!part.isEmpty())
            board.draw(Role.AREA, new Mark.Area(turned.rings(part), new Mark.Fill.Even(Tone.FOAM, i % 2 == 0 ? 0.35 : 0.6)));
        double y = turned.view().at(0, height(i + 1)).y();
        if (i + 1 < pours.size())
            board.draw(Role.OUTLINE, new Mark.Line(Path.line(new Spot(room.left() - 2, y), new Spot(room.right() + 3, y)), LIFT));
    }

    /** Beside the lifts, spread out where they are low; of very many each so-manieth. */
    private void words() {
        double from = room.right() + 12, tall = Math.max(room.top(), LINE * 2 * pours.size() > ROOM_UP ? ROOM_UP : LINE * 2 * pours.size());
        int each = (int) Math.ceil(pours.size() * LINE * 2 / tall - 1e-9);
        double foot = room.top() / 2 - tall / 2;
        for (int i = 0; i < pours.size(); i += each) {
            double middle = turned.view().at(0, (height(i) + height(i + 1)) / 2).y(), y = foot + tall * (i + each / 2.0) / pours.size();
            PourEntry pour = pours.get(i);
            board.draw(Role.DIMENSION, new Mark.Line(Path.through(List.of(new Spot(room.right() + 1, middle), new Spot(from - 5, y), new Spot(from - 1.5, y)), false), Role.DIMENSION.pen()));
            board.words("lift " + pour.lift() + ": to " + Said.mm(height(i + 1) - low) + ", " + Said.litres(pour.volume()), new Spot(from, y + 0.6), LETTERS, Mark.Anchor.START);
            board.words("A " + Said.grams(pour.a()) + ", B " + Said.grams(pour.b()) + ", " + pour.pots() + (pour.pots() == 1 ? " pot" : " pots"), new Spot(from, y + 0.6 - LINE * 0.88), LETTERS, Mark.Anchor.START);
        }
    }

    private void legend() {
        legend.area(new Mark.Fill.Even(Tone.FOAM, 0.35), Pen.full(Tone.FOAM, 0.4), "foam as risen, overfill included; lifts in turn light and dark").line(LIFT, "end of a lift: let it cool before the next")
                .line(Pen.dashed(Tone.SURFACE, 0.25), "finished surface");
        if (!cavity.holes().isEmpty())
            legend.note("Inside the foam: pocket, packed and covered with release film, and what passes through.");
        legend.note("Heights are those the foam rises to, from the lowest place of the cavity; figures are likely ones.");
        legend.note(Hazard.ISOCYANATE.words()).note(Hazard.EXOTHERM.words()).note(Hazard.DEFERENCE);
    }
}
