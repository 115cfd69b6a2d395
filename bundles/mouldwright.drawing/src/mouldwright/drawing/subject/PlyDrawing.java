package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Hazard;
import mouldwright.plan.PieceEntry;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.stage.Bay;
import mouldwright.plan.stage.ShapeMeasures;

/** A ply of the skin over the surface, unrolled: the body's length to the right, the girth up and down from top centre, port uppermost, with the pieces of
 *  mat and their numbers in the cut list. */
final class PlyDrawing {

    private static final double WIDTH = 267;
    private static final double ACROSS = 225;
    private static final double UP = 130;
    private static final double LETTERS = 2.5;
    private static final double GAP = 8;
    private static final int STEPS = 8;
    private static final Pen PIECE = Pen.full(Tone.LAMINATE, 0.35);

    private final BuildPlan plan;
    private final ShapeMeasures shape;
    private final Skin skin;
    private final int ply;
    private final List<PieceEntry> pieces;
    private final Draughtsman board = new Draughtsman();
    private final View view;

    private PlyDrawing(BuildPlan plan, ShapeMeasures shape, Skin skin, int ply, List<PieceEntry> pieces) {
        this.plan = plan;
        this.shape = shape;
        this.skin = skin;
        this.ply = ply;
        this.pieces = pieces;
        double girth = shape.stations().stream().mapToDouble(at -> at.girth() * shape.scale()).max().orElse(0), from = shape.plug().startX();
        double ends = pieces.stream().filter(piece -> bay(piece).isEmpty()).mapToDouble(PieceEntry::width).sum();
        Scale scale = Scale.fitting(shape.plug().endX() - from + ends, girth, ACROSS, UP);
        this.view = new View(scale, new Spot(-scale.mm(from), 0));
    }

    /** The plies of the skin, each laid all over or in its band. @param code of plug and revision */
    static List<Drawing> of(BuildPlan plan, String code) {
        Optional<ShapeMeasures> shape = plan.measurements().find(ShapeMeasures.class);
        if (shape.isEmpty() || plan.spec().skin().isEmpty())
            return List.of();
        List<Drawing> drawings = new ArrayList<>();
        List<PieceEntry> skin = plan.pieces().stream().filter(piece -> piece.laminate().equals("skin")).toList();
        for (int ply : skin.stream().mapToInt(PieceEntry::ply).distinct().sorted().toArray())
            drawings.add(new PlyDrawing(plan, shape.get(), plan.spec().skin().get(), ply, skin.stream().filter(piece -> piece.ply() == ply).toList()).draw(code));
        return drawings;
    }

    private Drawing draw(String code) {
        body();
        int at = 0;
        for (Bay bay : shape.bays()) {
            List<PieceEntry> here = pieces.stream().filter(piece -> piece.where().equals(bay.words())).toList();
            if (!here.isEmpty())
                bay(bay, here);
            at += here.size();
        }
        stations();
        double right = view.at(shape.plug().endX(), 0).x() + GAP;
        for (PieceEntry piece : pieces)
            if (bay(piece).isEmpty())
                right = end(piece, right);
        PieceEntry first = pieces.getFirst();
        Legend legend = new Legend().line(PIECE, "edge of a piece; pieces lap by " + Said.mm(skin.lap().likely())).area(new Mark.Fill.Even(Tone.LAMINATE, 0.12), Pen.full(Tone.FAINT, 0.13), "moulded surface")
                .line(Role.FAINT.pen(), "whole girth, unrolled").line(Role.AXIS.pen(), "top centre; port above it, starboard below")
                .note("Pieces are numbered as in the cut list. Each is drawn where its bay is widest; its length is drawn along the body, not over the curve.")
                .note(Hazard.STYRENE.words()).note(Hazard.DEFERENCE);
        return SheetFrame.around(board, legend, "Ply " + ply + " of " + plan.plug() + ": " + first.mat(), pieces.size() + (pieces.size() == 1 ? " piece" : " pieces") + ", laps included; scale " + view.scale().words(), code,
                WIDTH, board.extent().orElseThrow()).finish("Ply " + ply + " of " + first.mat() + " unrolled, with " + at + " pieces on the body and " + (pieces.size() - at) + " on its ends");
    }

    private Optional<Bay> bay(PieceEntry piece) {
        return shape.bays().stream().filter(bay -> bay.words().equals(piece.where())).findFirst();
    }

    private Slice slice(double x) {
        return shape.plug().at(x, x >= shape.plug().endX() ? Side.FORWARD : Side.AFT);
    }

    private double fore(Bay bay) {
        return bay.fore().station().x() * shape.scale();
    }

    private double aft(Bay bay) {
        return bay.aft().station().x() * shape.scale();
    }

    /** The whole girth, what of it is moulded, and the stations. */
    private void body() {
        List<Spot> port = new ArrayList<>(), starboard = new ArrayList<>();
        for (Bay bay : shape.bays())
            for (int k = 0; k <= STEPS; k++) {
                double x = fore(bay) + (aft(bay) - fore(bay)) * k / STEPS, half = slice(x).girth() / 2;
                port.add(view.at(x, half));
                starboard.add(view.at(x, -half));
            }
        starboard.addAll(port.reversed());
        board.draw(Role.FAINT, new Mark.Line(Path.through(starboard, true), Role.FAINT.pen()));
        shape.bays().forEach(this::moulded);
        board.about("");
        board.line(Role.AXIS, view.at(shape.plug().startX(), 0).plus(-3, 0), view.at(shape.plug().endX(), 0).plus(3, 0));
    }

