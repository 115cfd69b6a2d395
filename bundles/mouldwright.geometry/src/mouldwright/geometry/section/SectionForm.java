package mouldwright.geometry.section;

import java.util.List;

/** How a section's outline is given. All figures in metres. */
public sealed interface SectionForm {

    /** An outline through points, smooth between knuckles; a stretch of two points is straight.
     *  @param points from bottom centre round the starboard side */
    record Points(List<OutlinePoint> points) implements SectionForm {
        /** Keeps its own copy. */
        public Points { points = List.copyOf(points); }

        /** The given points in order. */
        public static Points of(OutlinePoint... points) { return new Points(List.of(points)); }
    }

    /** The exact curve |y/A|^N + |2(z-Z)/B - 1|^N = 1, without knuckles. With an exponent of 1 or less its widest place is
     *  a corner, which still does not count as a knuckle.
     *  @param halfBreadth A
     *  @param height      B, the full height
     *  @param exponent    N
     *  @param bottom      Z, height of the lowest point above the base */
    record Superellipse(double halfBreadth, double height, double exponent, double bottom) implements SectionForm { }

    /** A single point: the body ends here.
     *  @param y to starboard
     *  @param z above the base */
    record Nose(double y, double z) implements SectionForm { }

    /** Another section stretched about a point and raised; its lines, knuckles and bare stretches come with it, and its
     *  curve is the stretched curve, not a new spline through stretched points.
     *  @param of      the other section
     *  @param breadth factor in breadth, positive
     *  @param depth   factor in height, positive
     *  @param aboutY  fixed point, half-breadth
     *  @param aboutZ  fixed point, height
     *  @param raised  added to all heights afterwards */
    record Scaled(SectionForm of, double breadth, double depth, double aboutY, double aboutZ, double raised)
            implements SectionForm { }

    /** Another form with longitudinal lines placed on it.
     *  @param of    the form that is marked
     *  @param lines where the lines cross it */
    record Marked(SectionForm of, List<LinePlace> lines) implements SectionForm {
        /** Keeps its own copy. */
        public Marked { lines = List.copyOf(lines); }
    }
}
