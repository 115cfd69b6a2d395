package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.quantity;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.Assumption;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.FinishDefaults;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Rates;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class FinishStageTest {

    private static final double AREA = 2 * Math.PI * 0.3 * 1.2; // of the cylinder's side

    private static Rates rates(int grit, double rate) {
        return new Rates("Shop", Optional.empty(), Optional.empty(),
                List.of(new Rates.Sanding(grit, Stated.given("sand grit " + grit, Dimension.AREA_RATE, rate / 3600))), Stated.LIBRARY);
    }

    private static Finish finish(Finish.Coats coats, Integer... grits) {
        return new Finish(List.of(coats), List.of(grits), FinishDefaults.sandedShare(), Stated.line(39, "finish"));
    }

    @Test void aLitreToTheSquareMetreIsAFilmOfAMillimetre() { // closed form: 3 coats of 0.2 mm, 70 % of which land
        BuildPlan plan = plan(Specs.cylinder().finish(Blocks.finish(3, 150e-6)));
        assertThat(value(plan, "finish.Surfacer.volume")).isCloseTo(3 * AREA * 200e-6 / 0.7, Percentage.withPercentage(0.01));
        assertThat(value(plan, "finish.Surfacer.mass")).isCloseTo(1300 * 3 * AREA * 200e-6 / 0.7, Percentage.withPercentage(0.01));
    }

    @Test void filmsAddUpWetAndDry() { // closed form
        BuildPlan plan = plan(Specs.cylinder().finish(Blocks.finish(3, 150e-6)));
        assertThat(value(plan, "finish.Surfacer.wet")).isCloseTo(600e-6, within(1e-12));
        assertThat(value(plan, "finish.Surfacer.dry")).isCloseTo(450e-6, within(1e-12));
    }

    @Test void gelCoatOf458MicrometresIs550GramsToTheSquareMetre() { // CFS fibreglass guide, material spread rates
        BuildPlan plan = plan(Specs.cylinder().finish(finish(Blocks.coats(1, Materials.gelCoat(0.458e-3, 1)))));
        assertThat(value(plan, "finish.ToolingGel.mass") / value(plan, "finish.area")).isCloseTo(0.55, within(0.0005));
    }

    @Test void aGallonOfSixteenMilCoversAHundredSquareFeet() { // 1604.17 ft2 mil to the US gallon, geometry; Rayplex says 100 ft2 at 15 mil
        BuildPlan plan = plan(Specs.cylinder().finish(finish(Blocks.coats(1, Materials.gelCoat(16.0417 * 25.4e-6, 1)))));
        double gallons = value(plan, "finish.ToolingGel.volume") / 3.785411784e-3;
        assertThat(value(plan, "finish.area") / 0.09290304 / gallons).isCloseTo(100, within(0.01));
    }

    @Test void sandingTakesTheAreaByEachGritsRate() { // closed form: 2 m2/h
        BuildPlan plan = plan(Specs.cylinder().rates(rates(80, 2)).finish(finish(Blocks.coats(1, Materials.gelCoat(2e-4, 1)), 80)));
        assertThat(value(plan, "finish.hours")).isCloseTo(AREA / 2 * 3600, Percentage.withPercentage(0.01));
    }

    @Test void aGritWithoutARateIsReckonedWithAnAssumedOneAndItsRange() {
        BuildPlan plan = plan(Specs.cylinder().rates(rates(80, 2)).finish(finish(Blocks.coats(1, Materials.gelCoat(2e-4, 1)), 120)));
        assertThat(plan.assumed()).extracting(Assumption::name).contains("sanding rate");
        assertThat(quantity(plan, "finish.hours").low()).isCloseTo(AREA / 2 * 3600, Percentage.withPercentage(0.01));
        assertThat(quantity(plan, "finish.hours").high()).isCloseTo(AREA * 3600, Percentage.withPercentage(0.01));
    }

    @Test void aRateOfNothingIsAFaultAndNoFigure() {
        BuildPlan plan = plan(Specs.cylinder().rates(rates(80, 0)).finish(finish(Blocks.coats(1, Materials.gelCoat(2e-4, 1)), 80)));
        assertThat(plan.faults()).extracting(PlanFault::kind).contains(PlanFault.Kind.FIGURE);
        assertThat(plan.quantity("finish.hours")).isEmpty();
    }

    @Test void theFinishCoversThePlugWhichIsLargerByTheShrink() { // closed form
        BuildPlan plan = plan(Specs.cylinder().shrink(0.003).finish(Blocks.finish(1, 1e-4)));
        assertThat(value(plan, "finish.area")).isCloseTo(AREA / (0.997 * 0.997), Percentage.withPercentage(0.01));
    }

    @Test void fiveCoatsOfWaxGoByTheWeightTheyCoverAndFilmByTheLitre() { // closed form: plug, and flanges of 75 mm round both ends
        BuildPlan plan = plan(Specs.cylinder().mould(Blocks.mould(Materials.schedule(Materials.csm450()))));
        double area = AREA + 2 * 2 * Math.PI * 0.3 * 0.075;
        assertThat(value(plan, "release.area")).isCloseTo(area, Percentage.withPercentage(0.05));
        assertThat(value(plan, "release.Wax.mass")).isCloseTo(5 * area / 80, Percentage.withPercentage(0.05));
        assertThat(value(plan, "release.Film.volume")).isCloseTo(area / 12000, Percentage.withPercentage(0.05));
    }

    @Test void releaseWaitsBetweenItsCoats() { // closed form: five hours for five coats, half an hour for the film
        assertThat(value(plan(Specs.cylinder().mould(Blocks.mould(Materials.schedule(Materials.csm450())))), "release.wait")).isCloseTo(5.5 * 3600, within(1e-9));
    }

    @Test void aMouldWithoutReleaseHasNoReleaseStage() {
        Mould mould = Blocks.mould(Materials.schedule(Materials.csm450()));
        Mould dry = new Mould(mould.schedule(), mould.draft(), mould.flange(), mould.parts(), List.of(), mould.hold(), mould.origin());
        assertThat(plan(Specs.cylinder().mould(dry)).quantities()).noneMatch(q -> q.stage().equals("release"));
    }
}
