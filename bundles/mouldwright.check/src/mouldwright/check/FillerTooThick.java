package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Carve;
import mouldwright.plan.spec.FairDefaults;
import mouldwright.plan.spec.Filler;
import mouldwright.plan.spec.Given;
import mouldwright.plan.stage.FairMeasures;

/** MW443: filler put on thicker than its layer limit cracks. A gouge says so by MW441. */
final class FillerTooThick implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        Carve carve = plan.spec().carve().orElseGet(FairDefaults::carve);
        Given limit = carve.filler().flatMap(Filler::layer).orElseGet(FairDefaults::fillerLayer);
        String name = carve.filler().map(Filler::name).orElse("a paste of resin and glass bubbles");
        plan.measurements().find(FairMeasures.class).ifPresent(found -> found.places().stream().filter(place -> place.fault() != FairMeasures.Fault.GOUGE)
                .forEach(place -> examine(place, limit.likely(), name, out)));
    }

    private static void examine(FairMeasures.Place place, double limit, String name, Findings out) {
        if (place.remedy() instanceof FairMeasures.Filler(int layers) && layers > 1)
            out.warn("MW443", place.origin(), place.words() + " is " + Findings.length(place.size().depth().likely()) + " deep, a layer of " + name + " "
                    + Findings.length(limit) + " at most: thicker it cracks", "fill it in " + layers + " layers, each left to harden", MendedEntry.of(place));
    }
}
