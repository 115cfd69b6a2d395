package mouldwright.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.TaskEntry;
import mouldwright.units.Display;

/** The programme as a list to tick, each task with its bar on the days of the job. */
final class ProgrammeCards implements CardBook.Maker {

    private static final double DAY = 86_400;

    @Override
    public String name() {
        return "programme";
    }

    @Override
    public List<Card> cards(Estimate estimate, Display display) {
        if (estimate.tasks().isEmpty()) {
            return List.of();
        }
        List<Card.Bar> bars = new ArrayList<>();
        double last = 0;
        for (TaskEntry task : estimate.tasks()) {
            Card.Bar bar = bar(estimate, task);
            bars.add(bar);
            last = Math.max(last, Math.max(bar.to(), bar.ready()));
        }
        List<String> under = List.of("Framed bars: the job ends later if they do. Hatched: wait. Bars run over the days of this card.");
        return List.of(new Card("Programme", "What is done when", "programme", under, List.of(new Card.Bars(bars, Math.max(1, Math.ceil(last)))),
                List.of(Caution.LIFTING)));
    }

    private static Card.Bar bar(Estimate estimate, TaskEntry task) {
        double from = day(estimate, task, true);
        double to = Math.max(from, day(estimate, task, false));
        double ready = to + task.pause() / DAY;
        String when = task.dates().map(dates -> dates.start().equals(dates.end()) ? dates.start().toString() : dates.start() + " to " + dates.end().toString().substring(5))
                .orElse(task.startDay() == task.endDay() ? "day " + task.startDay() : "day " + task.startDay() + " to " + task.endDay());
        return new Card.Bar(task.name(), when, from, to, ready, task.critical());
    }

    /** Days from the first morning; a working day is drawn as a whole one. */
    private static double day(Estimate estimate, TaskEntry task, boolean start) {
        double length = estimate.plan().spec().shop().day().likely();
        double time = start ? task.start() : task.end();
        int number = start ? task.startDay() : task.endDay();
        double share = Math.clamp((time - (number - 1) * length) / length, 0, 1);
        LocalDate first = estimate.tasks().stream().flatMap(entry -> entry.dates().stream()).map(TaskEntry.Dates::start).min(LocalDate::compareTo).orElse(LocalDate.EPOCH);
        return task.dates().map(dates -> (double) ChronoUnit.DAYS.between(first, start ? dates.start() : dates.end())).orElse(number - 1.0) + share;
    }
}
