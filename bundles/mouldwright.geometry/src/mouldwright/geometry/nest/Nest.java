package mouldwright.geometry.nest;

import java.util.List;

/** Parts as they lie on sheets.
 *  @param order       what was asked for
 *  @param placements  sheet by sheet, in the order they were laid
 *  @param tooLarge    parts that fit no sheet, however turned
 *  @param taken       sheets, each by its size
 *  @param leastSheets no layout of the parts that fit can take fewer: from areas
 *  @param usedLength  of the last sheet, from its end to the far edge of its last part, metres
 *  @param tried       layouts
 *  @param stopped     whether the search was stopped before its end */
public record Nest(NestOrder order, List<Placement> placements, List<NestPart> tooLarge, List<NestSheet> taken, int leastSheets, double usedLength, int tried,
        boolean stopped) {

    /** Copies its lists. */
    public Nest {
        placements = List.copyOf(placements);
        tooLarge = List.copyOf(tooLarge);
        taken = List.copyOf(taken);
    }

    /** How many are taken. */
    public int sheets() {
        return taken.size();
    }

    /** What all of them cost, in the unit of the order. */
    public double cost() {
        return taken.stream().mapToDouble(NestSheet::cost).sum();
    }

    /** What lies on a sheet. */
    public List<Placement> on(int sheet) {
        return placements.stream().filter(placement -> placement.sheet() == sheet).toList();
    }

    /** Share of a whole sheet that becomes parts. */
    public double shareUsed(int sheet) {
        return on(sheet).stream().mapToDouble(placement -> placement.part().area()).sum() / taken.get(sheet).area();
    }

    /** Share of all sheets taken that becomes parts; 0 without sheets. */
    public double shareUsed() {
        return taken.isEmpty() ? 0 : placements.stream().mapToDouble(placement -> placement.part().area()).sum() / taken.stream().mapToDouble(NestSheet::area).sum();
    }
}
