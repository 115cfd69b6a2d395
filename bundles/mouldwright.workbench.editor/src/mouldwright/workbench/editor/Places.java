package mouldwright.workbench.editor;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Station;
import mouldwright.plan.stage.Bay;
import mouldwright.plan.stage.ShapeMeasures;

/** Which line of a spec made what, by the keys that drawings give to their marks, and the other way round. */
public final class Places {

    /** What the key of a station begins with. */
    static final String STATION = "station.";
    private static final String LINE = "line.";
    private static final String BAY = "bay.";

    private final String file;
    private final Map<String, Integer> lines = new HashMap<>();
    private final TreeMap<Integer, String> keys = new TreeMap<>();

    /** Those of a plan's own text. */
    Places(BuildPlan plan) {
        Spec spec = plan.spec();
        file = spec.origin() instanceof Origin.Text text ? text.file() : "";
        add("", spec.origin());
        for (Body.Line line : spec.body().lines())
            add(LINE + line.name(), line.origin());
        blocks(spec);
        for (Station station : spec.body().stations())
            add(STATION + station.name(), station.origin());
        plan.measurements().find(ShapeMeasures.class).ifPresent(shape -> shape.bays().forEach(this::bay));
    }

    /** A bay has no line of its own: it stands at the station that ends it forward. */
    private void bay(Bay bay) {
        Integer line = lines.get(STATION + bay.fore().station().name());
        if (line != null)
            lines.put(BAY + bay.name(), line);
    }

    private void blocks(Spec spec) {
        spec.frame().ifPresent(one -> add("frame", one.origin()));
        spec.fill().ifPresent(one -> add("fill", one.origin()));
        spec.carve().ifPresent(one -> add("carve", one.origin()));
        spec.skin().ifPresent(one -> add("skin", one.origin()));
        spec.finish().ifPresent(one -> add("finish", one.origin()));
        spec.mould().ifPresent(one -> add("mould", one.origin()));
        spec.surveys().forEach(one -> add("survey", one.origin()));
    }

    private void add(String key, Origin origin) {
        if (origin instanceof Origin.Text text && text.file().equals(file)) {
            lines.putIfAbsent(key, text.line());
            keys.put(text.line(), key);
        }
    }

    /** The line that made something; empty where the text has none of its own for it. */
    public OptionalInt line(String key) {
        Integer line = key.isEmpty() ? null : lines.get(key);
        return line == null ? OptionalInt.empty() : OptionalInt.of(line);
    }

    /** What begins last above a line, or on it. */
    public String key(int line) {
        Map.Entry<Integer, String> above = keys.floorEntry(line);
        return above == null ? "" : above.getValue();
    }
}
