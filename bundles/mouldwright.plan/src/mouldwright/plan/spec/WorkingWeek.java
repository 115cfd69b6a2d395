package mouldwright.plan.spec;

import java.time.DayOfWeek;
import java.util.Objects;

/** The days of the week on which there is work.
 *  @param from first of them
 *  @param to   last of them, maybe across Sunday */
public record WorkingWeek(DayOfWeek from, DayOfWeek to, Origin origin) {
    /** Refuses missing parts. */
    public WorkingWeek {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(origin, "origin");
    }
}
