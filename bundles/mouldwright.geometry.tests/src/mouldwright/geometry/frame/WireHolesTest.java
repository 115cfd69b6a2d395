package mouldwright.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import org.junit.jupiter.api.Test;

/** Holes that line up plates: one height, alike to port and starboard, in as many plates as have room. */
class WireHolesTest {

    private static Region plate(double half, double low, double high) {
        return Region.of(PlatePartTest.box(-half, low, half, high));
    }

    @Test void everyPlateHasRoomForThePairThatIsFound() {
        List<Region> woods = List.of(plate(0.3, 0.1, 0.5), plate(0.2, 0.2, 0.6), plate(0.25, 0, 0.45));
        List<PlanePoint> pair = WireHoles.common(woods, 0.008, 0.010);
        assertThat(pair).hasSize(2);
        assertThat(pair.get(0).y()).isEqualTo(-pair.get(1).y());
        assertThat(pair.get(0).z()).isEqualTo(pair.get(1).z());
        assertThat(woods).allSatisfy(wood -> assertThat(pair).allSatisfy(place -> assertThat(wood.clear(place)).isGreaterThanOrEqualTo(0.014)));
    }

    @Test void theyStandAsWideApartAsTheNarrowestPlateAllows() { // whole steps of 25 mm, a twelfth of 300 mm
        List<PlanePoint> pair = WireHoles.common(List.of(plate(0.3, 0, 0.5), plate(0.2, 0, 0.5)), 0.008, 0.010);
        assertThat(pair.get(1).y()).isEqualTo(0.175);
    }

    @Test void aPocketIsAvoided() {
        Region ring = plate(0.3, 0, 0.6).minus(plate(0.2, 0.1, 0.5));
        List<PlanePoint> pair = WireHoles.common(List.of(ring, plate(0.3, 0, 0.6)), 0.008, 0.010);
        assertThat(pair).hasSize(2).allSatisfy(place -> assertThat(ring.clear(place)).isGreaterThanOrEqualTo(0.014));
    }

    @Test void platesThatShareNoPlaceHaveNone() {
        assertThat(WireHoles.common(List.of(plate(0.3, 0, 0.2), plate(0.3, 0.4, 0.6)), 0.008, 0.010)).isEmpty();
    }

    @Test void whereNotAllHaveRoomMostOfThemCount() {
        List<Region> woods = List.of(plate(0.3, 0, 0.2), plate(0.3, 0.4, 0.6), plate(0.3, 0.4, 0.7));
        assertThat(WireHoles.common(woods, 0.008, 0.010)).hasSize(2).allSatisfy(place -> assertThat(place.z()).isBetween(0.4, 0.6));
    }
}
