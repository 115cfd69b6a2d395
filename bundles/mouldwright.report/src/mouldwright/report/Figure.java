package mouldwright.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.Unit;

/**
 * Figures as an estimate prints them, all of a row or a column in one unit and with one count of decimals, so that they can be compared by
 * looking.
 */
final class Figure {

    private static final int FIGURES = 3;
    private static final int DECIMALS_AT_MOST = 4;

    private final Optional<Unit> unit;
    private final Dimension dimension;
    private final int decimals;

    /**
     * Prints figures of a size.
     *
     * @param largest   the largest of them, SI; it gets three figures, or its whole part
     * @param dimension of all of them; a plain number is a count
     */
    Figure(Display display, double largest, Dimension dimension) {
        boolean count = dimension.equals(Dimension.RATIO);
        this.dimension = dimension;
        this.unit = count ? Optional.empty() : display.unitFor(largest == 0 ? 1 : largest, dimension);
        this.decimals = count ? 0 : decimals(unit.map(u -> Math.abs(u.fromSi(largest))).orElse(Math.abs(largest)));
    }

    private static int decimals(double size) {
        if (size == 0) {
            return 0;
        }
        int whole = (int) Math.floor(Math.log10(size)) + 1;
        return Math.clamp(FIGURES - whole, 0, DECIMALS_AT_MOST);
    }

    /** The unit's spelling; empty for a count. */
    String unit() {
        if (dimension.equals(Dimension.RATIO)) {
            return "";
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

    private static boolean isZero(String text) {
        return text.chars().allMatch(c -> c == '0' || c == '.' || c == '-');
    }
}
