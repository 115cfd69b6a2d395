package mouldwright.check;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.stage.FillMeasures;
import mouldwright.plan.stage.Rooms;

/** MW311: in a narrow cavity foam chills on both sides, rises less than its sheet says and leaves voids. Source: a supplier's notes on
 *  pouring foam, cavities of 50 to 300 mm. */
final class CavityTooNarrow implements Check {

    /** Narrowest cavity that fills, m. */
    private static final double NARROWEST = 0.050;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().fill().ifPresent(fill -> plan.measurements().find(FillMeasures.class).ifPresent(bays -> plan.measurements().find(Rooms.class).ifPresent(rooms -> {
            for (int i = 0; i < rooms.bays().size(); i++)
                examine(fill, bays.bays().get(i).core(), rooms.bays().get(i), out);
        })));
    }

    private static void examine(Fill fill, Fill.Core core, Rooms.Room room, Findings out) {
        double shell = core instanceof Fill.Core.Shell(var stated) ? stated.likely() + fill.overfill().likely() : Double.POSITIVE_INFINITY;
        double narrow = Math.min(shell, Math.min(room.clear(), room.breadth()));
        if (narrow < NARROWEST)
            out.warn("MW311", room.bay().aft().station().origin(), room.bay().words() + " is only " + Findings.length(narrow) + " wide, "
                    + Findings.length(NARROWEST) + " at least: foam chills in it, rises less and leaves voids",
                    narrow == shell ? "state a thicker `shell`, or the bay as `solid`" : "leave out a plate with `unplated`, or fill the bay by hand with sheet foam");
    }
}
