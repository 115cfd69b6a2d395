package mouldwright.check;

import java.util.List;
import mouldwright.plan.BuildPlan;

/** MW710: a grit much finer than the one before only polishes its scratches. Each is at most twice the one before (from memory). */
final class GritStepTooCoarse implements Check {

    private static final double MOST = 2;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().finish().ifPresent(finish -> {
            List<Integer> grits = finish.grits();
            for (int i = 1; i < grits.size(); i++) {
                int from = grits.get(i - 1), to = grits.get(i);
                if (to <= from)
                    out.warn("MW710", finish.origin(), "grit " + to + " after " + from + ": each grit is finer than the one before", "put the grits in order");
                else if (to > MOST * from)
                    out.warn("MW710", finish.origin(), "grit " + to + " after " + from + ", " + Math.round(MOST * from) + " at most: the scratches of " + from + " stay",
                            "insert grit " + between(from, to));
            }
        });
    }

    /** A grit that is sold and lies best between two others. */
    private static int between(int from, int to) {
        double wanted = Math.sqrt((double) from * to);
        int best = from;
        for (int grit : new int[] {36, 40, 60, 80, 100, 120, 150, 180, 220, 240, 280, 320, 400, 500, 600, 800, 1000, 1200, 1500, 2000})
            if (grit > from && grit < to && (best == from || Math.abs(grit - wanted) < Math.abs(best - wanted)))
                best = grit;
        return best == from ? (int) Math.round(wanted) : best;
    }
}
