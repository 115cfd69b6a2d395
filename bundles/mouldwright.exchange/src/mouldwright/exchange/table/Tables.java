package mouldwright.exchange.table;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mouldwright.exchange.Faults;
import mouldwright.exchange.StationOffsets;
import mouldwright.units.Unit;
import mouldwright.units.Units;

/** Reads tables of offsets. Two kinds are known by their first row:
 *
 *  <p>Points of stations, {@code station,y,z,mark} and perhaps {@code x}: a row a point, from bottom centre round the starboard side. The
 *  mark is {@code knuckle} for a corner, or the name of the line that makes one.
 *
 *  <p>A table of offsets: stations across the top, below them {@code position}, heights of keel, buttocks and sheer, half-breadths of keel,
 *  waterlines and deck, and height and half-breadth of any further line; diagonals; of a section that closes above, buttocks with their lower and
 *  upper heights. Where a first column tells surfaces apart, as in the tables we write ourselves, the finished one is read. */
public final class Tables {

    private Tables() { }

    /** Reads a table.
     *  @param text  of the file
     *  @param units of its figures where it names none
     *  @return the table, or what is wrong with it; never an exception, whatever the text */
    public static TableResult read(String text, Optional<Unit> units) {
        Faults faults = new Faults();
        Grid grid = Grid.of(text.startsWith("\uFEFF") ? text.substring(1) : text, faults);
        if (faults.none() && grid.rows().size() < 2)
            faults.add(1, "row 1", grid.rows().isEmpty() ? "there is nothing in this table" : "there is nothing below the first row",
                    "a row of headings comes first, then the offsets");
        if (!faults.none())
            return new TableResult(Optional.empty(), faults.all());
        if (Heading.of(grid.rows().getFirst().cell(0)).words().equals("surface"))
            grid = grid.of("finished");
        List<String> first = grid.rows().getFirst().cells().stream().map(cell -> Heading.of(cell).words()).toList();
        Measure measure = new Measure(units, grid.commaParts(), faults);
        List<StationOffsets> stations = PointTable.isHead(first) ? new PointTable(grid, measure, faults).stations()
                : new OffsetsByLines(grid, measure, faults).stations();
        if (faults.none() && stations.isEmpty())
            faults.add(1, "row 1", "there is no station in this table", "name the stations");
        Unit unit = measure.unit().orElseGet(() -> Units.find("mm").orElseThrow());
        return new TableResult(faults.none() ? Optional.of(new OffsetTable(stations, unit)) : Optional.empty(), faults.all());
    }

    /** A name as one compares headings. */
    static String lower(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
