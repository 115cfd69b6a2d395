package mouldwright.check;

import java.util.List;
import java.util.Objects;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;

/** A way to mend a finding in the text.
 *  @param title    what it does, in a few words
 *  @param safe     whether it may be done unasked: it changes nothing that somebody meant
 *  @param remedies what is to be done, all of it together */
public record Fix(String title, boolean safe, List<Remedy> remedies) {

    /** Refuses a fix that does nothing. */
    public Fix {
        Objects.requireNonNull(title, "title");
        remedies = List.copyOf(remedies);
        if (remedies.isEmpty())
            throw new IllegalArgumentException("a fix does something: " + title);
    }

    /** A fix to be chosen by somebody. */
    public static Fix of(String title, Remedy... remedies) {
        return new Fix(title, false, List.of(remedies));
    }

    /** States a property: its amount where the spec has one, or the whole of it in its block.
     *  @param given    as it is now
     *  @param block    whose property it is
     *  @param property its words as far as the amount, such as {@code lap}
     *  @param amount   with its unit
     *  @param after    its words behind the amount; empty, or beginning with a space */
    public static Fix stating(Given given, Origin block, String property, String amount, String after) {
        String words = property + " " + amount + after;
        return given.assumed() ? of("add `" + words + "`", new Remedy.Insert(block, Remedy.Side.INSIDE, words))
                : of("state `" + words + "`", new Remedy.Replace(given.origin(), amount));
    }
}
