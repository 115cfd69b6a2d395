package mouldwright.check;

import mouldwright.geometry.draft.DraftPlace;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.stage.MouldMeasures;
import mouldwright.units.Dimension;

/** MW701: a mould that grips behind the plug comes off only with one of them broken. */
final class MouldUndercut implements Check {

    /** A face this small gives way, m2: 2 cm2. Common practice. */
    static final double NOTHING = 2e-4;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.measurements().find(MouldMeasures.class).ifPresent(mould -> mould.pieces().stream()
                .filter(piece -> piece.undercut() > NOTHING).forEach(piece -> out.warn("MW701", MouldPlaces.of(plan, piece.part().origin()),
                        Findings.figure(piece.undercut(), Dimension.AREA) + " of " + piece.words() + " is undercut" + worst(piece)
                                + ": the mould would not come off", "split the mould there, or pull it another way", split(plan, piece.part()))));
    }

    /** One piece becomes two halves, pulled against each other: each takes what lies on the side it is pulled to. */
    private static Fix[] split(BuildPlan plan, Mould.Part part) {
        if (!(part.reach() instanceof Mould.Reach.Everything))
            return new Fix[0];
        String halves = switch (part.pull()) {
            case UP, DOWN -> "half Upper pull up\nhalf Lower pull down";
            case PORT, STARBOARD -> "half Port pull port\nhalf Starboard pull starboard";
            case FORWARD, AFT -> "half Fore pull forward\nhalf Aft pull aft";
        };
        return new Fix[] {Fix.of("split the mould in two halves", part.origin() instanceof Origin.Assumed
                ? new Remedy.Insert(plan.spec().mould().orElseThrow().origin(), Remedy.Side.INSIDE, halves) : new Remedy.Replace(part.origin(), halves))};
    }

    private static String worst(MouldMeasures.Piece piece) {
        return piece.draft().least().filter(place -> place.angle() < 0)
                .map(place -> ", worst " + Findings.figure(place.angle(), Dimension.ANGLE) + " " + where(place)).orElse("");
    }

    /** Where a draft was found, in words. */
    static String where(DraftPlace place) {
        String side = place.portImage() || place.place().port() ? " to port" : " to starboard";
        return Findings.length(place.place().x()) + " aft of the datum at " + Findings.figure(place.place().share(), Dimension.RATIO) + " of the girth" + side;
    }
}
