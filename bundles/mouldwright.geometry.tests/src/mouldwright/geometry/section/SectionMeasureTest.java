package mouldwright.geometry.section;

import static mouldwright.geometry.Bodies.full;
import static mouldwright.geometry.Bodies.half;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.Bodies;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a section measures against figures others published. */
class SectionMeasureTest {

    // closed form: pi r^2
    @Test void aHalfCircleOfFivePointsHasTheCirclesArea() {
        Section section = half(new SectionForm.Points(Bodies.halfCircle(1, 5)));
        assertThat(section.area()).isCloseTo(Math.PI, Percentage.withPercentage(0.2));
    }

    // a mirrored curve without a crease is level where it meets the centreline
    @Test void aHalfCircleOfFivePointsHasNoCreaseAtTheCentreline() {
        Stretch stretch = half(new SectionForm.Points(Bodies.halfCircle(1, 5))).stretches().getFirst();
        assertThat(stretch.at(0).dz()).isZero();
        assertThat(stretch.at(1).dz()).isCloseTo(0, within(1e-12));
        assertThat(stretch.at(0).ddy()).isCloseTo(0, within(1e-9));
    }

    // closed form: 2 pi r, and no corner where the ring begins
    @Test void aRingWithoutKnucklesIsSmoothAtItsSeam() {
        Section ring = full(Bodies.mirroredRing(Bodies.halfCircle(1, 17)));
        CurvePoint start = ring.stretches().getFirst().at(0), end = ring.stretches().getLast().at(1);
        assertThat(ring.stretches()).hasSize(1);
        assertThat(ring.girth()).isCloseTo(2 * Math.PI, within(1e-4));
        assertThat(start.dz()).isCloseTo(end.dz(), within(1e-9)).isCloseTo(0, within(1e-9));
        assertThat(start.ddz()).isCloseTo(end.ddz(), within(1e-6));
    }

    // gamma-function area of the superellipse, agentcalc.com/superellipse-area-calculator; unit semi-axes
    @ParameterizedTest
    @CsvSource({ "0.5, 0.666667", "1, 2.0", "1.5, 2.737854", "2, 3.141593", "2.5, 3.380935", "3, 3.533278", "4, 3.708149",
        "6, 3.855243", "10, 3.942928" })
    void aSuperellipseHasTheAreaOfTheGammaFormula(double exponent, double area) {
        assertThat(half(new SectionForm.Superellipse(1, 2, exponent, 0)).area()).isCloseTo(area, within(6e-7));
    }

    // perimeters by numerical quadrature of the textbook curve
    @ParameterizedTest
    @CsvSource({ "1, 2.5, 6.546705", "1, 3, 6.744993", "1, 4, 7.017698", "2, 2, 9.688448", "2, 2.5, 10.029507",
        "2, 3, 10.291164", "2, 4, 10.656067" })
    void aSuperellipseHasItsPerimeter(double halfBreadth, double exponent, double perimeter) {
        assertThat(half(new SectionForm.Superellipse(halfBreadth, 2, exponent, 0)).girth()).isCloseTo(perimeter, within(6e-7));
    }

    // closed form: the four-sided diamond
    @Test void aSuperellipseOfExponentOneIsADiamond() {
        Section diamond = half(new SectionForm.Superellipse(0.3, 0.8, 1, 0.1));
        assertThat(diamond.girth()).isCloseTo(4 * 0.5, within(1e-9));
        assertThat(diamond.area()).isCloseTo(0.24, within(1e-12));
        assertThat(diamond.centroid().z()).isCloseTo(0.5, within(1e-12));
    }

    // a full superellipse is the half one with its mirror image
    @Test void aFullSuperellipseMeasuresAsTheHalfOne() {
        SectionForm form = new SectionForm.Superellipse(0.3, 0.5, 2.4, 0.06);
        assertThat(full(form).area()).isCloseTo(half(form).area(), within(1e-12));
        assertThat(full(form).girth()).isCloseTo(half(form).girth(), within(1e-10));
    }

    // cubic Bezier (0,0)(1,2)(3,2)(4,0): length 5.268365543, area under it 4.2, textbook formulas computed
    @Test void aSplineThroughABezierCurveHasItsLengthAndArea() {
        Section section = half(new SectionForm.Points(bezier(41)));
        assertThat(section.outlineLength()).isCloseTo(5.268365543, within(2e-6));
        assertThat(section.area() / 2).isCloseTo(4.2, within(2e-6));
    }

    private static List<OutlinePoint> bezier(int count) {
        List<OutlinePoint> points = new ArrayList<>();
        for (double t : Bodies.spread(0, 1, count)) {
            double s = 1 - t;
            double along = 3 * s * s * t + 3 * 3 * s * t * t + 4 * t * t * t, out = 2 * 3 * s * s * t + 2 * 3 * s * t * t;
            boolean end = t == 0 || t == 1;
            points.add(end ? OutlinePoint.knuckle(0, along) : OutlinePoint.smooth(out, along));
        }
        return points;
    }

