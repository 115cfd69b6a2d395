package mouldwright.plan.spec;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/** When the job is wanted.
 *  @param by    the day by which all is to be done and cured
 *  @param after the day before which it is not wanted
 *  @param byPlace    where the one is stated
 *  @param afterPlace where the other is stated */
public record Wanted(Optional<LocalDate> by, Optional<LocalDate> after, Origin byPlace, Origin afterPlace) {
    /** Refuses missing parts. */
    public Wanted {
        Objects.requireNonNull(by, "by");
        Objects.requireNonNull(after, "after");
    }

    /** Any day will do. */
    public static Wanted anyDay() {
        Origin silent = new Origin.Assumed("the spec states no day");
        return new Wanted(Optional.empty(), Optional.empty(), silent, silent);
    }
}
