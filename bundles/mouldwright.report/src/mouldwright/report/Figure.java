package mouldwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.Unit;
import mouldwright.units.Units;

/**
 * Figures as an estimate prints them, all of a row or a column in one unit and with one count of decimals, so that they can be compared by
 * looking.
 */
final class Figure {

    private static final int FIGURES = 3;
    private static final int DECIMALS_AT_MOST = 4;
    private static final int DECIMALS_OF_LABOUR = 2;

    private final Optional<Unit> unit;
    private final Dimension dimension;
    private final int decimals;
    private final String currency;

    /**
     * Prints figures of a size.
     *
     * @param largest   the largest of them, SI; it gets three figures, or its whole part
     * @param dimension of all of them; a plain number is a count
     */
    Figure(Display display, double largest, Dimension dimension) {
        boolean count = dimension.equals(Dimension.RATIO);
        this.currency = "";
        this.dimension = dimension;
        this.unit = count ? Optional.empty() : display.unitFor(largest == 0 ? 1 : largest, dimension);
        this.decimals = count ? 0 : decimals(unit.map(u -> Math.abs(u.fromSi(largest))).orElse(Math.abs(largest)));
    }

    private Figure(Optional<Unit> unit, Dimension dimension, int decimals, String currency) {
        this.currency = currency;
        this.unit = unit;
        this.dimension = dimension;
        this.decimals = decimals;
    }

    /** Prints figures of a size in the unit that suits another one beside them.
     *  @param largest of the figures, SI
     *  @param beside  the other one, SI */
    static Figure beside(Display display, double largest, double beside, Dimension dimension) {
        if (dimension.equals(Dimension.RATIO) || largest == 0 || beside == 0) {
            return new Figure(display, largest, dimension);
        }
        Optional<Unit> unit = display.unitFor(Math.max(largest, beside), dimension);
        return new Figure(unit, dimension, decimals(unit.map(u -> Math.abs(u.fromSi(largest))).orElse(Math.abs(largest))), "");
    }

    /** Figures of labour: in hours, since a day of work is not a day of the calendar.
     *  @param largest s */
    static Figure hours(double largest) {
        Unit hour = Units.find("h").orElseThrow();
        return new Figure(Optional.of(hour), Dimension.TIME, Math.min(DECIMALS_OF_LABOUR, decimals(hour.fromSi(largest))), "");
    }

    /** Amounts of money, to the hundredth part. */
    static Figure money(String currency) {
        return new Figure(Optional.empty(), Dimension.RATIO, 2, currency);
    }

    private static int decimals(double size) {
        if (size == 0) {
            return 0;
        }
        int whole = (int) Math.floor(Math.log10(size)) + 1;
        return Math.clamp(FIGURES - whole, 0, DECIMALS_AT_MOST);
    }

    /** The unit's spelling, or the currency; empty for a count. */
    String unit() {
        if (dimension.equals(Dimension.RATIO)) {
            return currency;
        }
        return unit.map(Unit::symbol).orElse(dimension.ucum());
    }

    /** A figure without its unit; a count that is not whole keeps two decimals. */
    String of(double si) {
        BigDecimal number = BigDecimal.valueOf(unit.map(u -> u.fromSi(si)).orElse(si));
        boolean brokenCount = dimension.equals(Dimension.RATIO) && number.stripTrailingZeros().scale() > 0;
        String text = number.setScale(brokenCount ? 2 : decimals, RoundingMode.HALF_UP).toPlainString();
        return isZero(text) && text.startsWith("-") ? text.substring(1) : text;
    }

    /** A figure as a cell: shown without its unit, kept in full. */
    Cell cell(double si) {
        String text = of(si);
        return new Cell.Number(unit.map(u -> u.fromSi(si)).orElse(si), Math.max(0, new BigDecimal(text).scale()), text);
    }

    private static boolean isZero(String text) {
        return text.chars().allMatch(c -> c == '0' || c == '.' || c == '-');
    }
}
