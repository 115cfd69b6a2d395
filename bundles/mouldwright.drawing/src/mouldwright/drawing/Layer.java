package mouldwright.drawing;

import java.util.List;

/**
 * Marks of one kind.
 *
 * @param role  what they are for
 * @param items in the order they are drawn
 */
public record Layer(Role role, List<Item> items) {

    /** A mark and what it shows.
     *  @param about key of what is drawn, such as {@code station.S3}, by which a view finds the line of the spec; empty for none */
    public record Item(Mark mark, String about) { }

    /** Takes a copy. */
    public Layer {
        items = List.copyOf(items);
    }
}
