package mouldwright.geometry.crown;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.curve.CubicSpline;
import mouldwright.geometry.curve.EndCondition;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;

/** A board that bends over the plates as a spline does, by the loft's own parameter. At a crease that carries a plate it ends. */
final class FlexibleBoard implements Board {
    private final Loft loft;
    private final List<Slice> plates = new ArrayList<>();
    private final double[] knots;

    /** @param stations plates, increasing @param foreX @param aftX the bay looked at */
    FlexibleBoard(Loft loft, List<Double> stations, double foreX, double aftX) {
        this.loft = loft;
        double from = Double.NEGATIVE_INFINITY, to = Double.POSITIVE_INFINITY;
        for (double crease : loft.creases())
            if (stations.contains(crease)) {
                from = crease <= foreX ? crease : from;
                to = crease >= aftX ? Math.min(to, crease) : to;
            }
        for (double x : stations)
            if (x >= from && x <= to)
                plates.add(loft.at(x, x == to ? Side.FORWARD : Side.AFT));
        knots = plates.stream().mapToDouble(s -> loft.parameter(s.x())).toArray();
    }

    @Override public double height(int stretch, double u, SurfacePoint p) {
        double[][] rows = new double[knots.length][];
        for (int i = 0; i < rows.length; i++) {
            SurfacePoint at = plates.get(i).point(stretch, u);
            rows[i] = new double[] { at.x(), at.y(), at.z() };
        }
        CubicSpline board = CubicSpline.through(knots, rows, EndCondition.NOT_A_KNOT, EndCondition.NOT_A_KNOT);
        double v = loft.parameter(p.x());
        return (p.x() - board.value(v, 0)) * p.nx() + (p.y() - board.value(v, 1)) * p.ny()
                + (p.z() - board.value(v, 2)) * p.nz();
    }
}
