package mouldwright.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Station;
import mouldwright.plan.stage.ShapeMeasures;

/** Lets each ply of a rule end a lap short of those it would end with: along the girth by moving the end of its band, along the body at a lofted station that carries
 *  no plate. */
final class StaggeredEdges {

    private final Skin.Rule.AddPlies rule;
    private final Map<String, Integer> plies;
    private final BuildPlan plan;
    private final double lap;
    private final double share;
    private final Set<String> taken;
    private final List<Remedy> stations = new ArrayList<>();
    private boolean possible = true;

    private StaggeredEdges(PlyEdges edges, Map<String, Integer> plies, double lap, double girth, BuildPlan plan) {
        this.rule = edges.rule();
        this.plies = plies;
        this.plan = plan;
        this.lap = lap;
        this.share = lap / (girth / 2);
        this.taken = plan.spec().body().stations().stream().map(Station::name).collect(Collectors.toCollection(HashSet::new));
    }

    /** The fix; none where an edge runs on a line, or no room is left between the edges.
     *  @param plies how many end at each edge of the rule */
    static Fix[] of(PlyEdges edges, Map<String, Integer> plies, Skin skin, BuildPlan plan) {
        Optional<ShapeMeasures> shape = plan.measurements().find(ShapeMeasures.class);
        if (shape.isEmpty())
            return new Fix[0];
        double girth = shape.get().stations().stream().filter(at -> !at.pinched()).mapToDouble(ShapeMeasures.AtStation::girth).min().orElse(0);
        return girth > 0 ? new StaggeredEdges(edges, plies, skin.lap().likely(), girth, plan).fix() : new Fix[0];
    }

    private Fix[] fix() {
        List<String> rules = new ArrayList<>();
        for (int i = 0; i < rule.count() && possible; i++)
            rules.add("bay " + station(rule.span().from(), i, 1) + " to " + station(rule.span().to(), i, -1) + band(i) + " add ply " + rule.mat().name());
        if (!possible)
            return new Fix[0];
        List<Remedy> remedies = new ArrayList<>(stations);
        remedies.add(new Remedy.Replace(rule.span().origin(), String.join("\n", rules)));
        return new Fix[] {new Fix("let each ply end " + Findings.length(lap) + " short of the one below it", false, remedies)};
    }

    /** How many laps a ply of the rule ends short. */
    private int laps(String edge, int ply) {
        int all = plies.getOrDefault(edge, 0);
        return all > 1 ? all - rule.count() + ply : 0;
    }

    private String band(int ply) {
        String from = place(rule.band().from(), ply, 1), to = place(rule.band().to(), ply, -1);
        return rule.band().from().equals(Place.BOTTOM) && rule.band().to().equals(Place.TOP) ? "" : " girth " + from + " to " + to;
    }

    private String place(Place place, int ply, int sign) {
        int laps = laps(PlyEdges.words(place), ply);
        return switch (place) {
            case Place.OnLine(String line) -> {
                possible &= laps == 0;
                yield line;
            }
            case Place.AtShare(double at) -> Findings.percent(at + sign * Math.ceil(laps * share * 1000) / 1000);
        };
    }

    /** A station, or one that many laps inside it. */
    private String station(String name, int ply, int sign) {
        int laps = laps("at " + name, ply);
        List<Station> all = plan.spec().body().stations();
        Station edge = all.stream().filter(station -> station.name().equals(name)).findFirst().orElseThrow();
        double x = edge.x() + sign * laps * lap;
        Optional<Station> before = all.stream().filter(station -> station.x() < x).reduce((a, b) -> b);
        if (laps == 0 || before.isEmpty() || before.get().origin() instanceof Origin.Assumed) {
            possible &= laps == 0;
            return name;
        }
        String inside = StationInsert.name(name, taken);
        stations.add(new Remedy.Insert(before.get().origin(), Remedy.Side.AFTER, "station " + inside + " at " + Findings.exact(x, 3) + " lofted unplated"));
        return inside;
    }
}
