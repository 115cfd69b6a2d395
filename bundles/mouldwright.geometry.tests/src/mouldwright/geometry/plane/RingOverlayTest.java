package mouldwright.geometry.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Rings overlaid by walking along them, against closed forms and against the overlays of the JTS Topology Suite. */
class RingOverlayTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private static Outline star(List<Double> radii, double y, double z) {
        int n = radii.size();
        return Outline.of(IntStream.range(0, n).mapToObj(i -> new PlanePoint(y + radii.get(i) * Math.cos(2 * Math.PI * i / n),
                z + radii.get(i) * Math.sin(2 * Math.PI * i / n))).toList());
    }

    private static Geometry polygon(Outline outline) {
        Coordinate[] ring = outline.points().stream().map(p -> new Coordinate(p.y(), p.z())).toArray(Coordinate[]::new);
        Coordinate[] closed = java.util.Arrays.copyOf(ring, ring.length + 1);
        closed[ring.length] = ring[0];
        return FACTORY.createPolygon(closed);
    }

    // the JTS Topology Suite 1.20
    @Property(tries = 300)
    void starsAreOverlaidAsAnotherLibraryDoes(@ForAll @Size(11) List<@DoubleRange(min = 0.1, max = 1) Double> a,
            @ForAll @Size(14) List<@DoubleRange(min = 0.1, max = 1) Double> b, @ForAll @DoubleRange(min = -1.5, max = 1.5) double y,
            @ForAll @DoubleRange(min = -1.5, max = 1.5) double z) {
        Outline first = star(a, 0, 0), second = star(b, y, z);
        Region mine = Region.of(first), its = Region.of(second);
        Geometry one = polygon(first), other = polygon(second);
        assertThat(mine.intersection(its).area()).isCloseTo(one.intersection(other).getArea(), within(1e-7));
        assertThat(mine.union(its).area()).isCloseTo(one.union(other).getArea(), within(1e-7));
        assertThat(mine.minus(its).area()).isCloseTo(one.difference(other).getArea(), within(1e-7));
    }

    private static Outline box(double fromY, double fromZ, double toY, double toZ) {
        return Outline.of(List.of(new PlanePoint(fromY, fromZ), new PlanePoint(toY, fromZ), new PlanePoint(toY, toZ), new PlanePoint(fromY, toZ)));
    }

    // closed form: boxes that share two edges, as neighbouring plates share a bare bottom
    @Test void boxesThatShareEdgesAreOverlaidToANanometre() {
        Region low = Region.of(box(0, 0, 2, 1)), high = Region.of(box(0, 0, 1, 3));
        assertThat(low.intersection(high).area()).isCloseTo(1, within(1e-8));
        assertThat(low.union(high).area()).isCloseTo(4, within(1e-8));
        assertThat(low.minus(high).withoutCrumbs(1e-6).area()).isCloseTo(1, within(1e-8));
    }

    @Test void aRegionAndItselfAreOne() {
        Region box = Region.of(box(0, 0, 2, 1));
        assertThat(box.intersection(Region.of(box(0, 0, 2, 1))).area()).isCloseTo(2, within(1e-8));
        assertThat(box.union(Region.of(box(0, 0, 2, 1))).pieces()).hasSize(1);
    }

    // closed form: a comb of two teeth cut across leaves two pieces, and bridged over leaves a hole
    @Test void teethAreCutApartAndBridged() {
        Outline comb = Outline.of(List.of(new PlanePoint(0, 0), new PlanePoint(3, 0), new PlanePoint(3, 2), new PlanePoint(2, 2),
                new PlanePoint(2, 1), new PlanePoint(1, 1), new PlanePoint(1, 2), new PlanePoint(0, 2)));
        Region teeth = Region.of(comb), bar = Region.of(box(-1, 1.5, 4, 3));
        assertThat(teeth.intersection(bar).pieces()).hasSize(2);
        assertThat(teeth.intersection(bar).area()).isCloseTo(1, within(1e-12));
        assertThat(teeth.union(bar).holes()).singleElement().satisfies(hole -> assertThat(hole.area()).isCloseTo(0.5, within(1e-12)));
        assertThat(teeth.minus(bar).area()).isCloseTo(4, within(1e-12));
    }

    @Test void whatLiesBesideStaysTwoPieces() {
        Region two = Region.of(box(0, 0, 1, 1)).union(Region.of(box(2, 0, 4, 1)));
        assertThat(two.pieces()).hasSize(2);
        assertThat(two.pieces().getFirst().minY()).isEqualTo(2);
        assertThat(Region.of(box(0, 0, 1, 1)).intersection(Region.of(box(2, 0, 4, 1))).isEmpty()).isTrue();
    }

    // closed form: of a 4 by 3 box with a 1 by 1 hole a 2 by 2 clip over half of the hole keeps 3.5
    @Test void aConvexClipCountsHoles() {
        Region ring = Region.of(box(0, 0, 4, 3)).minus(Region.of(box(1, 1, 2, 2)));
        ConvexClip clip = ConvexClip.covering(List.of(box(1.5, 0.5, 3.5, 2.5))).getFirst();
        assertThat(ring.areaWithin(clip)).isCloseTo(3.5, within(1e-12));
        assertThat(clip.share(0, 1, 4, 1)).isCloseTo(0.5, within(1e-12));
    }

    // closed form: an L of 3 square units and a box that overlaps it by 1
    @Test void outlinesThatAreHollowOrOverlapAreCoveredOnce() {
        Outline hollow = Outline.of(List.of(new PlanePoint(0, 0), new PlanePoint(2, 0), new PlanePoint(2, 1), new PlanePoint(1, 1),
                new PlanePoint(1, 2), new PlanePoint(0, 2)));
        Region all = Region.of(box(-5, -5, 5, 5));
        double covered = ConvexClip.covering(List.of(hollow, box(0, 1, 1, 4))).stream().mapToDouble(all::areaWithin).sum();
        assertThat(covered).isCloseTo(5, within(1e-7));
    }
}
