package mouldwright.geometry.section;

import static mouldwright.geometry.Bodies.full;
import static mouldwright.geometry.Bodies.half;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Corners rounded to a radius. */
class CornerTest {
    private static final double QUARTER_LOSS = 1 - Math.PI / 4;

    private static SectionForm box(double radius) {
        return SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.1, 0).rounded(radius),
                OutlinePoint.knuckle(0.1, 0.05), OutlinePoint.smooth(0, 0.05));
    }

    // closed form: a rounded square corner loses r^2 (1 - pi/4) of area and r (2 - pi/2) of girth
    @Test void aRoundedSquareCornerLosesWhatTheArcLeavesOut() {
        Section rounded = half(box(0.006));
        assertThat(rounded.area()).isCloseTo(0.01 - 2 * QUARTER_LOSS * 0.006 * 0.006, within(1e-12));
        assertThat(rounded.girth()).isCloseTo(0.5 - 2 * 0.006 * (2 - Math.PI / 2), within(1e-10));
    }

    // a rounded knuckle still matches a sharp one from station to station
    @Test void aRoundedKnuckleStillBordersTwoStretches() {
        Section rounded = half(box(0.006));
        assertThat(rounded.stretches()).hasSize(3);
        CurvePoint corner = rounded.stretches().get(0).at(1);
        double off = 0.006 * (1 - Math.sqrt(0.5));
        assertThat(corner.y()).isCloseTo(0.1 - off, within(1e-10));
        assertThat(corner.z()).isCloseTo(off, within(1e-10));
    }

    // both sides of a rounded knuckle run in one direction
    @Test void theOutlineDoesNotTurnWhereItWasRounded() {
        List<Stretch> stretches = half(box(0.006)).stretches();
        CurvePoint before = stretches.get(0).at(1), after = stretches.get(1).at(0);
        double turn = Math.atan2(after.dz(), after.dy()) - Math.atan2(before.dz(), before.dy());
        assertThat(turn).isCloseTo(0, within(1e-9));
    }

    // closed form: a V of half angle a between keel and side, rounded, loses r^2 (tan(b) - b), b = 90 deg - a
    @Test void aKeelIsRoundedWithItsMirrorImage() {
        Section sharp = half(vee(0)), rounded = half(vee(0.02));
        double b = Math.PI / 4;
        assertThat(sharp.area() - rounded.area()).isCloseTo(0.02 * 0.02 * (Math.tan(b) - b), within(1e-10));
        assertThat(rounded.stretches().getFirst().at(0).dz()).isCloseTo(0, within(1e-9));
    }

    private static SectionForm vee(double radius) {
        OutlinePoint keel = OutlinePoint.knuckle(0, 0);
        return SectionForm.Points.of(radius == 0 ? keel : keel.rounded(radius), OutlinePoint.smooth(0.2, 0.2));
    }

    // the same at top centre
    @Test void aRidgeIsRoundedWithItsMirrorImage() {
        Section sharp = half(ridge(0)), rounded = half(ridge(0.02));
        assertThat(sharp.area() - rounded.area()).isCloseTo(0.02 * 0.02 * (1 - Math.PI / 4), within(1e-10));
        assertThat(rounded.stretches().getLast().at(1).dz()).isCloseTo(0, within(1e-9));
    }

    private static SectionForm ridge(double radius) {
        OutlinePoint top = OutlinePoint.knuckle(0, 0.2);
        return SectionForm.Points.of(OutlinePoint.smooth(0.2, 0), radius == 0 ? top : top.rounded(radius));
    }

    // a re-entrant corner gains what a convex one loses
    @Test void aReEntrantCornerIsFilledByItsArc() {
        Section sharp = half(step(0)), rounded = half(step(0.01));
        assertThat(rounded.area() - sharp.area()).isCloseTo(2 * 0.01 * 0.01 * QUARTER_LOSS, within(1e-12));
    }

    private static SectionForm step(double radius) {
        OutlinePoint inner = OutlinePoint.knuckle(0.1, 0.1);
        return SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.2, 0), OutlinePoint.knuckle(0.2, 0.1),
                radius == 0 ? inner : inner.rounded(radius), OutlinePoint.knuckle(0.1, 0.2), OutlinePoint.smooth(0, 0.2));
    }

    // the seam of a full section is a corner like any other: four rounded corners of a square
    @Test void aCornerAtTheSeamIsRoundedToo() {
        SectionForm diamond = SectionForm.Points.of(OutlinePoint.knuckle(0, -1).rounded(0.1),
                OutlinePoint.knuckle(1, 0).rounded(0.1), OutlinePoint.knuckle(0, 1).rounded(0.1),
                OutlinePoint.knuckle(-1, 0).rounded(0.1), OutlinePoint.knuckle(0, -1).rounded(0.1));
        assertThat(full(diamond).area()).isCloseTo(2 - 4 * 0.01 * QUARTER_LOSS, within(1e-10));
    }

    // between curved sides the arc touches both: nowhere sharper than 1/r
    @Test void anArcTouchesCurvedSides() {
        List<OutlinePoint> points = new ArrayList<>();
        for (double t = 0; t <= 1.0001; t += 0.125)
            points.add(t > 0.99 ? OutlinePoint.knuckle(1, 0).rounded(0.05) : OutlinePoint.smooth(t, -0.3 * (1 - t * t)));
        for (double t = 0.875; t >= -0.0001; t -= 0.125)
            points.add(OutlinePoint.smooth(t < 0.01 ? 0 : t, 0.5 * (1 - t * t)));
        Section section = half(new SectionForm.Points(points));
        CurvePoint before = section.stretches().get(0).at(1), after = section.stretches().get(1).at(0);
        assertThat(Math.atan2(before.dz(), before.dy())).isCloseTo(Math.atan2(after.dz(), after.dy()), within(1e-8));
        assertThat(curvature(before)).isCloseTo(20, within(1e-6));
    }

    private static double curvature(CurvePoint p) {
        return (p.dy() * p.ddz() - p.dz() * p.ddy()) / Math.pow(Math.hypot(p.dy(), p.dz()), 3);
    }

    // between straight sides of 50 mm at a square corner the largest radius is 50 mm
    @Test void aRadiusLargerThanItsSidesDoesNotFit() {
        SectionResult result = Section.of(box(0.06), SectionKind.HALF, SectionRules.LENIENT);
        assertThat(result.section()).isEmpty();
        assertThat(result.faults()).singleElement().isInstanceOfSatisfying(SectionFault.RadiusDoesNotFit.class, fault -> {
            assertThat(fault.point()).isEqualTo(1);
            assertThat(fault.largest()).isCloseTo(0.05, within(1e-9));
        });
    }
}
