package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.frame.NoteSpace;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.frame.PlatePart.Score;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import mouldwright.plan.Member;
import mouldwright.plan.spec.Frame;

/** Makes lengthwise members: layers of the sheet as parts, timber as lengths to cut, both with the lines of the plates they pass. Seen
 *  from port, aft to the right; lengths along them count from the datum, as on the plug. */
final class BackboneMaking {

    private final Frame frame;
    private final FrameMeasures made;

    BackboneMaking(Frame frame, FrameMeasures made) {
        this.frame = frame;
        this.made = made;
    }

    List<PlatePart> parts() {
        List<PlatePart> parts = new ArrayList<>();
        for (int i = 0; i < frame.backbones().size(); i++)
            if (made.backboneLength() > 0 && !frame.backbones().get(i).timber())
                parts.add(part(i + 1, frame.backbones().get(i)));
        return parts;
    }

    List<Member> members() {
        List<Member> members = new ArrayList<>();
        for (int i = 0; i < frame.backbones().size(); i++) {
            Frame.Backbone backbone = frame.backbones().get(i);
            if (made.backboneLength() > 0 && backbone.timber())
                members.add(new Member("backbone." + (i + 1), name(i + 1), backbone.width().likely(), backbone.depth().likely(), made.backboneLength(), 1,
                        made.plates().stream().map(one -> new Member.Mark(one.border().name(), one.plate().x() - made.from())).toList()));
        }
        return members;
    }

    private String name(int number) {
        return frame.backbones().size() == 1 ? "Backbone" : "Backbone " + number;
    }

    /** Its side less what is cut out of it for plates that are halved into it, m2. */
    static double sideArea(Frame frame, FrameMeasures made, Frame.Backbone backbone) {
        double area = backbone.depth().likely() * made.backboneLength();
        return made.backboneLength() > 0 && backbone.halved() ? side(frame, made, backbone).area() : area;
    }

    private static Region side(Frame frame, FrameMeasures made, Frame.Backbone backbone) {
        double low = backbone.above().likely(), high = low + backbone.depth().likely(), play = frame.clearance().likely();
        Region side = Region.of(PlateMaking.box(made.from(), low, made.to(), high));
        if (backbone.halved())
            for (FrameMeasures.Made one : made.plates()) {
                double fore = Math.min(one.plate().x(), one.plate().otherX()) - play / 2, aft = Math.max(one.plate().x(), one.plate().otherX()) + play / 2;
                side = side.minus(Region.of(PlateMaking.box(fore, low + backbone.depth().likely() / 2, aft, high + backbone.depth().likely())));
            }
        return side;
    }

    private PlatePart part(int number, Frame.Backbone backbone) {
        double low = backbone.above().likely(), high = low + backbone.depth().likely();
        double top = backbone.halved() ? low + backbone.depth().likely() / 2 : high;
        Outline outline = side(frame, made, backbone).pieces().getFirst();
        List<Score> scores = new ArrayList<>();
        for (FrameMeasures.Made one : made.plates())
            for (double x : new double[] { one.plate().x(), one.plate().otherX() })
                scores.add(new Score(Score.Use.STATION, List.of(new PlanePoint(x, low), new PlanePoint(x, top)), false,
                        x == one.plate().x() ? one.border().name() : ""));
        return new PlatePart("backbone." + number, PlatePart.Kind.BACKBONE, name(number), outline, List.of(), List.of(), scores, List.of(), List.of(),
                NoteSpace.write(Region.of(outline), List.of(name(number), "port side, aft to the right")), frame.sheet().name(), frame.thickness().likely(),
                frame.layers(backbone));
    }
}
