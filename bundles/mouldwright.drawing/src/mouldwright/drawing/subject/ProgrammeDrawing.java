package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Lettering;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Hazard;
import mouldwright.plan.TaskEntry;
import mouldwright.units.Dimension;

/** The programme on a time axis: a row a task, pours of a bay in one; work in grey, waits for cure hatched, what decides the end outlined thick. */
final class ProgrammeDrawing {

    private static final double WIDTH = 267;
    private static final double NAMES = 84;
    private static final double HOURS = 15;
    private static final double BARS = 153;
    private static final double ROW = 4.5;
    private static final double LETTERS = 2.3;
    private static final double LEAST = 0.5;
    private static final double HOUR = 3600;
    private static final String POUR = "fill.pour.";

    private static final Mark.Fill WORK = new Mark.Fill.Even(Tone.SOFT, 0.45);
    private static final Mark.Fill WAIT = new Mark.Fill.Hatch(Pen.full(Tone.SOFT, 0.13), 1.1, 45);
    private static final Mark.Fill OFF = new Mark.Fill.Even(Tone.FAINT, 0.3);
    private static final Pen EDGE = Pen.full(Tone.SOFT, 0.13);
    private static final Pen CRITICAL = Pen.full(Tone.INK, 0.6);

    /** Tasks drawn in one row. */
    private record Row(String name, String about, List<TaskEntry> tasks) { }

    private final BuildPlan plan;
    private final Draughtsman board = new Draughtsman();
    private final TimeAxis axis;
    private final List<Row> rows;
    private final int days;
    private final double perDay;

    private ProgrammeDrawing(BuildPlan plan) {
        this.plan = plan;
        this.axis = new TimeAxis(plan.spec().shop(), plan.tasks());
        this.rows = rows(plan.tasks());
        this.days = (int) Math.max(1, Math.ceil(plan.tasks().stream().mapToDouble(axis::ready).max().orElse(1) - 1e-6));
        this.perDay = BARS / days;
    }

    /** The programme of a plan; nothing where nothing is to be done. @param code of plug and revision */
    static Optional<Drawing> of(BuildPlan plan, String code) {
        return plan.tasks().isEmpty() ? Optional.empty() : Optional.of(new ProgrammeDrawing(plan).draw(code));
    }

    private static List<Row> rows(List<TaskEntry> tasks) {
        Map<String, List<TaskEntry>> grouped = new LinkedHashMap<>();
        for (TaskEntry task : tasks)
            grouped.computeIfAbsent(bay(task).map(bay -> POUR + bay).orElse(task.id()), key -> new ArrayList<>()).add(task);
        return grouped.values().stream().map(group -> {
            TaskEntry one = group.getFirst();
            Optional<String> bay = bay(one);
            return new Row(bay.filter(b -> group.size() > 1).map(b -> "Pour bay " + b + ", " + group.size() + " lifts").orElse(one.name()),
                    bay.map(b -> "bay." + b).orElse("task." + one.id()), List.copyOf(group));
        }).toList();
    }

    /** The bay a pour belongs to: its id ends with the lift. */
    private static Optional<String> bay(TaskEntry task) {
        int lift = task.id().lastIndexOf('.');
        return task.id().startsWith(POUR) && lift > POUR.length() ? Optional.of(task.id().substring(POUR.length(), lift)) : Optional.empty();
    }

    private Drawing draw(String code) {
        double bottom = -rows.size() * ROW;
        calendar(bottom);
        for (int i = 0; i < rows.size(); i++)
            row(rows.get(i), -(i + 0.5) * ROW);
        Legend legend = new Legend().area(WORK, EDGE, "work").area(WORK, CRITICAL, "on the critical path: the job ends later if it does").area(WAIT, EDGE, "wait: cure, which goes on at night and on days off")
                .area(OFF, Pen.full(Tone.FAINT, 0.13), "days off").note("Hours are person-hours, likely figures.");
        plan.tasks().stream().flatMap(task -> task.hazards().stream()).distinct().sorted().forEach(hazard -> legend.note(hazard.words()));
        legend.note(Hazard.DEFERENCE);
        return SheetFrame.around(board, legend, "Programme of " + plan.plug(), under(), code, WIDTH, board.extent().orElseThrow().with(new Extent(0, bottom, NAMES + HOURS + BARS, 0)))
                .finish("A programme of " + plan.tasks().size() + " tasks over " + days + " days, those on the critical path outlined");
    }

