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

/** Writes what a skin takes. Mat is laid field by field, one for each bay: n = ceil((G - l)/(W - l)) pieces across the girth,
 *  each as long as the bay and a lap; {@link MatOrder} says how they come off the roll. Resin goes with the mat as laid,
 *  laps counted, since they are wetted too. */
final class Laminating {

    /** The widest lap reckoned with, as a share of the roll: wider ones never pass the guard, but a draw might. */
    private static final double WIDEST_LAP = 0.99;

    private final Spec spec;
    private final Skin skin;
    private final Resin resin;
    private final Ledger ledger;
    private final Node lap;
    private final double measuredArea;
    private final Map<String, List<Node>> masses = new LinkedHashMap<>();
    private final List<Node> resins = new ArrayList<>();
    private final List<Node> pots = new ArrayList<>();

    Laminating(Spec spec, Skin skin, double measuredArea, Ledger ledger) {
        this.measuredArea = measuredArea;
        this.spec = spec;
        this.skin = skin;
        this.resin = skin.schedule().resin();
        this.ledger = ledger;
        this.lap = ledger.given(skin.lap());
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
        MatOrder order = new MatOrder(spec, area, measuredArea, ledger);
        CutList.of(measured.layings()).forEach(order::write);
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
        Node laid = ledger.step("mat laid " + words, AREA)
                .sum("sum over the fields", laying.fields().stream().map(field -> laid(mat, field)).toList()).source("sum");
        Node mass = mass(mat, laid, area, words);
        Node perArea = perArea(mat, laying.first());
        Node wetting = wetting(mat, laying.first(), mass, area, words);
        String id = "skin.laying." + number;
        Node each = ledger.quantity(id + ".pot", "Largest pot, " + words, MASS)
                .from("least of pot limit and lay rate x persons x resin per area x working time",
                        List.of(ledger.given(MatFacts.pot(resin)), ledger.given(MatFacts.layRate(mat)),
                                ledger.given(spec.shop().persons()), perArea, working),
                        v -> Math.min(v[0], v[1] * v[2] * v[3] * v[4]))
                .source("a pot is laid before it stiffens");
        Node resinOfPly = ledger.quantity(id + ".resin", "Resin of a ply, " + words, MASS).same(wetting).source("as above");
        Node count = ledger.quantity(id + ".pots", "Pots of a ply, " + words, RATIO)
                .from(laying.first() ? "1 + (resin - half a pot) / pot" : "resin / pot", List.of(resinOfPly, each),
                        v -> Math.max(1, v[0] / v[1] + (laying.first() ? 0.5 : 0)))
                .roundedUp().source(laying.first() ? "the first pot is half of one, until the cure is known" : "common practice");
        for (int ply = 0; ply < laying.count(); ply++) {
            masses.computeIfAbsent(mat.name(), name -> new ArrayList<>()).add(mass);
            resins.add(resinOfPly);
            pots.add(count);
        }
    }

    /** The mat of a ply; the fields were measured at the likely shrink, and grow with the plug's surface. */
    private Node mass(Mat mat, Node laid, Node area, String words) {
        var entry = ledger.step("a ply of mat " + words, MASS);
        if (!spec.body().shrink().ranged())
            return entry.from("mat laid x areal mass", List.of(laid, ledger.given(mat.areal())), v -> v[0] * v[1]).source("closed form");
        return entry.from("mat laid x areal mass x surface / surface as measured", List.of(laid, ledger.given(mat.areal()), area),
                v -> v[0] * v[1] * v[2] / measuredArea).source("closed form");
    }

    /** Mat laid over a field, laps counted. */
    private Node laid(Mat mat, SkinMeasures.Field field) {
        Node surface = ledger.measured("surface, " + field.words(), AREA, Places.measured(field.area(), "moulded patches"));
        Node length = ledger.measured("length over the surface, " + field.words(), LENGTH,
                Places.exact(field.length(), "surface over girth"));
        Node girth = ledger.measured("girth to cover, " + field.words(), LENGTH,
                Places.exact(field.runs().total(), "moulded girth where the field is widest, both sides"));
        Node pieces = ledger.step("pieces across, " + field.words(), RATIO)
                .from(field.runs().closed() ? "G / (W - lap), rounded up" : "(G - lap) / (W - lap), rounded up, for each run of the girth",
                        List.of(girth, ledger.given(MatFacts.rollWidth(mat)), lap),
                        v -> field.runs().pieces(v[1], Math.min(v[2], WIDEST_LAP * v[1])))
                .source("n widths less n - 1 laps cover the girth");
        return ledger.step("mat laid, " + field.words(), AREA)
                .from("surface + lap x length x laps across + lap x girth", List.of(surface, length, pieces, lap, girth),
                        v -> v[0] + v[3] * v[1] * field.runs().laps((int) Math.rint(v[2])) + v[3] * v[4])
                .source("pieces lap each other sideways and the next field");
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
