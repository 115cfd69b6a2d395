package mouldwright.workbench.views.surface;

/** The least box round a solid, metres. */
final class Box {

    private final double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
    private final double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};

    Box(Solid solid) {
        float[] corners = solid.corners();
        for (int i = 0; i < corners.length; i++) {
            low[i % 3] = Math.min(low[i % 3], corners[i]);
            high[i % 3] = Math.max(high[i % 3], corners[i]);
        }
    }

    double middle(int axis) {
        return (low[axis] + high[axis]) / 2;
    }

    /** Half of its diagonal. */
    double radius() {
        return Math.sqrt(square(0) + square(1) + square(2)) / 2;
    }

    private double square(int axis) {
        double edge = Math.max(0, high[axis] - low[axis]);
        return edge * edge;
    }
}
