package mouldwright.cli;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mouldwright.units.Dimension;
import mouldwright.units.Unit;
import mouldwright.units.Units;

/** Lengths and units of length as they are typed. */
final class Lengths {

    private static final Pattern LENGTH = Pattern.compile("(\\d{1,9}(?:\\.\\d{1,9})?)\\s*(.*)");

    private Lengths() { }

    /** A positive length in metres, in millimetres where it names no unit.
     *  @throws WrongUsage if it is none */
    static double of(String option, String written) {
        Matcher match = LENGTH.matcher(written.strip());
        double metres = match.matches() ? unit(option, match.group(2).isEmpty() ? "mm" : match.group(2)).toSi(Double.parseDouble(match.group(1))) : 0;
        if (!(metres > 0))
            throw new WrongUsage(option + " takes a length, such as 0.5mm, not " + written);
        return metres;
    }

    /** A unit of length.
     *  @throws WrongUsage if it is none */
    static Unit unit(String option, String written) {
        Optional<Unit> unit = Units.find(written.strip()).filter(known -> known.dimension().equals(Dimension.LENGTH));
        return unit.orElseThrow(() -> new WrongUsage(option + ": `" + written + "` is no unit of length; mm, cm, m, in or ft"));
    }
}
