package mouldwright.plan.stage;

import static mouldwright.units.Dimension.DENSITY;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.FillDefaults;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Workshop;
import mouldwright.process.MixRatio;
import mouldwright.process.Pour;
import mouldwright.process.YieldTable;

/** How a foam behaves in this shop, written in a ledger: its yield, what a volume takes, and how it is told off. */
final class FoamMix {

    /** A pot smaller than this is not worth mixing, kg. */
    static final double LEAST_POT = 0.05;

    private final Ledger ledger;
    private final Foam foam;
    private final Node density;
    private final Node yield;
    private final Optional<Node> mixed;
    private final Node shareOfA;
    private final Node pot;

    /** As planned, with the share of the yield that practice reaches. */
    FoamMix(Ledger ledger, Foam foam, Workshop shop) {
        this(ledger, foam, shop, ledger.given(FillDefaults.yieldPractice()));
    }

    /** With the share of the yield that this job's pours have reached.
     *  @param practice share of the supplier's yield */
    FoamMix(Ledger ledger, Foam foam, Workshop shop, Node practice) {
        this.ledger = ledger;
        this.foam = foam;
        this.density = ledger.given(foam.density());
        this.yield = yieldIn(shop, practice);
        this.mixed = mixedDensity();
        this.shareOfA = shareOfA();
        this.pot = ledger.step("largest pot", MASS)
                .from("least of pot limit and (cream time - mixing time) x pouring rate",
                        List.of(ledger.given(FoamFacts.cream(foam)), ledger.given(FoamFacts.pot(foam)), ledger.given(FillDefaults.mixingTime()),
                                ledger.given(FillDefaults.pouringRate())),
                        v -> Math.max(Math.min(LEAST_POT, v[1]), Pour.largestPot(v[0], v[1], v[2], v[3])))
                .source("mixing and pouring must end within cream time");
    }

    private Node yieldIn(Workshop shop, Node practice) {
        Node temperature = ledger.given(shop.temperature());
        if (foam.yield().isEmpty())
            return ledger.step("yield", RATIO).from("all of the expansion x share reached in practice",
                    List.of(ledger.given(FillDefaults.fullYield()), practice), v -> v[0] * v[1]).source("no yield table is stated");
        YieldTable table = table(foam);
        List<Node> inputs = new ArrayList<>(List.of(temperature, practice));
        for (Foam.YieldRow row : foam.yield())
            inputs.add(ledger.given(Given.of("yield at " + row.temperature() + " degC", RATIO, row.share(), row.origin())));
        return ledger.step("yield", RATIO)
                .from("yield table at shop temperature x share reached in practice", inputs, v -> table.at(v[0]).value() * v[1])
                .source("the supplier's table, straight lines between its rows; practice never exceeds it");
    }

    static YieldTable table(Foam foam) {
        return new YieldTable(foam.yield().stream().map(row -> new YieldTable.Row(row.temperature(), row.share())).toList());
    }

    private Optional<Node> mixedDensity() {
        if (!FoamFacts.liquidKnown(foam))
            return Optional.empty();
        MixRatio ratio = ratio();
        String words = ratio.basis() == MixRatio.Basis.WEIGHT ? "(a + b) / (a / density of A + b / density of B)"
                : "(a x density of A + b x density of B) / (a + b)";
        return Optional.of(ledger.step("mixed density", DENSITY)
                .from(words, withParts(ratioNodes()), v -> ratio.mixedDensity(new MixRatio.Densities(v[2], v[3])))
                .source("mass balance; no change of volume on mixing"));
    }

    private Node shareOfA() {
        MixRatio ratio = ratio();
        boolean weighed = ratio.basis() == MixRatio.Basis.WEIGHT || !FoamFacts.liquidKnown(foam);
        if (weighed)
            return ledger.step("share of A by weight", RATIO).from("a / (a + b)", ratioNodes(), v -> v[0] / (v[0] + v[1]))
                    .source(ratio.basis() == MixRatio.Basis.WEIGHT ? "mixed by weight"
                            : "mixed by volume; densities of A and B not stated, so taken as equal");
        return ledger.step("share of A by weight", RATIO)
                .from("a x density of A / (a x density of A + b x density of B)", withParts(ratioNodes()),
                        v -> ratio.massShareOfA(new MixRatio.Densities(v[2], v[3])))
                .source("mixed by volume");
    }

    private MixRatio ratio() {
        Foam.Ratio stated = FoamFacts.ratio(foam);
        return new MixRatio(stated.a(), stated.b(), stated.byVolume() ? MixRatio.Basis.VOLUME : MixRatio.Basis.WEIGHT);
    }

    private List<Node> ratioNodes() {
        Foam.Ratio ratio = FoamFacts.ratio(foam);
        String basis = ratio.byVolume() ? " by volume" : " by weight";
        return List.of(ledger.given(Given.of("parts of A" + basis, RATIO, ratio.a(), ratio.origin())),
                ledger.given(Given.of("parts of B" + basis, RATIO, ratio.b(), ratio.origin())));
    }

    private List<Node> withParts(List<Node> nodes) {
        List<Node> all = new ArrayList<>(nodes);
        all.add(ledger.given(foam.partA().orElseThrow()));
        all.add(ledger.given(foam.partB().orElseThrow()));
        return all;
    }

    /** Mass that fills a volume. */
    Node mass(Ledger.Entry entry, Node volume) {
        return entry.from("cavity x density / yield", List.of(volume, density, yield), v -> mouldwright.process.Foam.mass(v[0], v[1], v[2]))
                .source("definition of free-rise density, divided by the share of the expansion reached");
    }

    /** Liquid that fills a volume. */
    Node liquid(Ledger.Entry entry, Node volume, Node mass) {
        if (mixed.isPresent())
            return entry.from("mass / mixed density", List.of(mass, mixed.get()), v -> mouldwright.process.Foam.liquidOfMass(v[0], v[1])).source("closed form");
        return entry.from("cavity / (expansion x yield)", List.of(volume, ledger.given(FoamFacts.expansion(foam)), yield),
                v -> mouldwright.process.Foam.liquidByExpansion(v[0], v[1], v[2])).source("expansion as the supplier states it; common practice about 30");
    }

    /** Part A of a mass. */
    Node partA(Ledger.Entry entry, Node mass) {
        return entry.from("mass x share of A", List.of(mass, shareOfA), v -> v[0] * v[1]).source("mass balance");
    }

    /** Part B of a mass. */
    Node partB(Ledger.Entry entry, Node mass) {
        return entry.from("mass x (1 - share of A)", List.of(mass, shareOfA), v -> v[0] * (1 - v[1])).source("mass balance");
    }

    /** Pots a lift is mixed in. */
    Node pots(Ledger.Entry entry, Node mass) {
        return entry.from("mass / largest pot", List.of(mass, pot), v -> v[0] / v[1]).roundedUp()
                .source("pots are counted lift by lift; one mixer pours one pot per rise");
    }

    /** Density of the foam as it stands. */
    Node inPlace(Ledger.Entry entry) {
        return entry.from("density / yield", List.of(density, yield), v -> mouldwright.process.Foam.densityInPlace(v[0], v[1]))
                .source("a foam that rose less is denser");
    }
}
