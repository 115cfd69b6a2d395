package mouldwright.geometry.offset;

import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.plane.Region;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.SectionForm;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Outlines moved in by the build-up, by closed forms. */
class FoamLineTest {
    private static final double T = 0.005;
    private static final BuildUp SKIN = BuildUp.uniform(T, Bare.NONE);

    private static Loft prism(SectionForm form) {
        return loft(x -> half(form), 0, 1);
    }

    private static Region middle(Loft body, BuildUp buildUp) {
        return FoamLine.at(body, 0.5, Side.AFT, buildUp);
    }

    // closed form: pi (r - t)^2
    @Test void aCylinderShrinksByTheSkin() {
        assertThat(middle(prism(Bodies.circle(0.3, 1)), SKIN).area())
                .isCloseTo(Math.PI * 0.295 * 0.295, Percentage.withPercentage(0.01));
    }

    // closed form: on a cone the skin measures t over the cosine of the bevel in the station plane
    @Test void aConeShrinksByTheSkinOverTheCosineOfItsBevel() {
        double cos = Math.cos(Math.atan(0.25)), r = 0.4 - T / cos;
        assertThat(FoamLine.at(Bodies.frustum(0.5, 0.3, 0.8, 2), 0.4, Side.AFT, SKIN).area())
                .isCloseTo(Math.PI * r * r, Percentage.withPercentage(0.01));
    }

    // closed form: beyond 60 degrees the offset of a sphere is the smaller sphere
    @Test void nearTheTipOfASphereTheSmallerSphereIsCut() {
        double x = 0.95;
        assertThat(FoamLine.at(Bodies.ellipsoid(1, 1, 1, 41), x, Side.AFT, SKIN).area())
                .isCloseTo(Math.PI * ((1 - T) * (1 - T) - x * x), Percentage.withPercentage(0.5));
    }

    // convex corners mitre: a rectangle stays one
    @Test void aBoxStaysABox() {
        Region moved = middle(prism(Bodies.box(0.3, 0, 0.2)), SKIN);
        assertThat(moved.area()).isCloseTo(0.59 * 0.19, within(1e-9));
        assertThat(moved.pieces().getFirst().minZ()).isCloseTo(T, within(1e-12));
    }

