package mouldwright.geometry.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.union.UnaryUnionOp;

/** Cleans the crossings of a ring: noded, cut into faces, and of these kept what the ring runs round counter-clockwise. Loops
 *  turned inside out by moving a line in or out run clockwise and so fall away. */
final class WoundRegion {
    private WoundRegion() { }

    static Region of(double[] y, double[] z, Predicate<PlanePoint> wanted) {
        if (y.length < 3)
            return Region.EMPTY;
        Polygon ring = Region.polygon(y, z);
        if (Region.valid(ring))
            return Orientation.isCCW(ring.getExteriorRing().getCoordinates()) && inside(ring).filter(wanted).isPresent()
                    ? Region.of(ring) : Region.EMPTY;
        Geometry noded = OverlayNGRobust.union(ring.getFactory().createLineString(ring.getExteriorRing().getCoordinates()));
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(noded);
        List<Geometry> faces = new ArrayList<>();
        for (Object face : polygonizer.getPolygons())
            faces.add(((Geometry) face).norm());
        // The polygonizer finds faces, and begins their rings, in an order that differs from run to run; so would the last digits of every area.
        faces.sort(null);
        List<Geometry> kept = new ArrayList<>();
        for (Geometry g : faces) {
            if (inside(g).filter(p -> Winding.number(y, z, p.y(), p.z()) > 0).filter(wanted).isPresent())
                kept.add(g);
        }
        return kept.isEmpty() ? Region.EMPTY : Region.of(kept.size() == 1 ? kept.getFirst() : UnaryUnionOp.union(kept));
    }

    private static Optional<PlanePoint> inside(Geometry face) {
        return Optional.ofNullable(face.getInteriorPoint().getCoordinate()).map(c -> new PlanePoint(c.x, c.y));
    }
}
