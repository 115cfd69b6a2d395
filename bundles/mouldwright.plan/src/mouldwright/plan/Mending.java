package mouldwright.plan;

import java.util.List;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Station;

/** What would mend a fault of the shape in the spec, as far as it is known where the fault is met. */
public sealed interface Mending {

    /** One of two points at one place goes.
     *  @param point its place in the text */
    record Drop(Origin point) implements Mending { }

    /** The points of a section are put in the other order.
     *  @param points their places, as they stand now */
    record Reverse(List<Origin> points) implements Mending {
        /** Copies its list. */
        public Reverse {
            points = List.copyOf(points);
        }
    }

    /** Points become corners: one of a section, or the same of several sections, so that their knuckles still match.
     *  @param points that are smooth now */
    record Corners(List<Form.Point> points) implements Mending {
        /** Copies its list. */
        public Corners {
            points = List.copyOf(points);
        }
    }

    /** A point is marked as that through which a line runs.
     *  @param point on no line now
     *  @param line  the line's name */
    record OnLine(Form.Point point, String line) implements Mending { }

    /** A line is placed on a section that has no point for it.
     *  @param station without the line
     *  @param place   where it runs */
    record Placed(Station station, Form.LinePlace place) implements Mending { }

    /** The body runs on past one of its ends, straight, as long as the outermost section asks for.
     *  @param end     the outermost station
     *  @param forward whether that is the forward end */
    record RunOut(Station end, boolean forward) implements Mending { }
}
