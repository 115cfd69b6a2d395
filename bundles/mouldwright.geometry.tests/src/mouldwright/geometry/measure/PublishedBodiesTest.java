package mouldwright.geometry.measure;

import static mouldwright.geometry.Bodies.NEVER;
import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.section.SectionForm;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole bodies against figures others published or calculus gives. */
class PublishedBodiesTest {

    private static Measures measures(Loft loft) {
        return Measures.of(loft, Bare.NONE, NEVER);
    }

    // Wigley hull, textbook and ITTC form: volume 4/9 LBT by calculus; wetted surface by double quadrature to 1e-12;
    // waterplane 2/3 LB; centre of buoyancy 5T/8 above the keel
    @ParameterizedTest
    @CsvSource({ "10, 1, 0.625, 2.777777778, 6.666666667, 14.879063105", "100, 10, 6.25, 2777.777778, 666.666667, 1487.906310",
        "100, 10, 5, 2222.222222, 666.666667, 1275.281047" })
    void aWigleyHullOfTwentyOneStations(double length, double breadth, double draught, double volume, double waterplane,
            double wetted) {
        Measures hull = measures(Bodies.wigley(length, breadth, draught, 21));
        VolumeCentre displaced = hull.volume();
        assertThat(displaced.volume().value()).isCloseTo(volume, Percentage.withPercentage(0.1));
        assertThat(hull.area().moulded().value()).isCloseTo(wetted, Percentage.withPercentage(0.1));
        assertThat(hull.area().closure().value()).isCloseTo(waterplane, Percentage.withPercentage(0.1));
        assertThat(displaced.z() + draught).isCloseTo(0.625 * draught, Percentage.withPercentage(0.1));
        assertThat(displaced.x()).isCloseTo(0, within(1e-9 * length));
    }

    // closed forms: V 4/3 pi abc; areas of (2,1,1) and (1,1,.5) by the spheroid formulas, as computed from the textbook
    @ParameterizedTest
    @CsvSource({ "2, 1, 1, 8.377580410, 21.478435328", "1, 1, 0.5, 2.094395102, 8.671882703", "0.5, 1, 1, 2.094395102, 8.671882703",
        "1, 0.5, 1, 2.094395102, 8.671882703", "1, 1, 1, 4.188790205, 12.566370614" })
    void anEllipsoidWithPointedEndsOfTwentyOneStations(double a, double b, double c, double volume, double area) {
        Measures body = measures(Bodies.ellipsoid(a, b, c, 21));
        assertThat(body.volume().volume().value()).isCloseTo(volume, Percentage.withPercentage(0.1));
        assertThat(body.area().total().value()).isCloseTo(area, Percentage.withPercentage(0.3));
    }

    // closed form: pi r^2 h / 2 and pi r / (6 h^2) ((r^2 + 4 h^2)^1.5 - r^3)
    @Test void aParaboloidWithABluntNose() {
        Measures body = measures(loft(x -> half(Bodies.circle(0.5 * Math.sqrt(x), 0)), Bodies.spread(0, 1, 21)));
        assertThat(body.volume().volume().value()).isCloseTo(0.392699082, Percentage.withPercentage(0.1));
        assertThat(body.area().total().value()).isCloseTo(2.261056450, Percentage.withPercentage(0.1));
    }

    // closed form: cone frustum R .5, r .3, h .8; lateral area without the ends
    @Test void aConeFrustumNeedsTwoStationsOnly() {
        Measures body = measures(Bodies.frustum(0.5, 0.3, 0.8, 2));
        assertThat(body.volume().volume().value()).isCloseTo(0.410501440, within(1e-9));
        assertThat(body.area().total().value()).isCloseTo(2.072498935, within(1e-8));
    }

