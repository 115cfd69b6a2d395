package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import mouldwright.plan.OffsetTable;
import mouldwright.units.UnitSystem;

/** A table of offsets as a PDF for the loft floor: a table a surface, its stations over as many tables as the breadth of the paper asks for. */
public final class OffsetPaper {

    private static final double BODY = 9;
    /** Columns of stations beside the names of the lines; of figures as long as feet-inches-eighths so many fit any paper. */
    private static final int ACROSS = 7;

    private final OffsetReport report;
    private final PdfPaper paper;
    private final String unit;

    /** @param system of the figures */
    public OffsetPaper(UnitSystem system, PdfPaper paper) {
        this.report = new OffsetReport(system);
        this.paper = paper;
        this.unit = system == UnitSystem.US ? "ft-in-8ths" : "mm";
    }

    /** The whole file.
     *  @param plug     its name
     *  @param revision of its spec
     *  @param surfaces that are wanted */
    public byte[] print(OffsetTable table, List<OffsetTable.Surface> surfaces, String plug, String revision) {
        PdfFlow flow = new PdfFlow(new PdfSheet(plug + ", table of offsets, revision " + revision, paper));
        flow.words("Table of offsets", 10, false, PdfSheet.Tint.SOFT);
        flow.words(plug, 26, true, PdfSheet.Tint.INK);
        flow.words("Revision " + revision, 10, false, PdfSheet.Tint.INK);
        flow.rule(2, PdfSheet.Tint.BLUE);
        flow.words("In " + unit + ". Waterlines give half-breadths at a height above the base, buttocks heights at a distance off the centreline, diagonals the distance along a line at "
                + "45 degrees from the centreline. A cell is empty where a line does not meet the section.", BODY, false, PdfSheet.Tint.INK);
        for (OffsetTable.Surface surface : surfaces) {
            if (table.rows().stream().anyMatch(row -> row.surface() == surface)) {
                flow.heading(surface == OffsetTable.Surface.FINISHED ? "Finished surface" : "Plates, as they are cut");
                for (int from = 0; from < table.stations().size(); from += ACROSS) {
                    new PdfTable(stations(table, surface, from, Math.min(table.stations().size(), from + ACROSS)), flow).print();
                }
            }
        }
        return flow.finish(plug, "revision " + revision, Caution.DEFERENCE);
    }

    private Table stations(OffsetTable table, OffsetTable.Surface surface, int from, int to) {
        List<OffsetTable.Column> stations = table.stations().subList(from, to);
        Table columns = new Table("offsets", stations.size() == 1 ? "Station " + stations.getFirst().name() : "Stations " + stations.getFirst().name() + " to " + stations.getLast().name());
        columns.words("");
        stations.forEach(station -> columns.figures(station.name()));
        List<String> positions = new ArrayList<>(List.of("position"));
        stations.forEach(station -> positions.add(report.length(station.x())));
        columns.row(positions);
        for (OffsetTable.Row row : table.rows()) {
            if (row.surface() == surface) {
                List<String> cells = new ArrayList<>(List.of(report.label(row, table.diagonals())));
                for (OptionalDouble value : row.values().subList(from, to)) {
                    cells.add(value.isPresent() ? report.length(value.getAsDouble()) : "");
                }
                if (cells.stream().skip(1).anyMatch(cell -> !cell.isEmpty())) {
                    columns.row(cells);
                }
            }
        }
        return columns;
    }
}
