package mouldwright.report;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.plan.Alignment;
import mouldwright.plan.Assumption;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Member;
import mouldwright.plan.OrderEntry;
import mouldwright.plan.PieceEntry;
import mouldwright.plan.PlateEntry;
import mouldwright.plan.PotEntry;
import mouldwright.plan.PourEntry;
import mouldwright.plan.Quantity;
import mouldwright.plan.TaskEntry;
import mouldwright.plan.draw.Draws;

/**
 * What an estimate shows: a plan, or one stage of it.
 *
 * @param plan       the plan it is taken from
 * @param revision   of the texts it was worked out of
 * @param findings   about the spec, in their order
 * @param quantities in stage order
 * @param plates     in station order
 * @param pours      bay by bay, lift by lift
 * @param pots       ply by ply
 * @param pieces     of mat, in the order of laying
 * @param tasks      in the order they begin
 * @param orders     material by material
 * @param draws      of the uncertain figures, where they were asked for
 */
public record Estimate(BuildPlan plan, String revision, List<TextFinding> findings, List<Quantity> quantities, List<PlateEntry> plates,
        List<PourEntry> pours, List<PotEntry> pots, List<PieceEntry> pieces, List<TaskEntry> tasks,
        List<OrderEntry> orders, Optional<Draws> draws) {

    /** Takes copies. */
    public Estimate {
        findings = List.copyOf(findings);
        quantities = List.copyOf(quantities);
        plates = List.copyOf(plates);
        pours = List.copyOf(pours);
        pots = List.copyOf(pots);
        pieces = List.copyOf(pieces);
        tasks = List.copyOf(tasks);
        orders = List.copyOf(orders);
    }

    /** The estimate of a whole plan.
     *  @param revision of the texts the plan was worked out of
     *  @param findings in the order they are to be shown */
    public static Estimate of(BuildPlan plan, String revision, List<TextFinding> findings) {
        return new Estimate(plan, revision, findings, plan.quantities(), plan.plates(), plan.pours(), plan.pots(), plan.pieces(),
                plan.tasks(), plan.orders(), Optional.empty());
    }

    /** What it shows of one stage alone.
     *  @param stage one of {@link #stages()}; of another nothing is left */
    public Estimate only(String stage) {
        return new Estimate(plan, revision, findings, quantities.stream().filter(quantity -> quantity.stage().equals(stage)).toList(),
                stage.equals("frame") ? plates : List.of(), stage.equals("fill") ? pours : List.of(),
                pots.stream().filter(entry -> within(stage, entry.laminate())).toList(), pieces.stream().filter(piece -> within(stage, piece.laminate())).toList(),
                stage.equals("plan") ? tasks : List.of(), stage.equals("orders") ? orders : List.of(), draws);
    }

    /** Whether a laminate is laid in a stage: the stage's own, or one whose name begins with it. */
    private static boolean within(String stage, String laminate) {
        return laminate.equals(stage) || laminate.startsWith(stage + ".");
    }

    /** The same with the spread of its figures over draws of the plan. */
    public Estimate with(Draws drawn) {
        return new Estimate(plan, revision, findings, quantities, plates, pours, pots, pieces, tasks, orders, Optional.of(drawn));
    }

    /** The parts of the frame it shows. */
    public List<PlatePart> parts() {
        return stages().contains("frame") ? plan.parts() : List.of();
    }

    /** The timber of the frame it shows. */
    public List<Member> members() {
        return stages().contains("frame") ? plan.members() : List.of();
    }

    /** What the plates are set up by, where it shows the frame. */
    public Optional<Alignment> alignment() {
        return stages().contains("frame") ? plan.alignment() : Optional.empty();
    }

    /** The stages it shows, in the order of the build. */
    public Set<String> stages() {
        Set<String> stages = new LinkedHashSet<>();
        quantities.forEach(quantity -> stages.add(quantity.stage()));
        return stages;
    }

    /** The cautions that go with what it shows. */
    public List<Caution> cautions() {
        return Caution.of(stages());
    }

    /** The defaults the plan rests on. */
    public List<Assumption> assumed() {
        return plan.assumed();
    }
}
