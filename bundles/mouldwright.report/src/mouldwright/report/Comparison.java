package mouldwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.plan.Quantity;
import mouldwright.plan.spec.Station;

/**
 * What changed from one estimate to another.
 *
 * @param before   the old one
 * @param after    the new one
 * @param figures  that are not the same, in the order of the new plan, those gone at the end
 * @param stations that came, went or moved
 * @param added    findings that came
 * @param gone     findings that went
 */
public record Comparison(Estimate before, Estimate after, List<Change> figures, List<Moved> stations, List<TextFinding> added, List<TextFinding> gone) {

    /** A figure as it was and is; empty where there was or is none. */
    public record Change(String id, Optional<Quantity> before, Optional<Quantity> after) {

        /** The one there is; the new one of two. */
        public Quantity any() {
            return after.or(this::before).orElseThrow();
        }

        /** New less old, SI; empty where one is missing. */
        public Optional<Double> difference() {
            return before.flatMap(old -> after.map(now -> now.value() - old.value()));
        }
    }

    /** A station as it stood and stands, metres aft; empty where it did or does not. */
    public record Moved(String name, Optional<Double> before, Optional<Double> after) { }

    /** Figures nearer to one another than this share of them are the same: what is left is rounding of the machine. */
    private static final double SAME = 1e-9;

    /** Takes copies. */
    public Comparison {
        figures = List.copyOf(figures);
        stations = List.copyOf(stations);
        added = List.copyOf(added);
        gone = List.copyOf(gone);
    }

    /** Compares two estimates. */
    public static Comparison of(Estimate before, Estimate after) {
        return new Comparison(before, after, changes(before.quantities(), after.quantities()), moved(before, after), without(after.findings(), before.findings()),
                without(before.findings(), after.findings()));
    }

    /** Whether nothing that is built would differ. */
    public boolean isEmpty() {
        return figures.isEmpty() && stations.isEmpty() && added.isEmpty() && gone.isEmpty();
    }

    private static List<Change> changes(List<Quantity> before, List<Quantity> after) {
        Map<String, Quantity> old = byId(before), now = byId(after);
        List<Change> changes = new ArrayList<>();
        now.forEach((id, quantity) -> {
            if (!old.containsKey(id) || differ(old.get(id), quantity))
                changes.add(new Change(id, Optional.ofNullable(old.get(id)), Optional.of(quantity)));
        });
        old.forEach((id, quantity) -> {
            if (!now.containsKey(id))
                changes.add(new Change(id, Optional.of(quantity), Optional.empty()));
        });
        return changes;
    }

    private static Map<String, Quantity> byId(List<Quantity> quantities) {
        Map<String, Quantity> byId = new LinkedHashMap<>();
        quantities.forEach(quantity -> byId.put(quantity.id(), quantity));
        return byId;
    }

    private static boolean differ(Quantity a, Quantity b) {
        return !a.currency().equals(b.currency()) || differ(a.value(), b.value()) || differ(a.low(), b.low()) || differ(a.high(), b.high());
    }

    private static boolean differ(double a, double b) {
        return Math.abs(a - b) > SAME * Math.max(Math.abs(a), Math.abs(b));
    }

    private static List<Moved> moved(Estimate before, Estimate after) {
        Map<String, Double> old = places(before), now = places(after);
        List<Moved> moved = new ArrayList<>();
        now.forEach((name, x) -> {
            if (!old.containsKey(name) || differ(old.get(name), x))
                moved.add(new Moved(name, Optional.ofNullable(old.get(name)), Optional.of(x)));
        });
        old.forEach((name, x) -> {
            if (!now.containsKey(name))
                moved.add(new Moved(name, Optional.of(x), Optional.empty()));
        });
        return moved;
    }

    private static Map<String, Double> places(Estimate estimate) {
        Map<String, Double> places = new LinkedHashMap<>();
        for (Station station : estimate.plan().spec().body().stations())
            places.put(station.name(), station.x());
        return places;
    }

    /** Findings are the same if they say the same, wherever the text has moved them to. */
    private static List<TextFinding> without(List<TextFinding> findings, List<TextFinding> others) {
        List<String> left = new ArrayList<>(others.stream().map(Comparison::said).toList());
        return findings.stream().filter(finding -> !left.remove(said(finding))).toList();
    }

    private static String said(TextFinding finding) {
        return finding.code() + " " + finding.severity() + " " + finding.message();
    }
}
