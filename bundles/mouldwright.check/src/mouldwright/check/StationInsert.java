package mouldwright.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Station;

/** Puts plates between two stations: their sections are taken from the loft, so that the shape stays as it is. */
final class StationInsert {

    private StationInsert() { }

    /** The fix; none where no station is to be inserted, or none can be in a row of stations.
     *  @param at station lines, ascending, m */
    static Fix[] of(Body body, Station fore, Station aft, List<Double> at) {
        if (at.isEmpty() || fore.origin().equals(aft.origin()))
            return new Fix[0];
        Set<String> taken = new HashSet<>();
        body.stations().forEach(station -> taken.add(station.name()));
        List<String> lines = new ArrayList<>();
        for (double x : at)
            lines.add("station " + name(fore.name(), taken) + " at " + Findings.exact(x, 3) + " lofted");
        return new Fix[] {Fix.of("insert " + (at.size() == 1 ? "a lofted station" : at.size() + " lofted stations") + " between " + fore.name() + " and " + aft.name(),
                new Remedy.Insert(fore.origin(), Remedy.Side.AFTER, String.join("\n", lines)))};
    }

    /** The name of the station before with a letter, the first that is free. */
    private static String name(String before, Set<String> taken) {
        for (char letter = 'a'; letter <= 'z'; letter++)
            if (taken.add(before + letter))
                return before + letter;
        int number = 1;
        while (!taken.add(before + "z" + number))
            number++;
        return before + "z" + number;
    }
}
