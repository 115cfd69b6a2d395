package mouldwright.exchange.table;

import java.util.Optional;
import java.util.OptionalDouble;
import mouldwright.exchange.Faults;
import mouldwright.units.Unit;
import mouldwright.units.Units;

/** Reads lengths out of cells, in the units of their headings or else those of the table, and notes what is wrong with them. */
final class Measure {

    /** Larger than any body, metres: a slip of the unit or of the finger. */
    private static final double LARGEST = 1000;

    /** No number of any unit of length that comes under this. */
    private static final double MOST = 1e9;

    private final Optional<Unit> otherwise;
    private final boolean commaParts;
    private final Faults faults;
    private Optional<Unit> table = Optional.empty();
    private Optional<Unit> used = Optional.empty();
    private boolean missingTold;

    Measure(Optional<Unit> otherwise, boolean commaParts, Faults faults) {
        this.otherwise = otherwise;
        this.commaParts = commaParts;
        this.faults = faults;
    }

    /** The unit a heading gives the whole table. */
    void table(Optional<Unit> unit) {
        table = unit;
    }

    /** The unit figures were in, the first that was used. */
    Optional<Unit> unit() {
        return used.or(() -> otherwise);
    }

    /** A length in metres; empty for an empty cell, and, noted, for one that is no length.
     *  @param heading of its row or column, whose unit goes before the table's */
    OptionalDouble length(Grid.Row row, int column, Optional<Unit> heading) {
        return length(row, column, row.cell(column), heading);
    }

    /** The same of a part of a cell's words. */
    OptionalDouble length(Grid.Row row, int column, String written, Optional<Unit> heading) {
        return switch (CellNumber.read(written, commaParts)) {
            case CellNumber.Empty empty -> OptionalDouble.empty();
            case CellNumber.Feet(double metres) -> {
                used = used.or(() -> Units.find("in"));
                yield bounded(row, column, metres);
            }
            case CellNumber.Plain(double value) -> plain(row, column, value, heading.or(() -> table).or(() -> otherwise));
            case CellNumber.Wrong(String message, String remedy) -> {
                faults.add(row.line(), row.place(column), message, remedy);
                yield OptionalDouble.empty();
            }
        };
    }

    private OptionalDouble plain(Grid.Row row, int column, double value, Optional<Unit> unit) {
        if (value == 0)
            return OptionalDouble.of(0);
        if (unit.isEmpty()) {
            if (!missingTold)
                faults.add(row.line(), row.place(column), "the table does not say what its lengths are in",
                        "put the unit in the first heading, as `offsets in mm` or `y (mm)`, or state `units`");
            missingTold = true;
            return OptionalDouble.empty();
        }
        used = used.or(() -> unit);
        return bounded(row, column, Math.abs(value) > MOST ? Double.POSITIVE_INFINITY : unit.get().toSi(value));
    }

    private OptionalDouble bounded(Grid.Row row, int column, double metres) {
        if (Math.abs(metres) <= LARGEST)
            return OptionalDouble.of(metres);
        faults.add(row.line(), row.place(column), "`" + row.cell(column) + "` is more than " + Math.round(LARGEST) + " m", "look at the figure and its unit");
        return OptionalDouble.empty();
    }
}