    // closed form: a full cone to its point, radius .3, height .4: pi r^2 h / 3 and pi r s with s = .5
    @Test void aConeEndsSharpInItsPoint() {
        Measures body = measures(Bodies.frustum(0, 0.3, 0.4, 5));
        assertThat(body.volume().volume().value()).isCloseTo(Math.PI * 0.09 * 0.4 / 3, within(1e-9));
        assertThat(body.area().total().value()).isCloseTo(Math.PI * 0.3 * 0.5, within(1e-9));
    }

    // closed form: square-pyramid frustum A1 .9, A2 .4, h .5: .316666667 by h/3 (A1 + A2 + sqrt(A1 A2)) and the prismoidal rule
    @Test void aSquarePyramidFrustumHasThePrismoidalVolume() {
        double large = Math.sqrt(0.9) / 2, small = Math.sqrt(0.4) / 2;
        Loft body = loft(x -> {
            double side = large + (small - large) * x / 0.5;
            return half(Bodies.box(side, -side, side));
        }, 0, 0.5);
        Measured volume = measures(body).volume().volume();
        assertThat(volume.value()).isCloseTo(0.316666667, within(1e-9));
        assertThat(volume.errorEstimate()).isLessThan(1e-12);
    }

    // worked example of a textbook on naval architecture: half-ordinates of a waterplane at h = 20 m give 1206.667 m2 by
    // Simpson's rule. Laid as the level top of a body they are integrated here by splines, so the two rules agree to 1 % only.
    @Test void aWaterplaneComesWithinOnePercentOfSimpsonsRule() {
        double[] halves = { 0, 3.7, 5.9, 7.6, 7.5, 4.6, 0.1 };
        Loft body = loft(x -> half(wedge(halves[(int) Math.round(x / 20)])), Bodies.spread(0, 120, 7));
        assertThat(measures(body).area().closure().value()).isCloseTo(1206.667, Percentage.withPercentage(1));
    }

    private static SectionForm wedge(double halfBreadth) {
        return halfBreadth == 0 ? SectionForm.Points.of(point(0, -1), point(0, 0))
                : SectionForm.Points.of(point(0, -1), point(halfBreadth, 0));
    }

    private static mouldwright.geometry.section.OutlinePoint point(double y, double z) {
        return mouldwright.geometry.section.OutlinePoint.smooth(y, z);
    }

    // Reed's Naval Architecture (from memory): section areas 5 ... 0 at L = 180 m give 41970 m3 by Simpson's rule. Boxes of
    // those areas are integrated here by splines, so the two rules agree to 1 % only.
    @Test void sectionAreasComeWithinOnePercentOfSimpsonsVolume() {
        double[] areas = { 5, 118, 233, 291, 303, 304, 304, 302, 283, 171, 0 };
        Loft body = loft(x -> {
            double area = areas[(int) Math.round(x / 18)];
            return half(area == 0 ? SectionForm.Points.of(point(0, 0), point(0, 10)) : Bodies.box(area / 20, 0, 10));
        }, Bodies.spread(0, 180, 11));
        assertThat(measures(body).volume().volume().value()).isCloseTo(41970, Percentage.withPercentage(1));
    }

    // a published hull at model scale: length by k, area by k^2, volume by k^3 (DTMB 5415, 2972.6 m2 / 35.48^2 = 2.3614 m2)
    @Test void aModelOfAShipHasItsAreaByTheSquareAndItsVolumeByTheCubeOfTheScale() {
        Loft ship = Bodies.wigley(142, 19.06, 6.15, 11), model = ship.scaled(1 / 35.48);
        double area = measures(ship).area().total().value() / measures(model).area().total().value();
        double volume = measures(ship).volume().volume().value() / measures(model).volume().volume().value();
        assertThat(area).isCloseTo(2972.6 / 2.36140, Percentage.withPercentage(0.001));
        assertThat(volume).isCloseTo(8424.4 / 0.18862, Percentage.withPercentage(0.01));
        assertThat(model.endX() - model.startX()).isCloseTo(142 / 35.48, within(1e-12));
    }
}
