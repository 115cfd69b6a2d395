package mouldwright.geometry.nest;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Looks at a finished layout by polygon overlay and distance of the JTS library, which the search does not use. */
final class LaidApart {
    /** Places are whole tenths of a micrometre. */
    private static final double ROUNDING = 2e-7;
    private static final GeometryFactory SHAPES = new GeometryFactory();

    private LaidApart() { }

    static Polygon polygon(Placement placement) {
        return SHAPES.createPolygon(ring(placement.outer()), placement.openings().stream().map(LaidApart::ring).toArray(LinearRing[]::new));
    }

    private static LinearRing ring(Outline outline) {
        List<Coordinate> corners = new ArrayList<>();
        for (PlanePoint p : outline.points())
            corners.add(new Coordinate(p.y(), p.z()));
        corners.add(corners.getFirst().copy());
        return SHAPES.createLinearRing(corners.toArray(Coordinate[]::new));
    }

    /** No two parts of a sheet are nearer than the kerf, none is nearer to an edge than the margin, and none is lost, doubled or reshaped. */
    static void check(Nest nest) {
        NestOrder order = nest.order();
        List<String> keys = new ArrayList<>(nest.placements().stream().map(p -> p.part().key()).toList());
        nest.tooLarge().forEach(part -> keys.add(part.key()));
        assertThat(keys).containsExactlyInAnyOrderElementsOf(order.parts().stream().map(NestPart::key).toList());
        for (int sheet = 0; sheet < nest.sheets(); sheet++) {
            List<Polygon> laid = nest.on(sheet).stream().map(LaidApart::polygon).toList();
            assertThat(laid).isNotEmpty();
            for (int i = 0; i < laid.size(); i++) {
                Envelope box = laid.get(i).getEnvelopeInternal();
                assertThat(Math.min(box.getMinX(), box.getMinY())).isGreaterThanOrEqualTo(order.margin() - ROUNDING);
                assertThat(box.getMaxX()).isLessThanOrEqualTo(nest.taken().get(sheet).length() - order.margin() + ROUNDING);
                assertThat(box.getMaxY()).isLessThanOrEqualTo(nest.taken().get(sheet).width() - order.margin() + ROUNDING);
                for (int j = 0; j < i; j++) {
                    assertThat(laid.get(i).intersection(laid.get(j)).getArea()).as("overlap").isLessThan(ROUNDING);
                    assertThat(order.kerf() == 0 || laid.get(i).distance(laid.get(j)) >= order.kerf() - ROUNDING).as("a kerf apart").isTrue();
                }
            }
        }
        assertThat(nest.placements()).allSatisfy(p -> {
            assertThat(p.part().turns().degrees()).contains(p.degrees());
            assertThat(polygon(p).getArea()).isCloseTo(p.part().area(), org.assertj.core.data.Offset.offset(1e-12));
        });
        assertThat(nest.sheets()).isGreaterThanOrEqualTo(nest.leastSheets());
    }
}
