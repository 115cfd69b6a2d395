package mouldwright.exchange.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Splines against closed forms (L. Piegl and W. Tiller, The NURBS Book, 1997, chapters 1 and 7). */
class SplineTest {

    /** A rational parabola with the middle weight of half the square root of two is a quarter of a circle. */
    @Test void aQuarterCircleIsARationalParabola() {
        Spline quarter = new Spline(2, new double[] {0, 0, 0, 1, 1, 1}, new double[] {1, 1, 0}, new double[] {0, 1, 1}, new double[] {1, Math.sqrt(0.5), 1});
        for (double t = 0; t <= 1; t += 0.125)
            assertThat(Math.hypot(quarter.at(t).x(), quarter.at(t).y())).isEqualTo(1, within(1e-14));
        assertThat(quarter.direction(false).turn(new Point(0, 1))).isLessThan(1e-4);
    }

    /** Without inner knots it is the curve of Bernstein's polynomials. */
    @Test void aCubicWithoutInnerKnotsIsBernsteins() {
        Spline cubic = new Spline(3, new double[] {0, 0, 0, 0, 2, 2, 2, 2}, new double[] {0, 1, 3, 4}, new double[] {0, 2, 2, 0}, new double[] {1, 1, 1, 1});
        double t = 0.3, s = 0.7;
        assertThat(cubic.at(t).x()).isEqualTo(3 * s * s * t + 3 * 3 * s * t * t + 4 * t * t * t, within(1e-14));
        assertThat(cubic.at(t).y()).isEqualTo(3 * 2 * s * s * t + 3 * 2 * s * t * t, within(1e-14));
    }
}
