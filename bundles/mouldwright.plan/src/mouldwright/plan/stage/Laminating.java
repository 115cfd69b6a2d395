package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.AREAL_MASS;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;
import static mouldwright.units.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;
import mouldwright.process.Cure;
import mouldwright.process.Laminate;
import mouldwright.units.Dimension;

/** Writes what a skin takes. Mat is cut field by field, one for each bay: n = ceil((G - l)/(W - l)) pieces across the girth,
 *  each as long as the bay and a lap; packing of pieces on rolls is not looked at here. Resin goes with the mat as laid,
 *  laps counted, since they are wetted too. */
final class Laminating {

    /** The widest lap reckoned with, as a share of the roll: wider ones never pass the guard, but a draw might. */
    private static final double WIDEST_LAP = 0.99;

    private final Spec spec;
    private final Skin skin;
    private final Resin resin;
    private final Ledger ledger;
    private final Node lap;
    private final Growth growth;
    private final Map<String, List<Node>> masses = new LinkedHashMap<>();
    private final Map<String, List<Node>> lengths = new LinkedHashMap<>();
    private final List<Node> resins = new ArrayList<>();
    private final List<Node> pots = new ArrayList<>();

    Laminating(Spec spec, Skin skin, Ledger ledger) {
        this.spec = spec;
        this.skin = skin;
        this.resin = skin.schedule().resin();
        this.ledger = ledger;
        this.lap = ledger.given(skin.lap());
        this.growth = new Growth(spec.body().shrink(), ledger);
    }

    void write(SkinMeasures measured, Node area) {
        ResinCure cure = new ResinCure(skin, spec.shop().temperature());
        Node catalyst = cure.catalyst(ledger);
        Node gel = ledger.quantity("skin.gel", "Skin, gel time", TIME).same(cure.gel(ledger, catalyst)).source("the resin's gel table");
        Node working = ledger.quantity("skin.working", "Skin, time to lay a pot in", TIME)
                .from("0.7 x gel time", List.of(gel), v -> Cure.workingTime(v[0])).source("common practice");
        for (int i = 0; i < measured.layings().size(); i++)
            laying(i + 1, measured.layings().get(i), area, working);
        masses.forEach((mat, all) -> ledger.quantity("skin.mat." + mat + ".mass", "Mat " + mat + ", laid with laps", MASS)
                .sum("sum over the plies", all).source("sum"));
        lengths.forEach((mat, all) -> ledger.quantity("skin.mat." + mat + ".length", "Mat " + mat + ", off the roll", LENGTH)
                .sum("sum over the plies", all).source("sum; full widths, pieces not packed against each other"));
        Node mass = ledger.quantity("skin.resin.mass", "Skin, resin", MASS).sum("sum over the plies", resins).source("sum");
        Node hardener = ledger.quantity("skin.catalyst.mass", "Skin, catalyst", MASS)
                .from("resin x catalyst", List.of(mass, catalyst), v -> v[0] * v[1]).source("catalyst by weight of resin");
        ledger.quantity("skin.catalyst.volume", "Skin, catalyst by the measure", VOLUME)
                .from("mass / catalyst density", List.of(hardener, ledger.given(MatFacts.hardenerDensity(resin))),
                        v -> v[0] / v[1]).source("closed form");
        ledger.quantity("skin.pots", "Skin, pots", RATIO).sum("sum over the plies", pots).source("sum");
    }

    private void laying(int number, SkinMeasures.Laying laying, Node area, Node working) {
        Mat mat = laying.mat();
        String words = laying.words() + ", " + mat.name();
        List<Cut> cuts = laying.fields().stream().map(field -> cut(mat, field)).toList();
        Node laid = sum("mat laid " + words, AREA, cuts.stream().map(Cut::laid).toList());
        Node length = sum("roll used " + words, LENGTH, cuts.stream().map(Cut::roll).toList());
        Node mass = ledger.step("a ply of mat " + words, MASS).from("mat laid x areal mass", List.of(laid, ledger.given(mat.areal())), v -> v[0] * v[1])
                .source("closed form");
        Node perArea = perArea(mat, laying.first());
        Node wetting = wetting(mat, laying.first(), mass, area, words);
        String id = "skin.laying." + number;
        Node each = ledger.quantity(id + ".pot", "Largest pot, " + words, MASS)
                .from("least of pot limit and lay rate x resin per area x working time",
                        List.of(ledger.given(MatFacts.pot(resin)), ledger.given(MatFacts.layRate(mat)), perArea, working),
                        v -> Math.min(v[0], v[1] * v[2] * v[3]))
                .source("each person lays from a pot of their own, before it stiffens");
        Node resinOfPly = ledger.quantity(id + ".resin", "Resin of a ply, " + words, MASS).same(wetting).source("as above");
        Node count = ledger.quantity(id + ".pots", "Pots of a ply, " + words, RATIO)
                .from(laying.first() ? "1 + (resin - half a pot) / pot" : "resin / pot", List.of(resinOfPly, each),
                        v -> Math.max(1, v[0] / v[1] + (laying.first() ? 0.5 : 0)))
                .roundedUp().source(laying.first() ? "the first pot is half of one, until the cure is known" : "common practice");
        for (int ply = 0; ply < laying.count(); ply++) {
            masses.computeIfAbsent(mat.name(), name -> new ArrayList<>()).add(mass);
            lengths.computeIfAbsent(mat.name(), name -> new ArrayList<>()).add(length);
            resins.add(resinOfPly);
            pots.add(count);
        }
    }

