package mouldwright.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.TaskEntry;
import mouldwright.units.Display;
import mouldwright.units.Unit;
import mouldwright.units.Units;

/** The programme: who does what when, and what it waits for afterwards. Tasks on the critical path are marked. */
final class TaskTable implements TextReport.StageTable {

    private static final int NAME = 42;

    @Override
    public String stage() {
        return "plan";
    }

    @Override
    public void print(Estimate estimate, Display display, StringBuilder out) {
        List<TaskEntry> tasks = estimate.tasks();
        Figure labour = Figure.hours(tasks.stream().mapToDouble(TaskEntry::labour).max().orElse(0));
        Table table = new Table().words("").words("task").figures("labour", "h").figures("by").words("begins").words("ends").figures("then wait");
        for (TaskEntry task : tasks) {
            table.row(List.of(task.critical() ? "*" : "", name(task.name()), labour.of(task.labour()), String.valueOf(task.persons()),
                    day(task.startDay(), task.dates().map(TaskEntry.Dates::start)), day(task.endDay(), task.dates().map(TaskEntry.Dates::end)),
                    task.pause() > 0 ? span(display, task.pause()) : ""));
        }
        table.print("  ", out);
        if (!tasks.isEmpty()) {
            Paragraph.print("  ", "  ", "* on the critical path: the job ends later if it does. By: people at it. Work stops at night and on days off, cure does not.", out);
        }
    }

    private static String name(String words) {
        String printable = Printable.of(words);
        return printable.length() <= NAME ? printable : printable.substring(0, NAME - 2).stripTrailing() + "..";
    }

    private static String span(Display display, double seconds) {
        Optional<Unit> unit = display.unitFor(seconds, mouldwright.units.Dimension.TIME).or(() -> Units.find("min"));
        return display.in(seconds, unit.orElseThrow());
    }

    private static String day(int number, Optional<LocalDate> date) {
        return date.map(LocalDate::toString).orElse("day " + number);
    }
}
