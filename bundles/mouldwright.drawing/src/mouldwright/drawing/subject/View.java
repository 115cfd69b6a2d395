package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.List;
import mouldwright.drawing.Path;
import mouldwright.drawing.Spot;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;

/**
 * Where a plane of the plug lies on the paper: its first axis to the right, its second up.
 *
 * @param scale of the drawing
 * @param zero  where the plane's own zero lies on the paper
 */
record View(Scale scale, Spot zero) {

    /** On the paper. @param right @param up metres in the plane */
    Spot at(double right, double up) {
        return zero.plus(scale.mm(right), scale.mm(up));
    }

    Spot at(PlanePoint point) {
        return at(point.y(), point.z());
    }

    Path ring(Outline outline) {
        return Path.through(outline.points().stream().map(this::at).toList(), true);
    }

    /** All rings of a region, holes among them. */
    List<Path> rings(Region region) {
        List<Path> rings = new ArrayList<>();
        region.pieces().forEach(piece -> rings.add(ring(piece)));
        region.holes().forEach(hole -> rings.add(ring(hole)));
        return rings;
    }
}
