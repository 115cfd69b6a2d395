package mouldwright.drawing.subject;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.TaskEntry;
import mouldwright.plan.spec.WorkingWeek;
import mouldwright.plan.spec.Workshop;

/** Puts the working time of a programme back on the calendar: on it nights and days off pass too, as they do for cure. Counted in days of 24 h from the
 *  morning of the first working day. */
final class TimeAxis {

    private static final double CALENDAR_DAY = 86_400;
    private static final String[] MONTHS = {"Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};

    /** A mark of the axis. @param day calendar days from the beginning @param words beside it */
    record Mark(double day, String words) { }

    private final double working;
    private final WorkingWeek week;
    private final DayOfWeek first;
    private final Optional<LocalDate> start;

    TimeAxis(Workshop shop, List<TaskEntry> tasks) {
        working = shop.day().likely();
        week = shop.week();
        // The first task begins on the first working day.
        start = tasks.stream().flatMap(task -> task.dates().stream()).map(TaskEntry.Dates::start).min(LocalDate::compareTo)
                .map(date -> date.minusDays(tasks.stream().mapToInt(TaskEntry::startDay).min().orElse(1) - 1));
        first = start.map(LocalDate::getDayOfWeek).orElse(week.from());
    }

    double begin(TaskEntry task) {
        return at(task.startDay(), task.start());
    }

    double end(TaskEntry task) {
        return at(task.endDay(), task.end());
    }

    /** When what follows may begin. */
    double ready(TaskEntry task) {
        return end(task) + task.pause() / CALENDAR_DAY;
    }

    /** @param number of the working day, from 1 @param worked s from the beginning */
    private double at(int number, double worked) {
        return calendarDay(number) + (worked - (number - 1) * working) / CALENDAR_DAY;
    }

    private double calendarDay(int number) {
        int days = 0;
        for (int n = 1; n < number; n++)
            do
                days++;
            while (!works(days));
        return days;
    }

    /** Whether there is work on a calendar day, counted from 0. */
    boolean works(int day) {
        int length = Math.floorMod(week.to().getValue() - week.from().getValue(), 7);
        return Math.floorMod(first.plus(day).getValue() - week.from().getValue(), 7) <= length;
    }

    /** Dates at such distances that their words do not meet; without dates, weeks.
     *  @param days   the axis is long
     *  @param perDay mm
     *  @param room   words take, mm */
    List<Mark> marks(int days, double perDay, double room) {
        List<Mark> marks = new ArrayList<>();
        int every = 1;
        while (every * perDay < room)
            every = every == 1 ? 7 : every + 7;
        int offset = every == 1 ? 0 : Math.floorMod(DayOfWeek.MONDAY.getValue() - first.getValue(), 7);
        for (int day = start.isPresent() ? offset : 0; day <= days; day += every)
            marks.add(new Mark(day, words(day, every)));
        return marks;
    }

    private String words(int day, int every) {
        return start.map(date -> date.plusDays(day)).map(date -> date.getDayOfMonth() + " " + MONTHS[date.getMonthValue() - 1] + (every > 60 ? " " + date.getYear() : ""))
                .orElse(every == 1 ? "day " + (day + 1) : "week " + (day / 7 + 1));
    }

    /** Such as "from 1 Mar 2027"; empty without dates. */
    String from() {
        return start.map(date -> "from " + date.getDayOfMonth() + " " + MONTHS[date.getMonthValue() - 1] + " " + date.getYear()).orElse("");
    }
}
