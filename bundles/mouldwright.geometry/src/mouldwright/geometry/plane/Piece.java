package mouldwright.geometry.plane;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** A piece of a region.
 *
 *  @param outer its outline
 *  @param holes in it, apart from one another
 *  @param area  holes taken off, square metres */
record Piece(Outline outer, List<Outline> holes, double area) {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    static Piece of(Outline outer, List<Outline> holes) {
        double area = outer.area();
        for (Outline hole : holes)
            area -= hole.area();
        return new Piece(outer, List.copyOf(holes), area);
    }

    static Piece of(Polygon polygon) {
        List<Outline> holes = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++)
            holes.add(outline(polygon.getInteriorRingN(i)));
        return of(outline(polygon.getExteriorRing()), holes);
    }

    private static Outline outline(LinearRing ring) {
        List<PlanePoint> points = new ArrayList<>();
        for (Coordinate c : ring.getCoordinates())
            points.add(new PlanePoint(c.x, c.y));
        return Outline.of(points);
    }

    Polygon polygon() {
        return FACTORY.createPolygon(ring(outer), holes.stream().map(Piece::ring).toArray(LinearRing[]::new));
    }

    private static LinearRing ring(Outline outline) {
        return FACTORY.createLinearRing(corners(outline.ys(), outline.zs()));
    }

    /** Corners with the first one repeated. */
    static Coordinate[] corners(double[] y, double[] z) {
        Coordinate[] ring = new Coordinate[y.length + 1];
        for (int i = 0; i < y.length; i++)
            ring[i] = new Coordinate(y[i], z[i]);
        ring[y.length] = ring[0];
        return ring;
    }

    /** The same without holes smaller than an area. */
    Piece filled(double least) {
        List<Outline> kept = holes.stream().filter(hole -> hole.area() >= least).toList();
        return kept.size() == holes.size() ? this : of(outer, kept);
    }

    /** How far a place lies inside, metres; negative outside. */
    double clear(PlanePoint place) {
        double clear = inside(outer, place);
        for (Outline hole : holes)
            clear = Math.min(clear, -inside(hole, place));
        return clear;
    }

    private static double inside(Outline ring, PlanePoint place) {
        double distance = ring.distance(place);
        return ring.contains(place) ? distance : -distance;
    }

    double areaWithin(ConvexClip clip) {
        double sum = clip.of(outer).map(Outline::area).orElse(0.0);
        for (Outline hole : holes)
            sum -= clip.of(hole).map(Outline::area).orElse(0.0);
        return sum;
    }

    double areaBetween(double directionY, double directionZ, double low, double high) {
        double sum = outer.areaBetween(directionY, directionZ, low, high);
        for (Outline hole : holes)
            sum -= hole.areaBetween(directionY, directionZ, low, high);
        return sum;
    }
}
