package mouldwright.plan.spec;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What was built and measured, on a day. Lengths in metres.
 *  @param day       when
 *  @param readings  in the order of the text
 *  @param origin    where stated */
public record Survey(LocalDate day, List<Reading> readings, Origin origin) {

    /** A side of the plug. */
    public enum Hand {
        /** To port. */ PORT,
        /** To starboard. */ STARBOARD
    }

    /** A place on the face of a bay.
     *  @param span   the bay
     *  @param along  from its forward station
     *  @param hand   which side
     *  @param girth  along the section, from {@code from}
     *  @param from   where the girth is counted from */
    public record Spot(BaySpan span, double along, Hand hand, double girth, Place from) { }

    /** How a fault was mended.
     *  @param day  when
     *  @param now  error measured after, + proud; empty where not measured again */
    public record Mended(LocalDate day, Optional<Double> now) { }

    /** One thing measured. */
    public sealed interface Reading {
        /** @return where stated */
        Origin origin();

        /** A plate's setting: top out of plumb, + aft; set high, low negative. */
        record Setting(String station, double leans, double high, Origin origin) implements Reading { }

        /** A pour as weighed and as risen.
         *  @param mass kg */
        record Poured(BaySpan span, double mass, double rise, Origin origin) implements Reading { }

        /** A cut below the foam line. */
        record Gouge(Spot spot, double depth, double alongX, double alongGirth, Optional<Mended> mended, Origin origin)
                implements Reading { }

        /** A hollow in the foam. */
        record Hollow(Spot spot, double depth, double alongX, double alongGirth, Optional<Mended> mended, Origin origin)
                implements Reading { }

        /** Skin that has not bonded. */
        record Unbonded(Spot spot, double alongX, double alongGirth, Optional<Mended> mended, Origin origin)
                implements Reading { }

        /** A reading against a profile gauge.
         *  @param x    from the datum
         *  @param off  + proud */
        record Gauge(double x, Hand hand, double girth, double off, Origin origin) implements Reading { }

        /** The shop's temperature that day.
         *  @param value degC */
        record Temperature(double value, Origin origin) implements Reading { }

        /** A trial cup of the foam.
         *  @param cream time from mixing until it creamed, s
         *  @param rise  time from mixing until it had risen, s; empty where not timed */
        record Trial(double cream, Optional<Double> rise, Origin origin) implements Reading { }
    }

    /** Copies its list. */
    public Survey {
        Objects.requireNonNull(day, "day");
        readings = List.copyOf(readings);
    }
}
