package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.stage.SkinMeasures;
import mouldwright.units.Dimension;

/** MW501: bare foam under surfacer takes up resin and styrene, prints through, and lifts. */
final class FaceUncovered implements Check {

    /** What rounding leaves of a face that is covered, m2: 1 cm2. */
    static final double NOTHING = 1e-4;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().skin().ifPresent(skin -> plan.measurements().find(SkinMeasures.class).filter(m -> m.uncovered().value() > NOTHING && laysSomething(skin))
                .ifPresent(m -> out.warn("MW501", skin.origin(), Findings.figure(m.uncovered().value(), Dimension.AREA) + " of the moulded face has no ply" + where(m, 1),
                        "add a ply there, or to the schedule", AddedPlies.over(plan, skin, m, gap -> gap.laid() < 1))));
    }

    /** A skin that lays nothing at all is told as that. */
    private static boolean laysSomething(Skin skin) {
        return !skin.schedule().plies().isEmpty() || skin.rules().stream().anyMatch(Skin.Rule.AddPlies.class::isInstance);
    }

    /** Where plies are lacking, in words. */
    static String where(SkinMeasures measures, int below) {
        return measures.gaps().stream().filter(gap -> gap.laid() < below).findFirst()
                .map(gap -> ": from " + Findings.length(gap.fromX()) + " to " + Findings.length(gap.toX()) + " aft of the datum").orElse("");
    }
}
