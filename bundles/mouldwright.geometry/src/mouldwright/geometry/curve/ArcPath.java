package mouldwright.geometry.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Runs of curve one after another, by arc length. The lengths come from adaptive Gauss quadrature; places are found by
 *  Newton's method inside a cell of it. */
public final class ArcPath {
    /** Share of the whole length to which the length of each cell is known. */
    private static final double PRECISION = 1e-11;
    private static final int DEEPEST = 30;
    /** A Newton step of this share of a cell leaves an error of about its square. */
    private static final double SETTLED = 1e-9;
    private static final double[] NODE = new double[Quadrature.SIZE];
    private static final double[] WEIGHT = new double[Quadrature.SIZE];

    static {
        for (int i = 0; i < NODE.length; i++) {
            NODE[i] = Quadrature.node(i);
            WEIGHT[i] = Quadrature.weight(i);
        }
    }

    private record Cell(int part, PlaneCurve curve, double from, double to, double length) { }

    private final List<CurvePart> parts;
    private final Cell[] cells;
    private final double[] starts;                  // arc length at which each cell starts, and the whole length at the end

    /** Measures a path. @param parts one at least, each beginning where the one before ends */
    public ArcPath(List<CurvePart> parts) {
        this.parts = List.copyOf(parts);
        List<Cell> found = new ArrayList<>();
        double rough = 0;
        double[] out = new double[6];
        for (CurvePart part : parts)
            rough += Math.abs(speedIntegral(part.curve(), part.from(), part.to(), out));
        for (int i = 0; i < parts.size(); i++)
            measure(i, parts.get(i), rough * PRECISION, found, out);
        cells = found.toArray(Cell[]::new);
        starts = new double[cells.length + 1];
        for (int i = 0; i < cells.length; i++)
            starts[i + 1] = starts[i] + cells[i].length;
    }

    private static void measure(int index, CurvePart part, double tolerance, List<Cell> found, double[] out) {
        double[] breaks = part.curve().breaks();
        double low = Math.min(part.from(), part.to()), high = Math.max(part.from(), part.to());
        List<Double> inside = new ArrayList<>();
        inside.add(low);
        for (double b : breaks)
            if (b > low && b < high)
                inside.add(b);
        inside.add(high);
        List<Double> order = part.from() <= part.to() ? inside : inside.reversed();
        for (int i = 0; i + 1 < order.size(); i++) {
            double a = order.get(i), b = order.get(i + 1);
            divide(index, part.curve(), a, b, speedIntegral(part.curve(), a, b, out), tolerance, 0, found, out);
        }
    }

    private static void divide(int part, PlaneCurve curve, double from, double to, double length, double tolerance, int depth,
            List<Cell> found, double[] out) {
        double middle = 0.5 * (from + to);
        double first = speedIntegral(curve, from, middle, out);
        double second = speedIntegral(curve, middle, to, out);
        if (depth >= DEEPEST || Math.abs(first + second - length) <= tolerance) {
            found.add(new Cell(part, curve, from, to, first + second));
            return;
        }
        divide(part, curve, from, middle, first, tolerance, depth + 1, found, out);
        divide(part, curve, middle, to, second, tolerance, depth + 1, found, out);
    }

    /** Length from one parameter to another, positive either way. */
    private static double speedIntegral(PlaneCurve curve, double from, double to, double[] out) {
        double sum = 0;
        for (int i = 0; i < NODE.length; i++) {
            curve.at(from + (to - from) * NODE[i], out);
            sum += WEIGHT[i] * Math.sqrt(out[2] * out[2] + out[3] * out[3]);
        }
        return sum * Math.abs(to - from);
    }

    /** Whole length, metres. */
    public double length() {
        return starts[cells.length];
    }

