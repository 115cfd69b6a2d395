package mouldwright.drawing;

import java.util.List;
import java.util.Objects;

/**
 * A drawing at full size or at the scale its maker chose: its paper is measured in millimetres.
 *
 * @param title  in a few words
 * @param words  what is to be seen, for those who cannot see it
 * @param extent of the paper
 * @param layers from the back to the front
 */
public record Drawing(String title, String words, Extent extent, List<Layer> layers) {

    /** Takes a copy. */
    public Drawing {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(extent, "extent");
        layers = List.copyOf(layers);
    }
}
