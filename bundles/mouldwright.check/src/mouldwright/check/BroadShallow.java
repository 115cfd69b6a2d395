package mouldwright.check;

import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.stage.FillMeasures;
import mouldwright.plan.stage.Rooms;
import mouldwright.process.Foam;

/** MW310: a pour runs flat over a broad opening, skins over and lifts off; such a bay is packed from inside, or poured on another side. */
final class BroadShallow implements Check {

    /** Foam fills cavities of 50 to 300 mm; twice the least of it, m. */
    private static final double SHELL = 0.1;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.measurements().find(FillMeasures.class).ifPresent(fill -> plan.measurements().find(Rooms.class).ifPresent(rooms -> {
            for (int i = 0; i < rooms.bays().size(); i++)
                if (fill.bays().get(i).core() instanceof Fill.Core.Solid)
                    examine(rooms.bays().get(i), plan, out);
        }));
    }

    /** A shell for the bay, where no rule speaks of bays yet. */
    private static Fix[] packed(Rooms.Room room, Optional<Fill> fill) {
        if (fill.isEmpty() || !fill.get().bays().isEmpty())
            return new Fix[0];
        String words = "bay " + room.bay().fore().name() + " to " + room.bay().aft().name() + " shell " + Findings.exact(SHELL, 0);
        return new Fix[] {Fix.of("pack the bay from inside: `" + words + "`", new Remedy.Insert(fill.get().origin(), Remedy.Side.INSIDE, words))};
    }

    private static void examine(Rooms.Room room, BuildPlan plan, Findings out) {
        if (room.height() > 0 && Foam.isBroadAndShallow(room.opening(), room.height()))
            out.warn("MW310", room.bay().aft().station().origin(), room.bay().words() + " opens " + Findings.length(room.opening()) + " wide and is "
                    + Findings.length(room.height()) + " deep, " + Foam.BROAD + " times as wide at most: a pour does not fill it evenly",
                    "pack it from inside with a `shell`, or pour it another way up with `pour on side`", packed(room, plan.spec().fill()));
    }
}
