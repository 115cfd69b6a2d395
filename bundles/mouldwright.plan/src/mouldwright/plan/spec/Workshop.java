package mouldwright.plan.spec;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/** Where and by whom the plug is built.
 *  @param temperature  degC
 *  @param persons      at least 1
 *  @param hourlyRate   money per person and hour, in the plug's currency
 *  @param day          working time of a day, s
 *  @param start        first day
 *  @param rates        how fast the crew works
 *  @param currency     such as EUR; empty where none is stated */
public record Workshop(Given temperature, Given persons, Optional<Given> hourlyRate, Given day,
        Optional<LocalDate> start, Optional<Rates> rates, String currency) {
    /** Refuses missing parts. */
    public Workshop {
        Objects.requireNonNull(temperature, "temperature");
        Objects.requireNonNull(persons, "persons");
        Objects.requireNonNull(day, "day");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(rates, "rates");
        Objects.requireNonNull(currency, "currency");
    }
}