    private Node sum(String label, Dimension dimension, List<Node> nodes) {
        return ledger.step(label, dimension).sum("sum over the fields", nodes).source("sum");
    }

    /** A field cut from the roll.
     *  @param laid mat laid, laps counted
     *  @param roll length used off the roll */
    private record Cut(Node laid, Node roll) { }

    private Cut cut(Mat mat, SkinMeasures.Field field) {
        Node surface = growth.step("surface, " + field.words(), AREA, Places.measured(field.area(), "moulded patches"));
        Node length = growth.step("length over the surface, " + field.words(), LENGTH, Places.exact(field.length(), "surface over girth"));
        Node girth = growth.step("girth to cover, " + field.words(), LENGTH,
                Places.exact(field.runs().total(), "moulded girth where the field is widest, both sides"));
        Node pieces = ledger.step("pieces across, " + field.words(), RATIO)
                .from(field.runs().closed() ? "G / (W - lap), rounded up" : "(G - lap) / (W - lap), rounded up, for each run of the girth",
                        List.of(girth, ledger.given(MatFacts.rollWidth(mat)), lap),
                        v -> field.runs().pieces(v[1], Math.min(v[2], WIDEST_LAP * v[1]), v[0] / field.runs().total()))
                .source(field.runs().closed() ? "n widths less n laps go all round, the last lapping the first" : "n widths less n - 1 laps cover a run");
        return new Cut(
                ledger.step("mat laid, " + field.words(), AREA)
                        .from("surface + lap x length x laps across + lap x girth", List.of(surface, length, pieces, lap, girth),
                                v -> v[0] + v[3] * v[1] * field.runs().laps((int) Math.rint(v[2])) + v[3] * v[4])
                        .source("pieces lap each other sideways and the next field"),
                ledger.step("roll used, " + field.words(), LENGTH)
                        .from("pieces x (length + lap)", List.of(pieces, length, lap), v -> v[0] * (v[1] + v[2]))
                        .source("pieces of full roll width run along the body"));
    }

    private Node perArea(Mat mat, boolean first) {
        List<Node> inputs = new ArrayList<>(List.of(ledger.given(mat.areal()), ledger.given(mat.glass())));
        if (!first)
            return ledger.step("resin per area", AREAL_MASS).from("w (1 - glass share) / glass share", inputs,
                    v -> Laminate.resinPerArea(v[0], v[1])).source("mass balance");
        inputs.add(ledger.given(skin.onFoam()));
        return ledger.step("resin per area on foam", AREAL_MASS).from("w (1 - glass share) / glass share + extra on foam", inputs,
                v -> Laminate.resinPerArea(v[0], v[1]) + v[2]).source("mass balance; cut foam drinks resin");
    }

    private Node wetting(Mat mat, boolean first, Node mass, Node area, String words) {
        List<Node> inputs = new ArrayList<>(List.of(mass, ledger.given(mat.glass())));
        if (!first)
            return ledger.step("resin, " + words, MASS).from("mat x (1 - glass share) / glass share", inputs,
                    v -> v[0] * (1 - v[1]) / v[1]).source("mass balance");
        Collections.addAll(inputs, ledger.given(skin.onFoam()), area);
        return ledger.step("resin, " + words, MASS)
                .from("mat x (1 - glass share) / glass share + extra on foam x surface", inputs,
                        v -> v[0] * (1 - v[1]) / v[1] + v[2] * v[3]).source("mass balance; cut foam drinks resin");
    }
}
