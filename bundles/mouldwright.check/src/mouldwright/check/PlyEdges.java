package mouldwright.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.plan.spec.Band;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Station;
import mouldwright.units.Dimension;

/** Where a rule's plies end, in words. Edges at the ends of the body, at the centrelines and where the face turns bare are left out: all plies end there.
 *  @param rule   whose plies
 *  @param fromX  station line where they begin, m
 *  @param toX    station line where they end, m
 *  @param across edges across the body
 *  @param along  edges along the body */
record PlyEdges(Skin.Rule.AddPlies rule, double fromX, double toX, List<String> across, List<String> along) {

    static Optional<PlyEdges> of(Spec spec, Skin.Rule.AddPlies rule) {
        Map<String, Double> lines = new HashMap<>();
        for (Station station : spec.body().stations())
            lines.put(station.name(), station.x());
        Double from = lines.get(rule.span().from());
        Double to = lines.get(rule.span().to());
        if (from == null || to == null)
            return Optional.empty();
        List<String> across = new ArrayList<>();
        if (from > spec.body().stations().getFirst().x())
            across.add("at " + rule.span().from());
        if (to < spec.body().stations().getLast().x())
            across.add("at " + rule.span().to());
        List<String> along = new ArrayList<>();
        for (Place place : List.of(rule.band().from(), rule.band().to()))
            if (ends(spec, place))
                along.add(words(place));
        return Optional.of(new PlyEdges(rule, from, to, across, along));
    }

    private static boolean ends(Spec spec, Place place) {
        return !place.equals(Place.BOTTOM) && !place.equals(Place.TOP)
                && spec.body().bare().stream().noneMatch(bare -> bare.from().equals(place) || bare.to().equals(place));
    }

    static String words(Place place) {
        return switch (place) {
            case Place.OnLine(String line) -> "on " + line;
            case Place.AtShare(double share) -> "at " + Findings.figure(share, Dimension.RATIO) + " of the girth";
        };
    }

    List<String> all() {
        List<String> all = new ArrayList<>(across);
        all.addAll(along);
        return all;
    }

    /** Edges that run along each other. */
    List<String> sharedWith(PlyEdges other) {
        List<String> shared = new ArrayList<>();
        if (meet(rule.band(), other.rule.band()))
            across.stream().filter(other.across::contains).forEach(shared::add);
        if (fromX < other.toX && other.fromX < toX)
            along.stream().filter(other.along::contains).forEach(shared::add);
        return shared;
    }

    /** Whether two bands share some girth; where a line bounds one of them they may, which is enough for a warning. */
    private static boolean meet(Band a, Band b) {
        return low(a) < high(b) && low(b) < high(a);
    }

    private static double low(Band band) {
        return Math.min(share(band.from(), 0), share(band.to(), 0));
    }

    private static double high(Band band) {
        return Math.max(share(band.from(), 1), share(band.to(), 1));
    }

    private static double share(Place place, double otherwise) {
        return place instanceof Place.AtShare(double share) ? share : otherwise;
    }
}
