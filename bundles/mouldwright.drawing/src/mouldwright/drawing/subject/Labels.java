package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import mouldwright.drawing.Draughtsman;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Mark;
import mouldwright.drawing.Role;

/** Places words one after the other so that none stands over another: the first of several places that is still free is taken. */
final class Labels {

    private static final double CLEAR = 0.6;

    private final Draughtsman board;
    private final List<Extent> taken = new ArrayList<>();

    Labels(Draughtsman board) {
        this.board = board;
    }

    /** Keeps words away from a box. */
    void keepClear(Extent box) {
        taken.add(box);
    }

    /** Writes words at the first free place.
     *  @param places asked for one by one
     *  @return whether there was one */
    boolean place(Stream<Supplier<Mark.Words>> places) {
        return places.map(Supplier::get).filter(words -> free(words.extent())).findFirst().map(words -> {
            taken.add(words.extent());
            board.draw(Role.TEXT, words);
            return true;
        }).orElse(false);
    }

    private boolean free(Extent box) {
        return taken.stream().noneMatch(other -> box.left() < other.right() + CLEAR && other.left() < box.right() + CLEAR
                && box.bottom() < other.top() + CLEAR && other.bottom() < box.top() + CLEAR);
    }
}
