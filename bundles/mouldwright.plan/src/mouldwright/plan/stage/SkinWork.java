package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.Hazard;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.ShopDefaults;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;
import mouldwright.process.Air;

/** What is to be done for the skin, and what it uses up: all plies of one laying are one session. */
final class SkinWork {

    private SkinWork() { }

    static void tasks(Spec spec, SkinMeasures measured, Ledger ledger, TaskBook tasks) {
        Resin resin = spec.skin().orElseThrow().schedule().resin();
        Node pot = ledger.given(spec.shop().rates().flatMap(Rates::pot).orElseGet(ShopDefaults::potLabour));
        Node hard = ledger.given(resin.hard().orElseGet(ShopDefaults::hard));
        Node styrene = ledger.given(resin.styrene().orElseGet(ShopDefaults::styrene));
        for (int i = 0; i < measured.layings().size(); i++) {
            SkinMeasures.Laying laying = measured.layings().get(i);
            int plies = laying.count();
            String id = "skin.laying." + (i + 1);
            Node area = ledger.measured("surface to lay", AREA, Places.exact(
                    laying.fields().stream().mapToDouble(field -> field.area().value()).sum() * plies, "moulded patches, every ply counted"));
            Node labour = ledger.step("labour of a laying", TIME).from("surface / lay rate + pots x labour of a pot",
                    List.of(area, ledger.given(MatFacts.layRate(laying.mat())), ledger.find(id + ".pots").orElseThrow(), pot),
                    v -> v[0] / v[1] + plies * v[2] * v[3]).source("by rate");
            Node wetted = ledger.find(id + ".resin").orElseThrow();
            Node mass = plies == 1 ? wetted : ledger.step("resin of a session", MASS).from("plies x resin of a ply", List.of(wetted), v -> plies * v[0]).source("sum");
            tasks.addNext(Task.of("skin.lay." + (i + 1), "Lay " + (plies == 1 ? "" : plies + " plies of ") + laying.mat().name() + " " + laying.words(), labour)
                    .persons(4).inOneGo().wait(hard).cautions(Hazard.STYRENE, Hazard.PEROXIDE, Hazard.EXOTHERM)
                    .releases(Air.Application.RESIN_NOT_ATOMISED, mass, styrene));
        }
    }

    static void orders(Spec spec, Ledger ledger, OrderBook orders) {
        Skin skin = spec.skin().orElseThrow();
        for (Mat mat : mats(skin))
            ledger.find("skin.mat." + mat.name() + ".length").ifPresent(length -> orders.need(mat, length));
        Resin resin = skin.schedule().resin();
        ledger.find("skin.resin.mass").ifPresent(mass -> orders.need(resin, mass));
        ledger.find("skin.catalyst.mass").ifPresent(mass -> resin.hardener().ifPresentOrElse(
                hardener -> orders.need(hardener, mass), () -> orders.need("catalyst for " + resin.name(), mass)));
    }

    /** Every mat once; figures are kept by name. */
    private static List<Mat> mats(Skin skin) {
        List<Mat> mats = new ArrayList<>();
        for (Mat mat : SkinStage.mats(skin))
            if (mats.stream().noneMatch(other -> other.name().equals(mat.name())))
                mats.add(mat);
        return mats;
    }
}
