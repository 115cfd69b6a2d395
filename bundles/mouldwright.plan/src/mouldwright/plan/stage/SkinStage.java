package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.ledger.Ground;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;

/** The skin: its thickness, its coverage, mat, resin, catalyst and pots. */
final class SkinStage implements Stage {

    @Override public String name() {
        return "skin";
    }

    @Override public boolean wantedBy(Spec spec) {
        return spec.skin().isPresent();
    }

    /** Looks at the figures of mats and resin, which the build-up rests on. */
    static void guard(Skin skin, Guard guard) {
        Resin resin = skin.schedule().resin();
        guard.positive(resin.density()).positive(resin.cured());
        for (Mat mat : mats(skin))
            guard.positive(mat.areal()).fraction(mat.glass()).positive(mat.fibre());
    }

    static List<Mat> mats(Skin skin) {
        List<Mat> mats = new ArrayList<>();
        skin.schedule().plies().forEach(ply -> mats.add(ply.mat()));
        for (Skin.Rule rule : skin.rules())
            if (rule instanceof Skin.Rule.AddPlies add)
                mats.add(add.mat());
        return mats.stream().distinct().toList();
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) {
        Skin skin = spec.skin().orElseThrow();
        if (makesSense(spec, skin, measurements))
            measurements.find(ShapeMeasures.class).ifPresent(shape -> {
                new ResinCure(skin, spec.shop().temperature()).report(measurements);
                SkinMeasures measured = new SkinMeasuring(spec, shape, measurements, cancelled).measure();
                if (canBeCut(skin, measured.layings(), measurements))
                    measurements.keep(measured);
            });
    }

    /** Whether the pieces of a laminate can be counted and come off a roll; what does not is reported. */
    static boolean canBeCut(Skin skin, List<SkinMeasures.Laying> layings, Measurements measurements) {
        boolean clear = true;
        for (CutList list : CutList.of(layings)) {
            CutList.Cloth likely = CutList.Cloth.likely(list.mat(), skin);
            CutList.Cloth worst = new CutList.Cloth(MatFacts.rollWidth(list.mat()).low(), likely.length(), skin.lap().high(), 1);
            double pieces = list.count(worst);
            if (pieces > CutList.MOST_PIECES) {
                clear = false;
                measurements.report(PlanFault.of(PlanFault.Kind.TOO_MANY_PIECES, skin.origin(), "mat " + list.mat().name(),
                        list.mat().name() + " would be cut in more pieces than anybody lays", "look at the roll, the lap and the plies")
                        .at(pieces, RATIO).against(CutList.MOST_PIECES, RATIO));
            } else if (list.longest(likely) > likely.length())
                measurements.report(PlanFault.of(PlanFault.Kind.PIECE_TOO_LONG, skin.origin(), "mat " + list.mat().name(),
                        "a piece of " + list.mat().name() + " is longer than its roll", "divide the bay with another station, or state a longer roll")
                        .at(list.longest(likely), LENGTH).against(likely.length(), LENGTH));
        }
        return clear;
    }

    /** Whether the figures of a laminate make sense; what does not is reported. */
    static boolean makesSense(Spec spec, Skin skin, Measurements measurements) {
        Resin resin = skin.schedule().resin();
        Guard guard = new Guard(measurements).sizeOrNone(skin.lap()).positive(skin.gel()).notNegative(skin.onFoam())
                .positive(resin.pot()).above(spec.shop().persons(), 0);
        resin.hardener().ifPresent(hardener -> guard.positive(hardener.density()));
        boolean clear = ResinCure.readable(resin, measurements);
        for (Mat mat : mats(skin)) {
            guard.positive(mat.lay()).positive(mat.rollLength());
            double width = MatFacts.rollWidth(mat).likely();
            if (!(width > skin.lap().likely())) {
                clear = false;
                measurements.report(PlanFault.of(PlanFault.Kind.ROLL_TOO_NARROW, skin.lap().origin(), "mat " + mat.name(),
                        "a roll no wider than its lap covers nothing", "state a smaller lap or a wider roll")
                        .at(width, LENGTH).against(skin.lap().likely(), LENGTH));
            }
        }
        if (skin.schedule().plies().isEmpty() && skin.rules().stream().noneMatch(Skin.Rule.AddPlies.class::isInstance))
            measurements.report(PlanFault.of(PlanFault.Kind.NO_PLY, skin.origin(), "schedule " + skin.schedule().name(),
                    skin.schedule().name() + " lays no ply", "add a ply to the schedule"));
        return clear && guard.clear();
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
        measurements.find(SkinMeasures.class).ifPresent(measured -> {
            Skin skin = spec.skin().orElseThrow();
            thickness(skin.schedule(), ledger);
            Node part = ledger.find("shape.area.moulded").orElseThrow();
            Node area = ledger.quantity("skin.area", "Skin, moulded surface of the plug", AREA)
                    .from("moulded surface / (1 - shrink)^2", List.of(part, ledger.given(spec.body().shrink())),
                            v -> v[0] / ((1 - v[1]) * (1 - v[1]))).source("areas grow as the square of the plug's scale");
            List<Ground> plies = new Grounds(spec).plies();
            Growth growth = new Growth(spec.body().shrink(), ledger);
            growth.quantity("skin.uncovered.area", "Moulded surface without any ply", AREA,
                    Places.measured(measured.uncovered(), "cells between the edges of all ply rules").on(plies));
            growth.quantity("skin.short.area", "Moulded surface with fewer plies than asked for", AREA,
                    Places.measured(measured.lacking(), "cells between the edges of all ply rules").on(plies));
            new Laminating(spec, skin, "skin", "Skin", measured.area().value(), ledger).write(measured.layings(), area);
        });
    }

    private static void thickness(Schedule schedule, Ledger ledger) {
        ledger.quantity("skin.thickness", "Skin, cured thickness", LENGTH).sum("sum over the plies laid everywhere", BuildUps.plies(schedule, ledger))
                .source("laps are torn and sanded flush, so not counted");
    }

    @Override public void tasks(Spec spec, Measurements measurements, Ledger ledger, TaskBook tasks) {
        measurements.find(SkinMeasures.class).ifPresent(measured -> SkinWork.tasks(spec, measured, ledger, tasks));
    }

    @Override public void orders(Spec spec, Measurements measurements, Ledger ledger, OrderBook orders) {
        measurements.find(SkinMeasures.class).ifPresent(measured -> SkinWork.orders(spec, ledger, orders));
    }

    @Override public void list(Spec spec, Measurements measurements, Reckoning reckoning, Lists lists) {
        measurements.find(SkinMeasures.class).ifPresent(measured -> {
            SkinPots.list("skin", spec.skin().orElseThrow().schedule().resin(), measured.layings(), reckoning, lists);
            CutList.list("skin", spec.skin().orElseThrow(), measured.layings(), lists);
        });
    }
}