    /** The path at an arc length from its start.
     *  @param s   0 to length
     *  @param out filled with y, z, and their first and second derivatives by arc length; where the path is a single point
     *             all derivatives are 0 */
    public void at(double s, double[] out) {
        int i = cell(s);
        Cell cell = cells[i];
        if (length() == 0) {
            cell.curve.at(cell.from, out);
            Arrays.fill(out, 2, 6, 0);
            return;
        }
        cell.curve.at(parameter(cell, s - starts[i], out), out);
        byArcLength(out, cell.from <= cell.to ? 1 : -1);
    }

    private static void byArcLength(double[] out, int direction) {
        double square = out[2] * out[2] + out[3] * out[3];
        double speed = Math.sqrt(square) * direction;
        double ty = out[2] / speed, tz = out[3] / speed;
        double along = ty * out[4] + tz * out[5];
        out[4] = (out[4] - along * ty) / square;
        out[5] = (out[5] - along * tz) / square;
        out[2] = ty;
        out[3] = tz;
    }

    private int cell(double s) {
        int at = Arrays.binarySearch(starts, s);
        int i = Math.clamp(at >= 0 ? at : -at - 2, 0, cells.length - 1);
        while (i + 1 < cells.length && cells[i].length == 0)
            i++;
        while (i > 0 && cells[i].length == 0)
            i--;
        return i;
    }

    /** Parameter at a length into a cell. */
    private double parameter(Cell cell, double wanted, double[] out) {
        if (wanted <= 0)
            return cell.from;
        if (wanted >= cell.length)
            return cell.to;
        double low = 0, high = 1, w = wanted / cell.length;
        double width = Math.abs(cell.to - cell.from);
        for (int round = 0; round < 60; round++) {
            double t = cell.from + w * (cell.to - cell.from);
            double miss = speedIntegral(cell.curve, cell.from, t, out) - wanted;
            if (Math.abs(miss) <= 1e-14 * length())
                return t;
            if (miss > 0)
                high = w;
            else
                low = w;
            cell.curve.at(t, out);
            double next = w - miss / (Math.hypot(out[2], out[3]) * width);
            if (Math.abs(next - w) < SETTLED && next >= low && next <= high)
                return cell.from + next * (cell.to - cell.from);
            w = next > low && next < high ? next : 0.5 * (low + high);
        }
        return cell.from + w * (cell.to - cell.from);
    }

    /** A path in two. @param before up to the cut @param after from it on */
    public record Halves(List<CurvePart> before, List<CurvePart> after) { }

    /** The runs before and after an arc length, which must lie inside the path. */
    public Halves split(double s) {
        int i = cell(s);
        int part = cells[i].part;
        CurvePart cut = parts.get(part);
        double t = parameter(cells[i], s - starts[i], new double[6]);
        List<CurvePart> before = new ArrayList<>(parts.subList(0, part));
        List<CurvePart> after = new ArrayList<>();
        if (t != cut.from())
            before.add(new CurvePart(cut.curve(), cut.from(), t));
        if (t != cut.to())
            after.add(new CurvePart(cut.curve(), t, cut.to()));
        after.addAll(parts.subList(part + 1, parts.size()));
        return new Halves(before, after);
    }

    /** Sums a figure over the path by the same quadrature.
     *  @param figure of y, z, dy, dz along the path per unit of parameter run */
    public double integral(Integrand figure) {
        double[] out = new double[6];
        double sum = 0;
        for (Cell cell : cells)
            for (int i = 0; i < NODE.length; i++) {
                double run = cell.to - cell.from;
                cell.curve.at(cell.from + run * NODE[i], out);
                sum += WEIGHT[i] * figure.at(out[0], out[1], out[2] * run, out[3] * run);
            }
        return sum;
    }

    /** A figure along a path. */
    @FunctionalInterface
    public interface Integrand {
        /** Its value at a place with its direction. */
        double at(double y, double z, double dy, double dz);
    }

    /** Arc lengths at which the cells start, and the whole length at the end. */
    public double[] cellStarts() {
        return starts.clone();
    }
}
