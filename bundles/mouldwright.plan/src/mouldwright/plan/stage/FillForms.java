package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.FillDefaults;

/** What shutters the bays in, written in a ledger: shuttering, stand-offs, release film and the packing of pockets. */
final class FillForms {

    private final Fill fill;
    private final Rooms rooms;
    private final Ledger ledger;

    FillForms(Fill fill, Rooms rooms, Ledger ledger) {
        this.fill = fill;
        this.rooms = rooms;
        this.ledger = ledger;
    }

    void write() {
        List<Node> forms = new ArrayList<>();
        List<Node> packings = new ArrayList<>();
        List<Node> wrapped = new ArrayList<>();
        for (Rooms.Room room : rooms.bays()) {
            forms.add(ledger.quantity(room.bay().id("forms"), "Shuttering, " + room.bay().words(), AREA).measured(Places.exact(room.forms(),
                    "lofted surface from station line to station line x girth grown by the overfill / girth, at half length")));
            packings.add(ledger.quantity(room.bay().id("packing"), "Packing of the pocket, " + room.bay().words(), VOLUME)
                    .measured(Places.measured(room.pocket(), "what the shell leaves inside, integrated over the clear length")));
            wrapped.add(ledger.measured("packing, " + room.bay().words(), AREA, Places.exact(room.wrapping(), "girth of the pocket at half length x clear length")));
        }
        Node shuttering = ledger.quantity("fill.forms.area", "Shuttering", AREA).sum("sum over the bays", forms).source("sum");
        ledger.quantity("fill.packing", "Packing of pockets", VOLUME).sum("sum over the bays", packings).source("sum");
        Node packed = ledger.step("faces of the packing", AREA).sum("sum over the bays", wrapped).source("sum");
        ledger.quantity("fill.film.area", "Release film on shuttering and packing", AREA)
                .from("(shuttering + faces of the packing) x (1 + laps and folds)", List.of(shuttering, packed, ledger.given(FillDefaults.filmLap())),
                        v -> (v[0] + v[1]) * (1 + v[2]))
                .source("foam sticks to all it touches: whatever is to come off again is lined; add 10 % for overlapping sheet work");
        standoffs();
    }

    /** None where nothing is overfilled: the shuttering lies on the plates then. */
    private void standoffs() {
        Node pitch = ledger.given(FillDefaults.standoffPitch());
        Node overfill = ledger.given(fill.overfill());
        List<Node> counts = new ArrayList<>();
        for (Rooms.Edge edge : rooms.standoffs())
            counts.add(ledger.step("stand-offs on plate " + edge.border().name(), RATIO)
                    .from("moulded girth / pitch of stand-offs; none without overfill", List.of(ledger.measured("moulded girth", LENGTH,
                            Places.exact(edge.moulded(), "moulded runs of the outline at the plate")), pitch, overfill), v -> v[2] > 0 ? v[0] / v[1] : 0)
                    .roundedUp().source("common practice"));
        ledger.quantity("fill.standoffs", "Stand-offs, as thick as the overfill", RATIO).sum("sum over the plates", counts).source("sum");
    }
}
