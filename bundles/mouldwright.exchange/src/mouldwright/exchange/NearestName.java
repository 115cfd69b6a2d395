package mouldwright.exchange;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Collectors;
import mouldwright.units.SpellingDistance;

/** What a name that is not there was probably meant to be. */
public final class NearestName {

    private static final int FEW = 12;

    private NearestName() { }

    /** The nearest of some names, or all of them where none is near.
     *  @param typed as written
     *  @param names that there are, in order
     *  @return the end of a sentence that begins with what is missing */
    public static String offer(String typed, Collection<String> names) {
        Optional<String> near = names.stream().min(Comparator.comparingInt(name -> SpellingDistance.between(typed, name)))
                .filter(name -> SpellingDistance.between(typed, name) <= Math.max(2, typed.length()));
        return near.map(name -> "; `" + name + "`?").orElseGet(() -> names.isEmpty() ? "; it has none" : "; it has "
                + names.stream().limit(FEW).map(name -> "`" + name + "`").collect(Collectors.joining(", ")) + (names.size() > FEW ? " and more" : ""));
    }
}
