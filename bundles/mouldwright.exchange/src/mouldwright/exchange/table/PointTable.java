package mouldwright.exchange.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import mouldwright.exchange.Faults;
import mouldwright.exchange.SectionPoint;
import mouldwright.exchange.StationOffsets;
import mouldwright.units.Unit;

/** Points of stations, a row each. */
final class PointTable {

    private static final Map<String, List<String>> NAMES = Map.of("station", List.of("station"), "x", List.of("x", "at", "position"),
            "y", List.of("y", "half-breadth"), "z", List.of("z", "height"), "mark", List.of("mark"));
    private static final Pattern LINE = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_]*");

    /** More points than any section needs. */
    private static final int MOST = 2000;

    private final Grid grid;
    private final Measure measure;
    private final Faults faults;
    private final Grid.Row head;
    private final Map<String, Integer> columns = new LinkedHashMap<>();
    private final Map<String, Optional<Unit>> units = new LinkedHashMap<>();

    PointTable(Grid grid, Measure measure, Faults faults) {
        this.grid = grid;
        this.measure = measure;
        this.faults = faults;
        this.head = grid.rows().getFirst();
    }

    /** Whether a first row heads a table of points. */
    static boolean isHead(List<String> words) {
        return List.of("station", "y", "z").stream().allMatch(column -> words.stream().anyMatch(NAMES.get(column)::contains));
    }

    List<StationOffsets> stations() {
        name();
        Map<String, List<SectionPoint>> points = new LinkedHashMap<>();
        Map<String, OptionalDouble> places = new LinkedHashMap<>();
        String last = "";
        for (Grid.Row row : grid.rows().subList(1, grid.rows().size())) {
            String station = row.cell(columns.get("station"));
            if (!fits(row) || station.isEmpty()) {
                if (station.isEmpty())
                    faults.add(row.line(), row.place(columns.get("station")), "no station is named", "name it in every row");
                continue;
            }
            if (!station.equals(last) && points.containsKey(station))
                faults.add(row.line(), row.place(columns.get("station")), "station " + station + " comes a second time", "keep its rows together, or rename one");
            last = station;
            List<SectionPoint> own = points.computeIfAbsent(station, name -> new ArrayList<>());
            point(row).ifPresent(own::add);
            if (own.size() == MOST + 1)
                faults.add(row.line(), "row " + row.number(), "station " + station + " has more than " + MOST + " points", "thin them out");
            place(row, station, places);
        }
        List<StationOffsets> all = new ArrayList<>();
        points.forEach((name, own) -> all.add(new StationOffsets(name, places.getOrDefault(name, OptionalDouble.empty()), own)));
        return all;
    }

    private void name() {
        for (int column = 0; column < head.width(); column++) {
            Heading heading = Heading.of(head.cell(column));
            Optional<String> known = NAMES.entrySet().stream().filter(entry -> entry.getValue().contains(heading.words())).map(Map.Entry::getKey).findFirst();
            if (known.isEmpty())
                faults.add(head.line(), head.place(column), "no column `" + head.cell(column) + "` is known", "the columns are station, x, y, z and mark; take it out");
            else if (columns.putIfAbsent(known.get(), column) != null)
                faults.add(head.line(), head.place(column), "a second column of " + known.get(), "keep one of them");
            known.ifPresent(name -> units.put(name, heading.unit()));
        }
    }

    /** A cell too many is often a decimal comma. */
    private boolean fits(Grid.Row row) {
        if (row.width() <= head.width())
            return true;
        faults.add(row.line(), "row " + row.number(), "it has " + row.width() + " cells, the headings are " + head.width()
                + (grid.commaParts() ? "; is there a decimal comma in it?" : ""), "one cell a heading; part cells by semicolons where figures have commas");
        return false;
    }

    private Optional<SectionPoint> point(Grid.Row row) {
        OptionalDouble y = required(row, "y"), z = required(row, "z");
        if (y.isEmpty() || z.isEmpty())
            return Optional.empty();
        String mark = columns.containsKey("mark") ? row.cell(columns.get("mark")) : "";
        if (mark.isEmpty())
            return Optional.of(SectionPoint.smooth(y.getAsDouble(), z.getAsDouble()));
        String line = mark.equals("knuckle") ? "" : mark.startsWith("knuckle ") ? mark.substring("knuckle ".length()).strip() : mark;
        if (!line.isEmpty() && !LINE.matcher(line).matches()) {
            faults.add(row.line(), row.place(columns.get("mark")), "`" + mark + "` is no mark", "`knuckle`, or the name of a line in one word");
            return Optional.empty();
        }
        return Optional.of(new SectionPoint(y.getAsDouble(), z.getAsDouble(), true, Optional.of(line).filter(name -> !name.isEmpty())));
    }

    private OptionalDouble required(Grid.Row row, String column) {
        OptionalDouble length = measure.length(row, columns.get(column), units.get(column));
        if (length.isEmpty() && row.cell(columns.get(column)).isEmpty())
            faults.add(row.line(), row.place(columns.get(column)), "a point is two figures, and " + column + " is missing", "put it in, or take the row out");
        return length;
    }

    private void place(Grid.Row row, String station, Map<String, OptionalDouble> places) {
        if (!columns.containsKey("x"))
            return;
        OptionalDouble x = measure.length(row, columns.get("x"), units.get("x"));
        OptionalDouble before = places.getOrDefault(station, OptionalDouble.empty());
        if (x.isPresent() && before.isPresent() && x.getAsDouble() != before.getAsDouble())
            faults.add(row.line(), row.place(columns.get("x")), "station " + station + " stands at another place further up", "a station is square to the centreline: one x");
        if (x.isPresent())
            places.putIfAbsent(station, x);
    }
}
