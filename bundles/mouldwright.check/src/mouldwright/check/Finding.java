package mouldwright.check;

import java.util.Objects;
import mouldwright.plan.spec.Origin;

/** Something found in a build plan.
 *  @param code      stable, such as {@code MW412}
 *  @param severity  how much it matters
 *  @param place     where in the text
 *  @param message   the figure, the limit and the place, in words
 *  @param remedy    what mends it, in words; empty if nothing can be said for sure */
public record Finding(String code, Severity severity, Origin place, String message, String remedy) {

    /** Refuses missing parts. */
    public Finding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(remedy, "remedy");
    }
}
