package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.MouldMeasures;
import mouldwright.units.Dimension;

/** MW712 to MW714: parts of a mould that leave some of the face out, lie over one another, or cover nothing because their line runs where nothing is moulded. */
final class MouldLeavesFace implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().mould().ifPresent(spec -> plan.measurements().find(MouldMeasures.class).ifPresent(mould -> {
            if (mould.uncovered().value() > MouldUndercut.NOTHING)
                out.warn("MW712", spec.origin(), Findings.figure(mould.uncovered().value(), Dimension.AREA) + " of the moulded face belongs to no half of the mould",
                        "add a half that covers it, or mark it bare");
            if (mould.doubled().value() > MouldUndercut.NOTHING)
                out.warn("MW713", spec.origin(), Findings.figure(mould.doubled().value(), Dimension.AREA) + " of the moulded face belongs to more than one half of the mould",
                        "let the halves meet at one line");
            for (MouldMeasures.Piece piece : mould.pieces())
                if (piece.area() <= MouldUndercut.NOTHING)
                    out.warn("MW714", MouldPlaces.of(plan, piece.part().origin()), piece.words() + " covers nothing that is moulded: its parting line lies off the moulded face",
                            "part the mould at another line");
        }));
    }
}
