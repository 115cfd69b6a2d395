package mouldwright.plan;

import java.util.List;
import java.util.Optional;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.plan.ledger.Derivation;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Spec;

/** Everything worked out of a spec.
 *  @param spec          what it was worked out of
 *  @param assumed       every default it rests on
 *  @param quantities    in stage order
 *  @param plates        in station order
 *  @param pours         bay by bay, lift by lift
 *  @param pots          ply by ply
 *  @param pieces        of mat, in the order of laying
 *  @param tasks         in the order they begin
 *  @param orders        material by material
 *  @param faults        met while planning; with any, figures may be missing
 *  @param measurements  of the shape, for checks and drawings
 *  @param reckoning     of the ledger, for derivations and draws */
public record BuildPlan(Spec spec, List<Assumption> assumed, List<Quantity> quantities, List<PlateEntry> plates,
        List<PourEntry> pours, List<PotEntry> pots, List<PieceEntry> pieces, List<TaskEntry> tasks, List<OrderEntry> orders, List<PlanFault> faults, Measurements measurements,
        Reckoning reckoning) {

    /** Copies its lists. */
    public BuildPlan {
        assumed = List.copyOf(assumed);
        quantities = List.copyOf(quantities);
        plates = List.copyOf(plates);
        pours = List.copyOf(pours);
        pots = List.copyOf(pots);
        pieces = List.copyOf(pieces);
        tasks = List.copyOf(tasks);
        orders = List.copyOf(orders);
        faults = List.copyOf(faults);
    }

    /** @return the plug's name */
    public String plug() {
        return spec.name();
    }

    /** @return what of the frame is cut out of sheets; nothing where there is no frame */
    public List<PlatePart> parts() {
        return measurements.find(CutParts.class).map(CutParts::parts).orElse(List.of());
    }

    /** @return what of the frame is cut out of timber */
    public List<Member> members() {
        return measurements.find(CutParts.class).map(CutParts::members).orElse(List.of());
    }

    /** @return what the plates are set up by; empty where fewer than two stand */
    public Optional<Alignment> alignment() {
        return measurements.find(Alignment.class);
    }

    /** @return a quantity by its id */
    public Optional<Quantity> quantity(String id) {
        return quantities.stream().filter(q -> q.id().equals(id)).findFirst();
    }

    /** @return how a quantity came about */
    public Optional<Derivation> derivation(String id) {
        return reckoning.find(id).map(reckoning::derivation);
    }
}
