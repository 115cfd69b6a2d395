package mouldwright.plan.programme;

import java.util.Arrays;

/** Puts tasks on the calendar. Of the tasks that can begin, the one with the longest path still behind it begins first, as far as the
 *  crew goes round; while something cures, the crew does what else there is. With as many persons as are ever wanted this is the
 *  critical path method. Source: parallel schedule generation with the longest-tail rule, textbooks on project planning. */
public final class Scheduler {

    private final Precedence precedence;
    private final int[] order;
    private final int[] persons;
    private final boolean[] unbroken;

    /** A scheduler of tasks.
     *  @param precedence without a circle
     *  @param persons    each task takes at most
     *  @param unbroken   whether a task is not to be laid down over a night
     *  @throws IllegalArgumentException if tasks wait for each other in a circle */
    public Scheduler(Precedence precedence, int[] persons, boolean[] unbroken) {
        this.precedence = precedence;
        this.order = precedence.order().orElseThrow(() -> new IllegalArgumentException("tasks wait for each other"));
        this.persons = persons.clone();
        this.unbroken = unbroken.clone();
    }

    /** Schedules.
     *  @param labour  person-time of each task, s
     *  @param waits   after each task, s
     *  @param crew    persons, at least 1 */
    public Timetable schedule(WorkCalendar calendar, int crew, double[] labour, double[] waits) {
        return new Run(calendar, Math.max(1, crew), labour, waits).run();
    }

    /** One schedule being made. */
    private final class Run {
        private final WorkCalendar calendar;
        private final double[] waits;
        private final double[] length;
        private final int[] hands;
        private final double[] tail;
        private final double[] begin;
        private final double[] end;
        private final double[] ready;
        private final double[] can;
        private final int[] cause;
        private final int[] open;
        private final int[] waiting;
        private int inQueue;
        private final int[] working;
        private int atWork;
        private int free;

        Run(WorkCalendar calendar, int crew, double[] labour, double[] waits) {
            int n = precedence.size();
            this.calendar = calendar;
            this.waits = waits;
            this.free = crew;
            this.length = new double[n];
            this.hands = new int[n];
            this.begin = new double[n];
            this.end = new double[n];
            this.ready = new double[n];
            this.can = new double[n];
            this.cause = new int[n];
            this.open = new int[n];
            this.waiting = new int[n];
            this.working = new int[Math.min(n, crew)];
            this.tail = new double[n];
            for (int i = 0; i < n; i++) {
                hands[i] = Math.min(crew, persons[i]);
                length[i] = labour[i] / hands[i];
                open[i] = precedence.before(i).length;
            }
            tails();
        }

        private void tails() {
            for (int k = order.length - 1; k >= 0; k--) {
                int i = order[k];
                double longest = 0;
                for (int next : precedence.after(i))
                    longest = Math.max(longest, tail[next]);
                tail[i] = longest + length[i] + waits[i];
            }
        }

        Timetable run() {
            Arrays.fill(cause, -1);
            for (int i : order)
                if (open[i] == 0)
                    queue(i, 0, -1);
            int last = -1;
            while (inQueue > 0 || atWork > 0) {
                double now = next();
                last = release(now, last);
                for (int at = best(now, last); at >= 0; at = best(now, last))
                    begin(at, now, last);
            }
            return table();
        }

        private void queue(int task, double time, int because) {
            can[task] = unbroken[task] ? calendar.unbrokenFrom(time, length[task]) : calendar.workingFrom(time);
            cause[task] = because;
            waiting[inQueue++] = task;
        }

        /** The next moment at which a task ends, or one can begin that has the persons it takes. */
        private double next() {
            double soonest = Double.POSITIVE_INFINITY;
            for (int k = 0; k < atWork; k++)
                soonest = Math.min(soonest, end[working[k]]);
            for (int k = 0; k < inQueue; k++)
                if (hands[waiting[k]] <= free)
                    soonest = Math.min(soonest, can[waiting[k]]);
            return soonest;
        }

        /** Ends what ends now, and queues what waited for it. */
        private int release(double now, int before) {
            int last = before;
            for (int k = atWork - 1; k >= 0; k--) {
                int task = working[k];
                if (end[task] <= now) {
                    working[k] = working[--atWork];
                    free += hands[task];
                    last = task;
                    followers(task);
                }
            }
            return last;
        }

        private void followers(int task) {
            for (int follower : precedence.after(task))
                if (--open[follower] == 0) {
                    int latest = -1;
                    for (int b : precedence.before(follower))
                        if (latest < 0 || ready[b] > ready[latest])
                            latest = b;
                    queue(follower, ready[latest], latest);
                }
        }

        /** Place in the queue of the task to begin now; -1 for none. Tasks put off to the evening's end move to the morning. */
        private int best(double now, int lastEnded) {
            int best = -1;
            for (int k = 0; k < inQueue; k++) {
                int task = waiting[k];
                if (can[task] > now || hands[task] > free)
                    continue;
                double from = unbroken[task] ? calendar.unbrokenFrom(now, length[task]) : calendar.workingFrom(now);
                if (from > now) {
                    if (can[task] < now && lastEnded >= 0)
                        cause[task] = lastEnded;
                    can[task] = from;
                    continue;
                }
                if (best < 0 || tail[task] > tail[waiting[best]] || tail[task] == tail[waiting[best]] && task < waiting[best])
                    best = k;
            }
            return best;
        }

        private void begin(int place, double now, int lastEnded) {
            int task = waiting[place];
            waiting[place] = waiting[--inQueue];
            if (can[task] < now && lastEnded >= 0)
                cause[task] = lastEnded; // it waited for hands, not for a cure
            begin[task] = now;
            end[task] = calendar.after(now, length[task]);
            ready[task] = end[task] + waits[task];
            working[atWork++] = task;
            free -= hands[task];
        }

        private Timetable table() {
            boolean[] critical = new boolean[begin.length];
            double elapsed = 0;
            double cures = 0;
            int last = -1;
            for (int i = 0; i < ready.length; i++)
                if (last < 0 || ready[i] > elapsed) {
                    elapsed = ready[i];
                    last = i;
                }
            int follower = -1;
            for (int i = last; i >= 0; i = cause[i]) {
                critical[i] = true;
                if (follower < 0 || begin[follower] >= ready[i])
                    cures += waits[i];
                follower = i;
            }
            return new Timetable(begin, end, ready, critical, elapsed, cures);
        }
    }
}
