package mouldwright.plan.programme;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Which tasks wait for which. */
public final class Precedence {

    private final int[][] before;
    private final int[][] after;

    /** @param before for each task, the tasks it waits for */
    public Precedence(int[][] before) {
        this.before = Arrays.stream(before).map(int[]::clone).toArray(int[][]::new);
        int[] counts = new int[before.length];
        for (int[] all : before)
            for (int i : all)
                counts[i]++;
        this.after = new int[before.length][];
        for (int i = 0; i < after.length; i++)
            after[i] = new int[counts[i]];
        for (int i = before.length - 1; i >= 0; i--)
            for (int b : before[i])
                after[b][--counts[b]] = i;
    }

    int size() {
        return before.length;
    }

    /** What a task waits for; not to be changed. */
    public int[] before(int task) {
        return before[task];
    }

    int[] after(int task) {
        return after[task];
    }

    /** An order in which each task comes after all it waits for; empty where some wait for each other. Depends on nothing but the
     *  precedence. */
    public Optional<int[]> order() {
        int[] open = new int[before.length];
        int[] order = new int[before.length];
        int done = 0;
        for (int i = 0; i < open.length; i++) {
            open[i] = before[i].length;
            if (open[i] == 0)
                order[done++] = i;
        }
        for (int k = 0; k < done; k++)
            for (int next : after[order[k]])
                if (--open[next] == 0)
                    order[done++] = next;
        return done == order.length ? Optional.of(order) : Optional.empty();
    }

    /** Tasks that wait for each other in a circle, each for the one before it; empty where there are none. */
    public List<Integer> circle() {
        int[] state = new int[before.length];
        for (int i = 0; i < state.length; i++) {
            List<Integer> circle = from(i, state);
            if (!circle.isEmpty())
                return circle;
        }
        return List.of();
    }

    /** Walks down what a task waits for with a stack of its own, so that long chains do no harm. */
    private List<Integer> from(int task, int[] state) {
        List<Integer> path = new ArrayList<>();
        List<Integer> at = new ArrayList<>();
        if (state[task] == 0) {
            path.add(task);
            at.add(0);
            state[task] = 1;
        }
        while (!path.isEmpty()) {
            int top = path.size() - 1;
            int current = path.get(top);
            if (at.get(top) == before[current].length) {
                state[current] = 2;
                path.removeLast();
                at.removeLast();
                continue;
            }
            int next = before[current][at.get(top)];
            at.set(top, at.get(top) + 1);
            if (state[next] == 1) {
                List<Integer> circle = new ArrayList<>(path.subList(path.indexOf(next), path.size()));
                Collections.reverse(circle);
                return circle;
            }
            if (state[next] == 0) {
                state[next] = 1;
                path.add(next);
                at.add(0);
            }
        }
        return List.of();
    }
}
