package mouldwright.plan.stage;

import java.util.Optional;
import mouldwright.plan.Assumption;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.FillDefaults;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Station;

/** Which rule of a spec holds for a bay: the last one whose stretch holds the whole bay. */
final class BayRules {

    private BayRules() { }

    /** A stretch of the body on the part's station lines, m; empty, and reported, where a station is not there or the
     *  stretch runs forward. */
    static Optional<double[]> stretch(Body body, BaySpan span, Measurements measurements) {
        Optional<Station> from = station(body, span.from());
        Optional<Station> to = station(body, span.to());
        if (from.isPresent() && to.isPresent() && from.get().x() < to.get().x())
            return Optional.of(new double[] {from.get().x(), to.get().x()});
        PlanFault fault = from.isEmpty() || to.isEmpty()
                ? PlanFault.of(PlanFault.Kind.NAME, span.origin(), "bay " + span.from() + " to " + span.to(),
                        "no station is called " + (from.isEmpty() ? span.from() : span.to()), "name a station")
                : PlanFault.of(PlanFault.Kind.SPAN, span.origin(), "bay " + span.from() + " to " + span.to(),
                        span.to() + " does not stand aft of " + span.from(), "name the forward station first");
        if (!measurements.faults().contains(fault))
            measurements.report(fault);
        return Optional.empty();
    }

    /** What is inside a bay. */
    static Fill.Core core(Spec spec, Bay bay, Measurements measurements) {
        Fill fill = spec.fill().orElseThrow();
        Fill.Core core = fill.core();
        for (Fill.BayRule rule : fill.bays())
            if (rule.core().isPresent() && holds(spec.body(), rule, bay, measurements))
                core = rule.core().get();
        if (core instanceof Fill.Core.Solid(Origin.Assumed why))
            measurements.assume(Assumption.choice("fill", "solid", why));
        return core;
    }

    /** How the plug lies while a bay is poured; upright, which is noted, where nothing is said. */
    static Fill.Attitude attitude(Spec spec, Bay bay, Measurements measurements) {
        Optional<Fill.Attitude> attitude = Optional.empty();
        for (Fill.BayRule rule : spec.fill().orElseThrow().bays())
            if (rule.attitude().isPresent() && holds(spec.body(), rule, bay, measurements))
                attitude = rule.attitude();
        if (attitude.isEmpty())
            measurements.assume(Assumption.choice("pour", Fill.Attitude.UPRIGHT.words(), FillDefaults.upright()));
        return attitude.orElse(Fill.Attitude.UPRIGHT);
    }

    private static boolean holds(Body body, Fill.BayRule rule, Bay bay, Measurements measurements) {
        return stretch(body, rule.span(), measurements).map(x -> bay.within(x[0], x[1])).orElse(false);
    }

    private static Optional<Station> station(Body body, String name) {
        return body.stations().stream().filter(station -> station.name().equals(name)).findFirst();
    }
}
