package mouldwright.geometry.loft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.section.Mark;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionShape;
import mouldwright.geometry.section.Stretch;

/** Matches the stretches of neighbouring sections by named lines, and by order between them. */
final class Matching {
    private Matching() { }

    /** The marks between the ends of an outline. */
    private static List<Mark> inner(Section section) {
        List<Stretch> stretches = section.stretches();
        List<Mark> marks = new ArrayList<>();
        for (Stretch stretch : stretches.subList(1, stretches.size()))
            marks.add(stretch.from());
        return marks;
    }

    /** What keeps two sections from matching; nothing if one is a point or knife edge, which goes with any other. */
    static Optional<LoftFault> fault(int fore, Section a, int aft, Section b) {
        if (a.kind() != b.kind())
            return Optional.of(new LoftFault.KindsDiffer(fore, aft));
        if (a.shape() != SectionShape.BODY || b.shape() != SectionShape.BODY)
            return Optional.empty();
        List<Mark> before = inner(a), after = inner(b);
        List<String> foreLines = lines(before), aftLines = lines(after);
        for (String line : foreLines)
            if (count(foreLines, line) > count(aftLines, line))
                return Optional.of(new LoftFault.LineMissing(fore, aft, line, aft));
        for (String line : aftLines)
            if (count(aftLines, line) > count(foreLines, line))
                return Optional.of(new LoftFault.LineMissing(fore, aft, line, fore));
        for (int i = 0; i < foreLines.size(); i++)
            if (!foreLines.get(i).equals(aftLines.get(i)))
                return Optional.of(new LoftFault.LinesCross(fore, aft, foreLines.get(i)));
        return knuckles(fore, runs(before), aft, runs(after), foreLines);
    }

    private static long count(List<String> lines, String line) {
        return lines.stream().filter(line::equals).count();
    }

    private static List<String> lines(List<Mark> marks) {
        return marks.stream().flatMap(m -> m.line().stream()).toList();
    }

    /** Numbers of unnamed knuckles before, between and after the lines. */
    private static List<Integer> runs(List<Mark> marks) {
        List<Integer> runs = new ArrayList<>(List.of(0));
        for (Mark mark : marks) {
            if (mark.line().isPresent())
                runs.add(0);
            else
                runs.set(runs.size() - 1, runs.getLast() + 1);
        }
        return runs;
    }

    private static Optional<LoftFault> knuckles(int fore, List<Integer> a, int aft, List<Integer> b, List<String> lines) {
        for (int i = 0; i < a.size(); i++)
            if (!a.get(i).equals(b.get(i)))
                return Optional.of(new LoftFault.KnucklesDiffer(fore, aft, i == 0 ? "" : lines.get(i - 1),
                        i == lines.size() ? "" : lines.get(i), a.get(i), b.get(i)));
        return Optional.empty();
    }

    /** Whether a knife edge carries the same marks as its neighbour, so that its own stretches can be used. */
    static boolean sameMarks(Section a, Section b) {
        List<Mark> before = inner(a), after = inner(b);
        return lines(before).equals(lines(after)) && runs(before).equals(runs(after));
    }
}
