package mouldwright.exchange.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import mouldwright.exchange.Faults;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The cells of a table of comma-separated values (RFC 4180; semicolons or tabs part them where the first row has such). Empty rows and
 *  rows that begin with # are left out.
 *  @param rows       in order
 *  @param commaParts whether commas part the cells */
record Grid(List<Row> rows, boolean commaParts) {

    /** More rows than any table of offsets has. */
    private static final int MOST = 100_000;

    /** A row.
     *  @param number of the row as a spreadsheet counts, from 1
     *  @param line   of the file where it ends
     *  @param cells  as they stand, without the space around them
     *  @param left   columns cut off before them */
    record Row(int number, int line, List<String> cells, int left) {

        /** A cell; empty past the end. */
        String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }

        /** The last column that is not empty, and one. */
        int width() {
            int width = cells.size();
            while (width > 0 && cells.get(width - 1).isEmpty())
                width--;
            return width;
        }

        /** Place of a cell as a spreadsheet names it. */
        String place(int column) {
            return "cell " + letters(left + column) + number;
        }

        private static String letters(int column) {
            String last = String.valueOf((char) ('A' + column % 26));
            return column < 26 ? last : letters(column / 26 - 1) + last;
        }
    }

    static Grid of(String text, Faults faults) {
        char parts = parts(text);
        List<Row> rows = new ArrayList<>();
        CSVFormat format = CSVFormat.DEFAULT.builder().setDelimiter(parts).setTrim(true).setIgnoreEmptyLines(false).get();
        int number = 0;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext() && faults.none()) {
                CSVRecord record = records.next();
                number++;
                List<String> cells = List.of(record.values()).stream().map(String::strip).toList();
                Row row = new Row(number, Math.max(1, (int) parser.getCurrentLineNumber()), cells, 0);
                if (row.width() > 0 && !cells.getFirst().startsWith("#"))
                    rows.add(row);
                if (rows.size() > MOST)
                    faults.add(row.line(), "row " + number, "more than " + MOST + " rows are no table of offsets", "leave out what is no offset");
            }
        } catch (IOException | UncheckedIOException | IllegalStateException | IllegalArgumentException e) {
            faults.add(lines(text, number), "row " + (number + 1), "a quotation mark is opened and not closed, or stands inside a cell",
                    "double it, or take it out");
        }
        return new Grid(rows, parts == ',');
    }

    /** The same without its first column, of rows that say there they are of one surface, or nothing. @param surface in lower case */
    Grid of(String surface) {
        List<Row> own = new ArrayList<>();
        for (Row row : rows)
            if (row == rows.getFirst() || row.cell(0).isEmpty() || Tables.lower(row.cell(0)).equals(surface))
                own.add(new Row(row.number(), row.line(), row.cells().subList(Math.min(1, row.cells().size()), row.cells().size()), 1));
        return new Grid(own, commaParts);
    }

    private static int lines(String text, int rows) {
        return (int) Math.min(rows + 1L, text.lines().count() + 1);
    }

    /** What parts the cells, by the first row that is no remark. */
    private static char parts(String text) {
        String first = text.lines().filter(line -> !line.isBlank() && !line.startsWith("#")).findFirst().orElse("");
        return first.indexOf(';') >= 0 ? ';' : first.indexOf('\t') >= 0 ? '\t' : ',';
    }
}
