package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.fill.Attitude;
import mouldwright.geometry.fill.Cavity;
import mouldwright.geometry.fill.CavityOrder;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.offset.BuildUp;
import mouldwright.geometry.offset.FoamLine;
import mouldwright.geometry.offset.Layer;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.Region;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Spec;
import mouldwright.process.Cure;
import mouldwright.process.Pour;
import mouldwright.units.Dimension;

/** Measures the cavities, once. */
final class FillMeasuring {

    private final Spec spec;
    private final Fill fill;
    private final ShapeMeasures shape;
    private final Measurements measurements;
    private final BooleanSupplier cancelled;
    private final double thickness;
    private final List<Outline> backbones;
    private final double[] buildUp;

    FillMeasuring(Spec spec, ShapeMeasures shape, Measurements measurements, BooleanSupplier cancelled) {
        this.spec = spec;
        this.fill = spec.fill().orElseThrow();
        this.shape = shape;
        this.measurements = measurements;
        this.cancelled = cancelled;
        this.thickness = ShapeStage.thickness(spec);
        this.buildUp = BuildUps.range(spec);
        this.backbones = spec.frame().map(frame -> frame.backbones().stream()
                .map(backbone -> PlateMaking.rectangle(backbone, 0)).toList()).orElse(List.of());
    }

    FillMeasures measure() {
        List<FillMeasures.BayFill> bays = new ArrayList<>();
        for (Bay bay : shape.bays()) {
            if (cancelled.getAsBoolean())
                throw new CancellationException();
            fill(bay).ifPresent(bays::add);
        }
        return new FillMeasures(bays);
    }

    private Optional<FillMeasures.BayFill> fill(Bay bay) {
        double from = bay.fore().aftFace(thickness);
        double to = bay.aft().forwardFace(thickness);
        if (!(to > from)) {
            report(bay, PlanFault.Kind.BAY_SHUT, "the plates leave no room between them", "move the stations apart", to - from);
            return Optional.empty();
        }
        Fill.Core core = BayRules.core(spec, bay, measurements);
        Fill.Attitude attitude = BayRules.attitude(spec, bay, measurements);
        OptionalDouble shell = core instanceof Fill.Core.Shell(var stated) ? OptionalDouble.of(stated.likely())
                : OptionalDouble.empty();
        CavityOrder order = new CavityOrder(from, to, shape.buildUp(), fill.overfill().likely(), shell, backbones);
        Cavity cavity = Cavity.of(shape.plug(), order, cancelled);
        Measured poured = cavity.poured();
        if (!(poured.value() > 0)) {
            report(bay, PlanFault.Kind.NO_CAVITY, "there is nothing to fill", "look at the build-up and the backbones", 0);
            return Optional.empty();
        }
        if (shell.isPresent() && cavity.pocketEmpty())
            report(bay, PlanFault.Kind.SHELL_TOO_THICK, "the shell is thicker than the section, so no pocket is left",
                    "state the bay as solid, or a thinner shell", shell.getAsDouble());
        Attitude lying = attitude(attitude);
        double height = cavity.extent(lying).height();
        int lifts = Pour.lifts(height, FoamFacts.lift(fill.foam()).likely());
        Responses responses = new Responses(bay, order, poured.value());
        return Optional.of(new FillMeasures.BayFill(bay, core, attitude, cavity, poured, cavity.trim(), height,
                cavity.lifts(lying, lifts), responses.toBuildUp(), responses.toShrink(), responses.toSheet()));
    }

    /** How a bay's poured volume answers to things with a range. Volumes at the ends of a range are taken in proportion to
     *  the section at half length and to the clear length: ranges are narrow, and what they change is a few per cent. */
    private final class Responses {
        private final Bay bay;
        private final CavityOrder order;
        private final double poured;
        private double atHalf = Double.NaN;

        Responses(Bay bay, CavityOrder order, double poured) {
            this.bay = bay;
            this.order = order;
            this.poured = poured;
        }

        Response toBuildUp() {
            if (!(buildUp[0] < buildUp[2]))
                return Response.NONE;
            return Response.of(buildUp[0], withBuildUp(buildUp[0]), buildUp[1], poured, buildUp[2], withBuildUp(buildUp[2]));
        }

        private double withBuildUp(double general) {
            return volume(shape.plug(), with(order.foreX(), order.aftX(), BuildUps.withGeneral(order.buildUp(), general)));
        }

        Response toShrink() {
            Given shrink = spec.body().shrink();
            if (!shrink.ranged())
                return Response.NONE;
            return Response.of(shrink.low(), atShrink(shrink.low()), shrink.likely(), poured, shrink.high(), atShrink(shrink.high()));
        }

        /** The plug another size, its plates as thick as before. */
        private double atShrink(double shrink) {
            double ratio = Cure.plugScale(shrink) / shape.scale();
            double fore = bay.fore().plugX() * ratio + order.foreX() - bay.fore().plugX();
            double aft = bay.aft().plugX() * ratio + order.aftX() - bay.aft().plugX();
            List<Layer> layers = order.buildUp().layers().stream()
                    .map(layer -> new Layer(layer.fromX() * ratio, layer.toX() * ratio, layer.band(), layer.thickness())).toList();
            return volume(shape.plug().scaled(ratio), with(fore, aft, new BuildUp(layers, order.buildUp().bare())));
        }

        Response toSheet() {
            Optional<Given> sheet = spec.frame().map(Frame::thickness).filter(Given::ranged);
            return sheet.map(t -> Response.of(t.low(), atSheet(t.low()), t.likely(), poured, t.high(), atSheet(t.high())))
                    .orElse(Response.NONE);
        }

        private double atSheet(double sheet) {
            return poured * Math.max(0, bay.aft().forwardFace(sheet) - bay.fore().aftFace(sheet)) / length(order);
        }

        private CavityOrder with(double fore, double aft, BuildUp changed) {
            return new CavityOrder(fore, aft, changed, order.overfill(), order.shell(), order.backbones());
        }

        private double volume(Loft plug, CavityOrder changed) {
            if (Double.isNaN(atHalf))
                atHalf = section(shape.plug(), order);
            return atHalf > 0 ? poured * section(plug, changed) * length(changed) / (atHalf * length(order)) : poured;
        }
    }

    private static double length(CavityOrder order) {
        return order.aftX() - order.foreX();
    }

    /** Area of the cavity at half length, m2. */
    private static double section(Loft plug, CavityOrder order) {
        double x = (order.foreX() + order.aftX()) / 2;
        Region foam = FoamLine.grown(plug, x, Side.AFT, order.buildUp(), order.overfill());
        if (order.shell().isPresent())
            foam = foam.minus(FoamLine.within(plug, x, Side.AFT, order.buildUp(), order.shell().getAsDouble()));
        for (Outline backbone : order.backbones())
            foam = foam.minus(Region.of(backbone));
        return foam.area();
    }

    private void report(Bay bay, PlanFault.Kind kind, String message, String remedy, double figure) {
        measurements.report(PlanFault.of(kind, bay.aft().station().origin(), bay.words(), bay.words() + ": " + message, remedy)
                .at(figure, Dimension.LENGTH));
    }

    private static Attitude attitude(Fill.Attitude attitude) {
        return switch (attitude) {
            case UPRIGHT -> Attitude.UPRIGHT;
            case UPSIDE_DOWN -> Attitude.UPSIDE_DOWN;
            case ON_SIDE -> Attitude.ON_SIDE;
        };
    }
}
