package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.quantity;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Carve;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class CarveStageTest {

    /** A body of revolution whose side is an arc of 3 m radius, plates 300 mm apart. */
    private static Specs barrel() {
        Specs specs = new Specs();
        for (int i = 0; i < 5; i++) {
            double x = 0.3 * (i - 2);
            specs.station("S" + (i + 1), 0.3 * i, Specs.circle(0.4 - (3 - Math.sqrt(9 - x * x)), 0.5));
        }
        return specs;
    }

    private static Carve carve(boolean flexible, double limit) {
        return new Carve(Stated.given("board", Dimension.LENGTH, 1.2), flexible, Stated.given("crown limit", Dimension.LENGTH, limit), Optional.empty(),
                Stated.line(40, "carve"));
    }

    @Test void aStiffBoardTakesTheSagittaOffAnArc() { // sagitta: L 0.30, R 3 -> 3.752 mm between points on the arc (computed)
        BuildPlan plan = plan(barrel().carve(carve(false, 0.01)));
        assertThat(value(plan, "bay.S2-S3.convex") * 1000).isCloseTo(3.752, within(0.03));
        assertThat(value(plan, "bay.S2-S3.convex.x")).isCloseTo(0.45, within(0.005));
        assertThat(plan.quantity("bay.S2-S3.hollow")).isEmpty();
    }

    @Test void aHollowIsTheBoardsToLeave() {
        Specs waist = new Specs().station("A", 0, Specs.circle(0.4, 0.5)).station("B", 0.3, Specs.circle(0.36, 0.5)).station("C", 0.6, Specs.circle(0.4, 0.5));
        BuildPlan plan = plan(waist.carve(carve(false, 0.01)));
        assertThat(value(plan, "bay.A-B.hollow")).isNegative();
        assertThat(value(plan, "bay.A-B.hollow")).isCloseTo(value(plan, "bay.A-B.crown"), within(1e-12));
    }

    @Test void whereAStiffBoardTakesTooMuchAFlexibleOneIsToldToo() { // a spline through an arc's points leaves next to nothing
        BuildPlan plan = plan(barrel().carve(carve(false, 0.0015)));
        assertThat(Math.abs(value(plan, "bay.S2-S3.flexible"))).isLessThan(0.0001);
    }

    @Test void whereAStiffBoardServesNoOtherIsLookedAt() {
        assertThat(plan(barrel().carve(carve(false, 0.01))).quantity("bay.S2-S3.flexible")).isEmpty();
    }

    @Test void aFlexibleBoardStatedIsTheOneThatIsMeasured() {
        BuildPlan plan = plan(barrel().carve(carve(true, 0.0015)));
        assertThat(Math.abs(value(plan, "bay.S2-S3.crown"))).isLessThan(0.0001);
    }

    @Test void theBoardReachesOverBothPlatesByWhatItIsLonger() { // 1200 - 300
        assertThat(value(plan(barrel().carve(carve(false, 0.01))), "bay.S2-S3.reach")).isCloseTo(0.9, within(1e-9));
    }

    @Test void labourIsTheFaceOverTheRate() { // closed form; 1.5 m2 an hour, 1 to 2, assumed where no rates are stated
        BuildPlan plan = plan(Specs.cylinder().carve(carve(false, 0.01)));
        assertThat(value(plan, "carve.area")).isCloseTo(2 * Math.PI * 0.3 * 1.2, Percentage.withPercentage(0.1));
        assertThat(value(plan, "carve.labour")).isCloseTo(value(plan, "carve.area") / 1.5 * 3600, within(1e-6));
        assertThat(quantity(plan, "carve.labour").high()).isCloseTo(value(plan, "carve.area") * 3600, within(1e-6));
        assertThat(value(plan, "fair.labour")).isCloseTo(value(plan, "carve.area") * 3600, within(1e-6));
    }

    @Test void foamIsLeftOvernightBeforeItIsCut() { // common practice, assumed: 24 h
        assertThat(value(plan(Specs.cylinder().fill(Blocks.solid(Materials.foam(30, 39), 0)).carve(carve(false, 0.01))), "carve.after")).isEqualTo(24 * 3600);
    }
}