    // a re-entrant corner is joined by an arc: against sharp corners each side gains t^2 (1 - pi/4)
    @Test void aReEntrantCornerIsJoinedByAnArc() {
        SectionForm step = SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.2, 0),
                OutlinePoint.knuckle(0.2, 0.1), OutlinePoint.knuckle(0.1, 0.1), OutlinePoint.knuckle(0.1, 0.2),
                OutlinePoint.smooth(0, 0.2));
        double sharp = 2 * ((0.2 - T) * (0.1 - 2 * T) + (0.1 - T) * 0.1);
        assertThat(middle(prism(step), SKIN).area()).isCloseTo(sharp + 2 * T * T * (1 - Math.PI / 4), within(1e-7));
    }

    private static SectionForm trapezoid(double flare) {
        return SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.3, 0).afterBare(),
                OutlinePoint.knuckle(0.3 + 0.2 * flare, 0.2), OutlinePoint.smooth(0, 0.2));
    }

    /** Area between heights of a trapezoid whose side is moved in by an amount. */
    private static double trapezoid(double flare, double in, double top) {
        double edge = 0.3 - in * Math.hypot(1, flare);
        return 2 * (edge * top + flare * top * top / 2);
    }

    // closed form: the side's line cuts the bare bottom where it meets it, whichever way the side leans
    @ParameterizedTest
    @ValueSource(doubles = { -0.5, 0, 0.5 })
    void aBareBottomStaysAndTheMovedSideCutsIt(double flare) {
        Region moved = middle(prism(trapezoid(flare)), SKIN);
        assertThat(moved.pieces()).hasSize(1);
        assertThat(moved.area()).isCloseTo(trapezoid(flare, T, 0.2 - T), within(1e-9));
    }

    // closed form: overfill draws the bare bottom out to the moved side
    @ParameterizedTest
    @ValueSource(doubles = { -0.5, 0, 0.5 })
    void overfillGrowsTheMouldedSidesOnly(double flare) {
        Region grown = FoamLine.grown(prism(trapezoid(flare)), 0.5, Side.AFT, SKIN, 0.015);
        assertThat(grown.pieces()).hasSize(1);
        assertThat(grown.area()).isCloseTo(trapezoid(flare, T - 0.015, 0.2 - T + 0.015), within(1e-9));
    }

    // the pocket inside a shell keeps its distance from the bare bottom too
    @Test void thePocketKeepsTheShellAllRound() {
        Region pocket = FoamLine.within(prism(trapezoid(0)), 0.5, Side.AFT, SKIN, 0.05);
        assertThat(pocket.area()).isCloseTo(2 * (0.3 - T - 0.05) * (0.2 - T - 0.1), within(1e-9));
    }

    // an open top is closed straight, and that closure does not move
    @Test void theClosureDoesNotMove() {
        SectionForm tray = SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.3, 0),
                OutlinePoint.smooth(0.3, 0.2));
        assertThat(middle(prism(tray), SKIN).area()).isCloseTo(0.59 * (0.2 - T), within(1e-9));
    }

    // half a cylinder's girth carries a second ply: the mean of the two circles
    @Test void aLocalPlyThickensItsBandOnly() {
        Layer ply = new Layer(0.2, 0.8, new GirthBand(new GirthPlace.AtShare(0.5), GirthPlace.TOP), 0.003);
        BuildUp plies = new BuildUp(List.of(SKIN.layers().getFirst(), ply), Bare.NONE);
        Loft body = prism(Bodies.circle(0.3, 1));
        double thin = Math.PI * 0.295 * 0.295, thick = Math.PI * 0.292 * 0.292;
        assertThat(middle(body, plies).area()).isCloseTo((thin + thick) / 2, Percentage.withPercentage(0.01));
        assertThat(FoamLine.at(body, 0.1, Side.AFT, plies).area()).isCloseTo(thin, Percentage.withPercentage(0.01));
    }

    // a ply ends at a station: seen from forward it is there, from aft it is not
    @Test void aPlyThatEndsAtAStationCountsOnItsOwnSide() {
        BuildUp ply = new BuildUp(List.of(new Layer(0, 0.5, GirthBand.WHOLE, T)), Bare.NONE);
        Loft body = prism(Bodies.circle(0.3, 1));
        assertThat(FoamLine.at(body, 0.5, Side.FORWARD, ply).area()).isLessThan(0.97 * Math.PI * 0.09);
        assertThat(FoamLine.at(body, 0.5, Side.AFT, ply).area()).isCloseTo(Math.PI * 0.09, Percentage.withPercentage(0.01));
    }

    @Test void moreSkinThanBodyLeavesNothing() {
        assertThat(middle(prism(Bodies.circle(0.3, 1)), BuildUp.uniform(0.31, Bare.NONE)).isEmpty()).isTrue();
        assertThat(middle(prism(Bodies.box(0.3, 0, 0.2)), BuildUp.uniform(0.11, Bare.NONE)).isEmpty()).isTrue();
    }

    // on a convex body without taper, growing the foam line back by what was taken off gives the outline again
    @Property(tries = 40)
    void whatIsTakenOffAndGrownBackIsTheOutline(@ForAll @Scale(3) @DoubleRange(min = 0.001, max = 0.03) double thickness,
            @ForAll @DoubleRange(min = 0.2, max = 0.5) double breadth) {
        SectionForm hull = SectionForm.Points.of(OutlinePoint.knuckle(0, 0), OutlinePoint.knuckle(0.8 * breadth, 0.1),
                OutlinePoint.smooth(breadth, 0.3), OutlinePoint.knuckle(0.9 * breadth, 0.5), OutlinePoint.smooth(0, 0.55));
        Loft body = prism(hull);
        Region back = FoamLine.grown(body, 0.5, Side.AFT, BuildUp.uniform(thickness, Bare.NONE), thickness);
        assertThat(back.area()).isCloseTo(body.at(0.5).area(), within(1e-5));
    }

    // two thin offsets one after the other are one thick one: skin and shell against skin of both thicknesses
    @Property(tries = 40)
    void anOffsetOfAnOffsetIsTheirSum(@ForAll @Scale(3) @DoubleRange(min = 0.001, max = 0.05) double first,
            @ForAll @Scale(3) @DoubleRange(min = 0.001, max = 0.05) double second) {
        Loft body = prism(new SectionForm.Superellipse(0.3, 0.5, 2.6, 0));
        Region both = FoamLine.within(body, 0.5, Side.AFT, BuildUp.uniform(first, Bare.NONE), second);
        Region one = middle(body, BuildUp.uniform(first + second, Bare.NONE));
        assertThat(both.area()).isCloseTo(one.area(), within(1e-9));
    }
}
