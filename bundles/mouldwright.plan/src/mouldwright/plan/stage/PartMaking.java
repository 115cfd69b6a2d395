package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.frame.Jointing;
import mouldwright.geometry.frame.PartPieces;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.plan.Assumption;
import mouldwright.plan.CutParts;
import mouldwright.plan.Measurements;
import mouldwright.plan.Member;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Fittings;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Sheet;
import mouldwright.plan.spec.Spec;

/** Makes the parts of a frame of what was measured on it: everything that is cut out of sheets and timber, with all that is written on
 *  it. A part larger than its sheet is cut into pieces; one that cannot be cut is reported and left out. */
final class PartMaking {

    private final Spec spec;
    private final Frame frame;
    private final ShapeMeasures shape;
    private final FrameMeasures made;
    private final Measurements measurements;
    private final List<PlatePart> parts = new ArrayList<>();
    private final List<String> jointed = new ArrayList<>();
    private final List<String> tooLarge = new ArrayList<>();

    PartMaking(Spec spec, Frame frame, ShapeMeasures shape, FrameMeasures made, Measurements measurements) {
        this.spec = spec;
        this.frame = frame;
        this.shape = shape;
        this.made = made;
        this.measurements = measurements;
    }

    CutParts parts() {
        PlateMarking marking = new PlateMarking(spec, frame, shape, HeightLine.of(made));
        for (FrameMeasures.Made one : made.plates())
            if (!one.wood().isEmpty())
                add(marking.part(one), one);
        BackboneMaking backbones = new BackboneMaking(frame, made);
        backbones.parts().forEach(part -> fit(part, frame.sheet()));
        BaseMaking base = new BaseMaking(frame, made);
        base.board().ifPresent(board -> fit(board, frame.fittings().base().orElseThrow().sheet()));
        List<Member> members = new ArrayList<>(backbones.members());
        members.addAll(base.ladder());
        return new CutParts(parts, members, jointed, tooLarge);
    }

    private void add(PlatePart part, FrameMeasures.Made one) {
        Optional<String> flaw = one.wood().pieces().size() > 1 ? Optional.of("pocket and slots cut it into " + one.wood().pieces().size() + " pieces") : part.flaw();
        if (flaw.isEmpty())
            fit(part, frame.sheet());
        else
            measurements.report(PlanFault.of(PlanFault.Kind.PART_FLAWED, one.border().station().origin(), "station " + one.border().name(),
                    "plate " + one.border().name() + " cannot be cut: " + flaw.get(), "narrow the pocket, move or lower the backbone, or mark the station unplated"));
    }

    private void fit(PlatePart part, Sheet sheet) {
        double margin = sheet.margin().orElseGet(Defaults::margin).likely();
        if (sheet.sizes().stream().anyMatch(size -> Jointing.fits(part.outer(), size.width().likely() - 2 * margin, size.length().likely() - 2 * margin))) {
            parts.add(part);
            return;
        }
        Jointing.Join join = join(part);
        Sheet.Size largest = sheet.largest();
        double width = largest.width().likely() - 2 * margin, length = largest.length().likely() - 2 * margin;
        if (part.kind() == PlatePart.Kind.BACKBONE && part.quantity() > 1) {
            new LayerJoining(part, join, width, length).pieces().ifPresentOrElse(pieces -> {
                jointed.add(part.key());
                parts.addAll(pieces);
            }, () -> leave(part));
            return;
        }
        Optional<List<Jointing.Joint>> joints = Jointing.joints(part, width, length, join);
        if (joints.isPresent()) {
            jointed.add(part.key());
            parts.addAll(PartPieces.of(part, joints.get(), join, part.thickness()));
        } else {
            leave(part);
        }
    }

    private void leave(PlatePart part) {
        tooLarge.add(part.key());
        parts.add(part);
    }

    /** What goes by the thickness is noted as assumed once a part is joined by it. */
    private Jointing.Join join(PlatePart part) {
        return switch (frame.fittings().join()) {
            case Fittings.Join.Scarf(Given slope) -> new Jointing.Join.Scarf(noted(slope).likely() * part.thickness());
            case Fittings.Join.Strap(Optional<Given> length) -> new Jointing.Join.Strap(noted(length.orElseGet(() ->
                    Defaults.strap(Given.of("thickness", mouldwright.units.Dimension.LENGTH, part.thickness(), frame.origin())))).likely());
        };
    }

    private Given noted(Given given) {
        if (given.assumed())
            measurements.assume(Assumption.of(given));
        return given;
    }
}
