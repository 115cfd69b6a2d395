package mouldwright.exchange.table;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mouldwright.units.WrittenNumber;

/** A figure in a cell: a number with point or comma, or feet, inches and eighths as they stand in boatbuilders' tables, {@code 2-5-3} and
 *  {@code 2.5.3}, with {@code +} or {@code -} behind for a sixteenth more or less (common practice). */
sealed interface CellNumber {

    /** Nothing in the cell. */
    record Empty() implements CellNumber { }

    /** A number in the unit of its row or column. */
    record Plain(double value) implements CellNumber { }

    /** Feet, inches and eighths.
     *  @param metres the same length */
    record Feet(double metres) implements CellNumber { }

    /** No figure. */
    record Wrong(String message, String remedy) implements CellNumber { }

    /** The inch, metres. International yard and pound agreement of 1959. */
    double INCH = 0.0254;

    /** Feet, inches, eighths. */
    Pattern BUILDERS = Pattern.compile("(-?)(\\d{1,3})([-.])(\\d{1,2})\\3(\\d{1,2})([+-]?)");

    /** What a spreadsheet makes of them. */
    Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}.*|\\d{1,2}/\\d{1,2}/\\d{2,4}|\\d{1,2}\\.\\d{1,2}\\.\\d{4}|\\d{1,2}-[A-Za-z]{3}(-\\d{2,4})?");

    /** Text that a spreadsheet would reckon with. */
    Pattern FORMULA = Pattern.compile("[=@].*|[+-](?![\\d.,]).*", Pattern.DOTALL);

    /** Figures with commas, of which nobody knows what they part. */
    Pattern THOUSANDS = Pattern.compile("-?\\d{1,3}(,\\d{3})+");

    /** Reads a cell.
     *  @param written as it stands
     *  @param commaParts whether commas part the cells of this table */
    static CellNumber read(String written, boolean commaParts) {
        String text = written.strip();
        if (text.isEmpty())
            return new Empty();
        Matcher builders = BUILDERS.matcher(text);
        if (DATE.matcher(text).matches())
            return new Wrong("`" + shown(text) + "` is a day; a spreadsheet makes one of feet-inches-eighths", "format the cells as text and type them again");
        if (builders.matches())
            return feet(builders, text);
        if (FORMULA.matcher(text).matches())
            return new Wrong("`" + shown(text) + "` is a formula, not a figure", "save the table with its values");
        if (commaParts && THOUSANDS.matcher(text).matches())
            return new Wrong("`" + text + "` may be thousands or thousandths", "write it without the comma, or with a decimal point");
        return switch (WrittenNumber.parse(text.startsWith("+") ? text.substring(1) : text)) {
            case WrittenNumber.Value value -> new Plain(value.value());
            case WrittenNumber.Rejected rejected -> new Wrong("`" + shown(text) + "` is no figure", "leave the cell empty, or put a number there");
        };
    }

    private static CellNumber feet(Matcher part, String text) {
        int inches = Integer.parseInt(part.group(4)), eighths = Integer.parseInt(part.group(5));
        if (inches > 11 || eighths > 7)
            return new Wrong("`" + text + "` as feet, inches and eighths has " + (inches > 11 ? inches + " inches" : eighths + " eighths"),
                    "inches go to 11, eighths to 7");
        double sixteenth = part.group(6).isEmpty() ? 0 : part.group(6).equals("+") ? 1 : -1;
        double metres = (Integer.parseInt(part.group(2)) * 12 + inches + eighths / 8.0 + sixteenth / 16) * INCH;
        return new Feet(part.group(1).isEmpty() ? metres : -metres);
    }

    private static String shown(String text) {
        String line = text.replaceAll("\\s+", " ");
        return line.length() <= 30 ? line : line.substring(0, 30) + "...";
    }
}
