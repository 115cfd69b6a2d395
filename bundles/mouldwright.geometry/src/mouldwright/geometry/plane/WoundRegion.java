package mouldwright.geometry.plane;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.polygonize.Polygonizer;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.locationtech.jts.operation.valid.IsValidOp;

/** Cleans the crossings of a ring. Loops that only want cutting off are cut; a ring more tangled than that is noded and cut into
 *  faces, and of these is kept what the ring runs round counter-clockwise. Loops turned inside out by moving a line in or out
 *  run clockwise and so fall away.
 *
 *  @param region what is left
 *  @param edges  of each edge of the only piece the edge of the ring it lies on; empty if the ring was tangled */
public record WoundRegion(Region region, Optional<int[]> edges) {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final WoundRegion NOTHING = new WoundRegion(Region.EMPTY, Optional.of(new int[0]));

    /** What a closed ring, which may cross itself, runs round more often counter-clockwise than clockwise.
     *  @param y half-breadths of its corners, metres
     *  @param z heights of its corners, metres
     *  @param wanted asked of one place inside each face; only faces that are wanted are kept
     *  @param filled whether holes are filled */
    public static WoundRegion of(double[] y, double[] z, Predicate<PlanePoint> wanted, boolean filled) {
        if (y.length < 3)
            return NOTHING;
        return LoopCutter.cut(y, z, filled).map(cut -> simple(cut, wanted))
                .orElseGet(() -> new WoundRegion(tangled(y, z, wanted, filled), Optional.empty()));
    }

    private static WoundRegion simple(LoopCutter.Cut cut, Predicate<PlanePoint> wanted) {
        Outline outline = Outline.ring(cut.y(), cut.z());
        return cut.y().length >= 3 && outline.inside().filter(wanted).isPresent()
                ? new WoundRegion(Region.simple(outline), Optional.of(cut.edges())) : NOTHING;
    }

    static Region tangled(double[] y, double[] z, Predicate<PlanePoint> wanted, boolean filled) {
        Region region = faces(y, z, wanted);
        return filled ? region.withoutHoles() : region;
    }

    private static Region faces(double[] y, double[] z, Predicate<PlanePoint> wanted) {
        Polygon ring = FACTORY.createPolygon(Piece.corners(y, z));
        if (new IsValidOp(ring).isValid())
            return Orientation.isCCW(ring.getExteriorRing().getCoordinates()) && inside(ring).filter(wanted).isPresent()
                    ? Region.of(ring) : Region.EMPTY;
        Geometry noded = OverlayNGRobust.union(FACTORY.createLineString(ring.getExteriorRing().getCoordinates()));
        Polygonizer polygonizer = new Polygonizer();
        polygonizer.add(noded.norm());
        List<Geometry> faces = new ArrayList<>();
        for (Object face : polygonizer.getPolygons())
            faces.add(((Geometry) face).norm());
        // The polygonizer finds faces in the order of its objects' hashes, which differs from run to run; so would the last digits of every area.
        faces.sort(null);
        List<Geometry> kept = new ArrayList<>();
        for (Geometry g : faces) {
            if (inside(g).filter(p -> Winding.number(y, z, p.y(), p.z()) > 0).filter(wanted).isPresent())
                kept.add(g);
        }
        return kept.isEmpty() ? Region.EMPTY : Region.of(kept.size() == 1 ? kept.getFirst() : UnaryUnionOp.union(kept));
    }

    private static Optional<PlanePoint> inside(Geometry face) {
        return Optional.ofNullable(face.getInteriorPoint().getCoordinate()).map((Coordinate c) -> new PlanePoint(c.x, c.y));
    }
}
