package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthRange;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.section.SectionKind;

/** Where mat lies round a section, unrolled: from bottom centre round by starboard (1 at top centre) and back by port (2), in half girths. */
final class GirthStretches {

    private static final double SAME = 1e-6;

    /** From where to where, in half girths; {@code from} may lie before 0 where mat goes through under the keel. */
    record Stretch(double from, double to) { }

    private GirthStretches() { }

    static List<Stretch> of(Slice slice, Bare bare, GirthBand band) {
        List<Stretch> found = new ArrayList<>();
        for (boolean port : new boolean[] {false, true}) {
            boolean asked = port && slice.loft().kind() == SectionKind.FULL;
            for (GirthRange range : slice.ranges(slice.shares(band, asked).intersection(slice.bareShares(bare, asked).complement()), asked))
                if (!slice.isBare(range.stretch())) {
                    double a = slice.place(range.stretch(), range.fromU()).share(), b = slice.place(range.stretch(), range.toU()).share();
                    found.add(port ? new Stretch(2 - Math.max(a, b), 2 - Math.min(a, b)) : new Stretch(Math.min(a, b), Math.max(a, b)));
                }
        }
        return joined(found);
    }

    private static List<Stretch> joined(List<Stretch> found) {
        found.sort(Comparator.comparingDouble(Stretch::from));
        List<Stretch> runs = new ArrayList<>();
        for (Stretch next : found)
            if (next.to - next.from <= SAME)
                continue;
            else if (!runs.isEmpty() && next.from - runs.getLast().to <= SAME)
                runs.set(runs.size() - 1, new Stretch(runs.getLast().from, Math.max(runs.getLast().to, next.to)));
            else
                runs.add(next);
        if (runs.size() > 1 && runs.getFirst().from <= SAME && runs.getLast().to >= 2 - SAME)
            runs.set(0, new Stretch(runs.removeLast().from - 2, runs.getFirst().to));
        return runs;
    }
}
