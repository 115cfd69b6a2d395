package mouldwright.plan.stage;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import mouldwright.plan.Mending;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Station;

/** Finds what would mend a section, or make it match its neighbour. */
final class ShapeMending {

    private ShapeMending() { }

    /** Of two points at one place the one that says less goes. */
    static List<Mending> drop(Station station, int first, int second) {
        List<Form.Point> points = points(station);
        if (second >= points.size())
            return List.of();
        boolean firstSaysLess = says(points.get(first)) < says(points.get(second));
        return List.of(new Mending.Drop(points.get(firstSaysLess ? first : second).origin()));
    }

    private static int says(Form.Point point) {
        return (point.knuckle() ? 1 : 0) + (point.line().isPresent() ? 1 : 0) + (point.radius().isPresent() ? 1 : 0) + (point.bare() ? 1 : 0);
    }

    /** A stretch that is bare is marked at the point it ends at, so points that bound one are not simply turned round. */
    static List<Mending> reverse(Station station) {
        List<Form.Point> points = points(station);
        return points.isEmpty() || points.stream().anyMatch(Form.Point::bare) ? List.of() : List.of(new Mending.Reverse(points.stream().map(Form.Point::origin).toList()));
    }

    /** The point becomes a knuckle, and with it the same point of the other sections, so that knuckles still match; none where these have other points. */
    static List<Mending> corner(Station station, int before, Body body) {
        List<Station> shaping = body.stations().stream().filter(Station::shapes).filter(other -> !(other.form() instanceof Form.Like) && !(other.form() instanceof Form.Pointed)).toList();
        List<List<Form.Point>> all = shaping.stream().map(ShapeMending::points).toList();
        int size = points(station).size();
        int point = sharper(points(station), before);
        if (point >= size || all.stream().anyMatch(other -> other.size() != size) || points(station).get(point).knuckle())
            return List.of();
        return List.of(new Mending.Corners(all.stream().map(other -> other.get(point)).filter(each -> !each.knuckle()).toList()));
    }

    /** Of the two ends of a stretch the smooth one at which the outline turns more: there the corner was forgotten. */
    private static int sharper(List<Form.Point> points, int before) {
        return IntStream.of(before, before + 1).filter(i -> i > 0 && i + 1 < points.size() && !points.get(i).knuckle()).boxed()
                .max(Comparator.comparingDouble(i -> turn(points, i))).orElse(points.size());
    }

    private static double turn(List<Form.Point> points, int i) {
        Form.Point a = points.get(i - 1), b = points.get(i), c = points.get(i + 1);
        double turn = Math.atan2(c.z() - b.z(), c.y() - b.y()) - Math.atan2(b.z() - a.z(), b.y() - a.y());
        return Math.abs(Math.IEEEremainder(turn, 2 * Math.PI));
    }

    /** The smooth point nearest to the knuckle that has no partner, among those between the same two lines. */
    static List<Mending> knuckle(Station fewer, Station more, String from, String to, Body body) {
        List<Form.Point> poor = between(points(fewer), from, to);
        List<Form.Point> rich = between(resolved(more, body), from, to).stream().filter(Form.Point::knuckle).toList();
        return IntStream.range(0, poor.size()).filter(i -> !poor.get(i).knuckle()).boxed()
                .flatMap(i -> partner(poor, i, rich).map(knuckle -> new Choice(poor.get(i), distance(poor.get(i), knuckle))).stream())
                .min(Comparator.comparingDouble(Choice::distance)).<List<Mending>>map(best -> List.of(new Mending.Corners(List.of(best.point())))).orElse(List.of());
    }

    private record Choice(Form.Point point, double distance) { }

    /** The knuckle of the richer section that a point would match, counted from below. */
    private static Optional<Form.Point> partner(List<Form.Point> poor, int point, List<Form.Point> rich) {
        long below = poor.subList(0, point).stream().filter(Form.Point::knuckle).count();
        return below < rich.size() ? Optional.of(rich.get((int) below)) : Optional.empty();
    }

    /** The points inside the two lines; an empty name stands for the end of the outline. */
    private static List<Form.Point> between(List<Form.Point> points, String from, String to) {
        int start = from.isEmpty() ? 0 : at(points, from) + 1;
        int end = to.isEmpty() ? points.size() : at(points, to);
        return start < 0 || end < start ? List.of() : points.subList(start, end);
    }

    private static int at(List<Form.Point> points, String line) {
        return IntStream.range(0, points.size()).filter(i -> points.get(i).line().filter(line::equals).isPresent()).findFirst().orElse(-1);
    }

    /** The line runs through the point nearest to the neighbour's, or is placed as it is placed there. */
    static List<Mending> line(Station lacking, Station having, String line) {
        Optional<Form.LinePlace> placed = places(having).stream().filter(place -> place.line().equals(line)).findFirst();
        if (placed.isPresent())
            return List.of(new Mending.Placed(lacking, placed.get()));
        List<Form.Point> there = points(having);
        int wanted = at(there, line);
        if (wanted < 0)
            return List.of();
        Optional<Form.Point> nearest = points(lacking).stream().filter(point -> point.line().isEmpty()).min(Comparator.comparingDouble(point -> distance(point, there.get(wanted))));
        return nearest.<List<Mending>>map(point -> List.of(new Mending.OnLine(point, line)))
                .orElseGet(() -> List.of(new Mending.Placed(lacking, new Form.LinePlace.AtGirth(line, share(there, wanted), there.get(wanted).origin()))));
    }

    private static List<Form.LinePlace> places(Station station) {
        return switch (station.form()) {
            case Form.Points form -> form.lines();
            case Form.Superellipse form -> form.lines();
            case Form.Like form -> form.lines();
            case Form.Pointed form -> List.of();
            case Form.Lofted form -> List.of();
        };
    }

    /** A point's share of the girth, measured straight from point to point. */
    private static double share(List<Form.Point> points, int point) {
        double[] chords = IntStream.range(1, points.size()).mapToDouble(i -> distance(points.get(i - 1), points.get(i))).toArray();
        double all = IntStream.range(0, chords.length).mapToDouble(i -> chords[i]).sum();
        return all > 0 ? IntStream.range(0, point).mapToDouble(i -> chords[i]).sum() / all : 0;
    }

    private static List<Form.Point> points(Station station) {
        return station.form() instanceof Form.Points form ? form.points() : List.of();
    }

    /** The points of a section, or of the one it is like; as many steps as there are stations at most. */
    private static List<Form.Point> resolved(Station station, Body body) {
        return Stream.iterate(Optional.of(station), Optional::isPresent, one -> one.flatMap(s -> s.form() instanceof Form.Like like ? named(body, like.station()) : Optional.empty()))
                .limit(body.stations().size()).map(Optional::get).map(ShapeMending::points).filter(points -> !points.isEmpty()).findFirst().orElse(List.of());
    }

    private static Optional<Station> named(Body body, String name) {
        return body.stations().stream().filter(station -> station.name().equals(name)).findFirst();
    }

    private static double distance(Form.Point a, Form.Point b) {
        return Math.hypot(a.y() - b.y(), a.z() - b.z());
    }
}
