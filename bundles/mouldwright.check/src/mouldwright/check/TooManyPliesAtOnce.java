package mouldwright.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Skin;

/** MW509: so much wet laminate at once that its own heat scorches, warps or cracks it. Common practice: some 4 mm, three plies of 450 g/m2, between
 *  waits for cure. Local plies go on with the last run of the skin's schedule. */
final class TooManyPliesAtOnce implements Check {

    private static final double THICKEST = 0.004;

    @Override public void examine(BuildPlan plan, Findings out) {
        for (Schedule schedule : Laminates.of(plan.spec()))
            for (List<Schedule.Layer.Ply> run : Laminates.atOnce(schedule)) {
                double thickness = thickness(run, schedule.resin());
                if (thickness > THICKEST)
                    out.warn("MW509", run.getLast().origin(), schedule.name() + ": " + run.size() + " plies laid at once cure to "
                            + Findings.length(thickness) + ", " + Findings.length(THICKEST) + " at most: they run hot", "put `wait 12 h` between them", waits(run, schedule.resin()));
            }
        plan.spec().skin().ifPresent(skin -> local(skin, out));
    }

    private static void local(Skin skin, Findings out) {
        List<List<Schedule.Layer.Ply>> runs = Laminates.atOnce(skin.schedule());
        double below = runs.isEmpty() ? 0 : thickness(runs.getLast(), skin.schedule().resin());
        for (Skin.Rule rule : skin.rules())
            if (rule instanceof Skin.Rule.AddPlies add) {
                double thickness = below + add.count() * Laminates.cured(add.mat(), skin.schedule().resin());
                if (below <= THICKEST && thickness > THICKEST)
                    out.warn("MW509", add.span().origin(), add.count() + " plies of " + add.mat().name() + " added to the skin cure with it to "
                            + Findings.length(thickness) + ", " + Findings.length(THICKEST) + " at most at once: they run hot", "let the skin cure first, or add fewer plies");
            }
    }

    /** A wait before each ply that would make the run too thick; a statement of several plies is parted there. */
    private static Fix[] waits(List<Schedule.Layer.Ply> run, Resin resin) {
        Map<Origin, StringBuilder> written = new LinkedHashMap<>();
        double wet = 0;
        for (Schedule.Layer.Ply ply : run) {
            double thickness = Laminates.cured(ply.mat(), resin);
            if (thickness > THICKEST)
                return new Fix[0];
            boolean wait = wet + thickness > THICKEST;
            StringBuilder lines = written.computeIfAbsent(ply.origin(), origin -> new StringBuilder());
            lines.append(wait ? (lines.isEmpty() ? "" : "\n") + "wait 12 h\n" : lines.isEmpty() ? "" : "\n").append("ply ").append(ply.mat().name());
            wet = wait ? thickness : wet + thickness;
        }
        List<Remedy> remedies = new ArrayList<>();
        written.forEach((origin, lines) -> {
            if (lines.indexOf("wait") >= 0)
                remedies.add(new Remedy.Replace(origin, lines.toString()));
        });
        return new Fix[] {new Fix("put `wait 12 h` between the plies", false, remedies)};
    }

    private static double thickness(List<Schedule.Layer.Ply> run, Resin resin) {
        return run.stream().mapToDouble(ply -> Laminates.cured(ply.mat(), resin)).sum();
    }
}
