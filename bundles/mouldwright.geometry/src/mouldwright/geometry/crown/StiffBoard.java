package mouldwright.geometry.crown;

import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;

/** A straight board on two controlling lines. The height is taken from the foot of the perpendicular on the board. */
final class StiffBoard implements Board {
    private final Slice fore;
    private final Slice aft;

    StiffBoard(Slice fore, Slice aft) {
        this.fore = fore;
        this.aft = aft;
    }

    @Override public double height(int stretch, double u, SurfacePoint p) {
        SurfacePoint a = fore.point(stretch, u), b = aft.point(stretch, u);
        double dx = b.x() - a.x(), dy = b.y() - a.y(), dz = b.z() - a.z();
        double w = ((p.x() - a.x()) * dx + (p.y() - a.y()) * dy + (p.z() - a.z()) * dz) / (dx * dx + dy * dy + dz * dz);
        return (p.x() - a.x() - w * dx) * p.nx() + (p.y() - a.y() - w * dy) * p.ny() + (p.z() - a.z() - w * dz) * p.nz();
    }
}
