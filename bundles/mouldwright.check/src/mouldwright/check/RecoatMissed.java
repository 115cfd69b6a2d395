package mouldwright.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Schedule;

/** MW610: a ply bonds by itself only to one that is still green; past the resin's recoat time the surface is abraded first. */
final class RecoatMissed implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        List<Schedule> schedules = new ArrayList<>();
        plan.spec().skin().ifPresent(skin -> schedules.add(skin.schedule()));
        plan.spec().mould().map(mould -> mould.schedule()).filter(schedule -> !schedules.contains(schedule)).ifPresent(schedules::add);
        schedules.forEach(schedule -> schedule.resin().recoat().ifPresent(recoat -> examine(schedule, recoat, out)));
    }

    private static String hours(double seconds) {
        return BigDecimal.valueOf(seconds / 3600).setScale(2, RoundingMode.FLOOR).stripTrailingZeros().toPlainString() + " h";
    }

    private static void examine(Schedule schedule, Given recoat, Findings out) {
        List<Schedule.Layer> layers = schedule.layers();
        for (int i = 0; i + 1 < layers.size(); i++)
            if (layers.get(i) instanceof Schedule.Layer.Wait wait && wait.time().likely() > recoat.likely())
                out.warn("MW610", wait.time().origin(), "wait of " + Findings.figure(wait.time().likely(), wait.time().dimension()) + " in " + schedule.name() + ", "
                        + schedule.resin().name() + " takes a ply within " + Findings.figure(recoat.likely(), recoat.dimension()), "wait less, or abrade before the next ply",
                        Fix.of("wait no longer than " + schedule.resin().name() + " allows", new Remedy.Replace(wait.time().origin(), hours(recoat.low()))));
    }
}
