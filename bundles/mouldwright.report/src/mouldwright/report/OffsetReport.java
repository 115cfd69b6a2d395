package mouldwright.report;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import mouldwright.plan.OffsetTable;
import mouldwright.units.FeetInchesEighths;
import mouldwright.units.UnitSystem;

/** A table of offsets as comma-separated values: a row a line, a column a station, and a first column that says on which surface. In
 *  millimetres to a tenth, or in feet, inches and eighths. A cell is empty where a line does not meet the section. */
public final class OffsetReport {

    private final boolean us;

    /** @param system of the figures */
    public OffsetReport(UnitSystem system) {
        this.us = system == UnitSystem.US;
    }

    /** The whole file.
     *  @param surfaces that are wanted */
    public String print(OffsetTable table, List<OffsetTable.Surface> surfaces) {
        Csv csv = new Csv();
        csv.words("surface").words("offsets in " + (us ? "ft-in-8ths" : "mm"));
        table.stations().forEach(station -> csv.words(station.name()));
        csv.end().words("").words("position");
        table.stations().forEach(station -> csv.plain(length(station.x())));
        csv.end();
        for (OffsetTable.Row row : table.rows()) {
            if (!surfaces.contains(row.surface())) {
                continue;
            }
            csv.words(row.surface().name().toLowerCase(Locale.ROOT)).words(label(row, table.diagonals()));
            for (OptionalDouble value : row.values()) {
                csv.plain(value.isPresent() ? length(value.getAsDouble()) : "");
            }
            csv.end();
        }
        return csv.text();
    }

    String length(double metres) {
        return us ? FeetInchesEighths.of(metres) : Numbers.fixed(metres * 1000, 1);
    }

    String label(OffsetTable.Row row, double diagonals) {
        return switch (row.measure()) {
            case HALF_BREADTH -> "waterline " + plane(row.at());
            case HALF_BREADTH_PORT -> "waterline " + plane(row.at()) + " port";
            case HEIGHT_BELOW -> "buttock " + plane(row.at()) + " lower";
            case HEIGHT_ABOVE -> "buttock " + plane(row.at()) + " upper";
            case DIAGONAL_UP -> "diagonal up from " + length(diagonals);
            case DIAGONAL_DOWN -> "diagonal down from " + length(diagonals);
            case GIRTH -> "girth";
            case LINE_HEIGHT -> "height of " + row.line();
            case LINE_HALF_BREADTH -> "half-breadth of " + row.line();
        };
    }

    private String plane(double at) {
        return us ? length(at) : Numbers.text(Math.rint(at * 1e6) / 1000);
    }
}
