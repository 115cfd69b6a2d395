package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Given;
import mouldwright.plan.stage.MouldMeasures;
import mouldwright.units.Dimension;

/** MW702: walls that hardly draw away scrape along the mould and stick. The strip that touches the parting line is left out: there the mould lifts
 *  clear at once. */
final class DraftTooLow implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().mould().ifPresent(spec -> plan.measurements().find(MouldMeasures.class)
                .ifPresent(mould -> mould.pieces().forEach(piece -> examine(plan, piece, spec.draft(), out))));
    }

    private static void examine(BuildPlan plan, MouldMeasures.Piece piece, Given limit, Findings out) {
        double low = piece.low(limit.likely());
        if (low > MouldUndercut.NOTHING)
            out.warn("MW702", MouldPlaces.of(plan, piece.part().origin()), Findings.figure(low, Dimension.AREA) + " of " + piece.words() + " has less draft than "
                    + Findings.figure(limit.likely(), Dimension.ANGLE) + where(piece, limit), "let it draw more, or split or pull the mould another way");
    }

    private static String where(MouldMeasures.Piece piece, Given limit) {
        for (MouldMeasures.EndShare end : piece.ends())
            if (end.draft() >= 0 && end.draft() < limit.likely())
                return ": the end at " + end.station() + " stands along the pull";
        return piece.draft().least().filter(place -> place.angle() >= 0)
                .map(place -> ", least " + Findings.figure(place.angle(), Dimension.ANGLE) + " " + MouldUndercut.where(place)).orElse("");
    }
}
