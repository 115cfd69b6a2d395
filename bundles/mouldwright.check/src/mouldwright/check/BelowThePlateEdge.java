package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.FairDefaults;
import mouldwright.plan.stage.FairMeasures;

/** MW441: foam is never cut deeper than the plywood; what is taken below the plates' edges must be rebuilt, and a plate that was cut is no
 *  reference any more. */
final class BelowThePlateEdge implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        String filler = plan.spec().carve().orElseGet(FairDefaults::carve).filler().map(f -> f.name()).orElse("a paste of resin and glass bubbles");
        plan.measurements().find(FairMeasures.class).ifPresent(found -> found.places().stream()
                .filter(place -> place.fault() == FairMeasures.Fault.GOUGE && place.open()).forEach(place -> examine(place, filler, out)));
    }

    private static void examine(FairMeasures.Place place, String filler, Findings out) {
        String depth = Findings.length(place.size().depth().likely());
        String edges = place.plates().isEmpty() ? "below the edges of its plates"
                : "and across plate " + String.join(" and ", place.plates()) + ": its edge is cut too and no reference there";
        out.warn("MW441", place.origin(), "gouge of " + depth + " " + place.where() + ", " + edges,
                (place.plates().isEmpty() ? "" : "rebuild the plate's edge to its template first; then ") + words(place.remedy(), filler), MendedEntry.of(place));
    }

    /** What mends it, in words. */
    static String words(FairMeasures.Remedy remedy, String filler) {
        return switch (remedy) {
            case FairMeasures.Plies(int count) -> "lay " + (count == 1 ? "one ply" : count + " plies") + " more over it";
            case FairMeasures.Filler(int layers) -> "fill it with " + filler + (layers == 1 ? " in one layer" : " in " + layers + " layers, each left to harden");
            case FairMeasures.NewFoam() -> "cut it square, bond in new foam and carve again: too deep for filler";
            case FairMeasures.LaidAnew() -> "cut the skin out and lay it anew";
            case FairMeasures.BoardedDown() -> "board it down";
            case FairMeasures.Done() -> "nothing more to do";
        };
    }
}
