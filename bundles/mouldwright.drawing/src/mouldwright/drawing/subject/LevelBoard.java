package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.List;
import mouldwright.drawing.Extent;
import mouldwright.drawing.Path;
import mouldwright.drawing.Spot;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.stage.MouldMeasures.Board;

/**
 * A parting board laid out flat and turned so that its line runs level from end to end.
 *
 * @param board  the board
 * @param number from 1
 * @param scale  of the drawing
 * @param zero   where its line begins on the paper
 */
record LevelBoard(Board board, int number, Scale scale, Spot zero) {

    LevelBoard at(Spot other) {
        return new LevelBoard(board, number, scale, other);
    }

    Spot spot(PlanePoint point) {
        PlanePoint end = board.strip().line().getLast();
        double reach = Math.hypot(end.y(), end.z()), c = reach > 0 ? end.y() / reach : 1, s = reach > 0 ? end.z() / reach : 0;
        return zero.plus(scale.mm(c * point.y() + s * point.z()), scale.mm(c * point.z() - s * point.y()));
    }

    List<Spot> spots(List<PlanePoint> points) {
        return new ArrayList<>(points.stream().map(this::spot).toList());
    }

    Path outline() {
        return Path.through(spots(board.strip().outline()), true);
    }

    Extent extent() {
        return Extent.of(spots(board.strip().outline()));
    }

    String title() {
        return "Parting board " + number + ", " + board.part().name().map(name -> "half " + name + ", ").orElse("") + board.words();
    }

    String figures() {
        return "line " + Said.mm(board.strip().length()) + ", flange " + Said.mm(board.strip().width()) + ", " + Said.fine(board.strip().standOff()) + " off its plane: cut from " + board.cutFrom();
    }
}
