package mouldwright.plan.spec;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/** A finding accepted in the text.
 *  @param code   such as MW431
 *  @param why    in words
 *  @param until  last day it holds
 *  @param origin where stated */
public record Acceptance(String code, String why, Optional<LocalDate> until, Origin origin) {
    /** Refuses missing parts. */
    public Acceptance {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(why, "why");
        Objects.requireNonNull(until, "until");
    }
}
