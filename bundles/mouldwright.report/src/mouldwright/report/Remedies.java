package mouldwright.report;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.Quantity;
import mouldwright.plan.stage.FairMeasures;

/** What mends the places of surveys, as texts and JSON print it. */
final class Remedies {

    private Remedies() { }

    /** The places an estimate shows; none where it does not show the fairing. */
    static List<FairMeasures.Place> of(Estimate estimate) {
        return estimate.stages().contains("fair") ? estimate.plan().measurements().find(FairMeasures.class).map(FairMeasures::places).orElse(List.of())
                : List.of();
    }

    /** Volume or area a place takes, where its extent was measured. */
    static Optional<Quantity> amount(Estimate estimate, FairMeasures.Place place) {
        return estimate.plan().quantity(place.id("volume")).or(() -> estimate.plan().quantity(place.id("area")));
    }

    /** The remedy in words. */
    static String words(FairMeasures.Remedy remedy) {
        return switch (remedy) {
            case FairMeasures.Plies(int count) -> count == 1 ? "one ply" : count + " plies";
            case FairMeasures.Filler(int layers) -> layers == 1 ? "filler, one layer" : "filler, " + layers + " layers";
            case FairMeasures.NewFoam() -> "new foam";
            case FairMeasures.LaidAnew() -> "cut out, lay anew";
            case FairMeasures.BoardedDown() -> "board down";
            case FairMeasures.Done() -> "done";
        };
    }

    /** The remedy in one word, as JSON has it. */
    static String word(FairMeasures.Remedy remedy) {
        return switch (remedy) {
            case FairMeasures.Plies plies -> "plies";
            case FairMeasures.Filler filler -> "filler";
            case FairMeasures.NewFoam foam -> "foam";
            case FairMeasures.LaidAnew anew -> "skin";
            case FairMeasures.BoardedDown down -> "board";
            case FairMeasures.Done done -> "done";
        };
    }

    /** Plies or layers of filler; 0 where they are not counted. */
    static int count(FairMeasures.Remedy remedy) {
        return switch (remedy) {
            case FairMeasures.Plies(int count) -> count;
            case FairMeasures.Filler(int layers) -> layers;
            default -> 0;
        };
    }
}
