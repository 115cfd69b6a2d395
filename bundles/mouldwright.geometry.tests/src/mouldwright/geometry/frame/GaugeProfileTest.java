package mouldwright.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import org.junit.jupiter.api.Test;

/** The female half of a section. */
class GaugeProfileTest {

    private static final Outline CIRCLE = circle(0.3, 0.5);

    private static Outline circle(double radius, double height) {
        List<PlanePoint> points = new ArrayList<>();
        for (int k = 0; k < 720; k++)
            points.add(new PlanePoint(radius * Math.cos(Math.PI * k / 360), height + radius * Math.sin(Math.PI * k / 360)));
        return Outline.of(points);
    }

    @Test void itIsTheBoxLessTheSection() { // closed form: a box round a half circle, 100 mm deep
        Outline half = GaugeProfile.half(CIRCLE, false, 0.1, 0.9, 0.1);
        assertThat(half.area()).isCloseTo(0.4 * 0.8 - Math.PI * 0.09 / 2, within(2e-5));
        assertThat(half.maxY()).isCloseTo(0.4, within(1e-12));
    }

    @Test void itTouchesTheSectionAlongItsWholeInside() {
        Outline half = GaugeProfile.half(CIRCLE, false, 0.1, 0.9, 0.1);
        assertThat(half.points().stream().filter(p -> p.y() > 1e-9 && p.y() < 0.35)).hasSizeGreaterThan(300)
                .allSatisfy(p -> assertThat(Math.hypot(p.y(), p.z() - 0.5)).isCloseTo(0.3, within(1e-4)));
    }

    @Test void theHalvesAreImagesOfEachOtherAndMeetOnTheCentreline() {
        Outline port = GaugeProfile.half(CIRCLE, true, 0.1, 0.9, 0.1), starboard = GaugeProfile.half(CIRCLE, false, 0.1, 0.9, 0.1);
        assertThat(port.area()).isCloseTo(starboard.area(), within(1e-12));
        assertThat(port.maxY()).isCloseTo(0, within(1e-12));
        assertThat(starboard.minY()).isCloseTo(0, within(1e-12));
    }

    @Test void itEndsWhereItIsTold() {
        Outline half = GaugeProfile.half(CIRCLE, false, 0.4, 0.7, 0.1);
        assertThat(half.minZ()).isEqualTo(0.4);
        assertThat(half.maxZ()).isEqualTo(0.7);
        assertThat(half.minY()).isCloseTo(Math.sqrt(0.09 - 0.04), within(1e-4));
    }

    @Test void underAnOverhangItPassesSoThatItCanBePushedOn() { // a mushroom: the cap overhangs the stem
        Outline mushroom = Outline.of(List.of(new PlanePoint(-0.1, 0), new PlanePoint(0.1, 0), new PlanePoint(0.1, 0.4), new PlanePoint(0.3, 0.3),
                new PlanePoint(0.3, 0.5), new PlanePoint(-0.3, 0.5), new PlanePoint(-0.3, 0.3), new PlanePoint(-0.1, 0.4)));
        Outline half = GaugeProfile.half(mushroom, false, 0, 0.5, 0.1);
        assertThat(Region.of(half).pieces()).hasSize(1);
        for (double slide = 0; slide < 0.5; slide += 0.05) {
            double by = slide;
            Outline slid = Outline.of(half.points().stream().map(p -> new PlanePoint(p.y() + by, p.z())).toList());
            assertThat(Region.of(slid).intersection(Region.of(mushroom)).area()).as("pushed off by " + by).isLessThan(1e-9);
        }
    }
}
