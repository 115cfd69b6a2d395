package mouldwright.plan;

import java.util.List;
import java.util.OptionalDouble;

/** A table of offsets, lofted fair: one column a station, one row a line. Lengths in metres on the plug.
 *  @param stations  left to right, going aft
 *  @param rows      first of the finished surface, then of the plates
 *  @param diagonals height above the base from which diagonals run outward on both sides, up and down at 45 degrees */
public record OffsetTable(List<Column> stations, List<Row> rows, double diagonals) {

    /** A station. @param x aft of the datum */
    public record Column(String name, double x) { }

    /** What the figures are taken on. */
    public enum Surface {
        /** The finished plug. */ FINISHED,
        /** The cut line of the plates. */ PLATE
    }

    /** What a row measures. */
    public enum Measure {
        /** Off the centreline to starboard, at a height. */ HALF_BREADTH,
        /** Off the centreline to port, at a height; only where the sides differ. */ HALF_BREADTH_PORT,
        /** Of the lower line over a buttock. */ HEIGHT_BELOW,
        /** Of the upper line over a buttock. */ HEIGHT_ABOVE,
        /** From the centreline outward and up at 45 degrees, to starboard. */ DIAGONAL_UP,
        /** From the centreline outward and down at 45 degrees, to starboard. */ DIAGONAL_DOWN,
        /** All round. */ GIRTH,
        /** Of a line of the body, or of a corner or an end of the section, above the base; to starboard. */ LINE_HEIGHT,
        /** How far the same lies off the centreline. */ LINE_HALF_BREADTH
    }

    /** A line.
     *  @param line   of the body whose place it gives; empty for the others
     *  @param at     height of a waterline, or how far a buttock lies off the centreline; 0 for a diagonal or a girth
     *  @param values station by station; empty where the line does not meet the section, or no plate stands */
    public record Row(Surface surface, Measure measure, String line, double at, List<OptionalDouble> values) {
        /** Of no line of the body. */
        public Row(Surface surface, Measure measure, double at, List<OptionalDouble> values) {
            this(surface, measure, "", at, values);
        }

        /** Copies its list. */
        public Row {
            values = List.copyOf(values);
        }
    }

    /** Copies its lists. */
    public OffsetTable {
        stations = List.copyOf(stations);
        rows = List.copyOf(rows);
    }
}
