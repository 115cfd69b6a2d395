package mouldwright.exchange.table;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import mouldwright.exchange.Faults;
import mouldwright.exchange.SectionPoint;
import mouldwright.exchange.StationOffsets;

/** A table of offsets: a column a station, a row a line of the body. Waterlines give half-breadths at a height, buttocks heights at a
 *  half-breadth; keel and sheer begin and end a section, any other line named in both groups is a knuckle. */
final class OffsetsByLines {

    private final Grid grid;
    private final Measure measure;
    private final Faults faults;
    private final Grid.Row head;
    private final Map<Integer, OptionalDouble> places = new HashMap<>();
    private final Map<Integer, SectionChains> chains = new LinkedHashMap<>();
    private final Set<RowLabel> seen = new LinkedHashSet<>();

    OffsetsByLines(Grid grid, Measure measure, Faults faults) {
        this.grid = grid;
        this.measure = measure;
        this.faults = faults;
        this.head = grid.rows().getFirst();
    }

    List<StationOffsets> stations() {
        measure.table(Heading.of(head.cell(0)).unit());
        nameStations();
        Optional<RowLabel.Group> group = Optional.empty();
        for (Grid.Row row : grid.rows().subList(1, grid.rows().size())) {
            Optional<RowLabel.Group> heads = row.width() == 1 ? RowLabel.Group.of(row.cell(0)) : Optional.empty();
            if (heads.isPresent())
                group = heads;
            else
                read(row, group);
        }
        List<StationOffsets> all = new ArrayList<>();
        chains.forEach((column, chain) -> all.add(station(column, chain)));
        return all;
    }

    private void nameStations() {
        Set<String> names = new LinkedHashSet<>();
        for (int column = 1; column < head.width(); column++) {
            String name = head.cell(column);
            if (name.isEmpty())
                faults.add(head.line(), head.place(column), "no station is named here", "the first row names the stations");
            else if (!names.add(name))
                faults.add(head.line(), head.place(column), "two stations are called " + name, "rename one of them");
            chains.put(column, new SectionChains());
        }
    }

    private void read(Grid.Row row, Optional<RowLabel.Group> group) {
        if (row.width() > head.width()) {
            faults.add(row.line(), "row " + row.number(), "it has " + row.width() + " cells, the first row " + head.width()
                    + (grid.commaParts() ? "; is there a decimal comma in it?" : ""), "a cell a station; part cells by semicolons where figures have commas");
            return;
        }
        if (Tables.lower(row.cell(0)).matches("(wl|waterline)\\b.*\\bport")) {
            faults.add(row.line(), row.place(0), "both sides differ, and a table of offsets gives one half of each section", "give points of full sections: `station,y,z`");
            return;
        }
        Optional<RowLabel> label = RowLabel.of(row, group, measure);
        if (label.isEmpty()) {
            faults.add(row.line(), row.place(0), "`" + row.cell(0) + "` is no line that is known",
                    "`position`, `waterline 100`, `buttock 50`, `diagonal down from 400 at 45 deg`, `height of keel`, `half-breadth of deck`, or a line with height and half-breadth");
            return;
        }
        if (!seen.add(label.get()))
            faults.add(row.line(), row.place(0), "`" + row.cell(0) + "` comes a second time", "keep one of them");
        for (int column : chains.keySet()) {
            OptionalDouble figure = measure.length(row, column, Optional.empty());
            if (figure.isPresent())
                keep(row, column, label.get(), figure.getAsDouble());
            else if (label.get() instanceof RowLabel.Position && row.cell(column).isEmpty())
                faults.add(row.line(), row.place(column), "station " + head.cell(column) + " has no position", "say how far aft it stands");
        }
    }

    private void keep(Grid.Row row, int column, RowLabel label, double figure) {
        SectionChains chain = chains.get(column);
        boolean breadth = label instanceof RowLabel.Waterline || label instanceof RowLabel.BreadthOf || label instanceof RowLabel.Diagonal;
        if (breadth && figure < 0) {
            faults.add(row.line(), row.place(column), "a half-breadth below nothing: " + row.cell(column), "it is measured from the centreline out");
            return;
        }
        switch (label) {
            case RowLabel.Position position -> places.put(column, OptionalDouble.of(figure));
            case RowLabel.Waterline(double height) -> chain.waterline(height, figure);
            case RowLabel.Buttock(double out, RowLabel.Edge edge) -> chain.buttock(out, figure, edge);
            case RowLabel.Diagonal(double from, double slope) -> chain.diagonal(figure * Math.cos(slope), from + figure * Math.sin(slope));
            case RowLabel.Beside beside -> { }
            case RowLabel.HeightOf(String line) -> chain.height(line, figure);
            case RowLabel.BreadthOf(String line) -> chain.breadth(line, figure);
        }
    }

    private StationOffsets station(int column, SectionChains chain) {
        String name = head.cell(column);
        chain.halfGiven().ifPresent(words -> faults.add(head.line(), head.place(column), "station " + name + " has " + words, "a line wants both figures"));
        List<SectionPoint> points = faults.none() ? chain.outline() : List.of();
        if (faults.none() && points.isEmpty())
            faults.add(head.line(), head.place(column), "station " + name + " has no offsets", "fill its column, or take it out");
        return new StationOffsets(name, places.getOrDefault(column, OptionalDouble.empty()), points);
    }
}
