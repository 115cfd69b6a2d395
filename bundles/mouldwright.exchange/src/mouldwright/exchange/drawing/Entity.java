package mouldwright.exchange.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/** The groups of one entity as they stand, in order. */
final class Entity {

    /** Farther out no drawing of a section goes, whatever its units. */
    private static final double FARTHEST = 1e9;

    private final String kind;
    private final int line;
    private final List<Group> groups = new ArrayList<>();

    /** A group. */
    record Group(int code, String value, int line) { }

    /** A figure that is none.
     *  @param line where it stands */
    static final class BadFigure extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final int line;

        BadFigure(int line, String message) {
            super(message, null, false, false);
            this.line = line;
        }

        int line() { return line; }
    }

    Entity(String kind, int line) {
        this.kind = kind;
        this.line = line;
    }

    void add(int code, String value, int at) {
        groups.add(new Group(code, value, at));
    }

    /** LINE, ARC and so on. */
    String kind() { return kind; }

    /** Where it begins. */
    int line() { return line; }

    List<Group> groups() { return groups; }

    String text(int code, String otherwise) {
        return groups.stream().filter(group -> group.code() == code).map(Group::value).findFirst().orElse(otherwise);
    }

    OptionalDouble figure(int code) {
        for (Group group : groups)
            if (group.code() == code)
                return OptionalDouble.of(figure(group));
        return OptionalDouble.empty();
    }

    double figure(int code, double otherwise) {
        return figure(code).orElse(otherwise);
    }

    double needed(int code, String what) {
        return figure(code).orElseThrow(() -> new BadFigure(line, "its " + what + " is missing"));
    }

    int whole(int code, int otherwise) {
        OptionalInt found = groups.stream().filter(group -> group.code() == code).mapToInt(group -> (int) figure(group)).findFirst();
        return found.orElse(otherwise);
    }

    /** All figures of a code, in order. */
    double[] figures(int code) {
        return groups.stream().filter(group -> group.code() == code).mapToDouble(Entity::figure).toArray();
    }

    static double figure(Group group) {
        try {
            double value = Double.parseDouble(group.value());
            if (Math.abs(value) <= FARTHEST)
                return value;
            throw new BadFigure(group.line(), "`" + group.value() + "` is no place in a drawing");
        } catch (NumberFormatException e) {
            throw new BadFigure(group.line(), "`" + group.value() + "` is no figure");
        }
    }
}
