package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.frame.EdgeForm;
import mouldwright.geometry.frame.Plate;
import mouldwright.geometry.frame.PlateOrder;
import mouldwright.geometry.frame.PlateResult;
import mouldwright.geometry.frame.Plates;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.offset.FoamLine;
import mouldwright.geometry.plane.ConvexClip;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Spec;
import mouldwright.units.Dimension;

/** Makes the plates and measures them. A pocket is cut where the rim is stated, or where foam stands as a shell beside the
 *  plate; a plate between solid bays needs none. */
final class PlateMaking {

    private final Spec spec;
    private final Frame frame;
    private final ShapeMeasures shape;
    private final Measurements measurements;
    private final BooleanSupplier cancelled;

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
        return new FrameMeasures(made, overAll(made));
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
        Region wood = Region.of(plate.cut());
        if (pocketed)
            wood = wood.minus(FoamLine.within(shape.plug(), border.plugX(), border.side(), shape.buildUp(),
                    frame.rim().likely()));
        double play = frame.clearance().likely();
        // a bevelled edge is cut to the larger face and loses half the difference to the smaller one
        double area = wood.area() - plate.bevelLine().map(line -> (Region.of(plate.cut()).area() - line.area()) / 2).orElse(0.0);
        for (ConvexClip slot : ConvexClip.covering(frame.backbones().stream().map(backbone -> rectangle(backbone, play)).toList()))
            area -= wood.areaWithin(slot);
        return new FrameMeasures.Made(border, plate, area, pocketed);
    }

    private boolean pocketed(Border border) {
        if (!frame.rim().assumed())
            return true;
        return spec.fill().isPresent() && shape.bays().stream()
                .filter(bay -> bay.fore() == border || bay.aft() == border)
                .anyMatch(bay -> BayRules.core(spec, bay, measurements) instanceof Fill.Core.Shell);
    }

    private double overAll(List<FrameMeasures.Made> made) {
        if (made.size() < 2)
            return 0;
        double thickness = frame.thickness().likely();
        Border first = made.getFirst().border();
        Border last = made.getLast().border();
        double from = first.side() == Side.AFT ? first.plugX() : first.plugX() - thickness;
        double to = last.side() == Side.AFT ? last.plugX() + thickness : last.plugX();
        return to - from;
    }

    /** A backbone's section, on the centreline.
     *  @param play wider and deeper than the member, m */
    static Outline rectangle(Frame.Backbone backbone, double play) {
        double half = (backbone.width().likely() + play) / 2;
        double low = backbone.above().likely() - play / 2;
        double high = low + backbone.depth().likely() + play;
        return Outline.of(List.of(new PlanePoint(-half, low), new PlanePoint(half, low), new PlanePoint(half, high),
                new PlanePoint(-half, high)));
    }
}
