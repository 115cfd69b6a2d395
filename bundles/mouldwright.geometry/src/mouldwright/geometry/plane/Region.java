package mouldwright.geometry.plane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.valid.IsValidOp;

/** A part of a section plane: none, one or several pieces, each with or without holes. */
public final class Region {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    /** Overlays round to a grid of 10 nm: outlines of neighbouring sections run within rounding of each other over long stretches (where nothing is
     *  moulded they coincide), and overlays of such lines in floating point can lose a whole region without a word. */
    private static final PrecisionModel GRID = new PrecisionModel(1e8);

    /** Nothing. */
    public static final Region EMPTY = new Region(List.of());

    private final List<Polygon> polygons;

    private Region(List<Polygon> polygons) {
        this.polygons = polygons;
    }

    /** What an outline encloses; where the outline crosses itself, what it runs round counter-clockwise. */
    public static Region of(Outline outline) {
        return WoundRegion.of(outline.ys(), outline.zs(), p -> true);
    }

    /** What a closed ring, which may cross itself, runs round more often counter-clockwise than clockwise.
     *  @param y half-breadths of its corners, metres
     *  @param z heights of its corners, metres */
    public static Region wound(double[] y, double[] z) {
        return WoundRegion.of(y, z, p -> true);
    }

    /** The same, but only those faces of it whose inside is wanted.
     *  @param wanted asked of one place inside each face */
    public static Region wound(double[] y, double[] z, Predicate<PlanePoint> wanted) {
        return WoundRegion.of(y, z, wanted);
    }

    static Region of(Geometry geometry) {
        List<Polygon> polygons = new ArrayList<>();
        for (Object found : PolygonExtracter.getPolygons(geometry))
            if (found instanceof Polygon polygon && !polygon.isEmpty())
                polygons.add(polygon);
        polygons.sort(Comparator.comparingDouble(Polygon::getArea).reversed());
        return new Region(polygons);
    }

    /** The ring as it stands, if it is simple and runs counter-clockwise. */
    static Polygon polygon(double[] y, double[] z) {
        Coordinate[] ring = new Coordinate[y.length + 1];
        for (int i = 0; i < y.length; i++)
            ring[i] = new Coordinate(y[i], z[i]);
        ring[y.length] = ring[0];
        return FACTORY.createPolygon(ring);
    }

    static boolean valid(Polygon polygon) {
        return new IsValidOp(polygon).isValid();
    }

    /** Whether nothing is left. */
    public boolean isEmpty() { return polygons.isEmpty(); }

    /** Outer outlines of the pieces, largest first. */
    public List<Outline> pieces() {
        return polygons.stream().map(p -> outline(p.getExteriorRing())).toList();
    }

    /** Outlines of the holes of all pieces. */
    public List<Outline> holes() {
        List<Outline> holes = new ArrayList<>();
        for (Polygon p : polygons)
            for (int i = 0; i < p.getNumInteriorRing(); i++)
                holes.add(outline(p.getInteriorRingN(i)));
        return holes;
    }

    private static Outline outline(LinearRing ring) {
        List<PlanePoint> points = new ArrayList<>();
        for (Coordinate c : ring.getCoordinates())
            points.add(new PlanePoint(c.x, c.y));
        return Outline.of(points);
    }

    /** Area, holes taken off, square metres. */
    public double area() {
        return polygons.stream().mapToDouble(Polygon::getArea).sum();
    }

    /** Centroid of the area; the origin if there is none. */
    public PlanePoint centroid() {
        if (isEmpty())
            return new PlanePoint(0, 0);
        Coordinate c = geometry().getCentroid().getCoordinate();
        return new PlanePoint(c.x, c.y);
    }

    /** Pieces and holes smaller than a share of the largest piece left out: the crumbs of rounding. */
    public Region withoutCrumbs(double share) {
        if (isEmpty())
            return this;
        double least = share * polygons.getFirst().getArea();
        return new Region(polygons.stream().filter(p -> p.getArea() >= least).map(p -> filled(p, least)).toList());
    }

