package mouldwright.plan.stage;

import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.FillDefaults;

/** How long a lift is left before the next one: max(firm, s2 / (pi2 a)), written in a ledger.
 *
 *  <p>s is the least thickness of the hot foam: of the lift's height, the clear length of the bay, the breadth of the section,
 *  and in a shell the shell with its overfill, whichever is least. */
final class Cooling {

    private Cooling() { }

    /** The wait after a lift of a bay.
     *  @param height of the cavity across gravity
     *  @param lifts  it is poured in */
    static Node wait(Fill fill, FillMeasures.BayFill bay, Rooms.Room room, Node height, Node lifts, Ledger ledger) {
        Node thickness = thickness(fill, bay, room, height, lifts, ledger);
        return ledger.quantity(bay.bay().id("wait"), "Wait after a lift, " + bay.bay().words(), TIME)
                .from("greater of firm time and s^2 / (pi^2 x thermal diffusivity of foam)",
                        List.of(ledger.given(FoamFacts.firm(fill.foam())), thickness, ledger.given(FillDefaults.foamDiffusivity())),
                        v -> Math.max(v[0], v[1] * v[1] / (Math.PI * Math.PI * v[2])))
                .source("heat conduction in a slab that cools from both faces, slowest term (textbook); diffusivity assumed");
    }

    private static Node thickness(Fill fill, FillMeasures.BayFill bay, Rooms.Room room, Node height, Node lifts, Ledger ledger) {
        List<Node> inputs = new ArrayList<>(List.of(height, lifts,
                ledger.measured("clear length", LENGTH, Places.exact(Math.max(0, room.clear()), "between the plates")),
                ledger.measured("breadth of the cavity", LENGTH, Places.exact(room.breadth(), "level, overfill included"))));
        boolean shell = bay.core() instanceof Fill.Core.Shell;
        if (bay.core() instanceof Fill.Core.Shell(var stated)) {
            inputs.add(ledger.given(stated));
            inputs.add(ledger.given(fill.overfill()));
        }
        return ledger.step("s, least thickness of the hot foam, " + bay.bay().words(), LENGTH)
                .from("least of height / lifts, clear length, breadth" + (shell ? ", shell + overfill" : ""), inputs, v -> {
                    double least = Math.min(v[0] / Math.max(1, v[1]), Math.min(v[2], v[3]));
                    return shell ? Math.min(least, v[4] + v[5]) : least;
                }).source("the way the heat has out is across the thinnest side");
    }
}
