package mouldwright.drawing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Draws, layer by layer in the order of {@link #BACK_TO_FRONT}, and hands over the drawing in the end. */
public final class Draughtsman {

    /** Which layers lie over which. */
    private static final List<Role> BACK_TO_FRONT = List.of(Role.SHEET, Role.AREA, Role.FAINT, Role.FOAM, Role.LAMINATE, Role.HIDDEN, Role.AXIS, Role.OUTLINE, Role.PLATE,
            Role.SURFACE, Role.SCORE, Role.MARK, Role.CUT, Role.ALARM, Role.DIMENSION, Role.TEXT);

    private final Map<Role, List<Layer.Item>> layers = new EnumMap<>(Role.class);
    private String about = "";

    /** What is drawn from now on. @param key such as {@code station.S3}; empty for nothing in particular */
    public Draughtsman about(String key) {
        about = key;
        return this;
    }

    /** Any mark. */
    public Draughtsman draw(Role role, Mark mark) {
        layers.computeIfAbsent(role, r -> new ArrayList<>()).add(new Layer.Item(mark, about));
        return this;
    }

    /** A line with the pen of its layer. */
    public Draughtsman path(Role role, Path path) {
        return draw(role, new Mark.Line(path, role.pen()));
    }

    /** A straight line with the pen of its layer. */
    public Draughtsman line(Role role, Spot from, Spot to) {
        return path(role, Path.line(from, to));
    }

    /** A circle with the pen of its layer. */
    public Draughtsman circle(Role role, Spot centre, double radius) {
        return draw(role, new Mark.Circle(centre, radius, role.pen()));
    }

    /** Words on the layer for words. */
    public Draughtsman words(String text, Spot at, double height, Mark.Anchor anchor) {
        return draw(Role.TEXT, new Mark.Words(text, at, height, anchor, 0, Tone.INK));
    }

    /** A distance with its figure, see {@link Dimensions}. @param side how far to the left of the way from a to b the line stands, mm */
    public Draughtsman dimension(Spot a, Spot b, double side, String words, double height) {
        Dimensions.aligned(a, b, side, words, height).forEach(mark -> draw(Role.DIMENSION, mark));
        return this;
    }

    /** Boxes round all words written so far. */
    public List<Extent> written() {
        return layers.values().stream().flatMap(List::stream).map(Layer.Item::mark).filter(Mark.Words.class::isInstance).map(Mark::extent).toList();
    }

    /** The least box round all that is drawn; empty where nothing is. */
    public Optional<Extent> extent() {
        return layers.values().stream().flatMap(List::stream).map(item -> item.mark().extent()).reduce(Extent::with);
    }

    /** The drawing on paper just large enough, with a margin. */
    public Drawing finish(String title, String words, double margin) {
        return finish(title, words, extent().orElse(new Extent(0, 0, 1, 1)).grown(margin));
    }

    /** The drawing on paper of a size. */
    public Drawing finish(String title, String words, Extent paper) {
        List<Layer> result = new ArrayList<>();
        for (Role role : BACK_TO_FRONT)
            if (layers.containsKey(role))
                result.add(new Layer(role, layers.get(role)));
        return new Drawing(title, words, paper, result);
    }
}
