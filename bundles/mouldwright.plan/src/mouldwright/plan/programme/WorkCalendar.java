package mouldwright.plan.programme;

import java.time.DayOfWeek;
import java.time.LocalDate;

/** Working hours on the calendar. Time is counted in seconds from the moment work begins on the first working day; each day's work begins
 *  at the same hour and goes on for the same time. Labour stops at night and on days off, cure does not.
 *  @param day   working time of a day, s; above 0, at most 24 h
 *  @param first day of the week on which the count begins; a working day
 *  @param from  first working day of a week
 *  @param to    last working day of a week, maybe across Sunday */
public record WorkCalendar(double day, DayOfWeek first, DayOfWeek from, DayOfWeek to) {

    /** Length of a calendar day, s. */
    public static final double CALENDAR_DAY = 86_400;

    /** Refuses a day no clock has. */
    public WorkCalendar {
        if (!(day > 0 && day <= CALENDAR_DAY))
            throw new IllegalArgumentException("a working day of " + day + " s");
        if (!works(first, from, to))
            throw new IllegalArgumentException("work cannot begin on a day off: " + first);
    }

    /** The calendar of a job.
     *  @param start the day it is to begin; the count begins on the first working day from then on */
    public static WorkCalendar from(LocalDate start, double day, DayOfWeek from, DayOfWeek to) {
        return new WorkCalendar(day, firstWorkingDay(start, from, to).getDayOfWeek(), from, to);
    }

    /** The first working day, that day or later. */
    public static LocalDate firstWorkingDay(LocalDate start, DayOfWeek from, DayOfWeek to) {
        LocalDate date = start;
        while (!works(date.getDayOfWeek(), from, to))
            date = date.plusDays(1);
        return date;
    }

    private static boolean works(DayOfWeek day, DayOfWeek from, DayOfWeek to) {
        return Math.floorMod(day.getValue() - from.getValue(), 7) <= Math.floorMod(to.getValue() - from.getValue(), 7);
    }

    private boolean worksOn(double calendarDay) {
        return works(first.plus((long) (calendarDay % 7)), from, to);
    }

    /** The first moment at which work can begin or go on.
     *  @param time s
     *  @return s, not before it */
    public double workingFrom(double time) {
        double calendarDay = Math.floor(time / CALENDAR_DAY);
        if (worksOn(calendarDay) && time - calendarDay * CALENDAR_DAY < day)
            return time;
        return nextMorning(calendarDay);
    }

    private double nextMorning(double calendarDay) {
        double next = calendarDay + 1;
        while (!worksOn(next))
            next++;
        return next * CALENDAR_DAY;
    }

    /** The first moment at which a work can begin that is not to be laid down over a night; longer works than a day are laid down
     *  anyhow.
     *  @param length of the work, s */
    public double unbrokenFrom(double time, double length) {
        double begin = workingFrom(time);
        double calendarDay = Math.floor(begin / CALENDAR_DAY);
        double left = calendarDay * CALENDAR_DAY + day - begin;
        return length <= day && length > left + ROUNDING ? nextMorning(calendarDay) : begin;
    }

    /** What is lost in adding up a day's work in doubles, s: a work that ends on the stroke of the evening fits. */
    private static final double ROUNDING = 1e-3;

    /** When a work ends.
     *  @param begin  working time, as from {@link #workingFrom}
     *  @param length s of work
     *  @return s; on the evening, not the next morning, where it ends with a day */
    public double after(double begin, double length) {
        double calendarDay = Math.floor(begin / CALENDAR_DAY);
        double left = calendarDay * CALENDAR_DAY + day - begin;
        if (length <= left + ROUNDING)
            return begin + length;
        double rest = length - left;
        int week = Math.floorMod(to.getValue() - from.getValue(), 7) + 1;
        double weeks = Math.max(0, Math.ceil(rest / (week * day)) - 1);
        calendarDay += 7 * weeks;
        rest -= weeks * week * day;
        double morning = nextMorning(calendarDay);
        while (rest > day + ROUNDING) {
            rest -= day;
            morning = nextMorning(morning / CALENDAR_DAY);
        }
        return morning + rest;
    }

    /** Working time from the beginning to a moment, s. */
    public double worked(double time) {
        double calendarDay = Math.floor(time / CALENDAR_DAY);
        return days(calendarDay) * day + (worksOn(calendarDay) ? Math.min(day, time - calendarDay * CALENDAR_DAY) : 0);
    }

    /** Working days among the first so many calendar days. */
    private double days(double calendarDays) {
        int week = Math.floorMod(to.getValue() - from.getValue(), 7) + 1;
        double weeks = Math.floor(calendarDays / 7);
        double days = weeks * week;
        for (double d = weeks * 7; d < calendarDays; d++)
            days += worksOn(d) ? 1 : 0;
        return days;
    }

    /** Which working day a moment falls in, counted from 1; nights and days off count to the day before. */
    public int dayNumber(double time) {
        return (int) days(Math.floor(time / CALENDAR_DAY) + 1);
    }

    /** The date of a moment.
     *  @param start date of the first working day */
    public LocalDate date(LocalDate start, double time) {
        return start.plusDays((long) Math.floor(time / CALENDAR_DAY));
    }
}
