package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import mouldwright.geometry.frame.EdgeForm;
import mouldwright.geometry.frame.Plate;
import mouldwright.geometry.frame.PlateOrder;
import mouldwright.geometry.frame.PlateResult;
import mouldwright.geometry.frame.Plates;
import mouldwright.geometry.frame.WireHoles;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.offset.FoamLine;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Spec;
import mouldwright.units.Dimension;

/** Makes the plates and measures them. A pocket is cut where the rim is stated, or where foam stands as a shell on every side of the
 *  plate; where a bay beside it is poured solid it needs none, and foam would run into one. */
final class PlateMaking {

    private static final double LEAST_WEB = 0.010;

    private final Spec spec;
    private final Frame frame;
    private final ShapeMeasures shape;
    private final Measurements measurements;
    private final BooleanSupplier cancelled;
    private List<PlanePoint> holes = List.of();

    PlateMaking(Spec spec, Frame frame, ShapeMeasures shape, Measurements measurements, BooleanSupplier cancelled) {
        this.spec = spec;
        this.frame = frame;
        this.shape = shape;
        this.measurements = measurements;
        this.cancelled = cancelled;
    }

    FrameMeasures measure() {
        List<FrameMeasures.Made> made = new ArrayList<>();
        for (Border border : shape.borders()) {
            if (cancelled.getAsBoolean())
                throw new CancellationException();
            if (border.plated())
                plate(border).ifPresent(plate -> made.add(made(border, plate)));
        }
        return overAll(bored(made));
    }

    private Optional<Plate> plate(Border border) {
        EdgeForm edges = frame.edges() == Frame.Edges.SQUARE ? EdgeForm.SQUARE : EdgeForm.BEVELLED;
        PlateResult result = Plates.make(shape.plug(), new PlateOrder(border.plugX(), frame.thickness().likely(),
                border.side(), edges, shape.buildUp()));
        return switch (result) {
            case PlateResult.Cut(Plate plate) -> {
                if (isEnd(border) && plate.outerFaceLarger() && frame.edges() == Frame.Edges.SQUARE
                        && plate.gapInPlane() > 0)
                    report(border, PlanFault.Kind.END_PLATE_LARGER_OUTSIDE,
                            "the outer face of this end plate is the larger one, so square edges fall short of it",
                            "bevel the edges or add a run-out station", plate.gapInPlane());
                yield Optional.of(plate);
            }
            case PlateResult.Vanished vanished -> {
                report(border, PlanFault.Kind.PLATE_VANISHED, "nothing is left of this plate once the build-up is taken off",
                        "mark the station unplated, or build up less", shape.endBuildUp());
                yield Optional.empty();
            }
            case PlateResult.Split split -> {
                report(border, PlanFault.Kind.PLATE_SPLIT,
                        "this plate falls into " + split.pieces().size() + " pieces once the build-up is taken off",
                        "mark the station unplated, or build up less", shape.endBuildUp());
                yield Optional.empty();
            }
            case PlateResult.NoArea none -> Optional.empty();
        };
    }

    private boolean isEnd(Border border) {
        return border == shape.borders().getFirst() || border == shape.borders().getLast();
    }

    private void report(Border border, PlanFault.Kind kind, String message, String remedy, double figure) {
        measurements.report(PlanFault.of(kind, border.station().origin(), "station " + border.name(),
                border.name() + ": " + message, remedy).at(figure, Dimension.LENGTH));
    }

    private FrameMeasures.Made made(Border border, Plate plate) {
        boolean pocketed = pocketed(border);
        Region whole = Region.of(plate.cut()), wood = whole;
        if (pocketed) {
            wood = whole.minus(pocket(border, plate));
            open(border, (whole.area() - wood.area()) * frame.thickness().likely());
        }
        PlanePoint centre = wood.centroid();
        for (Frame.Backbone backbone : frame.backbones())
            wood = wood.minus(Region.of(slot(frame, backbone, plate)));
        // a bevelled edge is cut to the larger face and loses half the difference to the smaller one
        double bevelled = plate.bevelLine().map(line -> (whole.area() - line.area()) / 2).orElse(0.0);
        return new FrameMeasures.Made(border, plate, wood.area() - bevelled, pocketed, centre, wood, List.of());
    }

