package mouldwright.geometry.nest;

import java.util.List;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;

/** Where a part lies: turned first, then moved. A sheet's corner is at 0, 0, its length along the first axis.
 *  @param sheet   counted from 0
 *  @param part    what lies there
 *  @param degrees it is turned by, counter-clockwise
 *  @param x       moved along the sheet, metres
 *  @param y       moved across it, metres */
public record Placement(int sheet, NestPart part, int degrees, double x, double y) {

    /** A point of the part as it lies on the sheet. */
    public PlanePoint onSheet(PlanePoint point) {
        PlanePoint turned = turned(point, degrees);
        return new PlanePoint(turned.y() + x, turned.z() + y);
    }

    /** Its cut line as it lies. */
    public Outline outer() {
        return moved(part.outer());
    }

    /** Its openings as they lie. */
    public List<Outline> openings() {
        return part.openings().stream().map(this::moved).toList();
    }

    private Outline moved(Outline ring) {
        return Outline.of(ring.points().stream().map(this::onSheet).toList());
    }

    /** Turned about the origin, by right angles to the last digit; the same on every machine. */
    static PlanePoint turned(PlanePoint p, int degrees) {
        return switch (Math.floorMod(degrees, 360)) {
            case 0 -> p;
            case 90 -> new PlanePoint(-p.z(), p.y());
            case 180 -> new PlanePoint(-p.y(), -p.z());
            case 270 -> new PlanePoint(p.z(), -p.y());
            default -> {
                double angle = StrictMath.toRadians(degrees), c = StrictMath.cos(angle), s = StrictMath.sin(angle);
                yield new PlanePoint(p.y() * c - p.z() * s, p.y() * s + p.z() * c);
            }
        };
    }
}
