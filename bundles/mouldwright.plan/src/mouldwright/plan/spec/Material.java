package mouldwright.plan.spec;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/** Something ordered, as a library describes it. */
public sealed interface Material permits Resin, Mat, Foam, Filler, Coating, Sheet, Hardener, Consumable {

    /** @return its name in the library */
    String name();

    /** @return what every entry may state beside its own figures */
    Stock stock();

    /** What every entry may state.
     *  @param title   in words
     *  @param pack    how it is sold
     *  @param source  where its figures come from
     *  @param review  when they should be looked at again
     *  @param origin  where it is declared */
    record Stock(Optional<String> title, Optional<Pack> pack, Optional<String> source, Optional<LocalDate> review,
            Origin origin) {
        /** Refuses missing parts. */
        public Stock {
            Objects.requireNonNull(title, "title");
            Objects.requireNonNull(pack, "pack");
            Objects.requireNonNull(source, "source");
            Objects.requireNonNull(review, "review");
            Objects.requireNonNull(origin, "origin");
        }

        /** An entry that states nothing beside its own figures. */
        public static Stock plain(Origin origin) {
            return new Stock(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), origin);
        }
    }

    /** How a material is sold.
     *  @param size   of a pack, kilograms, cubic metres or pieces, as its dimension says
     *  @param price  of a pack, in the library's currency
     *  @param currency  such as EUR; empty where the library states none */
    record Pack(Given size, double price, String currency) {
        /** Refuses missing parts. */
        public Pack {
            Objects.requireNonNull(size, "size");
            Objects.requireNonNull(currency, "currency");
        }
    }
}
