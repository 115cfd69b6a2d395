package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
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

/** Measures the cavities, once. The overfill runs over the edges of the plates between bays, and each bay has its half of that: the
 *  form stands over the edge, and whichever side is poured first meets the other in the middle of it. It ends at the end plates. */
final class FillMeasuring {

    /** More lifts than any bay takes; a lift limit that asks for more is a slip of the unit. */
    static final int MOST_LIFTS = 200;

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
                .map(backbone -> PlateMaking.rectangle(frame, backbone)).toList()).orElse(List.of());
    }

    /** Bays are independent and the loft is immutable, so they are measured side by side; everything that is reported is
     *  reported in the order of the bays. */
    FillMeasures measure() {
        List<Order> orders = new ArrayList<>();
        for (Bay bay : shape.bays())
            order(bay).ifPresent(orders::add);
        List<FillMeasures.BayFill> bays = orders.parallelStream().map(this::fill).toList();
        bays.forEach(this::report);
        return new FillMeasures(bays.stream().filter(bay -> bay.poured().value() > 0).toList());
    }

    /** A bay to be measured. */
    private record Order(Bay bay, Fill.Core core, Fill.Attitude attitude, CavityOrder cavity) { }

    private Optional<Order> order(Bay bay) {
        double from = bay.fore().aftFace(thickness);
        double to = bay.aft().forwardFace(thickness);
        if (!(to > from)) {
            report(bay, PlanFault.Kind.BAY_SHUT, "the plates leave no room between them", "move the stations apart", to - from);
            return Optional.empty();
        }
        Fill.Core core = BayRules.core(spec, bay, measurements);
        OptionalDouble shell = core instanceof Fill.Core.Shell(var stated) ? OptionalDouble.of(stated.likely())
                : OptionalDouble.empty();
        return Optional.of(new Order(bay, core, BayRules.attitude(spec, bay, measurements),
                new CavityOrder(from, to, shape.buildUp(), fill.overfill().likely(), edges(bay), shell, backbones)));
    }

    private List<CavityOrder.PlateEdge> edges(Bay bay) {
        return Stream.of(bay.fore(), bay.aft()).filter(this::betweenBays)
                .map(border -> new CavityOrder.PlateEdge((border.forwardFace(thickness) + border.aftFace(thickness)) / 2, thickness / 2, 0.5)).toList();
    }

    private boolean betweenBays(Border border) {
        return border.plated() && border != shape.borders().getFirst() && border != shape.borders().getLast();
    }

    private FillMeasures.BayFill fill(Order order) {
        if (cancelled.getAsBoolean())
            throw new CancellationException();
        Cavity cavity = Cavity.of(shape.plug(), order.cavity(), cancelled);
        Measured poured = cavity.poured();
        Attitude lying = attitude(order.attitude());
        double height = cavity.extent(lying).height();
        double limit = Math.max(FoamFacts.lift(fill.foam()).likely(), height / MOST_LIFTS);
        List<Measured> lifts = height > 0 ? cavity.lifts(lying, Pour.lifts(height, limit)) : List.of();
        return new FillMeasures.BayFill(order.bay(), order.core(), order.attitude(), cavity, poured, cavity.trim(), height,
                lifts, answers(order, cavity.rates()), answers(order, cavity.trimRates()));
    }

    private FillMeasures.Answers answers(Order order, CavityRates rates) {
        return new FillMeasures.Answers(toBuildUp(order.bay(), rates), toShrink(order, rates), toSheet(order.bay(), rates));
    }

    private void report(FillMeasures.BayFill bay) {
        if (!(bay.poured().value() > 0))
            report(bay.bay(), PlanFault.Kind.NO_CAVITY, "there is nothing to fill", "look at the build-up and the backbones", 0);
        else if (bay.core() instanceof Fill.Core.Shell(Given shell) && bay.cavity().pocketEmpty())
            report(bay.bay(), PlanFault.Kind.SHELL_TOO_THICK, "the shell is thicker than the section, so no pocket is left",
                    "state the bay as solid, or a thinner shell", shell.likely());
        double limit = FoamFacts.lift(fill.foam()).likely();
        if (bay.height() > MOST_LIFTS * limit)
            report(bay.bay(), PlanFault.Kind.TOO_MANY_LIFTS, "it would take more than " + MOST_LIFTS + " lifts",
                    "look at the lift limit's unit", limit);
    }

    /** Besides what it takes off the foam, the build-up moves plates in at moulded ends. */
    private Response toBuildUp(Bay bay, CavityRates rates) {
        double ends = (bay.fore().moved() ? rates.foreEnd() : 0) - (bay.aft().moved() ? rates.aftEnd() : 0);
        return buildUp[0] < buildUp[2] ? new Response(buildUp[1], rates.buildUp() + ends) : Response.NONE;
    }

    /** The plates' thickness moves the faces the foam lies against, and widens the edges the overfill runs over. */
    private Response toSheet(Bay bay, CavityRates rates) {
        Optional<Given> sheet = spec.frame().map(Frame::thickness).filter(Given::ranged);
        double fore = bay.fore().aftFace(1) - bay.fore().aftFace(0), aft = bay.aft().forwardFace(1) - bay.aft().forwardFace(0);
        return sheet.map(t -> new Response(t.likely(), rates.foreEnd() * fore + rates.aftEnd() * aft + rates.plates())).orElse(Response.NONE);
    }

    /** The plug grows by 1 / (1 - shrink), and its station lines with it; build-up at moulded ends and plates stay as they are. */
    private Response toShrink(Order order, CavityRates rates) {
        Given shrink = spec.body().shrink();
        if (!shrink.ranged())
            return Response.NONE;
        double fore = order.cavity().foreX() - order.bay().fore().station().x() * shape.scale();
        double aft = order.cavity().aftX() - order.bay().aft().station().x() * shape.scale();
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
