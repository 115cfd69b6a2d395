package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Band;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Skin;
import org.junit.jupiter.api.Test;

/** Which plies cover what. On a wall 1 m high and 1 m long, 0.1 m off the centreline, a line climbs straight from 0.2 m to 0.8 m; half the girth is 1.2 m. All
 *  expected areas are closed forms, both sides together. */
class CoverageTest {

    private static final Place TIDE = new Place.OnLine("tide");
    private static final Place MIDDLE = new Place.AtShare(0.5); // the wall at 0.5 m

    private static Form wall(double tide) {
        return new Form.Points(List.of(Form.Point.smooth(0, 0, Stated.line(20, "0 0")), Form.Point.knuckle(0.1, 0, Stated.line(21, "corner")),
                Form.Point.knuckle(0.1, tide, "tide", Stated.line(22, "tide")), Form.Point.knuckle(0.1, 1, Stated.line(23, "corner")),
                Form.Point.smooth(0, 1, Stated.line(24, "top"))), List.of());
    }

    private static BuildPlan walled(Skin.Rule... rules) {
        return plan(new Specs().station("A", 0, wall(0.2)).station("B", 1, wall(0.8)).skin(Blocks.skin(Materials.schedule(Materials.csm450()), rules)));
    }

    private static Skin.Rule add(Place from, Place to, int plies) {
        return Blocks.add("A", "B", band(from, to), Materials.csm450(), plies);
    }

    private static Skin.Rule require(Place from, Place to, int plies) {
        return Blocks.require("A", "B", band(from, to), plies);
    }

    private static Band band(Place from, Place to) {
        return new Band(from, to, Stated.line(37, "girth"));
    }

    private static double lacking(Skin.Rule... rules) {
        return value(walled(rules), "skin.short.area");
    }

    @Test void whereALineCrossesAShareOfTheGirthATriangleIsShort() {
        // below 0.5 m two plies are asked for, the second ends on the line: it is short for half the length, by 0.3 m at most.
        // Areas add up to 0 on average, a bounding box says 0.3 m2
        assertThat(lacking(add(Place.BOTTOM, TIDE, 1), require(Place.BOTTOM, MIDDLE, 2))).isCloseTo(2 * 0.5 * 0.5 * 0.3, within(1e-6));
    }

    @Test void twoPliesThatMeetOnALineLeaveNothingShort() {
        assertThat(lacking(add(Place.BOTTOM, TIDE, 1), add(TIDE, Place.TOP, 1), require(Place.BOTTOM, Place.TOP, 2))).isZero();
    }

    @Test void anOverlapIsNotCountedTwice() { // twice the upper half is as much area as the whole and leaves the lower half short
        assertThat(lacking(add(MIDDLE, Place.TOP, 1), add(MIDDLE, Place.TOP, 1), require(Place.BOTTOM, Place.TOP, 2))).isCloseTo(1.2, within(1e-6));
    }

    @Test void theGreatestOfSeveralRequirementsHolds() { // 1.2 m2 below wants three and has two
        assertThat(lacking(add(Place.BOTTOM, Place.TOP, 1), require(Place.BOTTOM, Place.TOP, 2), require(Place.BOTTOM, MIDDLE, 3))).isCloseTo(1.2, within(1e-6));
    }

    @Test void aLinePlyBuildsUpOnItsSideOfTheLine() { // the triangles on either side of the line are alike
        double below = lacking(add(Place.BOTTOM, TIDE, 1), require(Place.BOTTOM, MIDDLE, 2));
        double above = lacking(add(TIDE, Place.TOP, 1), require(MIDDLE, Place.TOP, 2));
        assertThat(above).isCloseTo(below, within(1e-6));
    }

    @Test void aLocalPlyUpToALineWeighsItsOwnShareOfTheFace() {
        // bottom and wall up to the line: 2 x (0.1 + mean of 0.2 and 0.8) = 1.2 m2, and 0.05 m of lap along its widest girth of 1.8 m; the girth
        // at its widest takes two pieces of 1.25 m, so one lap of 0.05 m along
        double bare = value(walled(), "skin.mat.Csm450.mass");
        double added = value(walled(add(Place.BOTTOM, TIDE, 1)), "skin.mat.Csm450.mass") - bare;
        assertThat(added).isCloseTo(0.45 * (1.2 + 0.05 * 1.8 + 0.05), within(0.45 * 0.002));
    }

    @Test void manyStackedRulesAreCountedExactly() { // each asks for two plies from the bottom up, the widest to 50 %
        Skin.Rule[] rules = IntStream.range(0, 50).mapToObj(i -> require(Place.BOTTOM, new Place.AtShare((i + 1) / 100.0), 2)).toArray(Skin.Rule[]::new);
        assertThat(lacking(rules)).isCloseTo(1.2, within(1e-6));
        assertThat(lacking(Stream.concat(Stream.of(rules), Stream.of(add(Place.BOTTOM, new Place.AtShare(0.25), 1))).toArray(Skin.Rule[]::new))).isCloseTo(0.6, within(1e-6));
    }
}