    private String under() {
        String crew = Said.figure(plan.spec().shop().persons().likely(), 0) + (plan.spec().shop().persons().likely() > 1 ? " people" : " person");
        return plan.quantity("plan.elapsed").filter(q -> q.dimension().equals(Dimension.TIME)).map(q -> Said.figure(q.value() / (24 * HOUR), 1) + " days of 24 h from the first morning until all is done and cured, "
                + crew).orElse(crew) + (axis.from().isEmpty() ? "" : ", " + axis.from());
    }

    private double x(double day) {
        return NAMES + HOURS + day * perDay;
    }

    private void calendar(double bottom) {
        for (int day = 0; day < days; day++)
            if (!axis.works(day))
                board.draw(Role.AREA, new Mark.Area(List.of(Path.box(new Extent(x(day), bottom, x(day + 1), 0))), OFF));
        double room = Lettering.width("00 Mmm", LETTERS) + 2;
        Pen thin = Pen.full(Tone.FAINT, 0.15);
        for (TimeAxis.Mark mark : axis.marks(days, perDay, room)) {
            board.draw(Role.FAINT, new Mark.Line(Path.line(new Spot(x(mark.day()), bottom), new Spot(x(mark.day()), 3.6)), thin));
            if (x(mark.day()) + room - 2 <= x(days) + 3)
                board.words(mark.words(), new Spot(x(mark.day()) + 0.8, 1.4), LETTERS, Mark.Anchor.START);
        }
        for (int i = 0; i <= rows.size(); i++)
            board.draw(Role.SHEET, new Mark.Line(Path.line(new Spot(0, -i * ROW), new Spot(x(days), -i * ROW)), Pen.full(Tone.FAINT, 0.08)));
        board.draw(Role.TEXT, new Mark.Words("h", new Spot(NAMES + HOURS - 3, 1.4), LETTERS, Mark.Anchor.END, 0, Tone.SOFT));
    }

    private void row(Row row, double middle) {
        board.about(row.about);
        double foot = middle - LETTERS / 2;
        board.words(Lettering.fitted(row.name, LETTERS, NAMES - 2), new Spot(0, foot), LETTERS, Mark.Anchor.START);
        double labour = row.tasks.stream().mapToDouble(TaskEntry::labour).sum() / HOUR;
        if (labour > 0)
            board.words(Said.figure(labour, labour < 10 ? 1 : 0), new Spot(NAMES + HOURS - 3, foot), LETTERS, Mark.Anchor.END);
        for (TaskEntry task : row.tasks)
            bar(task, middle);
        board.about("");
    }

    private void bar(TaskEntry task, double middle) {
        double begin = x(axis.begin(task)), end = Math.max(begin + LEAST, x(axis.end(task))), ready = x(axis.ready(task));
        Pen pen = task.critical() ? CRITICAL : EDGE;
        if (ready - end > LEAST) {
            Path wait = Path.box(new Extent(end, middle - 0.9, ready, middle + 0.9));
            board.draw(Role.AREA, new Mark.Area(List.of(wait), WAIT));
            board.draw(Role.OUTLINE, new Mark.Line(wait, task.critical() ? Pen.full(Tone.INK, 0.35) : EDGE));
        }
        if (task.labour() > 0) {
            Path work = Path.box(new Extent(begin, middle - 1.4, end, middle + 1.4));
            board.draw(Role.AREA, new Mark.Area(List.of(work), WORK));
            board.draw(Role.OUTLINE, new Mark.Line(work, pen));
        }
    }
}
