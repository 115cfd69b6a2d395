package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.frame.NoteSpace;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.frame.PlatePart.Score;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import mouldwright.plan.spec.Frame;

/** Makes the layers of lengthwise members, with the lines of the plates they pass. Seen from port, aft to the right; lengths along
 *  them count from the datum, as on the plug. */
final class BackboneMaking {

    private final Frame frame;
    private final FrameMeasures made;

    BackboneMaking(Frame frame, FrameMeasures made) {
        this.frame = frame;
        this.made = made;
    }

    List<PlatePart> parts() {
        List<PlatePart> parts = new ArrayList<>();
        if (made.backboneLength() <= 0)
            return parts;
        int number = 0;
        for (Frame.Backbone backbone : frame.backbones())
            parts.add(part(++number, backbone));
        return parts;
    }

    private PlatePart part(int number, Frame.Backbone backbone) {
        double low = backbone.above().likely(), high = low + backbone.depth().likely();
        Outline outline = PlateMaking.box(made.from(), low, made.to(), high);
        List<Score> scores = new ArrayList<>();
        for (FrameMeasures.Made one : made.plates())
            for (double x : new double[] { one.plate().x(), one.plate().otherX() })
                scores.add(new Score(Score.Use.STATION, List.of(new PlanePoint(x, low), new PlanePoint(x, high)), false,
                        x == one.plate().x() ? one.border().name() : ""));
        String name = frame.backbones().size() == 1 ? "Backbone" : "Backbone " + number;
        return new PlatePart("backbone." + number, PlatePart.Kind.BACKBONE, name, outline, List.of(), List.of(), scores, List.of(), List.of(),
                NoteSpace.write(Region.of(outline), List.of(name, "port side, aft to the right")), frame.sheet().name(), frame.thickness().likely(),
                frame.layers(backbone));
    }
}
