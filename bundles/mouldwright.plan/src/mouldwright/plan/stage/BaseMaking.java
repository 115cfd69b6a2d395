package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.frame.NoteSpace;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.frame.PlatePart.Score;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import mouldwright.plan.Member;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Fittings;
import mouldwright.plan.spec.Frame;

/** Makes what the plates are set up on: the board, seen from above with aft to the right and starboard up, and the ladder under it. */
final class BaseMaking {

    /** Half the length of a cross, m. */
    private static final double CROSS = 0.010;

    private final Frame frame;
    private final FrameMeasures made;

    BaseMaking(Frame frame, FrameMeasures made) {
        this.frame = frame;
        this.made = made;
    }

    /** The board as one part, whatever its size. */
    Optional<PlatePart> board() {
        return made.backboneLength() > 0 ? frame.fittings().base().map(this::board) : Optional.empty();
    }

    private PlatePart board(Fittings.Base base) {
        double margin = base.margin().likely(), half = broadest() / 2 + margin, from = made.from() - margin, to = made.to() + margin;
        Outline outline = PlateMaking.box(from, -half, to, half);
        List<Score> scores = new ArrayList<>(List.of(new Score(Score.Use.CENTRELINE, List.of(new PlanePoint(from, 0), new PlanePoint(to, 0)), false, "centreline")));
        for (FrameMeasures.Made one : made.plates())
            scores.add(new Score(Score.Use.STATION, List.of(new PlanePoint(one.plate().x(), -half), new PlanePoint(one.plate().x(), half)), false, one.border().name()));
        scores.addAll(datumPoints());
        return new PlatePart("base", PlatePart.Kind.BASE, "Base", outline, List.of(), List.of(), scores, List.of(), List.of(),
                NoteSpace.write(Region.of(outline), List.of("Base", "seen from above, starboard up")), base.sheet().name(), base.sheet().thickness().likely(), 1);
    }

    /** Crosses on the first line, by which diagonals are taken. */
    private List<Score> datumPoints() {
        double half = Aligning.half(frame, made), x = made.plates().getFirst().plate().x();
        List<Score> crosses = new ArrayList<>();
        for (double y : new double[] { -half, half })
            crosses.add(new Score(Score.Use.STATION, List.of(new PlanePoint(x - CROSS, y), new PlanePoint(x + CROSS, y)), false, y < 0 ? "datum P" : "datum S"));
        return crosses;
    }

    /** Breadth of the broadest plate, taken alike on both sides, m. */
    private double broadest() {
        return 2 * made.plates().stream().map(one -> one.plate().cut()).mapToDouble(cut -> Math.max(cut.maxY(), -cut.minY())).max().orElse(0);
    }

    /** Two rails as long as the board or the plates with its margin, and between them a cross-member under every plate. */
    List<Member> ladder() {
        return made.backboneLength() > 0 ? frame.fittings().strongback().map(this::ladder).orElse(List.of()) : List.of();
    }

    private List<Member> ladder(Fittings.Strongback ladder) {
        double margin = frame.fittings().base().map(Fittings.Base::margin).orElseGet(Defaults::baseMargin).likely();
        double apart = ladder.apart().orElseGet(() -> Defaults.railsApart(broadest())).likely();
        double between = apart - 2 * ladder.width().likely();
        List<Member> members = new ArrayList<>(List.of(new Member("strongback.rail", "Strongback rail", ladder.width().likely(), ladder.depth().likely(),
                made.backboneLength() + 2 * margin, 2,
                made.plates().stream().map(one -> new Member.Mark(one.border().name(), one.plate().x() - made.from() + margin)).toList())));
        if (between > 0)
            members.add(new Member("strongback.cross", "Strongback cross-member", ladder.width().likely(), ladder.depth().likely(), between,
                    made.plates().size(), List.of(new Member.Mark("centreline", between / 2))));
        return members;
    }
}
