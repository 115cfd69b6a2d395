package mouldwright.plan.stage;

import static mouldwright.units.Dimension.TIME;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import mouldwright.plan.Assumption;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.TaskEntry;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.programme.Scheduler;
import mouldwright.plan.programme.Timetable;
import mouldwright.plan.programme.WorkCalendar;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.WorkingWeek;
import mouldwright.plan.spec.Workshop;

/** The programme: labour in working hours, cure on the calendar, and when all is done with the crew there is. */
final class ProgrammeStage implements Stage {

    private static final String METHOD = "tasks that wait for each other, the longest path first, as far as the crew goes round; "
            + "labour stops at night and on days off, cure does not";

    /** A job that can be put on the calendar. */
    private record Job(Programme programme, WorkCalendar calendar) { }

    @Override public String name() {
        return "plan";
    }

    @Override public boolean wantedBy(Spec spec) {
        return isBuilt(spec);
    }

    /** Whether a spec states more than a shape. */
    static boolean isBuilt(Spec spec) {
        return spec.frame().isPresent() || spec.fill().isPresent() || spec.carve().isPresent() || spec.skin().isPresent()
                || spec.finish().isPresent() || spec.mould().isPresent();
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) { }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) { }

    @Override public void conclude(Spec spec, Measurements measurements, TaskBook tasks, OrderBook orders, Ledger ledger) {
        if (tasks.entries().isEmpty())
            return;
        labour(tasks, ledger);
        Workshop shop = spec.shop();
        Programme programme = Programme.of(tasks);
        if (!clear(shop, measurements) || circular(spec, programme, measurements))
            return;
        if (shop.week().origin() instanceof Origin.Assumed why)
            measurements.assume(Assumption.choice("working week", "Monday to Friday", why));
        if (shop.start().isEmpty())
            measurements.assume(Assumption.choice("first day", "the first working day of a week",
                    new Origin.Assumed("the spec states no day on which work starts, so waits over days off may fall otherwise")));
        Job job = new Job(programme, calendar(shop));
        measurements.keep(job);
        elapsed(job, shop, ledger);
    }

    private static void labour(TaskBook tasks, Ledger ledger) {
        Map<String, List<Node>> stages = new LinkedHashMap<>();
        tasks.entries().forEach(entry -> stages.computeIfAbsent(entry.stage(), stage -> new ArrayList<>()).add(entry.task().labour()));
        List<Node> all = new ArrayList<>();
        stages.forEach((stage, nodes) -> all.add(ledger.quantity("plan.labour." + stage, "Labour, " + stage, TIME)
                .sum("sum over its tasks", nodes).source("person-hours")));
        ledger.quantity("plan.labour", "Labour", TIME).sum("sum over the stages", all).source("person-hours");
    }

    /** Faults that another stage has met too are told once. */
    private static boolean clear(Workshop shop, Measurements measurements) {
        Measurements own = new Measurements();
        boolean clear = new Guard(own).above(shop.persons(), 0).positive(shop.day()).clear();
        if (shop.day().high() > WorkCalendar.CALENDAR_DAY) {
            clear = false;
            own.report(PlanFault.of(PlanFault.Kind.FIGURE, shop.day().origin(), "working day", "a working day is 24 h at most", "correct the figure")
                    .at(shop.day().likely(), TIME).against(WorkCalendar.CALENDAR_DAY, TIME));
        }
        own.faults().stream().filter(fault -> !measurements.faults().contains(fault)).forEach(measurements::report);
        return clear;
    }

    private static boolean circular(Spec spec, Programme programme, Measurements measurements) {
        List<Integer> circle = programme.precedence().circle();
        if (circle.isEmpty())
            return false;
        List<String> names = circle.stream().map(i -> programme.entries().get(i).task().name()).toList();
        measurements.report(PlanFault.of(PlanFault.Kind.CIRCULAR_PRECEDENCE, spec.origin(), "programme",
                names.size() == 1 ? names.getFirst() + " waits for itself" : "tasks wait for each other in a circle: " + String.join(", then ", names),
                "let one of them wait for something else"));
        return true;
    }

    private static WorkCalendar calendar(Workshop shop) {
        WorkingWeek week = shop.week();
        DayOfWeek first = shop.start().map(start -> WorkCalendar.firstWorkingDay(start, week.from(), week.to()).getDayOfWeek()).orElse(week.from());
        return new WorkCalendar(shop.day().likely(), first, week.from(), week.to());
    }

    private static void elapsed(Job job, Workshop shop, Ledger ledger) {
        List<Node> inputs = new ArrayList<>(job.programme.inputs());
        inputs.add(ledger.given(shop.persons()));
        inputs.add(ledger.given(shop.day()));
        Scheduler scheduler = job.programme.scheduler();
        Node elapsed = ledger.quantity("plan.elapsed", "From the first morning until all is done and cured", TIME)
                .from("timetable of all tasks and their waits with the crew", inputs, v -> table(job, scheduler, v, 0).elapsed()).source(METHOD);
        ledger.quantity("plan.waiting", "Of that, waits for cure on the critical path", TIME)
                .from("sum of the waits on the critical path", inputs, v -> table(job, scheduler, v, 0).waiting()).source(METHOD);
        Node more = ledger.quantity("plan.elapsed.more", "The same with one more person", TIME)
                .from("timetable with the crew and one more", inputs, v -> table(job, scheduler, v, 1).elapsed()).source(METHOD);
        ledger.quantity("plan.saved", "What one more person would save", TIME)
                .from("elapsed - elapsed with one more", List.of(elapsed, more), v -> v[0] - v[1]).source("difference");
    }

    private static Timetable table(Job job, Scheduler scheduler, double[] v, int more) {
        int persons = (int) Math.clamp(Math.rint(v[v.length - 2]), 1, Integer.MAX_VALUE - 1.0) + more;
        return scheduler.schedule(Programme.calendar(job.calendar, v[v.length - 1]), persons, job.programme.labour(v), job.programme.waits(v));
    }

    @Override public void list(Spec spec, Measurements measurements, Reckoning reckoning, Lists lists) {
        measurements.find(Job.class).ifPresent(job -> {
            tooLong(job.programme, reckoning, measurements, spec);
            double[] v = job.programme.inputs().stream().mapToDouble(reckoning::likely).toArray();
            double[] labour = job.programme.labour(v);
            double[] waits = job.programme.waits(v);
            int crew = (int) Math.rint(spec.shop().persons().likely());
            Timetable table = job.programme.scheduler().schedule(job.calendar, crew, labour, waits);
            Optional<LocalDate> start = spec.shop().start().map(day -> WorkCalendar.firstWorkingDay(day, spec.shop().week().from(), spec.shop().week().to()));
            IntStream.range(0, labour.length).boxed().sorted((a, b) -> {
                int order = Double.compare(table.begin()[a], table.begin()[b]);
                return order != 0 ? order : Integer.compare(a, b);
            }).forEach(i -> lists.task(entry(job, table, i, labour[i], waits[i], crew, start)));
        });
    }

    private static void tooLong(Programme programme, Reckoning reckoning, Measurements measurements, Spec spec) {
        ToDoubleFunction<Task> longest = task -> Math.max(reckoning.likely(task.labour()), task.pause().map(reckoning::likely).orElse(0.0));
        programme.entries().stream().map(TaskBook.Entry::task).filter(task -> longest.applyAsDouble(task) > Programme.LONGEST).findFirst()
                .ifPresent(task -> measurements.report(PlanFault.of(PlanFault.Kind.TASK_TOO_LONG, spec.origin(), "task " + task.id(),
                        task.name() + " would take decades", "look at the rates and the waits")
                        .at(longest.applyAsDouble(task), TIME).against(Programme.LONGEST, TIME)));
    }

    private static TaskEntry entry(Job job, Timetable table, int i, double labour, double wait, int crew, Optional<LocalDate> start) {
        TaskBook.Entry entry = job.programme.entries().get(i);
        WorkCalendar calendar = job.calendar;
        List<String> after = IntStream.of(job.programme.precedence().before(i)).mapToObj(b -> job.programme.entries().get(b).task().id()).toList();
        return new TaskEntry(entry.task().id(), entry.stage(), entry.task().name(), labour, Math.min(crew, entry.task().persons()),
                calendar.worked(table.begin()[i]), calendar.worked(table.end()[i]), wait, after, table.critical()[i],
                calendar.dayNumber(table.begin()[i]), calendar.dayNumber(table.end()[i]),
                start.map(day -> new TaskEntry.Dates(calendar.date(day, table.begin()[i]), calendar.date(day, table.end()[i]), calendar.date(day, table.ready()[i]))),
                entry.task().cautions());
    }
}