    /** Station lines with their names, above all that is drawn. */
    private void stations() {
        Labels labels = new Labels(board);
        double top = board.extent().orElseThrow().top();
        shape.borders().forEach(border -> {
            double x = border.station().x() * shape.scale(), half = slice(x).girth() / 2;
            board.about("station." + border.name());
            board.draw(Role.FAINT, new Mark.Line(Path.line(view.at(x, -half), view.at(x, half)), Role.FAINT.pen()));
            Spot foot = new Spot(view.at(x, 0).x(), top + 1.5);
            labels.place(Stream.of(0, 1, 2).map(row -> () -> new Mark.Words(border.name(), foot.plus(0, row * 3.8), LETTERS, Mark.Anchor.MIDDLE, 0, Tone.INK)));
        });
        board.about("");
    }

    private void moulded(Bay bay) {
        for (int k = 0; k < STEPS; k++) {
            double x = fore(bay) + (aft(bay) - fore(bay)) * k / STEPS, next = fore(bay) + (aft(bay) - fore(bay)) * (k + 1) / STEPS;
            List<GirthStretches.Stretch> here = GirthStretches.of(slice(x), shape.bare(), GirthBand.WHOLE), there = GirthStretches.of(slice(next), shape.bare(), GirthBand.WHOLE);
            if (here.size() != there.size())
                continue;
            double half = slice(x).girth() / 2, other = slice(next).girth() / 2;
            for (int i = 0; i < here.size(); i++)
                board.draw(Role.AREA, new Mark.Area(List.of(Path.through(List.of(view.at(x, (here.get(i).from() - 1) * half), view.at(next, (there.get(i).from() - 1) * other),
                        view.at(next, (there.get(i).to() - 1) * other), view.at(x, (here.get(i).to() - 1) * half)), true)), new Mark.Fill.Even(Tone.LAMINATE, 0.12)));
        }
    }

    private void bay(Bay bay, List<PieceEntry> here) {
        double widest = fore(bay), length = -1;
        for (double share : new double[] {0.5, 0, 0.25, 0.75, 1}) {
            double x = fore(bay) + (aft(bay) - fore(bay)) * share;
            Slice slice = slice(x);
            double total = slice.isDegenerate() ? 0 : stretches(slice).stream().mapToDouble(s -> s.to() - s.from()).sum() * slice.girth() / 2;
            if (total > length) {
                length = total;
                widest = x;
            }
        }
        double half = slice(widest).girth() / 2, lap = skin.lap().likely();
        board.about("bay." + bay.name());
        int at = 0;
        for (GirthStretches.Stretch stretch : stretches(slice(widest))) {
            double from = (stretch.from() - 1) * half, end = (stretch.to() - 1) * half;
            while (at < here.size() && from < end - 1e-6) {
                piece(here.get(at), fore(bay) - lap / 2, aft(bay) + lap / 2, from);
                from += here.get(at).width();
                if (from < end - 1e-6)
                    from -= lap;
                at++;
            }
        }
        board.about("");
    }

    private List<GirthStretches.Stretch> stretches(Slice slice) {
        return GirthStretches.of(slice, shape.bare(), band());
    }

    /** Plies past those of the schedule were added in bands, in the order of the rules. */
    private GirthBand band() {
        int number = ply - skin.schedule().plies().size();
        for (Skin.Rule rule : skin.rules())
            if (rule instanceof Skin.Rule.AddPlies add) {
                if (number >= 1 && number <= add.count())
                    return SectionPlies.band(add.band());
                number -= add.count();
            }
        return GirthBand.WHOLE;
    }

    private void piece(PieceEntry piece, double fromX, double toX, double from) {
        Spot low = view.at(fromX, from), high = view.at(toX, from + piece.width());
        board.draw(Role.LAMINATE, new Mark.Line(Path.box(new Extent(low.x(), low.y(), high.x(), high.y())), PIECE));
        board.words(Integer.toString(piece.piece()), low.toward(high, 0.5).plus(0, -LETTERS / 2), LETTERS, Mark.Anchor.MIDDLE);
    }

    /** @return where the next one may stand, mm on the paper */
    private double end(PieceEntry piece, double left) {
        double across = view.scale().mm(piece.width()), up = view.scale().mm(piece.length());
        board.draw(Role.LAMINATE, new Mark.Line(Path.box(new Extent(left, -up / 2, left + across, up / 2)), PIECE));
        board.words(Integer.toString(piece.piece()), new Spot(left + across / 2, -LETTERS / 2), LETTERS, Mark.Anchor.MIDDLE);
        double words = Lettering.width(piece.where(), LETTERS);
        board.draw(Role.TEXT, new Mark.Words(piece.where(), new Spot(left + across / 2 + LETTERS / 2, Math.min(up / 2 - words, -LETTERS * 2 - words)), LETTERS, Mark.Anchor.START, 90, Tone.SOFT));
        return left + across + GAP;
    }
}
