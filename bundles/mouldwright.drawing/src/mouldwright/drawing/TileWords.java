package mouldwright.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Keeps words whole where a drawing is cut up for paper: they stand on every tile that shows all of them; where none does they are moved onto the one that
 *  shows most, by as little as it takes. Words longer than a page are left as they are. */
final class TileWords {

    /** Clear of the edge of a window, mm. */
    private static final double CLEAR = 1;

    private final Tiling tiling;
    private final double across;
    private final double up;

    TileWords(Tiling tiling, double correction) {
        this.tiling = tiling;
        this.across = tiling.window().width() / correction;
        this.up = tiling.window().height() / correction;
    }

    /** What of some words a tile shows. */
    Optional<Mark.Words> on(Tiling.Tile tile, Mark.Words words) {
        Extent box = words.extent();
        if (inside(box, tile) || box.width() > across - 2 * CLEAR || box.height() > up - 2 * CLEAR)
            return Optional.of(words);
        List<Tiling.Tile> tiles = tiling.tiles();
        if (tiles.stream().anyMatch(other -> inside(box, other)))
            return Optional.empty();
        Tiling.Tile most = tiles.stream().max(Comparator.comparingDouble(other -> shown(box, other))).orElse(tile);
        return most.equals(tile) ? Optional.of(moved(words, box, tile)) : Optional.empty();
    }

    private boolean inside(Extent box, Tiling.Tile tile) {
        return box.left() >= tile.left() && box.right() <= tile.left() + across && box.bottom() >= tile.bottom() && box.top() <= tile.bottom() + up;
    }

    private double shown(Extent box, Tiling.Tile tile) {
        double wide = Math.min(box.right(), tile.left() + across) - Math.max(box.left(), tile.left());
        double high = Math.min(box.top(), tile.bottom() + up) - Math.max(box.bottom(), tile.bottom());
        return wide > 0 && high > 0 ? wide * high : 0;
    }

    private Mark.Words moved(Mark.Words words, Extent box, Tiling.Tile tile) {
        double dx = by(box.left(), box.right(), tile.left() + CLEAR, tile.left() + across - CLEAR), dy = by(box.bottom(), box.top(), tile.bottom() + CLEAR, tile.bottom() + up - CLEAR);
        return new Mark.Words(words.text(), words.at().plus(dx, dy), words.height(), words.anchor(), words.angle(), words.tone());
    }

    private static double by(double from, double to, double low, double high) {
        return from < low ? low - from : to > high ? high - to : 0;
    }
}
