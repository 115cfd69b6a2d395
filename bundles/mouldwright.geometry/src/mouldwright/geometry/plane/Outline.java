package mouldwright.geometry.plane;

import java.util.List;

/** A closed ring of straight pieces in a section plane, counter-clockwise in (y, z), that is, seen from aft looking forward
 *  with starboard to the right. The first point is not repeated. */
public final class Outline {
    /** Through the given points, turned counter-clockwise if need be. @param points three at least, metres */
    public static Outline of(List<PlanePoint> points) { throw new UnsupportedOperationException("being written"); }
    /** The corners in order. */
    public List<PlanePoint> points() { throw new UnsupportedOperationException("being written"); }
    /** Number of corners. */
    public int size() { throw new UnsupportedOperationException("being written"); }
    /** Half-breadth of a corner, metres. */
    public double y(int corner) { throw new UnsupportedOperationException("being written"); }
    /** Height of a corner, metres. */
    public double z(int corner) { throw new UnsupportedOperationException("being written"); }
    /** Area, square metres, not negative. */
    public double area() { throw new UnsupportedOperationException("being written"); }
    /** Length all round, metres. */
    public double length() { throw new UnsupportedOperationException("being written"); }
    /** Centroid of the area. */
    public PlanePoint centroid() { throw new UnsupportedOperationException("being written"); }
    /** Scaled by a factor about y = 0, z = 0. */
    public Outline scaled(double factor) { throw new UnsupportedOperationException("being written"); }
    /** Smallest half-breadth, metres. */
    public double minY() { throw new UnsupportedOperationException("being written"); }
    /** Largest half-breadth, metres. */
    public double maxY() { throw new UnsupportedOperationException("being written"); }
    /** Lowest point, metres. */
    public double minZ() { throw new UnsupportedOperationException("being written"); }
    /** Highest point, metres. */
    public double maxZ() { throw new UnsupportedOperationException("being written"); }
    /** Whether a place lies inside or on the ring. */
    public boolean contains(PlanePoint place) { throw new UnsupportedOperationException("being written"); }
    /** Shortest distance from a place to the ring itself, metres. */
    public double distance(PlanePoint place) { throw new UnsupportedOperationException("being written"); }
}
