package mouldwright.geometry.nest;

import java.util.List;
import java.util.Objects;
import mouldwright.geometry.plane.Outline;

/** A part to be laid on a sheet.
 *  @param key      by which it is known; copies of a part share it
 *  @param outer    its cut line
 *  @param openings cut out of it; other parts may lie in them
 *  @param turns    how it may lie */
public record NestPart(String key, Outline outer, List<Outline> openings, Turns turns) {

    /** Refuses missing parts and a ring without area. */
    public NestPart {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(turns, "turns");
        openings = List.copyOf(openings);
        if (outer.size() < 3 || !(outer.area() > 0))
            throw new IllegalArgumentException(key + " encloses nothing");
    }

    /** Of one face, openings taken off, square metres. */
    public double area() {
        double area = outer.area();
        for (Outline opening : openings)
            area -= opening.area();
        return area;
    }
}
