package mouldwright.geometry.nest;

import java.util.List;

/** Parts as they lie on sheets.
 *  @param order       what was asked for
 *  @param placements  sheet by sheet, in the order they were laid
 *  @param tooLarge    parts that fit no sheet, however turned
 *  @param sheets      taken
 *  @param leastSheets no layout of the parts that fit can take fewer: from areas
 *  @param usedLength  of the last sheet, from its end to the far edge of its last part, metres
 *  @param tried       layouts
 *  @param stopped     whether the search was stopped before its end */
public record Nest(NestOrder order, List<Placement> placements, List<NestPart> tooLarge, int sheets, int leastSheets, double usedLength, int tried,
        boolean stopped) {

    /** Copies its lists. */
    public Nest {
        placements = List.copyOf(placements);
        tooLarge = List.copyOf(tooLarge);
    }

    /** What lies on a sheet. */
    public List<Placement> on(int sheet) {
        return placements.stream().filter(placement -> placement.sheet() == sheet).toList();
    }

    /** Share of a whole sheet that becomes parts. */
    public double shareUsed(int sheet) {
        return on(sheet).stream().mapToDouble(placement -> placement.part().area()).sum() / order.sheetArea();
    }

    /** Share of all sheets taken that becomes parts; 0 without sheets. */
    public double shareUsed() {
        return sheets == 0 ? 0 : placements.stream().mapToDouble(placement -> placement.part().area()).sum() / (sheets * order.sheetArea());
    }
}
