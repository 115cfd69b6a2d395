package mouldwright.plan.stage;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.fill.Attitude;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.offset.FoamLine;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.Region;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Spec;

/** Measures the room of the bays and their shuttering, once.
 *
 *  <p>Shuttering lies on the plates' edges by stand-offs as thick as the overfill, so it reaches from station line to station
 *  line. Its area is the lofted surface of the bay times what its girth grows by at half length: exact where the section
 *  keeps its form along the bay. */
final class RoomMeasuring {

    private final Spec spec;
    private final ShapeMeasures shape;
    private final BooleanSupplier cancelled;
    private final double overfill;

    RoomMeasuring(Spec spec, ShapeMeasures shape, BooleanSupplier cancelled) {
        this.spec = spec;
        this.shape = shape;
        this.cancelled = cancelled;
        this.overfill = spec.fill().orElseThrow().overfill().likely();
    }

    Rooms measure(FillMeasures fill) {
        return new Rooms(fill.bays().stream().map(this::room).toList(),
                shape.borders().stream().filter(Border::plated).map(this::edge).toList());
    }

    private Rooms.Room room(FillMeasures.BayFill bay) {
        if (cancelled.getAsBoolean())
            throw new CancellationException();
        double thickness = ShapeStage.thickness(spec);
        double from = bay.bay().fore().plugX();
        double to = bay.bay().aft().plugX();
        double clear = bay.bay().aft().forwardFace(thickness) - bay.bay().fore().aftFace(thickness);
        double middle = (from + to) / 2;
        boolean hollow = bay.core() instanceof Fill.Core.Shell;
        Measured pocket = hollow ? bay.cavity().pocket() : Measured.ZERO;
        return new Rooms.Room(bay.bay(), clear, bay.cavity().extent(level(bay.attitude())).height(), bay.height(), bay.lifts().size(),
                forms(from, to, middle), pocket, hollow && pocket.value() > 0 ? wrapping(bay, middle) * clear : 0);
    }

    private double forms(double from, double to, double middle) {
        double girth = shape.plug().at(middle).girth();
        double surface = shape.measures().area(from, to).total().value();
        double grown = girth(FoamLine.grown(shape.plug(), middle, Side.AFT, shape.buildUp(), overfill));
        return girth > 0 ? surface * grown / girth : 0;
    }

    private double wrapping(FillMeasures.BayFill bay, double middle) {
        double shell = bay.core() instanceof Fill.Core.Shell(var stated) ? stated.likely() : 0;
        return girth(FoamLine.within(shape.plug(), middle, Side.AFT, shape.buildUp(), shell));
    }

    private static double girth(Region region) {
        return region.pieces().stream().mapToDouble(Outline::length).sum();
    }

    private Rooms.Edge edge(Border border) {
        Side side = border.plugX() >= shape.plug().endX() ? Side.FORWARD : Side.AFT;
        return new Rooms.Edge(border, GirthRuns.of(shape.plug().at(border.plugX(), side), shape.bare(), GirthBand.WHOLE).total());
    }

    /** The level direction across the plug while it lies like that. */
    private static Attitude level(Fill.Attitude attitude) {
        return attitude == Fill.Attitude.ON_SIDE ? Attitude.UPRIGHT : Attitude.ON_SIDE;
    }
}
