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
import mouldwright.geometry.fill.CavityRates;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.plane.Outline;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Spec;
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
        CavityRates rates = cavity.rates();
        return Optional.of(new FillMeasures.BayFill(bay, core, attitude, cavity, poured, cavity.trim(), height,
                cavity.lifts(lying, lifts), toBuildUp(bay, rates), toShrink(bay, order, rates), toSheet(bay, rates)));
    }

    /** Besides what it takes off the foam, the build-up moves plates in at moulded ends. */
    private Response toBuildUp(Bay bay, CavityRates rates) {
        double ends = (bay.fore().moved() ? rates.foreEnd() : 0) - (bay.aft().moved() ? rates.aftEnd() : 0);
        return buildUp[0] < buildUp[2] ? new Response(buildUp[1], rates.buildUp() + ends) : Response.NONE;
    }

    /** The plates' thickness moves the faces the foam lies against. */
    private Response toSheet(Bay bay, CavityRates rates) {
        Optional<Given> sheet = spec.frame().map(Frame::thickness).filter(Given::ranged);
        double fore = bay.fore().aftFace(1) - bay.fore().aftFace(0), aft = bay.aft().forwardFace(1) - bay.aft().forwardFace(0);
        return sheet.map(t -> new Response(t.likely(), rates.foreEnd() * fore + rates.aftEnd() * aft)).orElse(Response.NONE);
    }

    /** The plug grows by 1 / (1 - shrink), and its station lines with it; build-up at moulded ends and plates stay as they are. */
    private Response toShrink(Bay bay, CavityOrder order, CavityRates rates) {
        Given shrink = spec.body().shrink();
        if (!shrink.ranged())
            return Response.NONE;
        double fore = order.foreX() - bay.fore().station().x() * shape.scale();
        double aft = order.aftX() - bay.aft().station().x() * shape.scale();
        return new Response(shrink.likely(), (rates.scale() - rates.foreEnd() * fore - rates.aftEnd() * aft) * shape.scale());
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
