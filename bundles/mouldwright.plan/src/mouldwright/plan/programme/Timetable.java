package mouldwright.plan.programme;

/** When each task is done.
 *  @param begin    s, as the calendar counts
 *  @param end      of the work, s
 *  @param ready    end of the wait after it, s: what follows may begin
 *  @param critical whether the job ends later if the task does
 *  @param elapsed  when all is done and waited for, s
 *  @param waiting  waits on the critical path, s */
public record Timetable(double[] begin, double[] end, double[] ready, boolean[] critical, double elapsed, double waiting) { }
