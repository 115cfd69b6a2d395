package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREAL_MASS;
import static mouldwright.units.Dimension.ANGLE;
import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import mouldwright.plan.Assumption;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Measurement;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Sheet;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Stiffener;

/** The mould: how its parts leave the plug, where it is parted, what it is laid up from, and what it weighs. */
final class MouldStage implements Stage {

    private static final String SAMPLED = "asin(n . p) over the lofted patches, moulded ends as flat faces";

    @Override public String name() {
        return "mould";
    }

    @Override public boolean wantedBy(Spec spec) {
        return spec.mould().isPresent();
    }

    /** The mould's laminate in the words of a skin: no ply of it lies on foam. */
    static Skin laminate(Spec spec) {
        Mould mould = spec.mould().orElseThrow();
        Given none = Given.of("extra resin on foam", AREAL_MASS, 0, new Origin.Assumed("a mould is laid on gel coat"));
        return new Skin(mould.schedule(), Defaults.mouldLap(), spec.skin().map(Skin::gel).orElseGet(Defaults::gel), none, List.of(), mould.origin());
    }

    /** Coats of a schedule, each for itself. */
    static List<Finish.Coats> coats(Schedule schedule) {
        return schedule.layers().stream().filter(Schedule.Layer.Coat.class::isInstance).map(Schedule.Layer.Coat.class::cast)
                .map(coat -> new Finish.Coats(1, coat.coating(), coat.origin())).toList();
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) {
        Mould mould = spec.mould().orElseThrow();
        if (makesSense(spec, mould, measurements))
            measurements.find(ShapeMeasures.class).ifPresent(shape -> {
                if (mould.parts().isEmpty())
                    measurements.assume(Assumption.choice("parts of the mould", "one piece pulled up", (Origin.Assumed) Defaults.onePiece().origin()));
                measurements.assume(Assumption.of(Defaults.mouldPiece()));
                Measurements cure = new Measurements();
                new ResinCure(laminate(spec), spec.shop().temperature()).report(cure);
                pass(cure, measurements);
                MouldMeasures measured = new MouldMeasuring(spec, shape, cancelled).measure();
                CoatFacts.outsideGuide(coats(mould.schedule()), spec.shop().temperature(), measurements);
                if (SkinStage.canBeCut(laminate(spec), measured.layings(), measurements) & SkinStage.canBeCut(laminate(spec), StiffenerWriting.layings(measured), measurements))
                    measurements.keep(measured);
            });
    }

    private static boolean makesSense(Spec spec, Mould mould, Measurements measurements) {
        Measurements own = new Measurements();
        Guard guard = new Guard(own).below(mould.draft(), Math.PI / 2).size(mould.flange()).notNegative(mould.hold());
        spec.body().runOut().ifPresent(guard::sizeOrNone);
        spec.body().trim().ifPresent(guard::sizeOrNone);
        spec.body().runOut().ifPresent(runOut -> spec.body().trim().ifPresent(trim -> guard.atMost(trim, runOut)));
        Skin laminate = laminate(spec);
        SkinStage.guard(laminate, guard);
        spec.part().ifPresent(part -> SkinStage.guard(new Skin(part, laminate.lap(), laminate.gel(), laminate.onFoam(), List.of(), part.origin()), guard));
        CoatFacts.guard(coats(mould.schedule()), guard);
        mould.stiffeners().forEach(stiffener -> stiffener(stiffener, guard));
        for (Schedule.Layer layer : mould.schedule().layers())
            if (layer instanceof Schedule.Layer.Wait wait)
                guard.notNegative(wait.time());
        boolean sound = SkinStage.makesSense(spec, laminate, own) && guard.clear();
        boolean named = MouldParts.ownNames(mould, own);
        pass(own, measurements);
        return sound && named;
    }

    private static void stiffener(Stiffener stiffener, Guard guard) {
        guard.size(stiffener.width()).size(stiffener.height()).sizeOrNone(stiffener.lap()).notNegative(stiffener.cured());
        stiffener.plies().forEach(mat -> guard.positive(mat.areal()).fraction(mat.glass()).positive(mat.fibre()).positive(mat.lay()).positive(mat.rollLength()));
        switch (stiffener.pitch()) {
            case Stiffener.Pitch.Every(Given spacing) -> guard.size(spacing);
            case Stiffener.Pitch.Count(Given count) -> guard.below(count, StiffenerMeasuring.MOST + 1);
        }
        if (stiffener.core() instanceof Stiffener.Core.Cut(Sheet sheet))
            guard.size(sheet.thickness()).size(sheet.width()).size(sheet.length()).positive(sheet.density());
    }

