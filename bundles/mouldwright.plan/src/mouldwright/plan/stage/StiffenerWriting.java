package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.Hazard;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Hardener;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.MouldDefaults;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Sheet;
import mouldwright.plan.spec.ShopDefaults;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Stiffener;
import mouldwright.process.Air;

/** Writes what the stiffeners of a mould take, weigh and ask of the crew. Their mat is laid in strips with the mould's resin. */
final class StiffenerWriting {

    /** The ids of their figures begin with this. */
    static final String ID = "mould.stiffener";

    private final Spec spec;
    private final Mould mould;
    private final MouldMeasures measured;
    private final Ledger ledger;

    StiffenerWriting(Spec spec, MouldMeasures measured, Ledger ledger) {
        this.spec = spec;
        this.mould = spec.mould().orElseThrow();
        this.measured = measured;
        this.ledger = ledger;
    }

    /** All layings, kind by kind. */
    static List<SkinMeasures.Laying> layings(MouldMeasures measured) {
        return measured.stiffened().stream().flatMap(kind -> kind.layings().stream()).toList();
    }

    /** Writes lengths, laminate, cores and mass.
     *  @return their mass; empty where there are none */
    Optional<Node> write() {
        if (measured.stiffened().stream().allMatch(kind -> kind.ribs().isEmpty()))
            return Optional.empty();
        List<Node> lengths = new ArrayList<>();
        List<Node> strips = new ArrayList<>();
        for (int i = 0; i < measured.stiffened().size(); i++) {
            MouldMeasures.Stiffened kind = measured.stiffened().get(i);
            String own = ID + "." + (i + 1);
            ledger.quantity(own + ".count", "Stiffeners " + (i + 1) + ", " + words(kind.stated()), RATIO).measured(Places.exact(kind.ribs().size(), "no farther apart, and from the edges, than stated"));
            Node length = ledger.quantity(own + ".length", "Stiffeners " + (i + 1) + ", end to end", LENGTH)
                    .measured(Places.exact(kind.length(), "over the face of each part, round the girth or along the body"));
            lengths.add(length);
            strips.add(strip(kind.stated(), length));
        }
        ledger.quantity(ID + ".length", "Stiffeners, end to end", LENGTH).sum("sum over the kinds", lengths).source("sum");
        Node area = ledger.quantity(ID + ".area", "Stiffeners, surface of one ply", AREA).sum("sum over the kinds", strips).source("sum");
        double likely = measured.stiffened().stream().mapToDouble(kind -> StiffenerMeasuring.strip(kind.stated()) * kind.length()).sum();
        new Laminating(spec, MouldStage.laminate(spec), ID, "Stiffeners", likely, ledger).write(layings(measured), area);
        return Optional.of(mass(cores(lengths)));
    }

    private static String words(Stiffener stiffener) {
        return stiffener.run() == Stiffener.Run.ACROSS ? "across" : "along";
    }

    private Node strip(Stiffener stiffener, Node length) {
        return ledger.step("strip over the stiffeners", AREA).from("length x (width + 2 height + 2 lap)",
                List.of(length, ledger.given(stiffener.width()), ledger.given(stiffener.height()), ledger.given(stiffener.lap())),
                v -> v[0] * (v[1] + 2 * v[2] + 2 * v[3])).source("mat goes up, over and down the core, and on over the mould");
    }

    /** Mass of the cores that are cut from sheet; a hollow former weighs next to nothing. */
    private List<Node> cores(List<Node> lengths) {
        List<Node> masses = new ArrayList<>();
        for (int i = 0; i < lengths.size(); i++) {
            Stiffener stated = measured.stiffened().get(i).stated();
            if (!(stated.core() instanceof Stiffener.Core.Cut(Sheet sheet)))
                continue;
            Node cut = coreArea(stated, sheet, lengths.get(i));
            ledger.quantity(ID + "." + (i + 1) + ".sheets", "Stiffeners " + (i + 1) + ", sheets of " + sheet.name() + " for cores", RATIO)
                    .from("core on edge / (sheet width x sheet length x share used)", List.of(cut, ledger.given(sheet.width()), ledger.given(sheet.length()), ledger.given(MouldDefaults.coreUse())),
                            v -> v[0] / (v[1] * v[2] * v[3])).source("area over what a sheet yields");
            masses.add(ledger.quantity(ID + "." + (i + 1) + ".core.mass", "Stiffeners " + (i + 1) + ", cores", MASS)
                    .from("core on edge x thickness x density", List.of(cut, ledger.given(sheet.thickness()), ledger.given(sheet.density())), v -> v[0] * v[1] * v[2])
                    .source("closed form"));
        }
        return masses;
    }

    private Node coreArea(Stiffener stated, Sheet sheet, Node length) {
        return ledger.step("strips of " + sheet.name() + " on edge", AREA).from("length x height x (width / thickness, to the nearest strip)",
                List.of(length, ledger.given(stated.height()), ledger.given(stated.width()), ledger.given(sheet.thickness())),
                v -> v[0] * v[1] * Math.max(1, Math.rint(v[2] / v[3]))).source("so many strips side by side as make the width");
    }

    private Node mass(List<Node> cores) {
        List<Node> parts = new ArrayList<>(cores);
        parts.add(ledger.find(ID + ".resin.mass").orElseThrow());
        mats().forEach(mat -> parts.add(ledger.find(ID + ".mat." + mat.name() + ".mass").orElseThrow()));
        return ledger.quantity(ID + ".mass", "Stiffeners, mass", MASS).sum("cores + resin + mats", parts).source("hollow formers are left out; nothing is lost in the cure");
    }

