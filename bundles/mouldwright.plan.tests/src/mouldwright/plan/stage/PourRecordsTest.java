package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.quantity;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import mouldwright.plan.BuildPlan;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Survey;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** What a weighed pour tells about those still to come. The foam's sheet gives 80 % of the expansion at 15 degC and 90 % at 20 degC. */
class PourRecordsTest {

    private static final double HALF = Math.PI * 0.09 / 2 * 0.4; // half the section of a cylinder of 300 mm radius over 400 mm, m3

    private static Specs cylinder() {
        return Specs.cylinder().fill(Blocks.solid(Materials.foam(30, 39), 0));
    }

    private static Survey.Reading poured(String from, String to, double mass, double rise) {
        return new Survey.Reading.Poured(new BaySpan(from, to, Stated.line(61, "poured")), mass, rise, Stated.line(61, "poured"));
    }

    /** What fills a volume at a share of the sheet's 90 %, kg. */
    private static double mass(double volume, double share) {
        return volume * 39 / (0.9 * share);
    }

    @Test void aPourRisenToHalfHeightRecalibratesTheBaysStillToCome() { // definition of yield: V rho / m of the table's 90 %
        BuildPlan plan = plan(cylinder().survey(poured("S1", "S2", mass(HALF, 0.8), 0.3)));
        assertThat(value(plan, "fill.recorded")).isCloseTo(0.8, Percentage.withPercentage(0.1));
        assertThat(value(plan, "bay.S2-S3.mass")).isCloseTo(mass(value(plan, "bay.S2-S3.cavity"), 0.8), Percentage.withPercentage(0.1));
    }

    @Test void theBayThatWasPouredKeepsItsPlan() {
        BuildPlan plan = plan(cylinder().survey(poured("S1", "S2", mass(HALF, 0.8), 0.3)));
        assertThat(value(plan, "bay.S1-S2.mass")).isCloseTo(value(plan(cylinder()), "bay.S1-S2.mass"), within(1e-9));
        assertThat(value(plan, "fill.mass")).isCloseTo(value(plan, "bay.S1-S2.mass") + 2 * value(plan, "bay.S2-S3.mass"), Percentage.withPercentage(0.1));
    }

    @Test void liftsOfOneBayLieUponEachOther() { // two records of half the height hold the whole section between them
        BuildPlan plan = plan(cylinder().survey(poured("S1", "S2", mass(HALF, 0.8), 0.3), poured("S1", "S2", mass(HALF, 0.8), 0.3)));
        assertThat(value(plan, "fill.recorded")).isCloseTo(0.8, Percentage.withPercentage(0.1));
    }

    @Test void aPourOfAColdDayIsComparedWithTheColdDaysYield() { // 80 % at 15 degC by the sheet, so all of it was reached
        BuildPlan plan = plan(cylinder().survey(poured("S1", "S2", HALF * 39 / 0.8, 0.3),
                new Survey.Reading.Temperature(15, Stated.line(62, "temperature 15 degC"))));
        assertThat(value(plan, "fill.recorded")).isCloseTo(1, Percentage.withPercentage(0.1));
    }

    @Test void foamIsNeverHadLighterThanItsSheet() {
        BuildPlan plan = plan(cylinder().survey(poured("S1", "S2", 1, 0.3)));
        assertThat(quantity(plan, "fill.recorded").high()).isEqualTo(1);
    }

    @Test void aSingleRecordIsGoodToFivePercent() { // common practice, assumed and listed
        BuildPlan plan = plan(cylinder().survey(poured("S1", "S2", mass(HALF, 0.8), 0.3)));
        assertThat(quantity(plan, "fill.recorded").low()).isCloseTo(0.95 * value(plan, "fill.recorded"), within(1e-9));
        assertThat(plan.assumed()).extracting(a -> a.name()).contains("error of reading a pour");
    }

    @Test void foamThatRoseHigherThanItsCavityIsReportedAndNotReckonedWith() {
        BuildPlan plan = plan(cylinder().survey(poured("S1", "S2", 3, 0.7)));
        assertThat(plan.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.kind()).isEqualTo(PlanFault.Kind.SURVEY_OUTSIDE);
            assertThat(fault.figure().orElseThrow().value()).isEqualTo(0.7);
        });
        assertThat(plan.quantity("fill.recorded")).isEmpty();
    }

    @Test void aPourIntoNoBayIsReported() {
        assertThat(plan(cylinder().survey(poured("S1", "S3", 3, 0.3))).faults()).extracting(PlanFault::kind)
                .containsExactly(PlanFault.Kind.SURVEY_OUTSIDE);
    }

    @Test void aPourWithoutMassIsAFaultAndNotAFigure() {
        assertThat(plan(cylinder().survey(poured("S1", "S2", 0, 0.3))).faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.FIGURE);
    }
}