    private static Polygon filled(Polygon polygon, double least) {
        List<LinearRing> holes = new ArrayList<>();
        for (int i = 0; i < polygon.getNumInteriorRing(); i++)
            if (FACTORY.createPolygon(polygon.getInteriorRingN(i)).getArea() >= least)
                holes.add(polygon.getInteriorRingN(i));
        return holes.size() == polygon.getNumInteriorRing() ? polygon
                : FACTORY.createPolygon(polygon.getExteriorRing(), holes.toArray(LinearRing[]::new));
    }

    /** The same pieces with their holes filled. */
    public Region withoutHoles() {
        return new Region(polygons.stream().map(p -> filled(p, Double.POSITIVE_INFINITY)).toList());
    }

    /** The largest piece alone. */
    public Region largest() {
        return polygons.size() < 2 ? this : new Region(polygons.subList(0, 1));
    }

    private Geometry geometry() {
        return polygons.size() == 1 ? polygons.getFirst() : FACTORY.createMultiPolygon(polygons.toArray(Polygon[]::new));
    }

    /** What lies in both. */
    public Region intersection(Region other) {
        return isEmpty() || other.isEmpty() ? EMPTY : overlay(other, OverlayNG.INTERSECTION);
    }

    /** What lies in either. */
    public Region union(Region other) {
        return isEmpty() ? other : other.isEmpty() ? this : overlay(other, OverlayNG.UNION);
    }

    /** What lies in this and not in the other. */
    public Region minus(Region other) {
        return isEmpty() || other.isEmpty() ? this : overlay(other, OverlayNG.DIFFERENCE);
    }

    private Region overlay(Region other, int operation) {
        return of(OverlayNG.overlay(geometry(), other.geometry(), operation, GRID));
    }

    /** Area of what lies between two heights measured along a direction.
     *  @param directionY unit vector in the plane, starboard part
     *  @param directionZ unit vector in the plane, upward part
     *  @param low  metres along the direction from the origin
     *  @param high metres along the direction from the origin */
    public double areaBetween(double directionY, double directionZ, double low, double high) {
        double sum = 0;
        for (Polygon p : polygons) {
            sum += Math.abs(between(p.getExteriorRing(), directionY, directionZ, low, high));
            for (int i = 0; i < p.getNumInteriorRing(); i++)
                sum -= Math.abs(between(p.getInteriorRingN(i), directionY, directionZ, low, high));
        }
        return sum;
    }

    /** Green's formula with heights clipped to the band: what an edge spans outside it adds nothing. */
    private static double between(LinearRing ring, double dy, double dz, double low, double high) {
        Coordinate[] c = ring.getCoordinates();
        double sum = 0;
        for (int i = 0; i + 1 < c.length; i++) {
            double h0 = c[i].x * dy + c[i].y * dz, h1 = c[i + 1].x * dy + c[i + 1].y * dz;
            double w0 = c[i].x * dz - c[i].y * dy, w1 = c[i + 1].x * dz - c[i + 1].y * dy;
            double a = Math.clamp(h0, low, high), b = Math.clamp(h1, low, high);
            if (a == b)
                continue;
            double wa = w0 + (w1 - w0) * (a - h0) / (h1 - h0), wb = w0 + (w1 - w0) * (b - h0) / (h1 - h0);
            sum += 0.5 * (wa + wb) * (b - a);
        }
        return sum;
    }

    /** Lowest place along a direction, metres from the origin; infinite if there is nothing. */
    public double lowest(double directionY, double directionZ) {
        double least = Double.POSITIVE_INFINITY;
        for (Polygon p : polygons)
            for (Coordinate c : p.getExteriorRing().getCoordinates())
                least = Math.min(least, c.x * directionY + c.y * directionZ);
        return least;
    }
}
