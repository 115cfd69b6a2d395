package mouldwright.plan;

import java.util.OptionalDouble;
import mouldwright.plan.ledger.Figures;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;
import mouldwright.units.Display;

/** A default the plan rests on because the spec is silent.
 *  @param name    what was assumed
 *  @param value   SI; empty for a choice in words
 *  @param unit    UCUM code of the value; empty for a choice in words
 *  @param words   the value as people read it
 *  @param reason  why */
public record Assumption(String name, OptionalDouble value, String unit, String words, String reason) {

    /** An assumed figure.
     *  @param given whose origin is {@link Origin.Assumed}
     *  @throws IllegalArgumentException if it was stated */
    public static Assumption of(Given given) {
        if (!(given.origin() instanceof Origin.Assumed assumed))
            throw new IllegalArgumentException(given.name() + " was stated");
        boolean count = !given.ranged() && given.dimension().equals(Dimension.RATIO) && given.likely() == Math.rint(given.likely());
        String words = count ? Display.number(given.likely()) : Figures.words(given.likely(), given.dimension());
        if (given.ranged())
            words += " (" + Figures.words(given.low(), given.dimension()) + " to "
                    + Figures.words(given.high(), given.dimension()) + ")";
        return new Assumption(given.name(), OptionalDouble.of(given.likely()), given.dimension().ucum(), words,
                assumed.reason());
    }

    /** An assumed choice. */
    public static Assumption choice(String name, String words, Origin.Assumed origin) {
        return new Assumption(name, OptionalDouble.empty(), "", words, origin.reason());
    }
}
