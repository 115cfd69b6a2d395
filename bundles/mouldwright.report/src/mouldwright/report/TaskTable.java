package mouldwright.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.TaskEntry;
import mouldwright.units.Display;
import mouldwright.units.Unit;
import mouldwright.units.Units;

/** The programme: who does what when, and what it waits for afterwards. Tasks on the critical path are marked. */
final class TaskTable implements StageTable {

    private static final int NAME = 42;

    @Override
    public String stage() {
        return "plan";
    }

    @Override
    public void print(Estimate estimate, Display display, Section out) {
        List<TaskEntry> tasks = estimate.tasks();
        Figure labour = Figure.hours(tasks.stream().mapToDouble(TaskEntry::labour).max().orElse(0));
        Table table = new Table("tasks", "Programme").words("").words("task", NAME).figures("labour", "h").figures("by").words("begins").words("ends").figures("then wait");
        for (TaskEntry task : tasks) {
            boolean work = task.labour() > 0;
            table.row(Cell.of(task.critical() ? "*" : ""), Cell.of(task.name()), work ? labour.cell(task.labour()) : Cell.NONE, work ? Cell.of(task.persons()) : Cell.NONE,
                    day(task.startDay(), task.dates().map(TaskEntry.Dates::start)), day(task.endDay(), task.dates().map(TaskEntry.Dates::end)),
                    Cell.of(task.pause() > 0 ? span(display, task.pause()) : ""));
        }
        out.table(table);
        if (!tasks.isEmpty()) {
            out.note("* on the critical path: the job ends later if it does. By: people at it. Work stops at night and on days off, cure does not.");
        }
    }

    private static String span(Display display, double seconds) {
        Optional<Unit> unit = display.unitFor(seconds, mouldwright.units.Dimension.TIME).or(() -> Units.find("min"));
        return display.in(seconds, unit.orElseThrow());
    }

    private static Cell day(int number, Optional<LocalDate> date) {
        return date.<Cell>map(Cell.Day::new).orElse(Cell.of("day " + number));
    }
}
