package mouldwright.geometry.frame;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.frame.PlatePart.Note;
import mouldwright.geometry.plane.Crosscut;
import mouldwright.geometry.plane.Crosscut.Span;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;

/** Finds room on a part for what is written on it: the first line large, the others two thirds of it, clear of the edges, and where
 *  there is room beside the centreline. */
public final class NoteSpace {
    /** Heights of the first line that are tried, metres: readable at arm's length, down to what a pencil writes. */
    private static final double[] HEIGHTS = { 0.030, 0.020, 0.014, 0.010, 0.007, 0.005 };
    private static final double SMALLER = 2.0 / 3;
    /** From one foot to the next, in heights. */
    private static final double PITCH = 1.5;
    /** A character's breadth in heights; most letters are narrower. */
    private static final double BREADTH = 0.75;
    /** Kept clear of the centreline, metres. */
    private static final double BESIDE = 0.003;
    private static final int LEVELS = 60;

    private final double low;
    private final double step;
    private final List<List<Span>> levels = new ArrayList<>();

    private NoteSpace(Region wood, double bottom, double top) {
        step = (top - bottom) / LEVELS;
        low = bottom + step / 2;
        for (int k = 0; k < LEVELS; k++)
            levels.add(Crosscut.level(wood, low + k * step));
    }

    /** Where some lines of text are written.
     *  @param wood  of the part, not empty
     *  @param lines first the name, then the rest
     *  @return one a line; where nothing has room, the smallest in the middle of the widest place */
    public static List<Note> write(Region wood, List<String> lines) {
        double bottom = wood.pieces().stream().mapToDouble(p -> p.minZ()).min().orElse(0);
        double top = wood.pieces().stream().mapToDouble(p -> p.maxZ()).max().orElse(0);
        NoteSpace space = new NoteSpace(wood, bottom, top);
        for (double height : HEIGHTS)
            for (boolean beside : new boolean[] { true, false }) {
                List<Note> notes = space.fit(lines, height, beside);
                if (!notes.isEmpty())
                    return notes;
            }
        return space.squeezed(lines);
    }

    private static double breadth(List<String> lines, double height) {
        double most = 0;
        for (int i = 0; i < lines.size(); i++)
            most = Math.max(most, lines.get(i).length() * BREADTH * (i == 0 ? height : SMALLER * height));
        return most;
    }

    private static double depth(List<String> lines, double height) {
        return height + (lines.size() - 1) * PITCH * SMALLER * height;
    }

    private List<Note> fit(List<String> lines, double height, boolean beside) {
        double breadth = breadth(lines, height) + height, depth = depth(lines, height) + height;
        int tall = (int) Math.ceil(depth / step) + 1;
        Span best = null;
        int at = 0;
        for (int k = 0; k + tall <= LEVELS; k++)
            for (Span span : common(k, tall, beside))
                if (span.length() >= breadth && (best == null || span.length() > best.length() * (1 + 1e-9))) {
                    best = span;
                    at = k;
                }
        return best == null ? List.of() : notes(lines, best.middle(), low + (at + (tall - 1) / 2.0) * step, height);
    }

    /** What is wood on each of some levels. */
    private List<Span> common(int from, int count, boolean beside) {
        List<Span> common = levels.get(from);
        for (int k = from + 1; k < from + count && !common.isEmpty(); k++)
            common = overlap(common, levels.get(k));
        return beside ? overlap(common, List.of(new Span(Double.NEGATIVE_INFINITY, -BESIDE), new Span(BESIDE, Double.POSITIVE_INFINITY))) : common;
    }

    private static List<Span> overlap(List<Span> some, List<Span> others) {
        List<Span> overlap = new ArrayList<>();
        for (Span a : some)
            for (Span b : others)
                if (Math.max(a.from(), b.from()) < Math.min(a.to(), b.to()))
                    overlap.add(new Span(Math.max(a.from(), b.from()), Math.min(a.to(), b.to())));
        return overlap;
    }

    private List<Note> squeezed(List<String> lines) {
        Span widest = new Span(0, 0);
        double at = low;
        for (int k = 0; k < LEVELS; k++)
            for (Span span : levels.get(k))
                if (span.length() > widest.length()) {
                    widest = span;
                    at = low + k * step;
                }
        return notes(lines, widest.middle(), at, HEIGHTS[HEIGHTS.length - 1]);
    }

    private static List<Note> notes(List<String> lines, double y, double middle, double height) {
        List<Note> notes = new ArrayList<>();
        double foot = middle + depth(lines, height) / 2 - height;
        for (int i = 0; i < lines.size(); i++) {
            notes.add(new Note(lines.get(i), new PlanePoint(y, foot), i == 0 ? height : SMALLER * height, 0));
            foot -= PITCH * SMALLER * height;
        }
        return notes;
    }
}
