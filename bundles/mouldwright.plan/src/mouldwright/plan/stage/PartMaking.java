package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.frame.Plate;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.plan.CutParts;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Spec;

/** Makes the parts of a frame of what was measured on it: everything that is cut out of sheets, with all that is written on it. A
 *  part that cannot be cut is reported and left out. */
final class PartMaking {

    private final Spec spec;
    private final Frame frame;
    private final ShapeMeasures shape;
    private final FrameMeasures made;
    private final Measurements measurements;

    PartMaking(Spec spec, Frame frame, ShapeMeasures shape, FrameMeasures made, Measurements measurements) {
        this.spec = spec;
        this.frame = frame;
        this.shape = shape;
        this.made = made;
        this.measurements = measurements;
    }

    CutParts parts() {
        Optional<Double> line = HeightLine.of(made);
        PlateMarking marking = new PlateMarking(spec, frame, shape, line);
        List<PlatePart> parts = new ArrayList<>();
        for (FrameMeasures.Made one : made.plates())
            if (!one.wood().isEmpty())
                add(marking.part(one), one, parts);
        parts.addAll(new BackboneMaking(frame, made).parts());
        return new CutParts(parts);
    }

    private void add(PlatePart part, FrameMeasures.Made one, List<PlatePart> parts) {
        Plate plate = one.plate();
        Optional<String> flaw = one.wood().pieces().size() > 1 ? Optional.of("pocket and slots cut it into " + one.wood().pieces().size() + " pieces") : part.flaw();
        if (flaw.isEmpty())
            parts.add(part);
        else
            measurements.report(PlanFault.of(PlanFault.Kind.PART_FLAWED, one.border().station().origin(), "station " + one.border().name(),
                    "plate " + one.border().name() + " cannot be cut: " + flaw.get(), plate.cut().area() > 0
                            ? "narrow the rim or the pocket, or move the backbone" : "mark the station unplated"));
    }
}
