package mouldwright.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.stage.Rooms;
import mouldwright.units.Dimension;

/** MW312: a thick block is firm long before it is cool; foam poured on it adds its own heat, scorches and may burn. The plan waits; who goes by the
 *  foam's firm time alone does not. */
final class StillHot implements Check {

    /** So much longer than the firm time that nobody waits by chance, s. */
    private static final double LONGER = 3600;

    /** Thinner lifts are not poured, m: a cavity of less chills the foam; see {@link CavityTooNarrow}. */
    private static final double THINNEST = 0.05;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().fill().flatMap(fill -> fill.foam().firm().map(firm -> fill.foam())).ifPresent(foam -> plan.measurements().find(Rooms.class)
                .ifPresent(rooms -> rooms.bays().stream().filter(room -> room.lifts() > 1).forEach(room -> examine(foam, room, plan, out))));
    }

    /** Foam is cool after a time that goes with the square of its thickness; the waiting is written where the foam's figures stand. */
    private static List<Fix> fixes(Foam foam, double firm, double wait, Rooms.Room room) {
        String hours = BigDecimal.valueOf(wait / 3600).setScale(1, RoundingMode.CEILING).stripTrailingZeros().toPlainString() + " h";
        Fix waits = Fix.of("wait " + hours + " between lifts: `firm " + hours + "`", new Remedy.State(foam.stock().origin(), "firm", "firm " + hours));
        double thin = Math.floor(room.height() / room.lifts() * Math.sqrt((firm + LONGER) / wait) * 100) / 100;
        String lift = "lift " + Findings.exact(thin, 0) + " at most";
        return thin < THINNEST ? List.of(waits) : List.of(Fix.of("pour thinner lifts: `" + lift + "`", new Remedy.State(foam.stock().origin(), "lift", lift)), waits);
    }

    private static void examine(Foam foam, Rooms.Room room, BuildPlan plan, Findings out) {
        double firm = foam.firm().orElseThrow().likely();
        Optional<Quantity> wait = plan.quantity(room.bay().id("wait"));
        wait.filter(w -> w.value() > firm + LONGER).ifPresent(w -> out.add(new Finding("MW312", Severity.INFO, room.bay().aft().station().origin(),
                "a lift of " + room.bay().words() + " is firm after " + Findings.figure(firm, Dimension.TIME) + " and cool after "
                        + Findings.figure(w.value(), Dimension.TIME) + ": inside it is still hot when " + foam.name() + " says pour again",
                "wait that long, or pour thinner lifts with a lower `lift ... at most`", fixes(foam, firm, w.value(), room))));
    }
}
