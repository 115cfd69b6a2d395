package mouldwright.services;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mouldwright.exchange.SectionPoint;
import mouldwright.exchange.StationOffsets;
import mouldwright.units.Unit;

/** Writes stations that were read as a spec. */
final class SpecDraft {

    /** Lengths are written to this, metres: finer than anybody saws. */
    private static final double FINEST = 1e-6;

    private final Set<String> words;
    private final Unit unit;
    private final Map<String, String> lines = new HashMap<>();

    /** @param words that mean something in a spec and are no names
     *  @param unit  lengths are written in */
    SpecDraft(Set<String> words, Unit unit) {
        this.words = words;
        this.unit = unit;
    }

    /** The spec.
     *  @param source what it was read from
     *  @param full   whether the sections go all round */
    String text(String plug, String source, boolean full, List<StationOffsets> stations) {
        StringBuilder out = new StringBuilder("/** Read from ").append(source.replace("*/", "")).append(". */\nplug ").append(name(plug, new LinkedHashSet<>(), "Plug"))
                .append(" {\nunits ").append(unit.symbol()).append('\n').append(full ? "full" : "half").append(" sections\n");
        Set<String> lineNames = new LinkedHashSet<>();
        for (StationOffsets station : stations)
            for (SectionPoint point : station.points())
                point.line().ifPresent(line -> lines.computeIfAbsent(line, written -> name(written, lineNames, "line_")));
        lineNames.forEach(line -> out.append("\nline ").append(line).append('\n'));
        Set<String> names = new LinkedHashSet<>();
        for (StationOffsets station : stations) {
            out.append("\nstation ").append(name(station.name(), names, "S")).append(" at ").append(figure(station.x().orElseThrow()));
            out.append(isPoint(station) ? " point " + place(station.points().getFirst()) + "\n" : body(station));
        }
        return out.append("}\n").toString();
    }

    private static boolean isPoint(StationOffsets station) {
        SectionPoint first = station.points().getFirst();
        return station.points().stream().allMatch(point -> point.distance(first) == 0);
    }

    private String body(StationOffsets station) {
        StringBuilder out = new StringBuilder(" {\n");
        for (SectionPoint point : station.points())
            out.append(place(point)).append(point.knuckle() ? " knuckle" : "").append(point.line().map(line -> " " + lines.get(line)).orElse("")).append('\n');
        return out.append("}\n").toString();
    }

    private String place(SectionPoint point) {
        return figure(point.y()) + " " + figure(point.z());
    }

    private String figure(double metres) {
        int decimals = Math.max(0, (int) Math.ceil(Math.log10(unit.factor() / FINEST)));
        BigDecimal rounded = new BigDecimal(unit.fromSi(metres)).setScale(decimals, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** A name as the language has them, not taken yet. */
    private String name(String written, Set<String> taken, String before) {
        String plain = written.strip().replaceAll("[^\\p{IsLatin}0-9_]+", "_").replaceAll("^_+|_+$", "");
        String whole = plain.isEmpty() || Character.isDigit(plain.charAt(0)) || words.contains(plain) ? before + plain : plain;
        String free = whole;
        List<String> tried = new ArrayList<>();
        while (taken.contains(free)) {
            tried.add(free);
            free = whole + "_" + (tried.size() + 1);
        }
        taken.add(free);
        return free;
    }
}
