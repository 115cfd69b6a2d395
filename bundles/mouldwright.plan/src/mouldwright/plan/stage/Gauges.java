package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.frame.GaugeProfile;
import mouldwright.geometry.frame.NoteSpace;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.frame.PlatePart.LineMark;
import mouldwright.geometry.frame.PlatePart.Score;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePlace;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.plane.Crosscut;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import mouldwright.geometry.section.SectionKind;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Fittings;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Spec;

/** Makes female gauges of the finished surface, skin and surfacer on it: between two plates they tell whether a carved bay, once it is
 *  skinned and surfaced, has its crown. Each is split on the centreline, so that its halves are pushed on from both sides. */
public final class Gauges {

    /** How far chords may leave the section, m: less than anybody feels under a gauge. */
    private static final double CHORD = 2e-5;
    private static final double TICK = 0.015;
    /** Places of a stretch looked at for where the moulded face begins. */
    private static final int LOOKS = 64;

    private final Spec spec;
    private final ShapeMeasures shape;
    private final Fittings fittings;
    private final Optional<Double> height;

    private Gauges(Spec spec, ShapeMeasures shape, Optional<Double> height) {
        this.spec = spec;
        this.shape = shape;
        this.fittings = spec.frame().map(Frame::fittings).orElseGet(Fittings::assumed);
        this.height = height;
    }

    private static Optional<Gauges> of(BuildPlan plan) {
        Optional<Double> height = plan.measurements().find(FrameMeasures.class).flatMap(HeightLine::of);
        return plan.measurements().find(ShapeMeasures.class).map(shape -> new Gauges(plan.spec(), shape, height));
    }

    /** Halves for the middle of every bay, port before starboard; nothing where no frame says what they are cut from. */
    public static List<PlatePart> midBays(BuildPlan plan) {
        List<PlatePart> all = new ArrayList<>();
        of(plan).ifPresent(gauges -> gauges.shape.bays().forEach(bay ->
                all.addAll(gauges.halves(bay.name(), 0.5 * (bay.fore().plugX() + bay.aft().plugX())))));
        return all;
    }

    /** Halves for any place along the body; nothing past its ends, at a point, or without a frame.
     *  @param x metres aft on the plug */
    public static List<PlatePart> at(BuildPlan plan, double x) {
        return of(plan).filter(gauges -> x >= gauges.shape.plug().startX() && x <= gauges.shape.plug().endX())
                .map(gauges -> gauges.halves("x" + Math.round(x * 1000), x)).orElse(List.of());
    }

    private List<PlatePart> halves(String name, double x) {
        Slice slice = shape.plug().at(x, x >= shape.plug().endX() ? Side.FORWARD : Side.AFT);
        if (spec.frame().isEmpty() || slice.isDegenerate())
            return List.of();
        List<PlatePart> halves = new ArrayList<>();
        for (boolean port : new boolean[] { true, false })
            half(name, slice, port).ifPresent(halves::add);
        return halves;
    }

    private Optional<PlatePart> half(String name, Slice slice, boolean port) {
        Outline section = slice.outline(CHORD);
        double depth = fittings.gauge().likely();
        double[] reach = reach(slice, section, port, depth);
        if (!(reach[0] < reach[1]))
            return Optional.empty();
        Outline outline = GaugeProfile.half(section, port, reach[0], reach[1], depth);
        Region wood = Region.of(outline);
        if (wood.pieces().size() != 1)
            return Optional.empty();
        List<Score> scores = new ArrayList<>();
        height.ifPresent(at -> Crosscut.level(wood, at).forEach(span -> scores.add(new Score(Score.Use.HEIGHT,
                List.of(new PlanePoint(span.from(), at), new PlanePoint(span.to(), at)), false, Math.round(at * 1000) + " mm above base"))));
        if (reach[1] > section.maxZ())
            scores.add(new Score(Score.Use.CENTRELINE, List.of(new PlanePoint(0, section.maxZ()), new PlanePoint(0, reach[1])), false, "centreline"));
        if (reach[0] < section.minZ())
            scores.add(new Score(Score.Use.CENTRELINE, List.of(new PlanePoint(0, reach[0]), new PlanePoint(0, section.minZ())), false, "centreline"));
        Frame frame = spec.frame().orElseThrow();
        String side = port ? "port" : "starboard";
        return Optional.of(new PlatePart("gauge." + name + "." + side, PlatePart.Kind.GAUGE, "Gauge " + name, outline, List.of(), List.of(), scores,
                marks(slice, port, outline), List.of(), NoteSpace.write(wood, List.of("Gauge " + name, side + ", aft face this side",
                        "at " + Math.round(slice.x() * 1000) + " mm aft, finished surface")), frame.sheet().name(), frame.thickness().likely(), 1));
    }

    /** From where the face is moulded to where it is: round the top and the bottom where these are moulded too, never below the base. */
    private double[] reach(Slice slice, Outline section, boolean port, double depth) {
        double low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY;
        boolean image = port && slice.loft().kind() == SectionKind.FULL;
        for (int stretch = 0; stretch < slice.stretches(); stretch++)
            for (int k = 0; k <= LOOKS; k++) {
                SurfacePlace place = slice.place(stretch, (double) k / LOOKS);
                SurfacePoint point = slice.point(stretch, place.u());
                if (slice.loft().kind() == SectionKind.FULL && place.port() != image || slice.isBare(place, shape.bare()))
                    continue;
                low = Math.min(low, point.z());
                high = Math.max(high, point.z());
            }
        boolean bottom = low <= section.minZ() + CHORD, top = high >= section.maxZ() - CHORD;
        return new double[] { bottom && low > 0 ? Math.max(0, low - depth) : low, top ? high + depth : high };
    }

    private List<LineMark> marks(Slice slice, boolean port, Outline outline) {
        List<LineMark> marks = new ArrayList<>();
        for (Body.Line line : spec.body().lines())
            slice.share(new GirthPlace.OnLine(line.name()), port).ifPresent(share -> {
                SurfacePlace place = slice.placeAtShare(share, port);
                SurfacePoint point = slice.point(place.stretch(), place.u());
                double hand = port && slice.loft().kind() == SectionKind.HALF ? -1 : 1;
                PlanePoint at = new PlanePoint(hand * point.y(), point.z());
                double size = Math.hypot(point.ny(), point.nz());
                if (size > 0 && outline.distance(at) < 2 * CHORD)
                    marks.add(new LineMark(line.name(), at, new PlanePoint(at.y() + TICK * hand * point.ny() / size, at.z() + TICK * point.nz() / size)));
            });
        return marks;
    }
}
