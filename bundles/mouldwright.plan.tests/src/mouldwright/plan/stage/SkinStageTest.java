package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.quantity;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.PlanFault;
import mouldwright.plan.PotEntry;
import mouldwright.plan.ledger.Derivation;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Skin;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class SkinStageTest {

    private static final double SIDE = 2 * Math.PI * 0.3; // girth of the cylinder

    @Test void onePlyOf450GramsIsElevenTenthsOfAMillimetre() { // ISO 12215-5 at 1 : 2.5, 1.1133 mm
        assertThat(value(plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450())))), "skin.thickness"))
                .isCloseTo(0.0011133, within(5e-8));
    }

    @Test void sixPliesOf450GramsAreNearlySevenMillimetres() { // Practical Boat Owner, May 2018: six layers; 6.680 mm at 2.5 : 1
        var m = Specs.csm450();
        assertThat(value(plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(m, m, m, m, m, m)))), "skin.thickness"))
                .isCloseTo(0.006680, within(5e-7));
    }

    @Test void aKiloOfMatTakesTwoAndAHalfOfResin() { // Practical Action, Fibreglass boat building, and four others
        BuildPlan plan = plan(Specs.cylinder().skin(onFoam(Specs.skin(Specs.schedule(Specs.csm450())), 0)));
        assertThat(value(plan, "skin.resin.mass")).isCloseTo(2.5 * value(plan, "skin.mat.Csm450.mass"), Percentage.withPercentage(1e-9));
    }

    @Test void aLayerOf450GramsTakesElevenHundredGramsASquareMetre() { // CFS fibreglass guide, material spread rates
        Skin skin = onFoam(Specs.skin(Specs.schedule(Specs.mat("Csm450", 0.45, 0.2903))), 0);
        BuildPlan plan = plan(Specs.cylinder().skin(skin));
        double laid = value(plan, "skin.mat.Csm450.mass") / 0.45;
        assertThat(value(plan, "skin.resin.mass") / laid).isCloseTo(1.1, within(0.001));
    }

    @Test void onlyTheFirstPlyDrinksIntoTheFoam() { // 0.35 kg/m2, 0.20 to 0.50, assumed
        BuildPlan wet = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450(), Specs.csm450()))));
        BuildPlan dry = plan(Specs.cylinder().skin(onFoam(Specs.skin(Specs.schedule(Specs.csm450(), Specs.csm450())), 0)));
        double area = value(wet, "skin.area");
        assertThat(value(wet, "skin.resin.mass") - value(dry, "skin.resin.mass")).isCloseTo(0.35 * area, within(1e-9));
        assertThat(quantity(wet, "skin.resin.mass").high() - value(dry, "skin.resin.mass")).isCloseTo(0.50 * area, within(1e-9));
        assertThat(quantity(wet, "skin.resin.mass").low() - value(dry, "skin.resin.mass")).isCloseTo(0.20 * area, within(1e-9));
    }

    @Test void matIsLaidWithItsLaps() {
        // closed form: girth 1.885 m on rolls of 1.25 m takes two pieces round, hence two laps of 50 mm along each of three
        // bays of 400 mm, and one lap round at each bay
        BuildPlan plan = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        double laid = SIDE * 1.2 + 3 * (2 * 0.05 * 0.4 + 0.05 * SIDE);
        assertThat(value(plan, "skin.mat.Csm450.mass")).isCloseTo(0.45 * laid, Percentage.withPercentage(0.1));
        assertThat(value(plan, "skin.mat.Csm450.length")).isCloseTo(3 * 2 * 0.45, Percentage.withPercentage(0.1));
    }

    @Test void aBareBottomLeavesOneRunAcrossTheTop() {
        // closed form: half the girth is 0.9425 m, less than a roll: one piece and no lap along
        BuildPlan plan = plan(Specs.cylinder().bare(0, 0.5).skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        assertThat(value(plan, "skin.mat.Csm450.length")).isCloseTo(3 * 0.45, Percentage.withPercentage(0.1));
        assertThat(value(plan, "skin.mat.Csm450.mass")).isCloseTo(0.45 * (SIDE / 2 * 1.2 + 3 * 0.05 * SIDE / 2), Percentage.withPercentage(0.1));
    }

    @Test void theSkinCoversThePlugWhichIsLargerByTheShrink() { // closed form: 1.003009 squared
        BuildPlan plan = plan(Specs.cylinder().shrink(0.003).skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        assertThat(value(plan, "skin.area")).isCloseTo(SIDE * 1.2 / (0.997 * 0.997), Percentage.withPercentage(0.01));
    }

    @Test void aSkinOfNoPliesLeavesAllUncovered() {
        BuildPlan plan = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule())));
        assertThat(value(plan, "skin.uncovered.area")).isCloseTo(SIDE * 1.2, Percentage.withPercentage(0.01));
        assertThat(plan.faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.NO_PLY);
    }

    @Test void aBayThatAsksForTwoPliesAndHasOneIsShort() { // closed form: one bay of 400 mm
        BuildPlan plan = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450()), Specs.require("S2", "S3", Specs.whole(), 2))));
        assertThat(value(plan, "skin.short.area")).isCloseTo(SIDE * 0.4, Percentage.withPercentage(0.01));
        assertThat(value(plan, "skin.uncovered.area")).isZero();
    }

    @Test void anAddedPlyOverPartOfTheGirthLeavesTheRestShort() { // closed form: the upper 60 % of one bay
        BuildPlan plan = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450()), Specs.require("S2", "S3", Specs.whole(), 2),
                Specs.add("S1", "S4", Specs.girth(0, 0.4), Specs.csm450(), 1))));
        assertThat(value(plan, "skin.short.area")).isCloseTo(0.6 * SIDE * 0.4, Percentage.withPercentage(0.05));
    }

    @Test void addedPliesMakeTwoPliesOfOne() {
        BuildPlan plan = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450()), Specs.require("S2", "S3", Specs.whole(), 2),
                Specs.add("S2", "S3", Specs.whole(), Specs.csm450(), 1))));
        assertThat(value(plan, "skin.short.area")).isZero();
        assertThat(plan.pots()).extracting(PotEntry::ply).containsExactly(1, 2);
    }

    @Test void anAddedPlyMakesItsPlatesSmaller() { // closed form: the middle plates lose another ply, the end ones do not
        BuildPlan plan = plan(Specs.cylinder().frame(Specs.frame(0.012)).skin(Specs.skin(Specs.schedule(Specs.csm450()),
                Specs.add("S2", "S3", Specs.whole(), Specs.csm450(), 1))));
        double end = radius(plan, 0);
        double middle = radius(plan, 1);
        assertThat(end - middle).isCloseTo(0.0011133, within(1e-5));
    }

    @Test void theCatalystIsChosenForTheGelTimeWanted() {
        // ln-interpolation by hand at 20 degC between 1 % 35 min and 2 % 18 min: 25 min at 1.42 %
        BuildPlan plan = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        double share = 0.01 * Math.pow(2, Math.log(35.0 / 25) / Math.log(35.0 / 18));
        assertThat(value(plan, "skin.catalyst.mass")).isCloseTo(share * value(plan, "skin.resin.mass"), Percentage.withPercentage(1e-6));
        assertThat(plan.pots().getFirst().gel()).isCloseTo(25 * 60, within(1e-6));
        assertThat(plan.pots().getFirst().working()).isCloseTo(0.7 * 25 * 60, within(1e-6));
    }

    @Test void catalystIsMeasuredByItsDensity() { // 1.16 g are one millilitre
        PotEntry pot = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450())))).pots().getFirst();
        assertThat(pot.first().catalystVolume()).isCloseTo(pot.first().catalyst() / 1160, within(1e-15));
    }

    @Test void aGelTimeBeyondTheCatalystLimitsIsReported() { // at 20 degC the table's 2 % still takes 18 min
        Skin slow = Specs.skin(Specs.schedule(Specs.csm450()));
        Skin fast = new Skin(slow.schedule(), slow.lap(), Specs.given("gel time wanted", Dimension.TIME, 300), slow.onFoam(), slow.rules(), slow.origin());
        BuildPlan plan = plan(Specs.cylinder().skin(fast));
        assertThat(plan.faults()).extracting(PlanFault::kind).contains(PlanFault.Kind.CATALYST_CLAMPED);
        assertThat(plan.pots().getFirst().gel()).isCloseTo(18 * 60, within(1e-6));
    }

    @Test void aShopColderThanTheTableIsReported() {
        BuildPlan plan = plan(Specs.cylinder().shop(8).skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        assertThat(plan.faults()).extracting(PlanFault::kind).contains(PlanFault.Kind.GEL_OUTSIDE_TABLE);
    }

    @Test void aPotIsLaidBeforeItGels() {
        // closed form: 4 m2/h of one person, 1.125 + 0.35 kg/m2, 17.5 min: 1.72 kg, under the limit of 2 kg
        PotEntry pot = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450())))).pots().getFirst();
        assertThat(pot.most()).isCloseTo(4 / 3600.0 * 1.475 * 17.5 * 60, within(1e-6));
    }

    @Test void aPotIsNoLargerWhereTwoPersonsWork() { // each lays from a pot of their own
        assertThat(plan(Specs.cylinder().persons(2).skin(Specs.skin(Specs.schedule(Specs.csm450())))).pots().getFirst().most())
                .isEqualTo(plan(Specs.cylinder().persons(1).skin(Specs.skin(Specs.schedule(Specs.csm450())))).pots().getFirst().most());
    }

    @Test void aPotIsHeldByTheSuppliersLimit() { // 1000 g/m2 at 1 : 2.5 would take 3.3 kg in 17.5 min, the limit is 2 kg
        PotEntry pot = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.mat("Csm1000", 1.0, 1 / 3.5))))).pots().getFirst();
        assertThat(pot.most()).isEqualTo(2);
    }

    @Test void aClosedGirthTakesAsManyLapsAsPieces() { // two widths round the cylinder, two laps
        BuildPlan plan = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        assertThat(sources(plan.derivation("skin.mat.Csm450.mass").orElseThrow())).contains("n widths less n laps go all round, the last lapping the first")
                .noneMatch(source -> source.contains("n - 1 laps"));
    }

    private static List<String> sources(Derivation derivation) {
        List<String> sources = new ArrayList<>();
        if (derivation instanceof Derivation.Reckoned reckoned) {
            sources.add(reckoned.source());
            reckoned.inputs().forEach(input -> sources.addAll(sources(input)));
        }
        return sources;
    }

    @Test void theFirstPotIsHalfOfOneAndTheRestFollow() { // start with small pots until the cure is known
        PotEntry pot = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450())))).pots().getFirst();
        assertThat(pot.first().resin()).isCloseTo(pot.most() / 2, within(1e-12));
        assertThat(pot.pots()).isEqualTo(1 + (int) Math.ceil((pot.resin() - pot.first().resin()) / pot.most()));
        assertThat(pot.first().resin() + (pot.pots() - 1) * pot.further().resin()).isCloseTo(pot.resin(), within(1e-12));
    }

    @Test void everyPotHasTheCatalystOfItsOwnResin() { // the share of the whole skin, pot by pot
        BuildPlan plan = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        double share = value(plan, "skin.catalyst.mass") / value(plan, "skin.resin.mass");
        PotEntry pot = plan.pots().getFirst();
        assertThat(pot.first().catalyst()).isCloseTo(share * pot.first().resin(), within(1e-12));
        assertThat(pot.further().catalyst()).isCloseTo(share * pot.further().resin(), within(1e-12));
    }

    @Test void aRollNarrowerThanItsLapIsReported() {
        Skin skin = Specs.skin(Specs.schedule(Specs.csm450()));
        Skin lapped = new Skin(skin.schedule(), Specs.given("lap", Dimension.LENGTH, 1.3), skin.gel(), skin.onFoam(), List.of(), skin.origin());
        assertThat(plan(Specs.cylinder().skin(lapped)).faults()).extracting(PlanFault::kind).contains(PlanFault.Kind.ROLL_TOO_NARROW);
    }

    @Test void mouldedEndsAreSkinnedToo() { // closed form: two discs
        BuildPlan plan = plan(Specs.cylinder().mouldedEnds().skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        assertThat(value(plan, "skin.area")).isCloseTo(SIDE * 1.2 + 2 * Math.PI * 0.09, Percentage.withPercentage(0.01));
    }

    @Test void aRangeOfTheGlassReachesThicknessAndFoam() { // more resin makes a thicker skin and a smaller cavity
        var loose = Specs.csm450();
        var ranged = new mouldwright.plan.spec.Mat(loose.name(), loose.areal(),
                new Given("glass share", Dimension.RATIO, 0.25, 1 / 3.5, 1 / 3.0, Specs.LIBRARY), loose.fibre(), loose.rollWidth(),
                loose.rollLength(), loose.lay(), loose.stock());
        BuildPlan plan = plan(Specs.box().skin(Specs.skin(Specs.schedule(ranged))).fill(Specs.solid(Specs.foam(30, 39), 0)));
        double thick = 0.0013008; // ISO 12215-5, 450 g at 25 %
        assertThat(quantity(plan, "skin.thickness").high()).isCloseTo(thick, within(5e-8));
        assertThat(quantity(plan, "bay.A-B.cavity").low()).isCloseTo((0.2 - 2 * thick) * (0.05 - 2 * thick) * 0.4, within(2e-7));
    }

    @Test void aRangeOfTheShrinkReachesTheMatOffTheRoll() { // closed form: two pieces across, three bays, each as long as its bay and a lap
        BuildPlan plan = plan(Specs.cylinder().shrink(0.001, 0.003, 0.006).skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        Given spoilt = Defaults.spoiltMat();
        assertThat(quantity(plan, "skin.mat.Csm450.length").low()).isCloseTo(3 * 2 * (0.4 / 0.999 + 0.05) * (1 + spoilt.low()), within(1e-6));
        assertThat(value(plan, "skin.mat.Csm450.length")).isCloseTo(3 * 2 * (0.4 / 0.997 + 0.05) * (1 + spoilt.likely()), within(1e-6));
        assertThat(quantity(plan, "skin.mat.Csm450.length").high()).isCloseTo(3 * 2 * (0.4 / 0.994 + 0.05) * (1 + spoilt.high()), within(1e-6));
    }

    @Test void aRangeOfTheShrinkReachesTheMatLaid() { // closed form: surface as the square, laps as the length
        BuildPlan plan = plan(Specs.cylinder().shrink(0.001, 0.003, 0.006).skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        double scale = 1 / 0.994;
        double laid = SIDE * 1.2 * scale * scale + 3 * (2 * 0.05 * 0.4 + 0.05 * SIDE) * scale;
        assertThat(quantity(plan, "skin.mat.Csm450.mass").high()).isCloseTo(0.45 * laid, Percentage.withPercentage(0.01));
    }

    private static double radius(BuildPlan plan, int plate) {
        return plan.plates().get(plate).outline().stream().mapToDouble(p -> Math.hypot(p.y(), p.z() - 0.5)).average().orElseThrow();
    }

    private static Skin onFoam(Skin skin, double extra) {
        return new Skin(skin.schedule(), skin.lap(), skin.gel(), Specs.given("extra resin on foam", Dimension.AREAL_MASS, extra),
                skin.rules(), skin.origin());
    }

    @Test void aGelTimeThatRisesWithCatalystIsAFault() {
        Resin sane = Specs.resin();
        Resin odd = new Resin(sane.name(), sane.density(), sane.cured(), sane.styrene(), sane.waxed(), sane.hardener(), sane.leastCatalyst(), sane.mostCatalyst(),
                List.of(new Resin.GelRow(20, 0.01, 1800, Specs.LIBRARY), new Resin.GelRow(20, 0.02, 2400, Specs.LIBRARY)), sane.pot(), sane.recoat(), sane.hard(), sane.stock());
        Skin skin = Specs.skin(new Schedule("Odd", odd, List.of(new Schedule.Layer.Ply(Specs.csm450(), Specs.LIBRARY)), Specs.LIBRARY));
        assertThat(plan(Specs.box().skin(skin)).faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(PlanFault.Kind.FIGURE);
            assertThat(fault.figure().orElseThrow().value()).isCloseTo(2400, within(1e-9));
            assertThat(fault.limit().orElseThrow().value()).isCloseTo(1800, within(1e-9));
        });
    }
}
