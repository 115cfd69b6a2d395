package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.frame.BevelEntry;
import mouldwright.geometry.frame.NoteSpace;
import mouldwright.geometry.frame.Plate;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.frame.PlatePart.BevelMark;
import mouldwright.geometry.frame.PlatePart.Bore;
import mouldwright.geometry.frame.PlatePart.LineMark;
import mouldwright.geometry.frame.PlatePart.Opening;
import mouldwright.geometry.frame.PlatePart.Score;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.plane.Crosscut;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import mouldwright.geometry.section.SectionKind;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Spec;

/** Turns a measured plate into the part that is cut, with its marks. It is drawn as seen from aft. */
final class PlateMarking {

    /** Length of the tick where a line crosses the edge, m. */
    private static final double TICK = 0.015;
    /** Length of the arrow that points up, m. */
    private static final double ARROW = 0.040;
    private static final int ARROW_LOOKS = 8;
    /** A hole that differs from a slot by less than this share of it is that slot. */
    private static final double SAME = 1e-6;

    private final Spec spec;
    private final Frame frame;
    private final ShapeMeasures shape;
    private final Optional<Double> height;

    PlateMarking(Spec spec, Frame frame, ShapeMeasures shape, Optional<Double> height) {
        this.spec = spec;
        this.frame = frame;
        this.shape = shape;
        this.height = height;
    }

    /** The part of a plate whose wood is not empty. */
    PlatePart part(FrameMeasures.Made made) {
        Plate plate = made.plate();
        Region wood = made.wood().largest();
        return new PlatePart("plate." + made.border().name(), PlatePart.Kind.PLATE, made.border().name(), wood.pieces().getFirst(),
                openings(plate, wood), bores(made), scores(plate, wood), marks(made), bevels(plate), NoteSpace.write(wood, words(made)),
                frame.sheet().name(), frame.thickness().likely(), 1);
    }

    private List<Bore> bores(FrameMeasures.Made made) {
        return made.holes().stream().map(place -> new Bore(place, frame.fittings().holes().likely(),
                "y " + Math.round(place.y() * 1000) + " z " + Math.round(place.z() * 1000))).toList();
    }

    private List<Opening> openings(Plate plate, Region wood) {
        List<Outline> slots = frame.backbones().stream().map(backbone -> PlateMaking.slot(frame, backbone, plate)).toList();
        return wood.holes().stream().map(hole -> new Opening(slots.stream().anyMatch(slot -> same(slot, hole)) ? Opening.Use.SLOT : Opening.Use.POCKET, hole))
                .toList();
    }

    private static boolean same(Outline slot, Outline hole) {
        return Math.abs(slot.area() - hole.area()) < SAME * slot.area() && slot.centroid().distance(hole.centroid()) < SAME;
    }

    private static List<String> words(FrameMeasures.Made made) {
        Plate plate = made.plate();
        List<String> words = new ArrayList<>(List.of(made.border().name(), "aft face this side",
                plate.side() == Side.AFT ? "stands aft of its line" : "stands forward of its line"));
        if (plate.bevelLine().isPresent())
            words.add("bevel line on the " + (bevelForward(plate) ? "forward" : "aft") + " face");
        return words;
    }

    /** Whether the smaller face, to which the edge is bevelled, is the forward one. */
    private static boolean bevelForward(Plate plate) {
        boolean smallerIsStation = plate.larger() == Plate.Face.OTHER;
        return smallerIsStation == (plate.side() == Side.AFT);
    }

    private List<Score> scores(Plate plate, Region wood) {
        List<Score> scores = new ArrayList<>();
        plate.bevelLine().ifPresent(line -> scores.add(new Score(Score.Use.BEVEL, line.points(), true, "bevel line")));
        for (Crosscut.Span span : Crosscut.upright(wood, 0))
            scores.add(new Score(Score.Use.CENTRELINE, List.of(new PlanePoint(0, span.from()), new PlanePoint(0, span.to())), false, "centreline"));
        height.ifPresent(at -> {
            for (Crosscut.Span span : Crosscut.level(wood, at))
                scores.add(new Score(Score.Use.HEIGHT, List.of(new PlanePoint(span.from(), at), new PlanePoint(span.to(), at)), false,
                        Math.round(at * 1000) + " mm above base"));
        });
        scores.add(arrow(wood));
        return scores;
    }

    /** To starboard of the centreline, where most wood is round it. */
    private static Score arrow(Region wood) {
        Outline outer = wood.pieces().getFirst();
        double size = Math.min(ARROW, 0.1 * (outer.maxZ() - outer.minZ())), w = size / 4, most = Double.NEGATIVE_INFINITY;
        PlanePoint middle = outer.centroid();
        for (int k = 1; k < ARROW_LOOKS; k++)
            for (Crosscut.Span span : Crosscut.upright(wood, outer.maxY() * k / ARROW_LOOKS)) {
                PlanePoint place = new PlanePoint(outer.maxY() * k / ARROW_LOOKS, span.middle());
                double clear = Math.min(wood.clear(place), place.y());
                if (clear > most * (1 + 1e-9)) {
                    most = clear;
                    middle = place;
                }
            }
        PlanePoint at = new PlanePoint(middle.y(), middle.z() + size / 2);
        return new Score(Score.Use.UP, List.of(new PlanePoint(at.y(), at.z() - size), at, new PlanePoint(at.y() - w, at.z() - w), at,
                new PlanePoint(at.y() + w, at.z() - w)), false, "up");
    }

    private List<LineMark> marks(FrameMeasures.Made made) {
        Slice slice = shape.plug().at(made.plate().x(), made.border().side());
        List<LineMark> marks = new ArrayList<>();
        for (Body.Line line : spec.body().lines())
            for (boolean port : new boolean[] { false, true })
                slice.share(new GirthPlace.OnLine(line.name()), port).ifPresent(share ->
                        marks.add(mark(line.name(), slice, share, port, made.plate().cut())));
        return marks;
    }

    /** A half body has its port side as the mirror image. */
    private static LineMark mark(String line, Slice slice, double share, boolean port, Outline cut) {
        var place = slice.placeAtShare(share, port);
        SurfacePoint point = slice.point(place.stretch(), place.u());
        double hand = port && slice.loft().kind() == SectionKind.HALF ? -1 : 1;
        PlanePoint at = cut.nearest(new PlanePoint(hand * point.y(), point.z()));
        double size = Math.hypot(point.ny(), point.nz());
        double y = size > 0 ? hand * point.ny() / size : 0, z = size > 0 ? point.nz() / size : 1;
        return new LineMark(line, at, new PlanePoint(at.y() - TICK * y, at.z() - TICK * z));
    }

    private List<BevelMark> bevels(Plate plate) {
        if (plate.bevelLine().isEmpty())
            return List.of();
        List<BevelMark> bevels = new ArrayList<>();
        boolean half = shape.plug().kind() == SectionKind.HALF;
        for (BevelEntry entry : plate.bevels()) {
            if (entry.bare())
                continue;
            bevels.add(new BevelMark(plate.cut().nearest(new PlanePoint(entry.y(), entry.z())), entry.angle()));
            if (half && entry.y() > 0)
                bevels.add(new BevelMark(plate.cut().nearest(new PlanePoint(-entry.y(), entry.z())), entry.angle()));
        }
        return bevels;
    }
}
