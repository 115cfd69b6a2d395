package mouldwright.geometry.section;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.curve.CurvePart;

/** An outline as runs of curve between marks, before its arc length is measured.
 *
 *  @param pieces in order
 *  @param marks  one more than pieces: what borders them
 *  @param shape  body, knife edge or point */
record Trace(List<Piece> pieces, List<Mark> marks, SectionShape shape) {
    /** What lies between two marks. @param parts runs of curve in order @param bare marked as bare */
    record Piece(List<CurvePart> parts, boolean bare) { }

    Trace mapped(double breadth, double depth, double shiftY, double shiftZ) {
        List<Piece> mapped = new ArrayList<>();
        for (Piece piece : pieces)
            mapped.add(new Piece(piece.parts.stream().map(p -> p.mapped(breadth, depth, shiftY, shiftZ)).toList(), piece.bare));
        return new Trace(mapped, marks, shape);
    }
}
