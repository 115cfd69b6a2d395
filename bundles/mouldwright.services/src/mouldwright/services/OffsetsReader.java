package mouldwright.services;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mouldwright.exchange.Fault;
import mouldwright.exchange.Faults;
import mouldwright.exchange.SectionPoint;
import mouldwright.exchange.StationOffsets;
import mouldwright.exchange.drawing.Drawing;
import mouldwright.exchange.drawing.DrawingResult;
import mouldwright.exchange.drawing.Drawings;
import mouldwright.exchange.drawing.DrawnSection;
import mouldwright.exchange.drawing.OutlineResult;
import mouldwright.exchange.table.OffsetTable;
import mouldwright.exchange.table.TableResult;
import mouldwright.exchange.table.Tables;
import mouldwright.units.Unit;

/** Reads all stations of a table, or of a drawing with a layer a station, and says where they stand. */
final class OffsetsReader {

    private static final Pattern PLACED = Pattern.compile("(.+?)[\\s_]+at[\\s_]+(-?\\d+(?:\\.\\d+)?)", Pattern.CASE_INSENSITIVE);
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:\\.\\d+)?");

    private final ImportOrder order;
    private final Faults faults = new Faults();
    private Optional<Unit> unit = Optional.empty();

    OffsetsReader(ImportOrder order) {
        this.order = order;
    }

    /** What is wrong with the file; none where stations came of it. */
    List<Fault> faults() {
        return faults.all();
    }

    /** The unit its figures are in. */
    Unit unit() {
        return unit.orElseThrow();
    }

    /** Stations in order from the forward end, each with its place; none where there is a fault. */
    List<StationOffsets> stations(String file, String text) {
        List<StationOffsets> read = file.toLowerCase(Locale.ROOT).endsWith(".dxf") ? drawn(text) : tabled(text);
        List<StationOffsets> placed = faults.none() ? placed(read) : List.of();
        for (int i = 1; i < placed.size(); i++)
            if (placed.get(i).x().orElseThrow() == placed.get(i - 1).x().orElseThrow())
                faults.add(1, "stations", placed.get(i - 1).name() + " and " + placed.get(i).name() + " stand at one place", "move one, or take it out");
        return faults.none() ? placed : List.of();
    }

    private List<StationOffsets> tabled(String text) {
        TableResult result = Tables.read(text, order.units());
        result.faults().forEach(faults::add);
        unit = result.table().map(OffsetTable::unit);
        return result.table().map(OffsetTable::stations).orElse(List.of());
    }

    private List<StationOffsets> drawn(String text) {
        DrawingResult result = Drawings.read(text);
        result.faults().forEach(faults::add);
        if (result.drawing().isEmpty())
            return List.of();
        Drawing drawing = result.drawing().get();
        unit = order.units().or(drawing::unit);
        if (unit.isEmpty()) {
            faults.add(1, "line 1", "the drawing does not say what its lengths are in", "state `--units mm`, or whatever they are");
            return List.of();
        }
        List<StationOffsets> stations = new ArrayList<>();
        drawing.layers().forEach((name, layer) -> {
            OutlineResult outline = DrawnSection.of(name, layer, unit.get(), order.full(), order.tolerance());
            outline.faults().forEach(faults::add);
            stations.add(station(name, outline.points()));
        });
        if (stations.isEmpty())
            faults.add(1, "line 1", "nothing that could be a section lies in this drawing", "draw each section on a layer of its own");
        return stations;
    }

    /** A layer's name may say where its station stands: {@code S4 at 1000}. */
    private StationOffsets station(String layer, List<SectionPoint> points) {
        Matcher match = PLACED.matcher(layer.strip());
        return match.matches() ? new StationOffsets(match.group(1), length(match.group(2)), points)
                : new StationOffsets(layer.strip(), OptionalDouble.empty(), points);
    }

    private OptionalDouble length(String number) {
        double value = Double.parseDouble(number);
        return Math.abs(value) < 1e9 ? OptionalDouble.of(unit.orElseThrow().toSi(value)) : OptionalDouble.empty();
    }

    private List<StationOffsets> placed(List<StationOffsets> read) {
        boolean all = read.stream().allMatch(station -> station.x().isPresent());
        boolean numbers = read.stream().allMatch(station -> NUMBER.matcher(station.name()).matches());
        if (!all && order.every().isEmpty() && !numbers) {
            String without = read.stream().filter(station -> station.x().isEmpty()).findFirst().orElseThrow().name();
            faults.add(1, "station " + without, "nothing says where it stands",
                    "add an x column or a row `position`, name layers like `S4 at 1000`, or state `--every 300mm`");
            return List.of();
        }
        List<StationOffsets> placed = new ArrayList<>();
        for (StationOffsets station : read) {
            OptionalDouble x = all ? station.x() : order.every().isPresent() ? OptionalDouble.of(placed.size() * order.every().getAsDouble()) : length(station.name());
            placed.add(new StationOffsets(station.name(), OptionalDouble.of(x.orElse(0)), station.points()));
        }
        placed.sort(Comparator.comparingDouble(station -> station.x().orElseThrow()));
        return placed;
    }
}
