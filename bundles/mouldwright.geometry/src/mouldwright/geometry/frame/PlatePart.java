package mouldwright.geometry.frame;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;

/** A flat part to be cut out of sheet, with all that is scored, bored and written on it: what templates are drawn and sheets are
 *  nested from. Points lie in the part's own plane, first to the right, then up, metres. A plate and a gauge are seen from aft,
 *  starboard to the right; a backbone from port, aft to the right; a base from above, aft to the right.
 *
 *  @param key       by which it is known, such as {@code plate.S2}, and no other part of the frame
 *  @param kind      what it is
 *  @param name      as written on it, such as {@code S2}
 *  @param outer     cut line all round
 *  @param openings  cut out of it, apart from one another and inside the cut line
 *  @param bores     holes for dowels and wires, round
 *  @param scores    lines that are drawn or scored, not cut
 *  @param marks     where named lines of the body cross its edge
 *  @param bevels    how far the edge is bevelled, place by place; none where it is square
 *  @param notes     words written on it
 *  @param sheet     name of the sheet it is cut from
 *  @param thickness of that sheet as measured, metres
 *  @param quantity  how many alike */
public record PlatePart(String key, Kind kind, String name, Outline outer, List<Opening> openings, List<Bore> bores,
        List<Score> scores, List<LineMark> marks, List<BevelMark> bevels, List<Note> notes, String sheet, double thickness, int quantity) {

    /** What a part is. */
    public enum Kind {
        /** A bulkhead, or a piece of one that is larger than a sheet. */ PLATE,
        /** A layer of a lengthwise member. */ BACKBONE,
        /** What holds the pieces of a part together over a butt. */ STRAP,
        /** A board the plates are set up on, or a piece of it. */ BASE,
        /** A check profile that is held against the finished surface. */ GAUGE
    }

    /** Something cut out. @param use why @param ring its cut line */
    public record Opening(Use use, Outline ring) {
        /** What an opening is for. */
        public enum Use {
            /** Saves weight, and room for packing. */ POCKET,
            /** Takes a lengthwise member. */ SLOT
        }
    }

    /** A round hole. @param centre of it @param diameter metres @param label what it is for */
    public record Bore(PlanePoint centre, double diameter, String label) { }

    /** A line to score.
     *  @param use    what it tells
     *  @param points it runs through
     *  @param closed whether it runs from the last point back to the first
     *  @param label  written beside it; may be empty */
    public record Score(Use use, List<PlanePoint> points, boolean closed, String label) {
        /** What a line tells. */
        public enum Use {
            /** Where a bevelled edge meets the smaller face. */ BEVEL,
            /** The middle of the body. */ CENTRELINE,
            /** A height above the base. */ HEIGHT,
            /** Where another part is glued or stands. */ JOINT,
            /** A station. */ STATION,
            /** An arrow that points up. */ UP
        }

        /** Keeps its own copy. */
        public Score { points = List.copyOf(points); }
    }

    /** Where a line of the body crosses the edge. @param line its name @param at on the edge @param inward where the tick ends */
    public record LineMark(String line, PlanePoint at, PlanePoint inward) { }

    /** How the edge is bevelled at a place.
     *  @param at    on the cut line
     *  @param angle between the edge and the square one, radians; positive where the body narrows going aft */
    public record BevelMark(PlanePoint at, double angle) { }

    /** Words on the part.
     *  @param words  a line of text
     *  @param at     the middle of its foot
     *  @param height of a capital, metres
     *  @param angle  it is turned by, radians, counter-clockwise */
    public record Note(String words, PlanePoint at, double height, double angle) { }

    /** Refuses missing parts and keeps its own copies. */
    public PlatePart {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(outer, "outer");
        Objects.requireNonNull(sheet, "sheet");
        openings = List.copyOf(openings);
        bores = List.copyOf(bores);
        scores = List.copyOf(scores);
        marks = List.copyOf(marks);
        bevels = List.copyOf(bevels);
        notes = List.copyOf(notes);
        if (!(thickness > 0) || quantity < 1)
            throw new IllegalArgumentException(key + ": thickness " + thickness + ", quantity " + quantity);
    }

    /** A part with nothing on it yet. */
    public static PlatePart plain(String key, Kind kind, String name, Outline outer, String sheet, double thickness, int quantity) {
        return new PlatePart(key, kind, name, outer, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), sheet, thickness, quantity);
    }

    /** What of the sheet it is; bores, which are round, are not taken out of it. */
    public Region wood() {
        return Region.of(outer, openings.stream().map(Opening::ring).toList());
    }

    /** Of one face, openings and bores taken off, square metres. */
    public double area() {
        double area = outer.area();
        for (Opening opening : openings)
            area -= opening.ring().area();
        for (Bore bore : bores)
            area -= Math.PI * bore.diameter() * bore.diameter() / 4;
        return area;
    }

    /** Why it cannot be cut as drawn; empty where it can: rings are simple, openings lie inside and apart, bores in the wood. */
    public Optional<String> flaw() {
        Optional<String> rings = Region.flaw(outer, openings.stream().map(Opening::ring).toList());
        if (rings.isPresent())
            return rings;
        for (Bore bore : bores)
            if (clear(bore.centre()) <= bore.diameter() / 2)
                return Optional.of("the hole at " + bore.label() + " runs out of the wood");
        return Optional.empty();
    }

    /** How far a place lies inside the wood, metres; negative outside it. */
    public double clear(PlanePoint place) {
        return wood().clear(place);
    }
}
