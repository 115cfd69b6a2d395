package mouldwright.check;

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
     *  @param remedy what mends it; empty if nothing can be said for sure */
    public void warn(String code, Origin place, String message, String remedy) {
        add(new Finding(code, Severity.WARNING, place, message, remedy));
    }

    /** @return all findings */
    public List<Finding> all() {
        return List.copyOf(found);
    }

    /** A length as messages say it. */
    static String length(double metres) {
        return WORDS.format(metres, Dimension.LENGTH);
    }

    /** A figure as messages say it. */
    static String figure(double si, Dimension dimension) {
        boolean count = dimension.equals(Dimension.RATIO) && si >= 1 && si == Math.rint(si);
        return count ? Display.number(si) : WORDS.format(si, dimension);
    }
}
