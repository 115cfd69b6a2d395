package mouldwright.exchange.table;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What the first cell of a row in a table of offsets says it holds. Lengths in metres. */
sealed interface RowLabel {

    /** How far aft each station stands. */
    record Position() implements RowLabel { }

    /** Half-breadths at a height. */
    record Waterline(double height) implements RowLabel { }

    /** Heights at a distance from the centreline. @param edge of the section they are on */
    record Buttock(double out, Edge edge) implements RowLabel { }

    /** Distances from the centreline along a line that runs outward.
     *  @param from  height at which it begins
     *  @param slope radians from the level, upward */
    record Diagonal(double from, double slope) implements RowLabel { }

    /** What follows from the rest, such as girths. */
    record Beside(String words) implements RowLabel { }

    /** Where an upright line meets a section. */
    enum Edge {
        /** Once. */ ONLY,
        /** Below. */ LOWER,
        /** Above. */ UPPER
    }

    /** Heights of a line. */
    record HeightOf(String line) implements RowLabel { }

    /** Half-breadths of a line. */
    record BreadthOf(String line) implements RowLabel { }

    /** Where a section begins. */
    String KEEL = "keel";

    /** Where a section ends. */
    String SHEER = "sheer";

    /** The two halves of a table. */
    enum Group {
        /** Heights above base. */
        HEIGHTS,
        /** Half-breadths. */
        BREADTHS;

        static Optional<Group> of(String cell) {
            String words = Tables.lower(cell);
            return words.startsWith("half-breadth") || words.startsWith("half breadth") ? Optional.of(BREADTHS)
                    : words.startsWith("height") ? Optional.of(HEIGHTS) : Optional.empty();
        }
    }

    /** Words for the ends of a section. */
    List<String> KEELS = List.of("keel", "profile", "bottom", "base", "centreline");

    /** Words for its upper end. */
    List<String> SHEERS = List.of("sheer", "deck", "deck edge", "gunwale");

    /** A plane with its distance. */
    Pattern PLANE = Pattern.compile("(wl|waterline|buttock|butt|bl)\\.?\\s*(.+)");

    /** A diagonal by the height it begins at, and its slope where that is not 45 degrees. */
    Pattern DIAGONAL = Pattern.compile("diagonals?\\s+(up|down)\\s+from\\s+(.+?)(?:\\s+at\\s+([\\d.]+)\\s*(?:deg|degrees|\u00b0))?");

    /** A line with what is given of it. */
    Pattern OF = Pattern.compile("(heights?|half[- ]breadths?)( of| at)?( the)?\\s+(.+)");

    /** What a row holds; empty if its words are not known.
     *  @param group whose heading stands above it, if any */
    static Optional<RowLabel> of(Grid.Row row, Optional<Group> group, Measure measure) {
        String words = Tables.lower(row.cell(0));
        if (List.of("position", "x", "at", "station at").contains(Heading.of(words).words()))
            return Optional.of(new Position());
        Matcher plane = PLANE.matcher(words);
        if (plane.matches() && plane.group(2).chars().anyMatch(Character::isDigit))
            return plane(row, plane.group(1).startsWith("w"), plane.group(2), measure);
        Matcher diagonal = DIAGONAL.matcher(words);
        if (diagonal.matches())
            return diagonal(row, diagonal, measure);
        if (words.equals("girth") || words.equals("girths"))
            return Optional.of(new Beside(words));
        Matcher of = OF.matcher(words);
        if (of.matches())
            return Optional.of(line(of.group(1).startsWith("height") ? Group.HEIGHTS : Group.BREADTHS, of.group(4)));
        if (group.isEmpty() || words.isEmpty())
            return Optional.empty();
        if (Character.isDigit(words.charAt(0)) || words.charAt(0) == '-' || words.charAt(0) == '.')
            return plane(row, group.get() == Group.BREADTHS, words, measure);
        return words.matches("[\\p{L}][\\p{L}\\p{N}_ ]*") && !words.startsWith("diag") ? Optional.of(line(group.get(), words)) : Optional.empty();
    }

    private static Optional<RowLabel> diagonal(Grid.Row row, Matcher words, Measure measure) {
        double degrees = words.group(3) == null ? 45 : Double.parseDouble(words.group(3));
        OptionalDouble from = length(row, words.group(2), measure);
        return from.isEmpty() || !(degrees > 0 && degrees < 90) ? Optional.empty()
                : Optional.of(new Diagonal(from.getAsDouble(), Math.toRadians(words.group(1).equals("up") ? degrees : -degrees)));
    }

    private static OptionalDouble length(Grid.Row row, String written, Measure measure) {
        Heading heading = Heading.of(written);
        return measure.length(row, 0, heading.unit().isPresent() ? heading.words() : written, heading.unit());
    }

    private static Optional<RowLabel> plane(Grid.Row row, boolean level, String words, Measure measure) {
        Edge edge = words.endsWith(" lower") ? Edge.LOWER : words.endsWith(" upper") ? Edge.UPPER : Edge.ONLY;
        String distance = edge == Edge.ONLY ? words : words.substring(0, words.length() - " lower".length()).strip();
        if (level && edge != Edge.ONLY)
            return Optional.empty();
        OptionalDouble at = length(row, distance, measure);
        return Optional.of(level ? new Waterline(at.orElse(0)) : new Buttock(Math.abs(at.orElse(0)), edge));
    }

    private static RowLabel line(Group group, String words) {
        String name = KEELS.contains(words) ? KEEL : SHEERS.contains(words) ? SHEER : words.strip().replaceAll("\\s+", "_");
        return group == Group.HEIGHTS ? new HeightOf(name) : new BreadthOf(name);
    }
}
