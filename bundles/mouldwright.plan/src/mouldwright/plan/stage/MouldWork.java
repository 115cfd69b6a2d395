package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.Hazard;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.ShopDefaults;
import mouldwright.plan.spec.Spec;
import mouldwright.process.Air;

/** What is to be done for the mould, and what it uses up. Plies that are laid between two waits are laid wet in wet; the halves of a mould are laid in one
 *  session, one flange the pattern of the next. */
final class MouldWork {

    private final Spec spec;
    private final Mould mould;
    private final MouldMeasures measured;
    private final Ledger ledger;

    MouldWork(Spec spec, MouldMeasures measured, Ledger ledger) {
        this.spec = spec;
        this.mould = spec.mould().orElseThrow();
        this.measured = measured;
        this.ledger = ledger;
    }

    void tasks(TaskBook tasks) {
        List<Node> faces = new ArrayList<>();
        for (String id : List.of("mould.area", "mould.flange.area", "mould.runout.area"))
            ledger.find(id).ifPresent(faces::add);
        Node laid = ledger.step("surface laid up", AREA).sum("face + flanges + run-out", faces).source("flanges are laid up with the face");
        CoatWork.tasks("mould.coat.", MouldStage.coats(mould.schedule()), laid, ledger, tasks);
        Node cured = stiffened() ? new StiffenerWriting(spec, measured, ledger).cured() : ledger.given(mould.hold());
        List<Optional<Node>> waits = waits(cured);
        for (int i = 0; i < measured.layings().size(); i++)
            tasks.addNext(lay(i, i < waits.size() ? waits.get(i) : Optional.empty()));
        if (stiffened())
            new StiffenerWriting(spec, measured, ledger).tasks(cured, tasks);
        Node off = ledger.step("labour of taking the mould off", TIME).same(ledger.given(Defaults.unmouldLabour())).source("as assumed");
        tasks.addNext(Task.of("mould.off", "Take the mould off the plug, trim its edges", off).persons(4).cautions(Hazard.LIFTING, Hazard.DUST));
    }

    private boolean stiffened() {
        return ledger.find(StiffenerWriting.ID + ".mass").isPresent();
    }

    /** The wait after each laying: what the schedule states between sessions, none within one.
     *  @param after after the last: the hold on the plug, or the cure before stiffeners */
    private List<Optional<Node>> waits(Node after) {
        List<Optional<Node>> waits = new ArrayList<>();
        List<Node> between = new ArrayList<>();
        boolean laid = false;
        for (Schedule.Layer layer : mould.schedule().layers())
            if (layer instanceof Schedule.Layer.Ply)
                laid = true;
            else if (layer instanceof Schedule.Layer.Wait wait && laid) {
                between.add(ledger.given(wait.time()));
                laid = false;
            }
        int session = 0;
        for (int i = 0; i < measured.layings().size(); i++) {
            boolean last = i == measured.layings().size() - 1;
            boolean sessionEnds = !last && !measured.layings().get(i).words().equals(measured.layings().get(i + 1).words());
            waits.add(last ? Optional.of(after) : sessionEnds && session < between.size() ? Optional.of(between.get(session++)) : Optional.empty());
        }
        return waits;
    }

    private Task lay(int i, Optional<Node> wait) {
        SkinMeasures.Laying laying = measured.layings().get(i);
        int plies = laying.count();
        String id = "mould.laying." + (i + 1);
        Node area = ledger.measured("surface to lay", AREA, Places.exact(
                laying.fields().stream().mapToDouble(field -> field.area().value()).sum() * plies, "face, flanges and run-out, every ply counted"));
        Node labour = ledger.step("labour of a laying", TIME).from("surface / lay rate + pots x labour of a pot",
                List.of(area, ledger.given(MatFacts.layRate(laying.mat())), ledger.find(id + ".pots").orElseThrow(),
                        ledger.given(spec.shop().rates().flatMap(Rates::pot).orElseGet(Defaults::potLabour))),
                v -> v[0] / v[1] + plies * v[2] * v[3]).source("by rate");
        Node resin = ledger.step("resin of a laying", MASS).from("plies x resin of a ply", List.of(ledger.find(id + ".resin").orElseThrow()), v -> plies * v[0]).source("sum");
        Task task = Task.of("mould.lay." + (i + 1), "Lay " + (plies == 1 ? "" : plies + " plies of ") + laying.mat().name() + " " + laying.words(), labour)
                .persons(4).inOneGo().cautions(Hazard.STYRENE, Hazard.PEROXIDE, Hazard.EXOTHERM)
                .releases(Air.Application.RESIN_NOT_ATOMISED, resin, ledger.given(mould.schedule().resin().styrene().orElseGet(ShopDefaults::styrene)));
        return wait.map(task::wait).orElse(task);
    }

    void orders(OrderBook orders) {
        CoatWork.orders("mould.coat", MouldStage.coats(mould.schedule()), ledger, orders);
        List<String> done = new ArrayList<>();
        for (Schedule.Layer.Ply ply : mould.schedule().plies()) {
            Mat mat = ply.mat();
            if (!done.contains(mat.name()))
                ledger.find("mould.mat." + mat.name() + ".length").ifPresent(length -> orders.need(mat, length));
            done.add(mat.name());
        }
        Resin resin = mould.schedule().resin();
        ledger.find("mould.resin.mass").ifPresent(mass -> orders.need(resin, mass));
        ledger.find("mould.catalyst.mass").ifPresent(mass -> resin.hardener().ifPresentOrElse(
                hardener -> orders.need(hardener, mass), () -> orders.need("catalyst for " + resin.name(), mass)));
        new StiffenerWriting(spec, measured, ledger).orders(orders);
    }
}