    /** Hands faults on that the skin has not met already: both are often laid up with one resin. */
    private static void pass(Measurements from, Measurements to) {
        from.faults().stream().filter(fault -> !to.faults().contains(fault)).forEach(to::report);
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
        measurements.find(MouldMeasures.class).ifPresent(measured -> {
            Mould mould = spec.mould().orElseThrow();
            Node face = face(spec, measured, ledger);
            draft(mould, measured, ledger);
            if (measured.pieces().size() > 1)
                measured.pieces().forEach(piece -> piece(mould, piece, ledger));
            List<Node> edging = new MouldEdging(spec, measured, ledger).write();
            thickness(spec, ledger);
            List<Node> faces = new ArrayList<>(List.of(face));
            faces.addAll(edging);
            Node laid = ledger.step("surface laid up", AREA).sum("face + flanges + run-out", faces).source("flanges are laid up with the face");
            List<Finish.Coats> coats = coats(mould.schedule());
            new CoatWriting(ledger, "mould.coat", "Mould", laid, spec.shop().temperature()).write(coats);
            CoatWriting.wait(ledger, "mould.coat.wait", "Mould, waits between gel coats", coats);
            new Laminating(spec, laminate(spec), "mould", "Mould", measured.area(), ledger).write(measured.layings(), face);
            Optional<Node> stiffeners = new StiffenerWriting(spec, measured, ledger).write();
            mass(mould, coats, laid, stiffeners, ledger);
            BoardWriting.write(measured.boards(), ledger);
            waits(mould, ledger);
        });
    }

    private static Node face(Spec spec, MouldMeasures measured, Ledger ledger) {
        List<Node> parts = new ArrayList<>();
        for (MouldMeasures.Piece piece : measured.pieces())
            parts.add(ledger.measured("face of " + piece.words(), AREA,
                    new Measurement(piece.area(), piece.lofted().errorEstimate(), "lofted patches and shares of moulded ends, on the plug")));
        Given shrink = spec.body().shrink();
        if (!shrink.ranged())
            return ledger.quantity("mould.area", "Mould, face", AREA).sum("sum over the parts", parts).source("sum");
        Node all = ledger.step("face at the likely shrink", AREA).sum("sum over the parts", parts).source("sum");
        double likely = 1 - shrink.likely();
        return ledger.quantity("mould.area", "Mould, face", AREA).from("face as measured x ((1 - likely shrink) / (1 - shrink))^2",
                List.of(all, ledger.given(shrink)), v -> v[0] * likely * likely / ((1 - v[1]) * (1 - v[1])))
                .source("areas grow as the square of the plug's scale");
    }

    private static void draft(Mould mould, MouldMeasures measured, Ledger ledger) {
        measured.pieces().stream().map(MouldMeasures.Piece::least).flatMap(Optional::stream).min(Double::compare)
                .ifPresent(least -> ledger.quantity("mould.draft.min", "Least draft away from the parting line", ANGLE)
                        .measured(Places.exact(least, SAMPLED)));
        listed(ledger, "mould.draft.low.area", "Draft too low away from that line", measured, piece -> piece.low(mould.draft().likely()));
        listed(ledger, "mould.draft.touching.area", "Low draft in a strip at that line", measured, piece -> piece.draft().lowAtParting().value());
        ledger.quantity("mould.draft.touching.width", "Widest place of that strip", LENGTH).measured(Places.exact(
                measured.pieces().stream().mapToDouble(piece -> piece.draft().stripWidth()).max().orElse(0), SAMPLED));
        listed(ledger, "mould.undercut.area", "Undercut", measured, MouldMeasures.Piece::undercut);
        ledger.quantity("mould.uncovered.area", "Face that no half covers", AREA)
                .measured(Places.measured(measured.uncovered(), "the parts' reaches taken from the moulded surface"));
    }

    private static void listed(Ledger ledger, String id, String label, MouldMeasures measured, ToDoubleFunction<MouldMeasures.Piece> of) {
        ledger.quantity(id, label, AREA).measured(Places.exact(measured.pieces().stream().mapToDouble(of).sum(), SAMPLED));
    }

    private static void piece(Mould mould, MouldMeasures.Piece piece, Ledger ledger) {
        String id = "mould.piece." + piece.part().name().orElse("whole");
        String label = ", " + piece.words();
        ledger.quantity(id + ".area", "Face" + label, AREA).measured(Places.exact(piece.area(), "lofted patches and shares of moulded ends"));
        piece.least().ifPresent(least -> ledger.quantity(id + ".draft.min", "Least draft" + label, ANGLE).measured(Places.exact(least, SAMPLED)));
        ledger.quantity(id + ".draft.low", "Draft too low" + label, AREA).measured(Places.exact(piece.low(mould.draft().likely()), SAMPLED));
        ledger.quantity(id + ".undercut", "Undercut" + label, AREA).measured(Places.exact(piece.undercut(), SAMPLED));
        ledger.quantity(id + ".edge", "Edge" + label, LENGTH).measured(Places.exact(piece.parting() + piece.open(), "edges traced along the plug"));
    }

