package mouldwright.drawing.subject;

import java.util.List;
import java.util.stream.Stream;
import mouldwright.drawing.Path;
import mouldwright.drawing.Spot;
import mouldwright.geometry.fill.Attitude;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;

/**
 * A section as it lies while it is poured: turned, never mirrored, so that up is up.
 *
 * @param view     of the turned plane
 * @param attitude which way is up
 */
record Turned(View view, Attitude attitude) {

    /** Far past any section, metres. */
    private static final double FAR = 1e3;

    /** To the right, metres. */
    double right(PlanePoint point) {
        return point.y() * attitude.upZ() - point.z() * attitude.upY();
    }

    /** Upward, metres. */
    double up(PlanePoint point) {
        return point.y() * attitude.upY() + point.z() * attitude.upZ();
    }

    Spot at(PlanePoint point) {
        return view.at(right(point), up(point));
    }

    Path ring(Outline outline) {
        return Path.through(outline.points().stream().map(this::at).toList(), true);
    }

    List<Path> rings(Region region) {
        return Stream.concat(region.pieces().stream(), region.holes().stream()).map(this::ring).toList();
    }

    /** What of a section lies between two heights. */
    Region between(Region region, double low, double high) {
        return region.intersection(Region.of(Outline.of(List.of(place(-FAR, low), place(FAR, low), place(FAR, high), place(-FAR, high)))));
    }

    private PlanePoint place(double right, double up) {
        return new PlanePoint(right * attitude.upZ() + up * attitude.upY(), up * attitude.upZ() - right * attitude.upY());
    }
}
