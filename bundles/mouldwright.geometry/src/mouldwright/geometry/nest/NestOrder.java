package mouldwright.geometry.nest;

import java.util.List;

/** What is to be laid on what, and how hard to try.
 *  @param sheets sizes there are to choose from; the first is the usual one
 *  @param kerf   that parts stay apart, metres; a saw or cutter takes it away
 *  @param margin that parts stay away from a sheet's edge, metres
 *  @param parts  one entry for each piece
 *  @param trials layouts tried at most
 *  @param seed   of the search; the same gives the same layout */
public record NestOrder(List<NestSheet> sheets, double kerf, double margin, List<NestPart> parts, int trials, long seed) {
    /** Places are kept in whole tenths of a micrometre, of which an int holds some 200 m. */
    private static final double LONGEST = 100;
    private static final int LEAST_TRIALS = 32, MOST_TRIALS = 200;

    /** Refuses sheets with nothing left inside their margin. */
    public NestOrder {
        sheets = List.copyOf(sheets);
        parts = List.copyOf(parts);
        if (sheets.isEmpty())
            throw new IllegalArgumentException("no sheet to cut from");
        for (NestSheet sheet : sheets)
            if (!(kerf >= 0 && margin >= 0 && sheet.length() - 2 * margin > 0 && sheet.width() - 2 * margin > 0 && sheet.length() <= LONGEST && sheet.width() <= LONGEST && kerf <= LONGEST))
                throw new IllegalArgumentException("sheet " + sheet.length() + " by " + sheet.width() + ", kerf " + kerf + ", margin " + margin);
        if (trials < 1)
            throw new IllegalArgumentException("trials " + trials);
    }

    /** Of sheets of one size. @param length @param width of a sheet, metres */
    public NestOrder(double length, double width, double kerf, double margin, List<NestPart> parts, int trials, long seed) {
        this(List.of(NestSheet.byArea(length, width)), kerf, margin, parts, trials, seed);
    }

    /** As many trials as are worth their time: one grows with the pairs of parts, and after some hundreds little is gained. */
    public static int usualTrials(int parts) {
        return Math.clamp(600_000L / Math.max(1L, (long) parts * parts), LEAST_TRIALS, MOST_TRIALS);
    }

    /** The least number of sheets any layout of these parts can take, from areas alone, all of the largest size; parts that fit no sheet are left out by the caller.
     *  Grown by half a kerf parts still lie apart, within the margin less half a kerf, and by the Brunn-Minkowski inequality a
     *  figure of area A grown by r has (sqrt A + r sqrt pi)^2 at least. An opening smaller than every other part is lost. */
    static int leastSheets(NestOrder order, List<NestPart> parts) {
        double smallest = parts.stream().mapToDouble(part -> part.outer().area()).min().orElse(0), needed = 0;
        for (NestPart part : parts) {
            double area = part.outer().area();
            for (var opening : part.openings())
                area -= opening.area() < smallest ? 0 : opening.area();
            double side = Math.sqrt(Math.max(0, area)) + 0.5 * order.kerf * Math.sqrt(Math.PI);
            needed += side * side;
        }
        double usable = order.sheets.stream()
                .mapToDouble(sheet -> (sheet.length() - 2 * order.margin + order.kerf) * (sheet.width() - 2 * order.margin + order.kerf)).max().orElseThrow();
        double rounding = 1e-9;                                // so that parts that fill a sheet to the last digit count one
        return (int) Math.ceil(needed / usable - rounding);
    }
}