    private static void thickness(Spec spec, Ledger ledger) {
        Node mould = ledger.quantity("mould.thickness", "Mould, cured laminate, no gel coat", LENGTH)
                .sum("sum over the plies", BuildUps.plies(spec.mould().orElseThrow().schedule(), ledger)).source("laps are not counted");
        spec.part().filter(part -> !part.plies().isEmpty()).ifPresent(part -> {
            Node own = ledger.quantity("mould.part.thickness", "Part, cured laminate, no gel coat", LENGTH)
                    .sum("sum over the plies", BuildUps.plies(part, ledger)).source("laps are not counted");
            ledger.quantity("mould.thickness.ratio", "Mould to part, twice wanted", RATIO)
                    .from("laminate of the mould / laminate of the part", List.of(mould, own), v -> v[0] / v[1])
                    .source("at least twice that of the part: Practical Action, Fibreglass boat building");
        });
    }

    private static void mass(Mould mould, List<Finish.Coats> coats, Node laid, Optional<Node> stiffeners, Ledger ledger) {
        List<Node> areal = mould.schedule().plies().stream().map(ply -> ledger.step("ply of " + ply.mat().name(), AREAL_MASS)
                .from("w / glass share", List.of(ledger.given(ply.mat().areal()), ledger.given(ply.mat().glass())), v -> v[0] / v[1])
                .source("mass balance")).toList();
        ledger.quantity("mould.laminate.areal", "Mould, laminate by the area", AREAL_MASS).sum("sum over the plies", areal).source("laps are not counted");
        List<Node> parts = new ArrayList<>();
        for (Finish.Coats coat : coats)
            coat.coating().density().ifPresent(density -> {
                Given film = coat.coating().dry().orElseGet(() -> CoatFacts.wet(coat.coating()));
                parts.add(ledger.step("cured coat of " + coat.coating().name(), MASS).from("surface laid up x film x density",
                        List.of(laid, ledger.given(film), ledger.given(density)), v -> v[0] * v[1] * v[2]).source("closed form"));
            });
        Ledger.Entry entry = ledger.quantity("mould.gelcoat.mass", "Mould, gel coat in place", MASS);
        Node gelCoat = parts.isEmpty() ? entry.measured(Places.exact(0, "the schedule states no coat with a density"))
                : entry.sum("sum over the coats", parts).source("sum");
        List<Node> all = new ArrayList<>(List.of(gelCoat, ledger.find("mould.resin.mass").orElseThrow()));
        mould.schedule().plies().stream().map(ply -> ply.mat().name()).distinct()
                .forEach(mat -> all.add(ledger.find("mould.mat." + mat + ".mass").orElseThrow()));
        stiffeners.ifPresent(all::add);
        ledger.quantity("mould.mass", "Mould, mass with flanges", MASS).sum("gel coat + resin + mats, laps, flanges and stiffeners counted", all)
                .source("nothing is lost in the cure; weigh before lifting");
    }

    private static void waits(Mould mould, Ledger ledger) {
        List<Node> waits = mould.schedule().layers().stream().filter(Schedule.Layer.Wait.class::isInstance)
                .map(layer -> ledger.given(((Schedule.Layer.Wait) layer).time())).toList();
        if (!waits.isEmpty())
            ledger.quantity("mould.wait", "Mould, waits of the schedule", TIME).sum("sum over the waits", waits).source("on the calendar, not labour");
        ledger.quantity("mould.hold", "Mould, hold on the plug", TIME).same(ledger.given(mould.hold())).source("on the calendar, not labour");
    }

    @Override public void tasks(Spec spec, Measurements measurements, Ledger ledger, TaskBook tasks) {
        measurements.find(MouldMeasures.class).ifPresent(measured -> new MouldWork(spec, measured, ledger).tasks(tasks));
    }

    @Override public void orders(Spec spec, Measurements measurements, Ledger ledger, OrderBook orders) {
        measurements.find(MouldMeasures.class).ifPresent(measured -> new MouldWork(spec, measured, ledger).orders(orders));
    }

    @Override public void list(Spec spec, Measurements measurements, Reckoning reckoning, Lists lists) {
        measurements.find(MouldMeasures.class).ifPresent(measured -> {
            Resin resin = spec.mould().orElseThrow().schedule().resin();
            List<SkinMeasures.Laying> stiffening = StiffenerWriting.layings(measured);
            SkinPots.list("mould", resin, measured.layings(), reckoning, lists);
            CutList.list("mould", laminate(spec), measured.layings(), lists);
            if (reckoning.find(StiffenerWriting.ID + ".mass").isPresent()) {
                SkinPots.list(StiffenerWriting.ID, resin, stiffening, reckoning, lists);
                CutList.list(StiffenerWriting.ID, laminate(spec), stiffening, lists);
            }
        });
    }
}
