package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.quantity;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Carve;
import mouldwright.plan.spec.Filler;
import mouldwright.plan.spec.Material;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Survey;
import mouldwright.units.Dimension;
import org.junit.jupiter.api.Test;

/** What was found on the carved plug, and what mends it. The filler takes 6 mm a layer and 12 mm in all. */
class FairStageTest {

    private static final Origin LINE = Specs.line(61, "gouge");
    private static final LocalDate DAY = LocalDate.of(2027, 3, 10);

    private static Specs cylinder() {
        Filler filler = new Filler("BodyFiller", Optional.of(Specs.given("filler density", Dimension.DENSITY, 1800)),
                Optional.of(Specs.given("layer", Dimension.LENGTH, 0.006)), Optional.of(Specs.given("total", Dimension.LENGTH, 0.012)),
                Optional.of(Specs.given("hard", Dimension.TIME, 1200)), Material.Stock.plain(Specs.LIBRARY));
        return Specs.cylinder().frame(Specs.frame(0.012)).skin(Specs.skin(Specs.schedule(Specs.csm450())))
                .carve(new Carve(Specs.given("board", Dimension.LENGTH, 1.2), false, Specs.given("crown limit", Dimension.LENGTH, 0.001), Optional.of(filler),
                        Specs.line(40, "carve")));
    }

    private static Survey.Spot spot(double along, double girth) {
        return new Survey.Spot(new BaySpan("S2", "S3", LINE), along, Survey.Hand.PORT, girth, Place.BOTTOM);
    }

    private static Survey.Reading gouge(double along, double depth) {
        return new Survey.Reading.Gouge(spot(along, 0.4), depth, 0.09, 0.04, Optional.empty(), LINE);
    }

    private static Survey.Reading mended(double depth, Optional<Double> now) {
        return new Survey.Reading.Hollow(spot(0.14, 0.4), depth, 0.09, 0.04, Optional.of(new Survey.Mended(DAY, now)), LINE);
    }

    private static FairMeasures.Place only(BuildPlan plan) {
        return plan.measurements().find(FairMeasures.class).orElseThrow().places().getFirst();
    }

    @Test void aGougeHoldsTwoThirdsOfItsEllipse() { // closed form: 2/3 d pi/4 a b; half a paraboloid and straight walls as bounds
        BuildPlan plan = plan(cylinder().survey(gouge(0.14, 0.007)));
        double box = 0.007 * Math.PI / 4 * 0.09 * 0.04;
        assertThat(value(plan, "fair.filler.volume")).isCloseTo(2.0 / 3 * box, within(1e-12));
        assertThat(quantity(plan, "fair.filler.volume").low()).isCloseTo(box / 2, within(1e-12));
        assertThat(quantity(plan, "fair.filler.volume").high()).isCloseTo(box, within(1e-12));
        assertThat(value(plan, "fair.filler.mass")).isCloseTo(2.0 / 3 * box * 1800, within(1e-9));
    }

    @Test void sevenMillimetresTakeTwoLayersOfAFillerOfSix() {
        BuildPlan plan = plan(cylinder().survey(gouge(0.14, 0.007)));
        assertThat(only(plan).remedy()).isEqualTo(new FairMeasures.Filler(2));
        assertThat(value(plan, "fair.filler.layers")).isEqualTo(2);
        assertThat(value(plan, "fair.filler.wait")).isEqualTo(2 * 1200);
    }

    @Test void twoMillimetresAreFilledByTwoMorePlies() { // a ply of 450 g/m2 at 2.5 : 1 cures to 1.1133 mm (ISO 12215-5)
        BuildPlan plan = plan(cylinder().survey(gouge(0.14, 0.002)));
        assertThat(only(plan).remedy()).isEqualTo(new FairMeasures.Plies(2));
        assertThat(value(plan, "fair.patch.area")).isCloseTo(2 * 0.09 * 0.04, within(1e-12));
        assertThat(value(plan, "fair.filler.volume")).isZero();
    }

    @Test void thirteenMillimetresAreTooDeepForFiller() { // over its total it cracks: new foam
        BuildPlan plan = plan(cylinder().survey(gouge(0.14, 0.013)));
        assertThat(only(plan).remedy()).isEqualTo(new FairMeasures.NewFoam());
        assertThat(value(plan, "fair.foam.volume")).isPositive();
        assertThat(value(plan, "fair.filler.volume")).isZero();
    }

    @Test void aGougeInMidBayLeavesThePlatesAlone() {
        assertThat(only(plan(cylinder().survey(gouge(0.14, 0.007)))).plates()).isEmpty();
    }

    @Test void aGougeThatReachesOverAPlateNamesIt() { // 90 mm long, its middle 30 mm aft of S2
        assertThat(only(plan(cylinder().survey(gouge(0.03, 0.007)))).plates()).containsExactly("S2");
    }

    @Test void whatWasMendedWithinTheLimitIsDone() { // crown limit of 1 mm
        BuildPlan plan = plan(cylinder().survey(mended(0.008, Optional.of(0.0003))));
        assertThat(only(plan).open()).isFalse();
        assertThat(value(plan, "fair.filler.volume")).isZero();
        assertThat(value(plan, "fair.remeasure")).isZero();
    }

    @Test void whatWasMendedAndIsStillLowIsMendedAgainByWhatIsLeft() {
        BuildPlan plan = plan(cylinder().survey(mended(0.012, Optional.of(0.004))));
        assertThat(only(plan).remedy()).isEqualTo(new FairMeasures.Filler(1));
        assertThat(value(plan, "fair.filler.volume")).isCloseTo(2.0 / 3 * 0.004 * Math.PI / 4 * 0.09 * 0.04, within(1e-12));
    }

