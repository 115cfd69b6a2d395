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
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.offset.BuildUp;
import mouldwright.geometry.offset.Layer;
import mouldwright.geometry.plane.Outline;
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
        return Optional.of(new FillMeasures.BayFill(bay, core, attitude, cavity, poured, cavity.trim(), height,
                cavity.lifts(lying, lifts), toBuildUp(order, poured.value()), toShrink(bay, order, poured.value()),
                toSheet(bay, order, poured.value())));
    }

    private Response toBuildUp(CavityOrder order, double at) {
        double[] range = buildUp;
        if (!(range[0] < range[2]))
            return Response.NONE;
        return Response.of(range[0], volume(shape.plug(), with(order, BuildUps.withGeneral(order.buildUp(), range[0]))),
                range[1], at, range[2], volume(shape.plug(), with(order, BuildUps.withGeneral(order.buildUp(), range[2]))));
    }

    private static CavityOrder with(CavityOrder order, BuildUp buildUp) {
        return new CavityOrder(order.foreX(), order.aftX(), buildUp, order.overfill(), order.shell(), order.backbones());
    }

    private Response toShrink(Bay bay, CavityOrder order, double at) {
        Given shrink = spec.body().shrink();
        if (!shrink.ranged())
            return Response.NONE;
        return Response.of(shrink.low(), atShrink(bay, order, shrink.low()), shrink.likely(), at, shrink.high(),
                atShrink(bay, order, shrink.high()));
    }

    /** The plug another size, its plates as thick as before. */
    private double atShrink(Bay bay, CavityOrder order, double shrink) {
        double ratio = Cure.plugScale(shrink) / shape.scale();
        double fore = bay.fore().plugX() * ratio + order.foreX() - bay.fore().plugX();
        double aft = bay.aft().plugX() * ratio + order.aftX() - bay.aft().plugX();
        List<Layer> layers = order.buildUp().layers().stream()
                .map(layer -> new Layer(layer.fromX() * ratio, layer.toX() * ratio, layer.band(), layer.thickness())).toList();
        return volume(shape.plug().scaled(ratio), new CavityOrder(fore, aft, new BuildUp(layers, order.buildUp().bare()),
                order.overfill(), order.shell(), order.backbones()));
    }

    private Response toSheet(Bay bay, CavityOrder order, double at) {
        Optional<Given> sheet = spec.frame().map(Frame::thickness).filter(Given::ranged);
        return sheet.map(t -> Response.of(t.low(), atSheet(bay, order, t.low()), t.likely(), at, t.high(),
                atSheet(bay, order, t.high()))).orElse(Response.NONE);
    }

    private double atSheet(Bay bay, CavityOrder order, double sheet) {
        double fore = bay.fore().aftFace(sheet);
        double aft = bay.aft().forwardFace(sheet);
        return fore < aft ? volume(shape.plug(), new CavityOrder(fore, aft, order.buildUp(), order.overfill(), order.shell(),
                order.backbones())) : 0;
    }

    private double volume(Loft plug, CavityOrder order) {
        return Cavity.of(plug, order, cancelled).poured().value();
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
