package mouldwright.plan.stage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Survey;

/** What surveys found, place by place, with what mends it, and what plates that are not set true do to the surface.
 *  @param places in the order of the text, those outside the plug left out and reported
 *  @param plates in the order of the text, the last reading of each plate */
public record FairMeasures(List<Place> places, List<PlateError> plates) {

    /** What was found. */
    public enum Fault {
        /** A cut below the foam line. */ GOUGE("gouge"),
        /** A hollow in the foam. */ VOID("void"),
        /** Skin that has not bonded. */ UNBONDED("unbonded skin"),
        /** Off a profile gauge. */ GAUGE("off the gauge");

        private final String words;

        Fault(String words) {
            this.words = words;
        }

        /** @return in words */
        public String words() {
            return words;
        }
    }

    /** What mends it. */
    public sealed interface Remedy { }

    /** Further plies, which fill it by their cured thickness. */
    public record Plies(int count) implements Remedy { }

    /** Filler, each layer left to harden. */
    public record Filler(int layers) implements Remedy { }

    /** New foam bonded in, and carved again. */
    public record NewFoam() implements Remedy { }

    /** Skin cut out and laid anew. */
    public record LaidAnew() implements Remedy { }

    /** Boarded down: it stands proud. */
    public record BoardedDown() implements Remedy { }

    /** Nothing more: it was mended, and measured within the limit. */
    public record Done() implements Remedy { }

    /** How large it is.
     *  @param depth  m; 0 of skin
     *  @param along  along the body, m; nothing where it was not measured
     *  @param across round the girth, m; nothing where it was not measured */
    public record Size(Given depth, Optional<Given> along, Optional<Given> across) { }

    /** A place on the plug.
     *  @param number     counted from 1 over all surveys
     *  @param fault      what was found
     *  @param where      bay, or distance from the datum, in words
     *  @param x          on the plug, m aft
     *  @param hand       which side
     *  @param share      of the half girth from bottom centre, 0 to 1
     *  @param size       how large it is now
     *  @param plates     whose edge it crosses
     *  @param mended     when and how well it was mended
     *  @param remedy     what mends it now
     *  @param day        when it was found */
    public record Place(int number, Fault fault, String where, double x, Survey.Hand hand, double share, Size size, List<String> plates,
            Optional<Survey.Mended> mended, Remedy remedy, LocalDate day, Origin origin) {

        /** Copies its list. */
        public Place {
            plates = List.copyOf(plates);
        }

        /** Whether something is still to be done beside measuring. */
        public boolean open() {
            return !(remedy instanceof Done);
        }

        /** Whether it is still to be measured: after mending, and where it was mended and not measured since. */
        public boolean toMeasure() {
            return open() || mended.filter(m -> m.now().isEmpty()).isPresent();
        }

        /** @return id of one of its figures */
        public String id(String figure) {
            return "survey." + number + "." + figure;
        }

        /** @return in words */
        public String words() {
            return fault.words() + " " + where;
        }
    }

    /** What a plate that is not set true does to the surface carved to it.
     *  @param lean   top out of plumb, + aft, m
     *  @param high   set high, - low, m
     *  @param aft    height of the place over the plate's, times the normal's part aft
     *  @param up     the normal's part up
     *  @param share  of the half girth from bottom centre where the surface is furthest off
     *  @param error  there, + stands proud, m */
    public record PlateError(String station, Given lean, Given high, double aft, double up, double share, double error, Origin origin) { }

    /** Copies its lists. */
    public FairMeasures {
        places = List.copyOf(places);
        plates = List.copyOf(plates);
    }
}
