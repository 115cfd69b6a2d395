package mouldwright.plan.spec;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Where and by whom the plug is built.
 *  @param temperature  degC
 *  @param persons      at least 1
 *  @param hourlyRate   money per person and hour, in the plug's currency
 *  @param day          working time of a day, s
 *  @param start        first day
 *  @param rates        how fast the crew works
 *  @param currency     such as EUR; empty where none is stated
 *  @param week         working days
 *  @param air          how the air is thinned out
 *  @param consumables  what the job wears out
 *  @param wanted       when the job is wanted */
public record Workshop(Given temperature, Given persons, Optional<Given> hourlyRate, Given day,
        Optional<LocalDate> start, Optional<Rates> rates, String currency, WorkingWeek week, Airing air,
        List<Consumable> consumables, Wanted wanted) {
    /** Refuses missing parts. */
    public Workshop {
        Objects.requireNonNull(temperature, "temperature");
        Objects.requireNonNull(persons, "persons");
        Objects.requireNonNull(hourlyRate, "wage");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(rates, "rates");
        Objects.requireNonNull(currency, "currency");
        Objects.requireNonNull(week, "week");
        Objects.requireNonNull(air, "air");
        consumables = List.copyOf(consumables);
        Objects.requireNonNull(wanted, "wanted");
    }

    /** A workshop that may be done on any day. */
    public Workshop(Given temperature, Given persons, Optional<Given> hourlyRate, Given day, Optional<LocalDate> start,
            Optional<Rates> rates, String currency, WorkingWeek week, Airing air, List<Consumable> consumables) {
        this(temperature, persons, hourlyRate, day, start, rates, currency, week, air, consumables, Wanted.anyDay());
    }

    /** A workshop with the defaults for its week and its air, and without consumables. */
    public Workshop(Given temperature, Given persons, Optional<Given> hourlyRate, Given day, Optional<LocalDate> start,
            Optional<Rates> rates, String currency) {
        this(temperature, persons, hourlyRate, day, start, rates, currency, ShopDefaults.week(), ShopDefaults.air(temperature), List.of());
    }
}
