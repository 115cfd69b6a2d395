package mouldwright.check;

import mouldwright.plan.stage.FairMeasures;

/** Puts on record how a place was mended. It stays to be measured, which is told until that is stated too. */
final class MendedEntry {

    private MendedEntry() { }

    /** The fix; none where the place was mended already, where the record is to be corrected by whoever measured it. */
    static Fix[] of(FairMeasures.Place place) {
        if (place.mended().isPresent())
            return new Fix[0];
        String how = switch (place.remedy()) {
            case FairMeasures.Plies(int count) -> count == 1 ? "with one ply" : "with " + count + " plies";
            case FairMeasures.Filler(int layers) -> layers == 1 ? "with filler in one layer" : "with filler in " + layers + " layers";
            case FairMeasures.NewFoam() -> "with new foam";
            case FairMeasures.LaidAnew() -> "with new skin";
            case FairMeasures.BoardedDown() -> "with the board";
            case FairMeasures.Done() -> "";
        };
        return how.isEmpty() ? new Fix[0] : new Fix[] {Fix.of("once mended " + how + ": note it as `mended on " + place.day() + "`, and put in the day",
                new Remedy.Insert(place.origin(), Remedy.Side.BEHIND, "mended on " + place.day()))};
    }
}
