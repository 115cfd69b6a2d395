package mouldwright.geometry.plane;

import java.util.List;

/** A part of a section plane: none, one or several pieces, each with or without holes. */
public final class Region {
    /** Nothing. */
    public static final Region EMPTY = null;
    /** What an outline encloses. */
    public static Region of(Outline outline) { throw new UnsupportedOperationException("being written"); }
    /** Whether nothing is left. */
    public boolean isEmpty() { throw new UnsupportedOperationException("being written"); }
    /** Outer outlines of the pieces, largest first. */
    public List<Outline> pieces() { throw new UnsupportedOperationException("being written"); }
    /** Outlines of the holes of all pieces. */
    public List<Outline> holes() { throw new UnsupportedOperationException("being written"); }
    /** Area, holes taken off, square metres. */
    public double area() { throw new UnsupportedOperationException("being written"); }
    /** Centroid of the area; the origin if there is none. */
    public PlanePoint centroid() { throw new UnsupportedOperationException("being written"); }
    /** What lies in both. */
    public Region intersection(Region other) { throw new UnsupportedOperationException("being written"); }
    /** What lies in either. */
    public Region union(Region other) { throw new UnsupportedOperationException("being written"); }
    /** What lies in this and not in the other. */
    public Region minus(Region other) { throw new UnsupportedOperationException("being written"); }
    /** Area of what lies between two heights measured along a direction.
     *  @param directionY unit vector in the plane, starboard part
     *  @param directionZ unit vector in the plane, upward part
     *  @param low  metres along the direction from the origin
     *  @param high metres along the direction from the origin */
    public double areaBetween(double directionY, double directionZ, double low, double high) { throw new UnsupportedOperationException("being written"); }
}