    // quarter circle by Bezier: length 1.571016698, area 0.785618083, textbook figures computed
    @Test void aSplineThroughTheBezierQuarterCircleHasItsLength() {
        double k = 4 * (Math.sqrt(2) - 1) / 3;
        List<OutlinePoint> points = new ArrayList<>();
        for (double t : Bodies.spread(0, 1, 41)) {
            double s = 1 - t;
            points.add(OutlinePoint.smooth(t == 0 ? 0 : 3 * s * s * t * k + 3 * s * t * t + t * t * t,
                    -(s * s * s + 3 * s * s * t + 3 * s * t * t * k)));
        }
        Section quarter = half(new SectionForm.Points(points));
        assertThat(quarter.outlineLength()).isCloseTo(1.571016698, within(2e-6));
        assertThat(quarter.area() / 2).isCloseTo(0.785618083, within(2e-6));
    }

    // Wigley hull midship: half girth 0.833565877 by closed form, area 2/3 BT by calculus
    @Test void theMidshipSectionOfAWigleyHullHasItsGirthAndArea() {
        Section midship = half(Bodies.wigleySection(0, 10, 1, 0.625));
        assertThat(midship.outlineLength()).isCloseTo(0.833565877, Percentage.withPercentage(0.001));
        assertThat(midship.area()).isCloseTo(0.416666667, Percentage.withPercentage(0.001));
    }

    // the closure at an open top is level, counts in the girth and adds no area of its own
    @Test void aSectionOpenAtItsTopIsClosedToTheCentreline() {
        Section open = half(SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.4, 0),
                OutlinePoint.smooth(0.4, 0.3)));
        assertThat(open.topClosure()).isEqualTo(0.4);
        assertThat(open.girth()).isCloseTo(2 * (0.4 + 0.3 + 0.4), within(1e-12));
        assertThat(open.area()).isCloseTo(0.24, within(1e-12));
    }

    // shoelace (0,0)(4,0)(4,3)(0,3) gives 12; textbook
    @Test void twoPointsBetweenKnucklesAreJoinedStraight() {
        Section box = half(Bodies.box(2, 0, 3));
        assertThat(box.area()).isCloseTo(12, within(1e-12));
        assertThat(box.girth()).isCloseTo(14, within(1e-12));
        assertThat(box.centroid().z()).isCloseTo(1.5, within(1e-12));
        assertThat(box.stretches().get(1).at(0.25).z()).isCloseTo(0.75, within(1e-12));
    }

    // polygonised circle: area ratio n/2 sin(2 pi/n)/pi, perimeter ratio n sin(pi/n)/pi, textbook
    @ParameterizedTest
    @CsvSource({ "12, 0.954930, 0.988616", "24, 0.988616, 0.997147", "36, 0.994931, 0.998731", "64, 0.998394, 0.999598" })
    void aCircleOfKnucklesIsItsPolygon(int corners, double areaRatio, double perimeterRatio) {
        List<OutlinePoint> points = Bodies.halfCircle(1, corners / 2 + 1).stream()
                .map(p -> OutlinePoint.knuckle(p.y(), p.z())).toList();
        Section polygon = half(new SectionForm.Points(points));
        assertThat(polygon.area() / Math.PI).isCloseTo(areaRatio, within(6e-7));
        assertThat(polygon.girth() / (2 * Math.PI)).isCloseTo(perimeterRatio, within(6e-7));
    }

    // definition of the arc-length parameter
    @Test void equalSharesOfAStretchAreEqualLengths() {
        Stretch stretch = half(new SectionForm.Superellipse(0.3, 0.48, 2.4, 0.06)).stretches().getFirst();
        for (double u : new double[] { 0, 0.1, 0.37, 0.5, 0.82, 1 }) {
            CurvePoint p = stretch.at(u);
            assertThat(Math.hypot(p.dy(), p.dz())).isCloseTo(stretch.length(), within(1e-9));
        }
    }

    // a circle of radius r has the curvature 1/r all round
    @Test void secondDerivativesGiveTheCurvatureOfACircle() {
        Stretch stretch = half(Bodies.circle(0.5, 0)).stretches().getFirst();
        for (double u : new double[] { 0, 0.2, 0.5, 0.9, 1 }) {
            CurvePoint p = stretch.at(u);
            double curvature = (p.dy() * p.ddz() - p.dz() * p.ddy()) / Math.pow(Math.hypot(p.dy(), p.dz()), 3);
            assertThat(curvature).isCloseTo(2, within(1e-6));
        }
    }

    // chords of a circle stand off it by no more than the tolerance, so its area is short by less than tolerance times girth
    @Test void anOutlineKeepsItsChordTolerance() {
        double tolerance = 1e-4;
        double area = half(Bodies.circle(1, 0)).outline(tolerance).area();
        assertThat(Math.PI - area).isBetween(0.0, 2 * Math.PI * tolerance);
    }
}
