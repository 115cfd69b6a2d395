package mouldwright.check;

import java.util.List;
import java.util.Objects;
import mouldwright.plan.spec.Origin;

/** Something found in a build plan.
 *  @param code      stable, such as {@code MW412}
 *  @param severity  how much it matters
 *  @param place     where in the text
 *  @param message   the figure, the limit and the place, in words
 *  @param remedy    what mends it, in words; empty if nothing can be said for sure
 *  @param fixes     ways to mend it in the text, the best first */
public record Finding(String code, Severity severity, Origin place, String message, String remedy, List<Fix> fixes) {

    /** Refuses missing parts. */
    public Finding {
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(remedy, "remedy");
        fixes = List.copyOf(fixes);
    }

    /** A finding that the text alone cannot mend. */
    public Finding(String code, Severity severity, Origin place, String message, String remedy) {
        this(code, severity, place, message, remedy, List.of());
    }
}
