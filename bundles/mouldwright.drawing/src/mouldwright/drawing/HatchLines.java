package mouldwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Slanting lines over a box, a fixed distance apart and at the same places whatever the box. */
public final class HatchLines {

    private HatchLines() { }

    /** @param spacing mm, positive @param angle degrees */
    public static List<Path> over(Extent box, double spacing, double angle) {
        double c = Math.cos(Math.toRadians(angle)), s = Math.sin(Math.toRadians(angle));
        double low = Double.MAX_VALUE, high = -Double.MAX_VALUE, near = Double.MAX_VALUE, far = -Double.MAX_VALUE;
        for (double x : new double[] {box.left(), box.right()})
            for (double y : new double[] {box.bottom(), box.top()}) {
                low = Math.min(low, -x * s + y * c);
                high = Math.max(high, -x * s + y * c);
                near = Math.min(near, x * c + y * s);
                far = Math.max(far, x * c + y * s);
            }
        List<Path> lines = new ArrayList<>();
        for (double off = Math.ceil(low / spacing) * spacing; off <= high; off += spacing)
            lines.add(Path.line(new Spot(near * c - off * s, near * s + off * c), new Spot(far * c - off * s, far * s + off * c)));
        return lines;
    }
}
