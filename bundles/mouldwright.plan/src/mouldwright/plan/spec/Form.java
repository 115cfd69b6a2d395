package mouldwright.plan.spec;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** How a station's section is stated. Lengths in metres. Tables and drawings are read into {@link Points} before. */
public sealed interface Form {

    /** One point of a section.
     *  @param y       half-breadth, or signed breadth in a full section
     *  @param z       height above base
     *  @param knuckle whether the outline has a corner here
     *  @param line    the named line that runs through it
     *  @param radius  of a rounded corner
     *  @param bare    whether the stretch that ends here is bare
     *  @param origin  its place in the text */
    record Point(double y, double z, boolean knuckle, Optional<String> line, OptionalDouble radius, boolean bare,
            Origin origin) {
        /** Refuses missing parts; figures are judged by the geometry, which can say what is wrong with them. */
        public Point {
            Objects.requireNonNull(line, "line");
            Objects.requireNonNull(radius, "radius");
            Objects.requireNonNull(origin, "origin");
        }

        /** A point the outline passes through smoothly. */
        public static Point smooth(double y, double z, Origin origin) {
            return new Point(y, z, false, Optional.empty(), OptionalDouble.empty(), false, origin);
        }

        /** A corner on no named line. */
        public static Point knuckle(double y, double z, Origin origin) {
            return new Point(y, z, true, Optional.empty(), OptionalDouble.empty(), false, origin);
        }

        /** A corner on a named line. */
        public static Point knuckle(double y, double z, String line, Origin origin) {
            return new Point(y, z, true, Optional.of(line), OptionalDouble.empty(), false, origin);
        }
    }

    /** Where a named line runs through a section that has no knuckle for it. */
    sealed interface LinePlace {
        /** @return the line's name */
        String line();

        /** @return where it is stated */
        Origin origin();

        /** At a height above base.
         *  @param height metres */
        record AtHeight(String line, double height, Origin origin) implements LinePlace { }

        /** At a share of the half girth from bottom centre.
         *  @param share 0 to 1 */
        record AtGirth(String line, double share, Origin origin) implements LinePlace { }
    }

    /** Points in order from bottom centre. */
    record Points(List<Point> points, List<LinePlace> lines) implements Form {
        /** Copies its lists. */
        public Points {
            points = List.copyOf(points);
            lines = List.copyOf(lines);
        }
    }

    /** A superellipse standing on a height.
     *  @param halfBreadth  half of its breadth
     *  @param height       full height
     *  @param exponent     2 is an ellipse
     *  @param above        height of its lowest point above base */
    record Superellipse(double halfBreadth, double height, double exponent, double above, List<LinePlace> lines)
            implements Form {
        /** Copies its list. */
        public Superellipse {
            lines = List.copyOf(lines);
        }
    }

    /** The body ends in a point here. */
    record Pointed(double y, double z) implements Form { }

    /** Another station's section, scaled about a point and then raised.
     *  @param station  whose section it is
     *  @param scaleY   athwartships
     *  @param scaleZ   upward
     *  @param aboutY   point that scaling leaves in place
     *  @param aboutZ   its height
     *  @param raised   metres upward after scaling */
    record Like(String station, double scaleY, double scaleZ, double aboutY, double aboutZ, double raised,
            List<LinePlace> lines) implements Form {
        /** Copies its list. */
        public Like {
            Objects.requireNonNull(station, "station");
            lines = List.copyOf(lines);
        }

        /** The same section again. */
        public static Like same(String station) {
            return new Like(station, 1, 1, 0, 0, 0, List.of());
        }
    }

    /** Taken from the loft of the other stations, which does not rest on it. */
    record Lofted() implements Form { }
}
