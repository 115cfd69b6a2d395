package mouldwright.geometry.plane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;

/** A part of a section plane: none, one or several pieces, each with or without holes. */
public final class Region {
    /** Overlays round to a grid of 10 nm: outlines of neighbouring sections run within rounding of each other over long stretches (where nothing is
     *  moulded they coincide), and overlays of such lines in floating point can lose a whole region without a word. */
    private static final PrecisionModel GRID = new PrecisionModel(1e8);
    /** Largest first; equal ones by where they lie, so that the order never hangs on how they were found. */
    private static final Comparator<Piece> ORDER = Comparator.comparingDouble(Piece::area).reversed()
            .thenComparingDouble(piece -> piece.outer().minY()).thenComparingDouble(piece -> piece.outer().minZ());

    /** Nothing. */
    public static final Region EMPTY = new Region(List.of());

    private final List<Piece> pieces;

    private Region(List<Piece> pieces) {
        this.pieces = pieces;
    }

    /** What an outline encloses; where the outline crosses itself, what it runs round counter-clockwise. */
    public static Region of(Outline outline) {
        return wound(outline.ys(), outline.zs());
    }

    /** What a closed ring, which may cross itself, runs round more often counter-clockwise than clockwise.
     *  @param y half-breadths of its corners, metres
     *  @param z heights of its corners, metres */
    public static Region wound(double[] y, double[] z) {
        return WoundRegion.of(y, z, p -> true, false).region();
    }

    /** In the same order, and each ring from the same corner, whichever way they were found. */
    static Region of(Geometry geometry) {
        List<Piece> pieces = new ArrayList<>();
        for (Object found : PolygonExtracter.getPolygons(geometry.norm()))
            if (found instanceof Polygon polygon && !polygon.isEmpty())
                pieces.add(Piece.of(polygon));
        pieces.sort(ORDER);
        return new Region(pieces);
    }

    static Region simple(Outline outline) {
        return new Region(List.of(Piece.of(outline, List.of())));
    }

    /** Whether nothing is left. */
    public boolean isEmpty() { return pieces.isEmpty(); }

    /** Outer outlines of the pieces, largest first. */
    public List<Outline> pieces() {
        return pieces.stream().map(Piece::outer).toList();
    }

    List<Piece> parts() { return pieces; }

    /** Outlines of the holes of all pieces. */
    public List<Outline> holes() {
        return pieces.stream().flatMap(piece -> piece.holes().stream()).toList();
    }

    /** Area, holes taken off, square metres. */
    public double area() {
        double sum = 0;
        for (Piece piece : pieces)
            sum += piece.area();
        return sum;
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
        double least = share * pieces.getFirst().area();
        return new Region(pieces.stream().filter(piece -> piece.area() >= least).map(piece -> piece.filled(least)).toList());
    }

    /** The same pieces with their holes filled. */
    public Region withoutHoles() {
        return new Region(pieces.stream().map(piece -> piece.filled(Double.POSITIVE_INFINITY)).toList());
    }

    /** The largest piece alone. */
    public Region largest() {
        return pieces.size() < 2 ? this : new Region(pieces.subList(0, 1));
    }

    private Geometry geometry() {
        if (pieces.size() == 1)
            return pieces.getFirst().polygon();
        Polygon[] polygons = pieces.stream().map(Piece::polygon).toArray(Polygon[]::new);
        return polygons[0].getFactory().createMultiPolygon(polygons);
    }

    /** What lies in both. */
    public Region intersection(Region other) {
        if (isEmpty() || other.isEmpty())
            return EMPTY;
        return switch (lie(other)) {
            case WITHIN -> this;
            case AROUND -> other;
            case BESIDE -> EMPTY;
            case ACROSS -> overlay(other, OverlayNG.INTERSECTION);
        };
    }

    /** What lies in either. */
    public Region union(Region other) {
        if (isEmpty() || other.isEmpty())
            return isEmpty() ? other : this;
        return switch (lie(other)) {
            case WITHIN -> other;
            case AROUND -> this;
            case BESIDE -> both(other);
            case ACROSS -> overlay(other, OverlayNG.UNION);
        };
    }

    /** What lies in this and not in the other. */
    public Region minus(Region other) {
        if (isEmpty() || other.isEmpty())
            return this;
        return switch (lie(other)) {
            case WITHIN -> EMPTY;
            case AROUND -> new Region(List.of(Piece.of(pieces.getFirst().outer(), other.pieces())));
            case BESIDE -> this;
            case ACROSS -> overlay(other, OverlayNG.DIFFERENCE);
        };
    }

    private enum Lie { WITHIN, AROUND, BESIDE, ACROSS }

    /** How two plain pieces lie that do not touch; everything else counts as across. */
    private Lie lie(Region other) {
        Optional<Outline> mine = plain(), its = other.plain();
        if (mine.isEmpty() || its.isEmpty() || !EdgeSweep.apart(mine.get(), its.get()))
            return Lie.ACROSS;
        if (its.get().contains(new PlanePoint(mine.get().y(0), mine.get().z(0))))
            return Lie.WITHIN;
        return mine.get().contains(new PlanePoint(its.get().y(0), its.get().z(0))) ? Lie.AROUND : Lie.BESIDE;
    }

    private Optional<Outline> plain() {
        return pieces.size() == 1 && pieces.getFirst().holes().isEmpty() ? Optional.of(pieces.getFirst().outer()) : Optional.empty();
    }

    private Region both(Region other) {
        List<Piece> both = new ArrayList<>(pieces);
        both.addAll(other.pieces);
        both.sort(ORDER);
        return new Region(both);
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
        for (Piece piece : pieces)
            sum += piece.areaBetween(directionY, directionZ, low, high);
        return sum;
    }

    /** Lowest place along a direction, metres from the origin; infinite if there is nothing. */
    public double lowest(double directionY, double directionZ) {
        double least = Double.POSITIVE_INFINITY;
        for (Piece piece : pieces)
            least = Math.min(least, piece.outer().lowest(directionY, directionZ));
        return least;
    }
}
