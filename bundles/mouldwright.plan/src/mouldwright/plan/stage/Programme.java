package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.programme.Precedence;
import mouldwright.plan.programme.Scheduler;
import mouldwright.plan.programme.WorkCalendar;

/** The tasks of a job with what each waits for, ready to be put on the calendar: the ledger's formulas and the printed timetable are made
 *  by one and the same method.
 *  @param entries    in the order of the build
 *  @param precedence by place in that list
 *  @param waits      place of each task's wait among the formula's waits; -1 for none */
record Programme(List<TaskBook.Entry> entries, Precedence precedence, int[] waits) {

    /** Longest labour or wait reckoned with, s: about thirty years, so that a slip of a unit does not run through the centuries. */
    static final double LONGEST = 1e9;

    static Programme of(TaskBook book) {
        List<TaskBook.Entry> entries = book.entries();
        Map<String, Integer> places = new LinkedHashMap<>();
        for (TaskBook.Entry entry : entries)
            places.put(entry.task().id(), places.size());
        int[][] before = new int[entries.size()][];
        int[] waits = new int[entries.size()];
        int count = 0;
        for (int i = 0; i < before.length; i++) {
            before[i] = before(entries, places, i);
            waits[i] = entries.get(i).task().pause().isPresent() ? count++ : -1;
        }
        return new Programme(entries, new Precedence(before), waits);
    }

    /** What a task names, as far as it is in this job; where it names nothing that is, all of the nearest earlier stage. */
    private static int[] before(List<TaskBook.Entry> entries, Map<String, Integer> places, int i) {
        Task task = entries.get(i).task();
        int[] named = task.after().stream().distinct().filter(places::containsKey).mapToInt(places::get).toArray();
        if (named.length > 0 || task.atStart())
            return named;
        int last = i;
        while (last >= 0 && entries.get(last).stage().equals(entries.get(i).stage()))
            last--;
        List<Integer> stage = new ArrayList<>();
        for (int k = last; k >= 0 && entries.get(k).stage().equals(entries.get(last).stage()); k--)
            stage.addFirst(k);
        return stage.stream().mapToInt(Integer::intValue).toArray();
    }

    /** What a timetable is reckoned of: labour of each task, then the waits there are. */
    List<Node> inputs() {
        List<Node> nodes = new ArrayList<>();
        entries.forEach(entry -> nodes.add(entry.task().labour()));
        entries.forEach(entry -> entry.task().pause().ifPresent(nodes::add));
        return nodes;
    }

    Scheduler scheduler() {
        int[] persons = entries.stream().mapToInt(entry -> entry.task().persons()).toArray();
        boolean[] unbroken = new boolean[entries.size()];
        for (int i = 0; i < unbroken.length; i++)
            unbroken[i] = entries.get(i).task().unbroken();
        return new Scheduler(precedence, persons, unbroken);
    }

    /** Labour of each task out of a formula's inputs. */
    double[] labour(double[] v) {
        double[] labour = new double[entries.size()];
        for (int i = 0; i < labour.length; i++)
            labour[i] = Math.clamp(v[i], 0, LONGEST);
        return labour;
    }

    /** Wait after each task out of a formula's inputs. */
    double[] waits(double[] v) {
        double[] times = new double[entries.size()];
        for (int i = 0; i < times.length; i++)
            times[i] = waits[i] < 0 ? 0 : Math.clamp(v[times.length + waits[i]], 0, LONGEST);
        return times;
    }

    /** A calendar for a length of day that a draw may have stretched. */
    static WorkCalendar calendar(WorkCalendar stated, double day) {
        return day == stated.day() ? stated : new WorkCalendar(Math.clamp(day, 1, WorkCalendar.CALENDAR_DAY), stated.first(), stated.from(), stated.to());
    }
}
