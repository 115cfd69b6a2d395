package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** How the parts of a frame are joined, lined up and set up. Lengths in metres.
 *  @param holes      diameter of the holes that line up the plates; 0 for none
 *  @param places     where they are bored; empty where they are to be found
 *  @param join       of parts larger than a sheet
 *  @param base       board the plates are set up on
 *  @param strongback ladder of timber under it
 *  @param gauge      depth of a gauge's body */
public record Fittings(Given holes, List<HolePlace> places, Join join, Optional<Base> base, Optional<Strongback> strongback, Given gauge) {

    /** A place of a hole. @param y to starboard @param z above base */
    public record HolePlace(Given y, Given z) { }

    /** How pieces of a part that is larger than its sheet are joined. */
    public sealed interface Join {
        /** Planed to slopes that lie over each other. @param slope its length in thicknesses */
        record Scarf(Given slope) implements Join { }

        /** Butted, with a strap glued over. @param length of the strap across the butt; empty where it goes by the thickness */
        record Strap(Optional<Given> length) implements Join { }
    }

    /** A board. @param margin past the plates all round */
    public record Base(Sheet sheet, Given margin, Origin origin) { }

    /** Two rails and a cross-member under every plate.
     *  @param width of a member
     *  @param depth of a member
     *  @param apart breadth over the rails; empty where it goes by the plates */
    public record Strongback(Given width, Given depth, Optional<Given> apart, Origin origin) { }

    /** Copies its list. */
    public Fittings {
        Objects.requireNonNull(holes, "holes");
        places = List.copyOf(places);
        Objects.requireNonNull(join, "join");
        Objects.requireNonNull(base, "base");
        Objects.requireNonNull(strongback, "strongback");
        Objects.requireNonNull(gauge, "gauge");
    }

    /** Where nothing is stated. */
    public static Fittings assumed() {
        return new Fittings(Defaults.holes(), List.of(), new Join.Strap(Optional.empty()), Optional.empty(), Optional.empty(), Defaults.gauge());
    }
}
