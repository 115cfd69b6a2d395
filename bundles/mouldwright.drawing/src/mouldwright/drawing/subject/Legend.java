package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.List;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Lettering;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Path;
import mouldwright.drawing.Pen;
import mouldwright.drawing.Role;
import mouldwright.drawing.Spot;
import mouldwright.drawing.Tone;

/** What the lines and areas of a drawing mean, and what is to be said about it, in columns below or beside it. */
final class Legend {

    /** Height of its capitals, mm. */
    static final double LETTERS = 2.3;

    private static final double SAMPLE = 9;
    private static final double GAP = 2.5;
    private static final double LINE = 3.9;
    private static final double BETWEEN = 1.4;
    private static final double GUTTER = 6;

    /** @param sample what is drawn before the words, in a box {@code SAMPLE} wide about its middle */
    private record Entry(List<Mark> sample, String words, String about) { }

    private final List<Entry> entries = new ArrayList<>();

    /** What a line is. */
    Legend line(Pen pen, String words) {
        entries.add(new Entry(List.of(new Mark.Line(Path.line(new Spot(-SAMPLE / 2, 0), new Spot(SAMPLE / 2, 0)), pen)), words, ""));
        return this;
    }

    /** What an area is. */
    Legend area(Mark.Fill fill, Pen edge, String words) {
        Path box = Path.box(new Extent(-SAMPLE / 2, -1.3, SAMPLE / 2, 1.3));
        entries.add(new Entry(List.of(new Mark.Area(List.of(box), fill), new Mark.Line(box, edge)), words, ""));
        return this;
    }

    /** A place found, by its number. @param about key of what it is */
    Legend number(int number, String words, String about) {
        entries.add(new Entry(List.of(new Mark.Circle(new Spot(0, 0), 2.1, Pen.full(Tone.ALARM, 0.35)),
                new Mark.Words(Integer.toString(number), new Spot(0, -1.1), 2.2, Mark.Anchor.MIDDLE, 0, Tone.ALARM)), words, about));
        return this;
    }

    /** Something said. */
    Legend note(String words) {
        entries.add(new Entry(List.of(), words, ""));
        return this;
    }

    /** Draws it.
     *  @param top     left upper corner
     *  @param width   of all columns together, mm
     *  @param columns beside one another, filled one after the other
     *  @return how far down it reaches, mm on the paper */
    double draw(Draughtsman board, Spot top, double width, int columns) {
        double each = (width - (columns - 1) * GUTTER) / columns;
        List<List<String>> lines = entries.stream().map(entry -> Lettering.wrapped(entry.words, LETTERS, each - (entry.sample.isEmpty() ? 0 : SAMPLE + GAP))).toList();
        double all = lines.stream().mapToDouble(Legend::height).sum(), share = Math.max(all / columns, lines.stream().mapToDouble(Legend::height).max().orElse(0));
        double y = top.y(), lowest = y;
        int column = 0;
        for (int i = 0; i < entries.size(); i++) {
            double height = height(lines.get(i));
            if (column + 1 < columns && top.y() - y > 0 && top.y() - y + height / 2 > share) {
                column++;
                y = top.y();
            }
            entry(board, entries.get(i), lines.get(i), top.x() + column * (each + GUTTER), y);
            y -= height;
            lowest = Math.min(lowest, y);
        }
        return lowest;
    }

    private static double height(List<String> lines) {
        return LINE * lines.size() + BETWEEN;
    }

    private static void entry(Draughtsman board, Entry entry, List<String> lines, double left, double top) {
        double x = left + (entry.sample.isEmpty() ? 0 : SAMPLE + GAP), middle = top - LINE / 2;
        board.about(entry.about);
        for (Mark mark : entry.sample)
            board.draw(Role.SHEET, moved(mark, left + SAMPLE / 2, middle));
        for (int i = 0; i < lines.size(); i++)
            board.words(lines.get(i), new Spot(x, middle - LETTERS / 2 - i * LINE), LETTERS, Mark.Anchor.START);
        board.about("");
    }

    private static Mark moved(Mark mark, double dx, double dy) {
        return switch (mark) {
            case Mark.Line line -> new Mark.Line(moved(line.path(), dx, dy), line.pen());
            case Mark.Area area -> new Mark.Area(area.rings().stream().map(ring -> moved(ring, dx, dy)).toList(), area.fill());
            case Mark.Circle circle -> new Mark.Circle(circle.centre().plus(dx, dy), circle.radius(), circle.pen());
            case Mark.Words words -> new Mark.Words(words.text(), words.at().plus(dx, dy), words.height(), words.anchor(), words.angle(), words.tone());
        };
    }

    /** Samples are of straight lines. */
    private static Path moved(Path path, double dx, double dy) {
        List<Spot> spots = new ArrayList<>();
        spots.add(path.start().plus(dx, dy));
        path.strokes().forEach(stroke -> spots.add(stroke.end().plus(dx, dy)));
        return Path.through(spots, path.closed());
    }
}
