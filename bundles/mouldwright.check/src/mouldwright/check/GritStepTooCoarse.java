package mouldwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Finish;

/** MW710: a grit much finer than the one before only polishes its scratches. Each is at most twice the one before (from memory). */
final class GritStepTooCoarse implements Check {

    private static final double MOST = 2;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().finish().ifPresent(finish -> {
            List<Integer> grits = finish.grits();
            for (int i = 1; i < grits.size(); i++) {
                int from = grits.get(i - 1), to = grits.get(i);
                if (to <= from)
                    out.warn("MW710", finish.origin(), "grit " + to + " after " + from + ": each grit is finer than the one before", "put the grits in order", fix(finish));
                else if (to > MOST * from)
                    out.warn("MW710", finish.origin(), "grit " + to + " after " + from + ", " + Math.round(MOST * from) + " at most: the scratches of " + from + " stay",
                            "insert grit " + between(from, to), fix(finish));
            }
        });
    }

    /** All grits in order, with those between that lack. */
    private static Fix fix(Finish finish) {
        List<Integer> whole = new ArrayList<>(new TreeSet<>(finish.grits()));
        for (int i = 1; i < whole.size(); )
            if (whole.get(i) > MOST * whole.get(i - 1))
                whole.add(i, between(whole.get(i - 1), whole.get(i)));
            else
                i++;
        String words = "sand " + whole.stream().map(String::valueOf).collect(Collectors.joining(" "));
        return Fix.of("state `" + words + "`", new Remedy.State(finish.origin(), "sand", words));
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
