package mouldwright.exchange.table;

import java.util.List;
import java.util.Optional;
import mouldwright.exchange.StationOffsets;
import mouldwright.units.Unit;

/** Offsets read from a table.
 *  @param stations in the order of the table
 *  @param unit     its figures are in, or were taken to be in */
public record OffsetTable(List<StationOffsets> stations, Unit unit) {
    /** Keeps its own copy. */
    public OffsetTable {
        stations = List.copyOf(stations);
    }

    /** A station by its name. */
    public Optional<StationOffsets> station(String name) {
        return stations.stream().filter(station -> station.name().equals(name)).findFirst();
    }

    /** The names of its stations. */
    public List<String> names() {
        return stations.stream().map(StationOffsets::name).toList();
    }
}
