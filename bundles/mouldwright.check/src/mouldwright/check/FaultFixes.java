package mouldwright.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Mending;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Station;

/** What mends in the text what was met while planning. */
final class FaultFixes {

    /** How far a run-out station stands off the end: a hand's breadth, which a board needs to lie on; common practice. */
    private static final double RUN_OUT = 0.1;

    private FaultFixes() { }

    static List<Fix> of(PlanFault fault, BuildPlan plan) {
        return switch (fault.kind()) {
            case LOFT -> sorted(plan).or(() -> mended(fault, plan)).map(List::of).orElse(List.of());
            case CATALYST_CLAMPED -> clamped(fault, plan).map(List::of).orElse(List.of());
            case END_PLATE_LARGER_OUTSIDE -> List.of(bevelled(plan), mended(fault, plan).orElseThrow());
            default -> mended(fault, plan).map(List::of).orElse(List.of());
        };
    }

    private static Optional<Fix> sorted(BuildPlan plan) {
        List<Station> stations = plan.spec().body().stations();
        List<Station> sorted = stations.stream().sorted(Comparator.comparingDouble(Station::x)).toList();
        return sorted.equals(stations) ? Optional.empty() : Optional.of(Fix.of("sort the stations", new Remedy.Reorder(sorted.stream().map(Station::origin).distinct().toList())));
    }

    private static Fix bevelled(BuildPlan plan) {
        return Fix.of("state `edges bevelled`", new Remedy.State(plan.spec().frame().orElseThrow().origin(), "edges", "edges bevelled"));
    }

    /** The gel time that the nearest catalyst within the limits gives, in whole tenths of a minute on the side that keeps within them. */
    private static Optional<Fix> clamped(PlanFault fault, BuildPlan plan) {
        Optional<Skin> skin = plan.spec().skin().filter(s -> s.gel().origin().equals(fault.place()) || s.gel().assumed());
        if (skin.isEmpty() || fault.figure().isEmpty() || fault.limit().isEmpty())
            return Optional.empty();
        boolean late = fault.figure().get().value() > fault.limit().get().value();
        String minutes = BigDecimal.valueOf(fault.figure().get().value() / 60).setScale(1, late ? RoundingMode.CEILING : RoundingMode.FLOOR).stripTrailingZeros().toPlainString();
        return Optional.of(Fix.stating(skin.get().gel(), skin.get().origin(), "gel for", minutes + " min", ""));
    }

    private static Optional<Fix> mended(PlanFault fault, BuildPlan plan) {
        return fault.mending().stream().findFirst().map(mending -> switch (mending) {
            case Mending.Drop(Origin point) -> Fix.of("drop the point that is there twice", new Remedy.Remove(point));
            case Mending.Reverse(List<Origin> points) -> Fix.of("turn the order of the points round", new Remedy.Reorder(points.reversed()));
            case Mending.Corners(List<Form.Point> points) -> new Fix(points.size() == 1 ? "mark the point as a knuckle" : "mark the point as a knuckle at each station", false,
                    points.stream().<Remedy>map(point -> new Remedy.Replace(point.origin(), Points.knuckle(point))).toList());
            case Mending.OnLine(Form.Point point, String line) -> Fix.of("mark the nearest point as a knuckle on " + line, new Remedy.Replace(point.origin(), Points.onLine(point, line)));
            case Mending.Placed(Station station, Form.LinePlace place) -> placed(station, place);
            case Mending.RunOut(Station end, boolean forward) -> runOut(end, forward, plan);
        });
    }

    private static Fix placed(Station station, Form.LinePlace place) {
        String words = place.line() + " at " + switch (place) {
            case Form.LinePlace.AtHeight at -> "height " + Findings.exact(at.height(), 4);
            case Form.LinePlace.AtGirth at -> "girth " + Findings.percent(at.share());
        };
        boolean opened = switch (station.form()) {
            case Form.Points points -> true;
            case Form.Superellipse form -> !form.lines().isEmpty();
            case Form.Like form -> !form.lines().isEmpty();
            case Form.Pointed pointed -> false;
            case Form.Lofted lofted -> false;
        };
        return Fix.of("place " + place.line() + " on " + station.name(), opened ? new Remedy.Insert(station.origin(), Remedy.Side.INSIDE, words)
                : new Remedy.Insert(station.origin(), Remedy.Side.BEHIND, "{ " + words + " }"));
    }

    /** The outermost section again, a hand's breadth out, and a crease between, so that the body runs on straight and its new end plate has equal faces. */
    private static Fix runOut(Station end, boolean forward, BuildPlan plan) {
        Set<String> taken = plan.spec().body().stations().stream().map(Station::name).collect(Collectors.toCollection(HashSet::new));
        String words = "station " + StationInsert.name(end.name(), taken) + " at " + Findings.exact(end.x() + (forward ? -RUN_OUT : RUN_OUT), 3) + " like " + end.name();
        Remedy station = new Remedy.Insert(end.origin(), forward ? Remedy.Side.BEFORE : Remedy.Side.AFTER, words);
        Remedy crease = new Remedy.Insert(end.origin(), Remedy.Side.BEHIND, "break");
        return new Fix("add a run-out station " + Findings.length(RUN_OUT) + " past " + end.name(), false, end.crease() ? List.of(station) : List.of(crease, station));
    }
}
