package mouldwright.geometry.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** Splines by the polynomials they must reproduce. */
class CubicSplineTest {
    private static final double[] KNOTS = { 0, 0.4, 1.1, 1.5, 2.3, 3 };

    private static CubicSpline through(double[] knots, DoubleUnaryOperator f, EndCondition start, EndCondition end) {
        return CubicSpline.through(knots, rows(knots, f), start, end);
    }

    private static double[][] rows(double[] knots, DoubleUnaryOperator f) {
        double[][] rows = new double[knots.length][1];
        for (int i = 0; i < knots.length; i++)
            rows[i][0] = f.applyAsDouble(knots[i]);
        return rows;
    }

    // not-a-knot ends reproduce every cubic (de Boor)
    @Test void freeEndsReproduceACubic() {
        CubicSpline spline = through(KNOTS, t -> 2 - t + 3 * t * t - 0.7 * t * t * t, EndCondition.NOT_A_KNOT,
                EndCondition.NOT_A_KNOT);
        assertThat(spline.value(0.2, 0)).isCloseTo(2 - 0.2 + 0.12 - 0.0056, within(1e-12));
        assertThat(spline.first(2.7, 0)).isCloseTo(-1 + 16.2 - 2.1 * 7.29, within(1e-11));
        assertThat(spline.second(1.3, 0)).isCloseTo(6 - 4.2 * 1.3, within(1e-10));
    }

    @Test void fourPointsAreOneCubic() {
        CubicSpline spline = through(new double[] { 0, 1, 2, 4 }, t -> t * t * t, EndCondition.NOT_A_KNOT,
                EndCondition.NOT_A_KNOT);
        assertThat(spline.value(3, 0)).isCloseTo(27, within(1e-11));
    }

    @Test void threePointsAreAParabola() {
        CubicSpline spline = through(new double[] { 0, 1, 3 }, t -> 1 + t * t, EndCondition.NOT_A_KNOT, EndCondition.NOT_A_KNOT);
        assertThat(spline.value(2, 0)).isCloseTo(5, within(1e-12));
        assertThat(spline.second(0.5, 0)).isCloseTo(2, within(1e-12));
    }

    @Test void twoPointsAreALine() {
        CubicSpline spline = through(new double[] { 1, 3 }, t -> 4 * t, EndCondition.NOT_A_KNOT, EndCondition.NOT_A_KNOT);
        assertThat(spline.value(2.5, 0)).isCloseTo(10, within(1e-12));
        assertThat(spline.first(1.1, 0)).isCloseTo(4, within(1e-12));
    }

    // an even function is level at its middle, an odd one has no curvature there: what a mirrored curve asks for
    @Test void levelAndStraightEndsAreThoseOfEvenAndOddCubics() {
        CubicSpline even = through(KNOTS, t -> 3 - t * t, EndCondition.LEVEL, EndCondition.NOT_A_KNOT);
        CubicSpline odd = through(KNOTS, t -> 2 * t - t * t * t, EndCondition.STRAIGHT, EndCondition.NOT_A_KNOT);
        assertThat(even.value(0.2, 0)).isCloseTo(2.96, within(1e-12));
        assertThat(odd.value(0.2, 0)).isCloseTo(0.392, within(1e-12));
        assertThat(odd.second(0, 0)).isCloseTo(0, within(1e-12));
    }

    @Test void theSameHoldsAtTheOtherEnd() {
        CubicSpline even = through(KNOTS, t -> 3 - (t - 3) * (t - 3), EndCondition.NOT_A_KNOT, EndCondition.LEVEL);
        assertThat(even.value(2.8, 0)).isCloseTo(2.96, within(1e-12));
    }

    // a closed spline joins itself with equal slope and curvature
    @Test void aClosedSplineJoinsItself() {
        double[] knots = { 0, 0.7, 1.9, 2.8, 4.1, 5.2, 2 * Math.PI };
        CubicSpline spline = CubicSpline.periodic(knots, rows(knots, t -> t == 2 * Math.PI ? 0 : Math.sin(t)));
        assertThat(spline.first(0, 0)).isCloseTo(spline.first(2 * Math.PI, 0), within(1e-12));
        assertThat(spline.second(0, 0)).isCloseTo(spline.second(2 * Math.PI, 0), within(1e-10));
        assertThat(spline.first(1.9 - 1e-9, 0)).isCloseTo(spline.first(1.9 + 1e-9, 0), within(1e-7));
        assertThat(spline.value(3.4, 0)).isCloseTo(Math.sin(3.4), within(0.01));
    }

    @Test void aSplineThatTurnsBackDoesNotRise() {
        assertThat(through(new double[] { 0, 1, 2, 3 }, t -> t + t * t, EndCondition.NOT_A_KNOT, EndCondition.NOT_A_KNOT).rises(0))
                .isTrue();
        assertThat(CubicSpline.through(new double[] { 0, 1, 1.1, 3 }, new double[][] { { 0 }, { 1 }, { 5 }, { 5.1 } },
                EndCondition.NOT_A_KNOT, EndCondition.NOT_A_KNOT).rises(0)).isFalse();
    }

    // degree of exactness: 3-point Gauss 5, Kronrod's 7-point rule over it 10 at least
    @Test void bothQuadratureOrdersIntegratePolynomialsOfTheirDegree() {
        double low = 0, high = 0;
        for (int i = 0; i < Kronrod.SIZE; i++) {
            low += Kronrod.low(i) * Math.pow(Kronrod.node(i), 5);
            high += Kronrod.high(i) * Math.pow(Kronrod.node(i), 10);
        }
        assertThat(low).isCloseTo(1.0 / 6, within(1e-15));
        assertThat(high).isCloseTo(1.0 / 11, within(1e-15));
    }
}