    /** Every mat once. */
    private List<Mat> mats() {
        List<Mat> mats = new ArrayList<>();
        for (SkinMeasures.Laying laying : layings(measured))
            if (mats.stream().noneMatch(mat -> mat.name().equals(laying.mat().name())))
                mats.add(laying.mat());
        return mats;
    }

    /** What the laminate cures before stiffeners are laid: the longest that any kind asks for. */
    Node cured() {
        Given hard = mould.schedule().resin().hard().orElseGet(ShopDefaults::hard);
        List<Node> stated = mould.stiffeners().stream().map(one -> ledger.given(one.cured().orElse(hard))).distinct().toList();
        return ledger.step("cure before stiffeners", TIME).from("longest of the cures asked for", stated, v -> java.util.Arrays.stream(v).max().orElse(0))
                .source("laid on a green laminate, stiffeners show through its face");
    }

    /** Adds a task for each kind; what is left of the hold on the plug follows the last.
     *  @param cured as {@link #cured} writes it, before the first of them */
    void tasks(Node cured, TaskBook tasks) {
        Node hard = ledger.given(mould.schedule().resin().hard().orElseGet(ShopDefaults::hard));
        Node rest = ledger.step("rest of the hold on the plug", TIME).from("hold - cure before stiffeners, the stiffeners' own cure at least",
                List.of(ledger.given(mould.hold()), cured, hard), v -> Math.max(v[0] - v[1], v[2])).source("the mould is released when all of it is cured");
        int laying = 0;
        int last = lastKind();
        for (int i = 0; i < measured.stiffened().size(); i++) {
            MouldMeasures.Stiffened kind = measured.stiffened().get(i);
            int first = laying + 1;
            laying += kind.layings().size();
            if (!kind.ribs().isEmpty())
                tasks.addNext(task(i + 1, kind, first, i == last ? rest : hard));
        }
    }

    private int lastKind() {
        int last = 0;
        for (int i = 0; i < measured.stiffened().size(); i++)
            last = measured.stiffened().get(i).ribs().isEmpty() ? last : i;
        return last;
    }

    private Task task(int number, MouldMeasures.Stiffened kind, int firstLaying, Node wait) {
        Node length = ledger.find(ID + "." + number + ".length").orElseThrow();
        Node pot = ledger.given(spec.shop().rates().flatMap(Rates::pot).orElseGet(mouldwright.plan.spec.Defaults::potLabour));
        List<Node> labours = new ArrayList<>(List.of(ledger.step("fitting of cores and formers", TIME).from("length x fitting of a metre",
                List.of(length, ledger.given(MouldDefaults.stiffenerFitting())), v -> v[0] * v[1]).source("by rate")));
        List<Node> resins = new ArrayList<>();
        for (int k = 0; k < kind.layings().size(); k++) {
            SkinMeasures.Laying laying = kind.layings().get(k);
            int plies = laying.count();
            String id = ID + ".laying." + (firstLaying + k);
            Node area = strip(kind.stated(), length);
            labours.add(ledger.step("labour of a laying", TIME).from("plies x (surface / lay rate + pots x labour of a pot)",
                    List.of(area, ledger.given(MatFacts.layRate(laying.mat())), ledger.find(id + ".pots").orElseThrow(), pot),
                    v -> plies * (v[0] / v[1] + v[2] * v[3])).source("by rate"));
            resins.add(ledger.step("resin of a laying", MASS).from("plies x resin of a ply", List.of(ledger.find(id + ".resin").orElseThrow()), v -> plies * v[0]).source("sum"));
        }
        Resin resin = mould.schedule().resin();
        return Task.of("mould.stiffen." + number, "Fit and lay stiffeners " + number + ", " + kind.ribs().size() + " " + words(kind.stated()),
                ledger.step("labour of stiffeners", TIME).sum("fitting + laying", labours).source("by rate")).persons(4).wait(wait)
                .cautions(Hazard.STYRENE, Hazard.PEROXIDE, Hazard.DUST)
                .releases(Air.Application.RESIN_NOT_ATOMISED, ledger.step("resin of the stiffeners", MASS).sum("sum over the layings", resins).source("sum"),
                        ledger.given(resin.styrene().orElseGet(ShopDefaults::styrene)));
    }

    /** Writes mats, resin, catalyst, sheets and formers in the order list. */
    void orders(OrderBook orders) {
        if (ledger.find(ID + ".mass").isEmpty())
            return;
        mats().forEach(mat -> ledger.find(ID + ".mat." + mat.name() + ".length").ifPresent(length -> orders.need(mat, length)));
        Resin resin = mould.schedule().resin();
        ledger.find(ID + ".resin.mass").ifPresent(mass -> orders.need(resin, mass));
        Optional<Hardener> hardener = resin.hardener();
        ledger.find(ID + ".catalyst.mass").ifPresent(mass -> hardener.ifPresentOrElse(one -> orders.need(one, mass), () -> orders.need("catalyst for " + resin.name(), mass)));
        for (int i = 0; i < measured.stiffened().size(); i++) {
            Stiffener stated = measured.stiffened().get(i).stated();
            String own = ID + "." + (i + 1);
            switch (stated.core()) {
                case Stiffener.Core.Cut(Sheet sheet) -> ledger.find(own + ".sheets").ifPresent(sheets -> orders.need(sheet, sheets));
                case Stiffener.Core.Hollow hollow -> ledger.find(own + ".length").ifPresent(length -> orders.need("former for stiffeners", length));
            }
        }
    }
}
