package mouldwright.check;

import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Station;
import mouldwright.plan.stage.Bay;
import mouldwright.plan.stage.FillMeasures;

/** MW317: some bays have a rule of their own, and the block says nothing for the others: they are taken as solid. A solid bay takes several times the foam of a shell, so who
 *  thought of some bays is asked about the rest. */
final class BayWithoutRule implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().fill().filter(fill -> fill.core() instanceof Fill.Core.Solid(Origin origin) && origin instanceof Origin.Assumed && fill.bays().stream().anyMatch(rule -> rule.core().isPresent()))
                .ifPresent(fill -> plan.measurements().find(FillMeasures.class).ifPresent(bays -> examine(fill, bays.bays(), plan.spec().body(), out)));
    }

    private static void examine(Fill fill, List<FillMeasures.BayFill> bays, Body body, Findings out) {
        List<Bay> without = bays.stream().map(FillMeasures.BayFill::bay).filter(bay -> fill.bays().stream().noneMatch(rule -> rule.core().isPresent() && holds(rule, bay, body))).toList();
        if (without.isEmpty())
            return;
        String first = without.getFirst().words(), core = core(fill.bays().getLast());
        out.add(new Finding("MW317", Severity.INFO, fill.origin(), first + (without.size() == 1 ? " has" : " and " + (without.size() - 1) + " more have")
                + " no rule, and the block states neither `solid` nor `shell`: taken as solid", "state `solid` or `shell` in the block, or a rule for each bay",
                List.of(rules(fill, without, "solid"), rules(fill, without, core)).subList(0, core.equals("solid") ? 1 : 2)));
    }

    private static Fix rules(Fill fill, List<Bay> without, String core) {
        return new Fix("add a rule of `" + core + "` for " + (without.size() == 1 ? "it" : "each"), false, without.stream().<Remedy>map(bay -> new Remedy.Insert(fill.origin(), Remedy.Side.INSIDE,
                "bay " + bay.fore().name() + " to " + bay.aft().name() + " " + core)).toList());
    }

    private static String core(Fill.BayRule rule) {
        return rule.core().filter(Fill.Core.Shell.class::isInstance).map(Fill.Core.Shell.class::cast).map(shell -> "shell " + Findings.exact(shell.thickness().likely(), 1)).orElse("solid");
    }

    private static boolean holds(Fill.BayRule rule, Bay bay, Body body) {
        double from = x(body, rule.span().from()), to = x(body, rule.span().to());
        return from <= bay.fore().station().x() && bay.aft().station().x() <= to;
    }

    /** Where a station stands; nowhere for a name that is none, which is told elsewhere. */
    private static double x(Body body, String name) {
        return body.stations().stream().filter(station -> station.name().equals(name)).mapToDouble(Station::x).findFirst().orElse(Double.NaN);
    }
}
