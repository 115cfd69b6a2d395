package mouldwright.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A task as the programme has it. Likely values. Working time is counted from the first working morning, nights and days off left out.
 *  @param id       such as {@code skin.lay.1}
 *  @param stage    it belongs to
 *  @param name     in words
 *  @param labour   person-time, s
 *  @param persons  at work on it
 *  @param start    working time, s
 *  @param end      of the work, working time, s
 *  @param pause    on the calendar after it, before what follows may begin, s
 *  @param after    ids of tasks it waits for
 *  @param critical whether the job ends later if it does
 *  @param startDay working day it begins on, counted from 1
 *  @param endDay   working day its work ends on
 *  @param dates    of beginning, end of the work and end of the wait, where the spec states a first day
 *  @param hazards  what can hurt somebody */
public record TaskEntry(String id, String stage, String name, double labour, int persons, double start, double end, double pause,
        List<String> after, boolean critical, int startDay, int endDay, Optional<Dates> dates, List<Hazard> hazards) {

    /** Dates of a task.
     *  @param start it begins
     *  @param end   its work ends
     *  @param ready what follows may begin */
    public record Dates(LocalDate start, LocalDate end, LocalDate ready) { }

    /** Copies its lists. */
    public TaskEntry {
        after = List.copyOf(after);
        hazards = List.copyOf(hazards);
    }
}
