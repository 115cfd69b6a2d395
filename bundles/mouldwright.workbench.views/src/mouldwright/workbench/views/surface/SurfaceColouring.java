package mouldwright.workbench.views.surface;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.Bay;
import mouldwright.plan.stage.ShapeMeasures;

/** What a surface can be coloured by. A new way is one constant in the list. */
public sealed interface SurfaceColouring permits SurfaceColouring.ByBevel, SurfaceColouring.ByCrown {

    /** All there are, the first shown at first. */
    List<SurfaceColouring> ALL = List.of(new ByCrown(), new ByBevel());

    /** What the figure is called. */
    String title();

    /** Its unit. */
    String unit();

    /** The figure of each place of a plan's surface. */
    SolidMaker.Tint tint(BuildPlan plan, ShapeMeasures shape);

    /** The solid of a plan; empty if it has no shape. */
    default Optional<Solid> solid(BuildPlan plan) {
        return plan.measurements().find(ShapeMeasures.class).map(shape -> SolidMaker.of(shape.plug(), tint(plan, shape)));
    }

    /** The colours for the figures of a solid. */
    default Ramp ramp(Solid solid) {
        float low = 0, high = 0;
        for (float figure : solid.figures())
            if (!Float.isNaN(figure)) {
                low = Math.min(low, figure);
                high = Math.max(high, figure);
            }
        return new Ramp(low, high);
    }

    /** How steep the edge of a plate would be there. */
    record ByBevel() implements SurfaceColouring {
        @Override public String title() {
            return "Bevel";
        }

        @Override public String unit() {
            return "deg";
        }

        @Override public SolidMaker.Tint tint(BuildPlan plan, ShapeMeasures shape) {
            return (slice, stretch, u, point, port) -> Math.toDegrees(Math.abs(point.bevel()));
        }
    }

    /** How far the surface stands off a board laid from plate to plate, the most in each bay. */
    record ByCrown() implements SurfaceColouring {
        @Override public String title() {
            return "Crown";
        }

        @Override public String unit() {
            return "mm";
        }

        @Override public SolidMaker.Tint tint(BuildPlan plan, ShapeMeasures shape) {
            return (slice, stretch, u, point, port) -> {
                for (int i = 0; i < shape.bays().size(); i++) {
                    Bay bay = shape.bays().get(i);
                    if (point.x() <= bay.aft().plugX() + 1e-9)
                        return 1000 * shape.crowns().get(i).crown().signedHeight();
                }
                return Double.NaN;
            };
        }
    }
}
