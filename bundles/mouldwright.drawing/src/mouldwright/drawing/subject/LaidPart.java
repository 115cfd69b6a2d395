package mouldwright.drawing.subject;

import java.util.List;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.nest.Placement;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;

/** A part with everything on it, as it lies on a sheet. */
final class LaidPart {

    private final Placement placement;

    private LaidPart(Placement placement) {
        this.placement = placement;
    }

    static PlatePart of(PlatePart part, Placement placement) {
        return new LaidPart(placement).moved(part);
    }

    private PlatePart moved(PlatePart part) {
        double turn = Math.toRadians(placement.degrees());
        return new PlatePart(part.key(), part.kind(), part.name(), moved(part.outer()),
                part.openings().stream().map(opening -> new PlatePart.Opening(opening.use(), moved(opening.ring()))).toList(),
                part.bores().stream().map(bore -> new PlatePart.Bore(at(bore.centre()), bore.diameter(), bore.label())).toList(),
                part.scores().stream().map(score -> new PlatePart.Score(score.use(), moved(score.points()), score.closed(), score.label())).toList(),
                part.marks().stream().map(mark -> new PlatePart.LineMark(mark.line(), at(mark.at()), at(mark.inward()))).toList(),
                part.bevels().stream().map(bevel -> new PlatePart.BevelMark(at(bevel.at()), bevel.angle())).toList(),
                part.notes().stream().map(note -> new PlatePart.Note(note.words(), at(note.at()), note.height(), note.angle() + turn)).toList(),
                part.sheet(), part.thickness(), part.quantity());
    }

    private PlanePoint at(PlanePoint point) {
        return placement.onSheet(point);
    }

    private Outline moved(Outline ring) {
        return Outline.of(moved(ring.points()));
    }

    private List<PlanePoint> moved(List<PlanePoint> points) {
        return points.stream().map(this::at).toList();
    }
}
