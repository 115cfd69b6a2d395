package mouldwright.check;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Schedule;

/** MW704: a mould that is not clearly stiffer than its part warps with the part's shrinkage and gives under a brush. At least twice the part: Practical
 *  Action, Fibreglass boat building, p.7. */
final class MouldTooThin implements Check {

    private static final double TIMES = 2;
    /** More is not laid wet on wet, m; see {@link TooManyPliesAtOnce}. */
    private static final double AT_ONCE = 0.004;
    /** A laminate that lacks more is no slip. */
    private static final int MOST = 20;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().mould().ifPresent(spec -> plan.quantity("mould.thickness").ifPresent(mould -> plan.quantity("mould.part.thickness").ifPresent(part -> {
            if (mould.value() < TIMES * part.value())
                out.warn("MW704", spec.origin(), message(mould, part), "add plies to the mould's schedule", fixes(spec, TIMES * part.value() - mould.value()));
        })));
    }

    /** So many more of its last mat, after a wait, as make up what lacks. */
    private static Fix[] fixes(Mould mould, double lacks) {
        Schedule schedule = mould.schedule();
        if (schedule.plies().isEmpty() || !(schedule.layers().getLast() instanceof Schedule.Layer.Ply last))
            return new Fix[0];
        double each = Laminates.cured(last.mat(), schedule.resin());
        int plies = each > 0 ? (int) Math.ceil(lacks / each - 1e-9) : 0;
        int together = each > 0 ? (int) Math.floor(AT_ONCE / each) : 0;
        if (plies < 1 || together < 1 || plies > MOST)
            return new Fix[0];
        List<String> words = new ArrayList<>();
        for (int left = plies; left > 0; left -= together)
            words.add("wait 12 h\n" + (Math.min(left, together) == 1 ? "" : Math.min(left, together) + " of ") + "ply " + last.mat().name());
        return new Fix[] {Fix.of("add " + plies + (plies == 1 ? " ply of " : " plies of ") + last.mat().name() + " to " + schedule.name(),
                new Remedy.Insert(schedule.origin(), Remedy.Side.INSIDE, String.join("\n", words)))};
    }

    private static String message(Quantity mould, Quantity part) {
        return "laminate of " + Findings.length(mould.value()) + " for a part of " + Findings.length(part.value()) + ", " + Findings.length(TIMES * part.value())
                + " at least: twice the part";
    }
}
