package mouldwright.exchange.table;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mouldwright.units.Dimension;
import mouldwright.units.Unit;
import mouldwright.units.Units;

/** What heads a row or column: its words, and the unit that stands in brackets, or after {@code in}, or last.
 *  @param words in lower case, without the unit
 *  @param unit  of length, if one stands there */
record Heading(String words, Optional<Unit> unit) {

    private static final Pattern LAST_WORD = Pattern.compile("(?s)(.*?)(?:[\\s,]+in)?[\\s,]*[\\[(]?\\s*([\\p{L}']+|\")\\s*[\\])]?");

    static Heading of(String cell) {
        Matcher match = LAST_WORD.matcher(cell.strip());
        if (match.matches()) {
            Optional<Unit> unit = unit(match.group(2));
            if (unit.isPresent())
                return new Heading(lower(match.group(1)), unit);
        }
        return new Heading(lower(cell), Optional.empty());
    }

    private static Optional<Unit> unit(String word) {
        String spelled = switch (word.toLowerCase(Locale.ROOT)) {
            case "\"", "inch", "inches" -> "in";
            case "'", "foot", "feet" -> "ft";
            case "metres", "metre" -> "m";
            case "millimetres", "millimetre" -> "mm";
            default -> word;
        };
        return Units.find(spelled).filter(unit -> unit.dimension().equals(Dimension.LENGTH));
    }

    private static String lower(String text) {
        return text.strip().toLowerCase(Locale.ROOT);
    }
}
