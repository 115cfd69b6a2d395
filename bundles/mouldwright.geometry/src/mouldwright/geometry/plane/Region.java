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
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** A part of a section plane: none, one or several pieces, each with or without holes. */
public final class Region {
    /** Overlays round to a grid of 10 nm: outlines of neighbouring sections run within rounding of each other over long stretches (where nothing is
     *  moulded they coincide), and overlays of such lines in floating point can lose a whole region without a word. */
    private static final PrecisionModel GRID = new PrecisionModel(1e8);
    private static final double SWELLING = 1e-9;
    private static final BufferParameters MITRED = new BufferParameters(8, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 2);
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

    /** What lies within a ring and outside its holes, none of which is looked at: see {@link #flaw}. */
    public static Region of(Outline outer, List<Outline> holes) {
        return new Region(List.of(Piece.of(outer, holes)));
    }

    /** Why rings are no piece that can be cut: one crosses itself, a hole leaves the outer ring, or holes meet. Empty where they are. */
    public static Optional<String> flaw(Outline outer, List<Outline> holes) {
        if (outer.size() < 3 || holes.stream().anyMatch(hole -> hole.size() < 3))
            return Optional.of("a cut line has fewer than three corners");
        TopologyValidationError error = new IsValidOp(Piece.of(outer, holes).polygon()).getValidationError();
        if (error == null)
            return Optional.empty();
        return Optional.of(switch (error.getErrorType()) {
            case TopologyValidationError.HOLE_OUTSIDE_SHELL -> "an opening lies outside the cut line";
            case TopologyValidationError.NESTED_HOLES -> "openings lie in one another";
            case TopologyValidationError.DISCONNECTED_INTERIOR -> "openings cut the part in two";
            default -> "a cut line crosses or touches itself or another";
        });
    }

    /** In the same order, and each ring from the same corner, whichever way they were found. */
    static Region of(Geometry geometry) {
        List<Piece> pieces = new ArrayList<>();
        for (Object found : PolygonExtracter.getPolygons(geometry.norm()))
            if (found instanceof Polygon polygon && !polygon.isEmpty())
                pieces.add(Piece.of(polygon));
        return sorted(pieces);
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
        return isEmpty() || other.isEmpty() ? EMPTY : overlay(other, RingOverlay.Wanted.BOTH);
    }

    /** What lies in either. */
    public Region union(Region other) {
        return isEmpty() ? other : other.isEmpty() ? this : overlay(other, RingOverlay.Wanted.EITHER);
    }

    /** What lies in this and not in the other. */
    public Region minus(Region other) {
        return isEmpty() || other.isEmpty() ? this : overlay(other, RingOverlay.Wanted.FIRST_ALONE);
    }

    /** Plain rings are walked along; where they touch, once more with one of them swollen by less than a nanometre to the metre,
     *  so that lines which coincide part or cross. Everything else is overlaid on the grid. */
    private Region overlay(Region other, RingOverlay.Wanted wanted) {
        Optional<Outline> mine = plain(), its = other.plain();
        if (mine.isEmpty() && its.isPresent() && wanted == RingOverlay.Wanted.FIRST_ALONE)
            return pierced(its.get()).orElseGet(() -> onGrid(other, wanted));
        if (mine.isEmpty() || its.isEmpty())
            return onGrid(other, wanted);
        return walked(mine.get(), its.get(), wanted).or(() -> walked(mine.get(), its.get().swollen(1 + SWELLING), wanted))
                .orElseGet(() -> onGrid(other, wanted));
    }

    /** With one hole more, where it meets none of the rings and lies in the wood: a plate with pocket and slots is made many times. */
    private Optional<Region> pierced(Outline hole) {
        if (pieces.size() != 1)
            return Optional.empty();
        Piece piece = pieces.getFirst();
        List<Outline> holes = new ArrayList<>(piece.holes());
        holes.add(piece.outer());
        for (Outline ring : holes)
            if (!EdgeSweep.between(ring, hole).map(List::isEmpty).orElse(false))
                return Optional.empty();
        holes.removeLast();
        PlanePoint corner = new PlanePoint(hole.y(0), hole.z(0));
        boolean inside = piece.outer().contains(corner)
                && holes.stream().noneMatch(ring -> ring.contains(corner) || hole.contains(new PlanePoint(ring.y(0), ring.z(0))));
        holes.add(hole);
        return inside ? Optional.of(new Region(List.of(Piece.of(piece.outer(), holes)))) : Optional.empty();
    }

    private static Optional<Region> walked(Outline a, Outline b, RingOverlay.Wanted wanted) {
        return EdgeSweep.between(a, b).flatMap(crossings -> crossings.isEmpty() ? Optional.of(apart(a, b, wanted))
                : RingOverlay.of(a, b, crossings, wanted).map(Region::ofRings));
    }

    /** Of two rings that do not meet. */
    private static Region apart(Outline a, Outline b, RingOverlay.Wanted wanted) {
        boolean within = b.contains(new PlanePoint(a.y(0), a.z(0)));
        boolean around = !within && a.contains(new PlanePoint(b.y(0), b.z(0)));
        return switch (wanted) {
            case BOTH -> within ? simple(a) : around ? simple(b) : EMPTY;
            case EITHER -> within ? simple(b) : around ? simple(a) : sorted(List.of(Piece.of(a, List.of()), Piece.of(b, List.of())));
            case FIRST_ALONE -> within ? EMPTY : new Region(List.of(Piece.of(a, around ? List.of(b) : List.of())));
        };
    }

    /** Pieces, or one piece with holes. */
    private static Region ofRings(List<double[][]> rings) {
        List<Outline> outer = new ArrayList<>(), holes = new ArrayList<>();
        for (double[][] ring : rings)
            if (ring[0].length > 2)
                (Outline.ring(ring[0], ring[1]).runsClockwise() ? holes : outer).add(Outline.ring(ring[0], ring[1]).counterClockwise());
        return outer.size() == 1 ? new Region(List.of(Piece.of(outer.getFirst(), holes)))
                : sorted(outer.stream().map(ring -> Piece.of(ring, List.of())).toList());
    }

    private static Region sorted(List<Piece> pieces) {
        List<Piece> sorted = new ArrayList<>(pieces);
        sorted.sort(ORDER);
        return new Region(sorted);
    }

    private Optional<Outline> plain() {
        return pieces.size() == 1 && pieces.getFirst().holes().isEmpty() ? Optional.of(pieces.getFirst().outer()) : Optional.empty();
    }

    private Region onGrid(Region other, RingOverlay.Wanted wanted) {
        int operation = switch (wanted) {
            case BOTH -> OverlayNG.INTERSECTION;
            case EITHER -> OverlayNG.UNION;
            case FIRST_ALONE -> OverlayNG.DIFFERENCE;
        };
        return of(OverlayNG.overlay(geometry(), other.geometry(), operation, GRID));
    }

    /** How far a place lies inside, metres; negative outside. */
    public double clear(PlanePoint place) {
        double clear = Double.NEGATIVE_INFINITY;
        for (Piece piece : pieces)
            clear = Math.max(clear, piece.clear(place));
        return clear;
    }

    /** What lies at least some way inside, corners kept sharp. @param depth metres, not negative */
    public Region shrunk(double depth) {
        return isEmpty() || depth == 0 ? this : of(BufferOp.bufferOp(geometry(), -depth, MITRED));
    }

    /** Area of what lies inside a convex ring, square metres. */
    public double areaWithin(ConvexClip clip) {
        double sum = 0;
        for (Piece piece : pieces)
            sum += piece.areaWithin(clip);
        return sum;
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
