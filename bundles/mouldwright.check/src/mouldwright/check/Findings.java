package mouldwright.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.spec.Origin;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;

/** Collects what checks find, in the order found. */
public final class Findings {

    private static final Display WORDS = Display.of(UnitSystem.METRIC);

    private final List<Finding> found = new ArrayList<>();

    /** Takes a finding. */
    public void add(Finding finding) {
        found.add(finding);
    }

    /** Takes a warning.
     *  @param remedy what mends it; empty if nothing can be said for sure
     *  @param fixes  what mends it in the text, the best first */
    public void warn(String code, Origin place, String message, String remedy, Fix... fixes) {
        add(new Finding(code, Severity.WARNING, place, message, remedy, List.of(fixes)));
    }

    /** @return all findings */
    public List<Finding> all() {
        return List.copyOf(found);
    }

    /** A length as messages say it. */
    static String length(double metres) {
        return WORDS.format(metres, Dimension.LENGTH);
    }

    /** A length as a spec states it, in millimetres up to the next tenth, so that it keeps a least. */
    static String written(double metres) {
        return exact(Math.ceil(metres * 10000 - 1e-6) / 10000, 1);
    }

    /** A length as a spec states it, in millimetres.
     *  @param places decimal places kept at most */
    static String exact(double metres, int places) {
        BigDecimal rounded = BigDecimal.valueOf(metres).movePointRight(3).setScale(places, RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString()) + " mm";
    }

    /** A share as a spec states it. */
    static String percent(double share) {
        return BigDecimal.valueOf(share).movePointRight(2).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString() + " %";
    }

    /** A figure as messages say it. */
    static String figure(double si, Dimension dimension) {
        boolean count = dimension.equals(Dimension.RATIO) && si >= 1 && si == Math.rint(si);
        return count ? Display.number(si) : WORDS.format(si, dimension);
    }
}