    /** The pocket leaves a rim all round, and a post as wide as the slot and a rim on both sides, so that a backbone stands in wood. */
    private Region pocket(Border border, Plate plate) {
        double rim = frame.rim().likely();
        Region pocket = FoamLine.within(shape.plug(), border.plugX(), border.side(), shape.buildUp(), rim);
        for (Frame.Backbone backbone : frame.backbones()) {
            Outline slot = slot(frame, backbone, plate);
            double half = slot.maxY() + rim;
            if (slot.maxZ() > plate.cut().minZ())
                pocket = pocket.minus(Region.of(box(-half, plate.cut().minZ() - rim, half, slot.maxZ() + rim)));
        }
        return pocket;
    }

    /** What a backbone takes out of a plate: closed, as it measures and the clearance; halved, from below up to its middle. */
    static Outline slot(Frame frame, Frame.Backbone backbone, Plate plate) {
        double play = frame.clearance().likely(), half = (frame.builtWidth(backbone) + play) / 2;
        double low = backbone.above().likely(), depth = backbone.depth().likely();
        return backbone.halved() ? box(-half, Math.min(low, plate.cut().minZ()) - depth, half, low + depth / 2)
                : box(-half, low - play / 2, half, low + depth + play / 2);
    }

    /** Bores the holes, once it is known where they fit. */
    private List<FrameMeasures.Made> bored(List<FrameMeasures.Made> made) {
        double diameter = frame.fittings().holes().likely();
        List<PlanePoint> places = diameter <= 0 ? List.of() : !frame.fittings().places().isEmpty()
                ? frame.fittings().places().stream().map(place -> new PlanePoint(place.y().likely(), place.z().likely())).toList()
                : WireHoles.common(made.stream().map(FrameMeasures.Made::wood).toList(), diameter, web(diameter));
        holes = places;
        return made.stream().map(one -> {
            List<PlanePoint> fit = places.stream().filter(place -> WireHoles.fits(one.wood(), place, diameter, web(diameter))).toList();
            return new FrameMeasures.Made(one.border(), one.plate(), one.netArea() - fit.size() * Math.PI * diameter * diameter / 4, one.pocketed(),
                    one.centre(), one.wood(), fit);
        }).toList();
    }

    /** As much wood round a hole as it is wide, 10 mm at least; common practice. */
    private static double web(double diameter) {
        return Math.max(diameter, LEAST_WEB);
    }

    private boolean pocketed(Border border) {
        return !frame.rim().assumed() || spec.fill().isPresent() && solidBeside(border).isEmpty();
    }

    /** Bays beside a plate that are poured solid; none where nothing is poured. */
    private List<Bay> solidBeside(Border border) {
        if (spec.fill().isEmpty())
            return List.of();
        return shape.bays().stream().filter(bay -> bay.fore() == border || bay.aft() == border)
                .filter(bay -> BayRules.core(spec, bay, measurements) instanceof Fill.Core.Solid).toList();
    }

    private void open(Border border, double pocket) {
        List<Bay> solid = pocket > 0 ? solidBeside(border) : List.of();
        if (!solid.isEmpty())
            measurements.report(PlanFault.of(PlanFault.Kind.POCKET_OPEN, border.station().origin(), "station " + border.name(),
                    border.name() + ": the pocket of this plate opens on " + solid.stream().map(Bay::words).collect(Collectors.joining(" and "))
                            + ", poured solid: foam leaks through, or fills the pocket", "blank the pocket off, or state no rim where bays are solid")
                    .at(pocket, Dimension.VOLUME));
    }

    private FrameMeasures overAll(List<FrameMeasures.Made> made) {
        if (made.size() < 2)
            return new FrameMeasures(made, holes, 0, 0);
        double thickness = frame.thickness().likely();
        Border first = made.getFirst().border();
        Border last = made.getLast().border();
        return new FrameMeasures(made, holes, first.side() == Side.AFT ? first.plugX() : first.plugX() - thickness,
                last.side() == Side.AFT ? last.plugX() + thickness : last.plugX());
    }

    /** A backbone's section, on the centreline. */
    static Outline rectangle(Frame frame, Frame.Backbone backbone) {
        double half = frame.builtWidth(backbone) / 2, low = backbone.above().likely();
        return box(-half, low, half, low + backbone.depth().likely());
    }

    static Outline box(double fromY, double fromZ, double toY, double toZ) {
        return Outline.of(List.of(new PlanePoint(fromY, fromZ), new PlanePoint(toY, fromZ), new PlanePoint(toY, toZ), new PlanePoint(fromY, toZ)));
    }
}