    @Test void whatIsOpenAndWhatWasMendedUnmeasuredIsMeasuredAgain() {
        assertThat(value(plan(cylinder().survey(gouge(0.14, 0.007), mended(0.008, Optional.empty()))), "fair.remeasure")).isEqualTo(2);
    }

    @Test void unbondedSkinIsLaidAnewWithALapAllRound() { // closed form: (120 + 2 x 50) by (80 + 2 x 50)
        BuildPlan plan = plan(cylinder().survey(new Survey.Reading.Unbonded(spot(0.14, 0.4), 0.12, 0.08, Optional.empty(), LINE)));
        assertThat(value(plan, "fair.patch.area")).isCloseTo(0.22 * 0.18, within(1e-12));
    }

    @Test void aProudGaugeReadingIsBoardedDown() {
        BuildPlan plan = plan(cylinder().survey(new Survey.Reading.Gauge(0.5, Survey.Hand.PORT, 0.3, 0.0012, LINE)));
        assertThat(only(plan).remedy()).isEqualTo(new FairMeasures.BoardedDown());
    }

    @Test void aGaugeReadingWithinTheLimitIsLeft() {
        BuildPlan plan = plan(cylinder().survey(new Survey.Reading.Gauge(0.5, Survey.Hand.PORT, 0.3, 0.0009, LINE)));
        assertThat(plan.measurements().find(FairMeasures.class).orElseThrow().places()).isEmpty();
    }

    @Test void aPlaceOutsideItsBayIsReportedAndNotReckonedWith() { // the bay is 400 mm long
        BuildPlan plan = plan(cylinder().survey(gouge(0.5, 0.007)));
        assertThat(plan.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(PlanFault.Kind.SURVEY_OUTSIDE);
            assertThat(fault.figure().orElseThrow().value()).isCloseTo(0.9, within(1e-9));
        });
        assertThat(value(plan, "fair.filler.volume")).isZero();
    }

    @Test void aPlacePastTheGirthIsReported() { // half the girth is 942 mm
        BuildPlan plan = plan(cylinder().survey(new Survey.Reading.Gouge(spot(0.14, 1), 0.007, 0.09, 0.04, Optional.empty(), LINE)));
        assertThat(plan.faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.SURVEY_OUTSIDE);
    }

    @Test void aGougeWithoutDepthIsAFaultAndNotAFigure() {
        assertThat(plan(cylinder().survey(gouge(0.14, 0))).faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.FIGURE);
    }

    @Test void aPlateSetHighCarriesTheTopOutByAsMuch() { // e = d . n: the normal points up at top centre
        BuildPlan plan = plan(cylinder().survey(new Survey.Reading.Setting("S2", 0, 0.002, LINE)));
        assertThat(Math.abs(value(plan, "station.S2.error"))).isCloseTo(0.002, within(1e-9));
        assertThat(value(plan, "station.S2.error.girth")).isIn(0.0, 1.0);
    }

    @Test void aPlateThatLeansDoesNothingToAPrism() { // its normal has no part along the body
        assertThat(value(plan(cylinder().survey(new Survey.Reading.Setting("S2", 0.005, 0, LINE))), "station.S2.error")).isCloseTo(0, within(1e-9));
    }

    @Test void aPlateOfAConeThatLeansAftStandsProudAtTheTop() { // closed form: cone of 0.2 in 0.8; n aft = sin(atan(1/4)), z/H = 1 at the top
        Specs cone = Specs.cone().frame(Specs.frame(0.012)).survey(new Survey.Reading.Setting("S2", 0.004, 0, LINE));
        assertThat(value(plan(cone), "station.S2.error")).isCloseTo(0.004 * Math.sin(Math.atan(0.25)), within(2e-6));
        assertThat(value(plan(cone), "station.S2.error.girth")).isCloseTo(1, within(0.01));
    }

    @Test void theLastReadingOfAPlateGoverns() {
        BuildPlan plan = plan(cylinder().survey(new Survey.Reading.Setting("S2", 0, 0.002, LINE)).survey(new Survey.Reading.Setting("S2", 0, 0.001, LINE)));
        assertThat(Math.abs(value(plan, "station.S2.error"))).isCloseTo(0.001, within(1e-9));
    }

    @Test void withoutAFillerAPasteOfResinAndBubblesIsMixed() { // mixture rule: 100 g of 1.20 and 20 g of 0.25 make 0.73469
        BuildPlan plan = plan(Specs.cylinder().carve(0.001).survey(gouge(0.14, 0.007)));
        assertThat(value(plan, "fair.paste.density")).isCloseTo(734.69, within(0.005));
        assertThat(value(plan, "fair.paste.resin") + value(plan, "fair.paste.bubbles")).isCloseTo(value(plan, "fair.filler.mass"), within(1e-12));
        assertThat(value(plan, "fair.paste.bubbles") / value(plan, "fair.paste.resin")).isCloseTo(0.2, within(1e-12));
    }

    @Test void aGaugeReadPastThePlugIsReportedHoweverSmallItsReading() {
        assertThat(plan(cylinder().survey(new Survey.Reading.Gauge(9, Survey.Hand.PORT, 0.3, 0.0001, LINE))).faults()).extracting(PlanFault::kind)
                .containsExactly(PlanFault.Kind.SURVEY_OUTSIDE);
    }
}
