package mouldwright.geometry.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import mouldwright.geometry.curve.ArcPath;

/** Cuts a trace where longitudinal lines cross it. */
final class LinePlacer {
    /** Share of the outline's length within which a line falls on a mark that is there already. */
    private static final double SAME_PLACE = 1e-7;

    private final SectionKind kind;
    private final List<SectionFault> faults;

    LinePlacer(SectionKind kind, List<SectionFault> faults) {
        this.kind = kind;
        this.faults = faults;
    }

    Optional<Trace> place(Trace trace, List<LinePlace> lines) {
        if (trace.shape() == SectionShape.POINT)
            return Optional.of(trace);                      // every line runs through a nose
        Trace marked = trace;
        for (LinePlace line : lines) {
            OptionalDouble at = locate(marked, line);
            if (at.isEmpty()) {
                faults.add(new SectionFault.LineNotPlaced(line.line()));
            } else if (marked.marks().stream().anyMatch(m -> m.line().equals(Optional.of(line.line())))) {
                faults.add(new SectionFault.LineTwice(line.line()));
            } else {
                marked = cut(marked, at.getAsDouble(), line.line());
            }
        }
        return Optional.of(marked);
    }

    /** Arc length from the start of the outline to where a line crosses it. */
    private OptionalDouble locate(Trace trace, LinePlace line) {
        return switch (line) {
            case LinePlace.AtHeight at -> atHeight(trace, at.height());
            case LinePlace.AtGirth at -> atGirth(new Section(kind, trace), at.share());
        };
    }

    private OptionalDouble atGirth(Section section, double share) {
        double s = share * section.girth() / 2 - section.bottomClosure();
        double rounding = SAME_PLACE * section.girth();
        boolean there = share >= 0 && share <= 1 && s >= -rounding && s <= section.outlineLength() + rounding;
        return there ? OptionalDouble.of(Math.clamp(s, 0, section.outlineLength())) : OptionalDouble.empty();
    }

    private static OptionalDouble atHeight(Trace trace, double height) {
        double before = 0;
        double[] out = new double[6];
        for (Trace.Piece piece : trace.pieces()) {
            ArcPath path = new ArcPath(piece.parts());
            double[] starts = path.cellStarts();
            for (int i = 0; i + 1 < starts.length; i++)
                for (int k = 0; k < 8; k++) {
                    double low = starts[i] + (starts[i + 1] - starts[i]) * k / 8;
                    double high = starts[i] + (starts[i + 1] - starts[i]) * (k + 1) / 8;
                    path.at(low, out);
                    double under = out[1] - height;
                    path.at(high, out);
                    double over = out[1] - height;
                    if (under == 0)
                        return OptionalDouble.of(before + low);
                    if (under < 0 != over < 0 && over != 0 || over == 0 && i + 2 == starts.length && k == 7)
                        return OptionalDouble.of(before + bisect(path, height, low, high, under < 0));
                }
            before += path.length();
        }
        return OptionalDouble.empty();
    }

    private static double bisect(ArcPath path, double height, double from, double to, boolean rising) {
        double[] out = new double[6];
        double low = from, high = to;
        for (int round = 0; round < 80 && high - low > 1e-15 * path.length(); round++) {
            double middle = 0.5 * (low + high);
            path.at(middle, out);
            if (out[1] < height == rising)
                low = middle;
            else
                high = middle;
        }
        return 0.5 * (low + high);
    }

    private Trace cut(Trace trace, double s, String line) {
        List<ArcPath> paths = trace.pieces().stream().map(p -> new ArcPath(p.parts())).toList();
        double rounding = SAME_PLACE * paths.stream().mapToDouble(ArcPath::length).sum();
        double start = 0;
        for (int i = 0; i < paths.size(); i++) {
            if (Math.abs(s - start) <= rounding)
                return named(trace, i, line);
            double end = start + paths.get(i).length();
            if (s < end - rounding)
                return split(trace, i, paths.get(i), s - start, line);
            start = end;
        }
        return named(trace, paths.size(), line);
    }

    private Trace named(Trace trace, int mark, String line) {
        if (trace.marks().get(mark).line().isPresent()) {
            faults.add(new SectionFault.LineNotPlaced(line));
            return trace;
        }
        List<Mark> marks = new ArrayList<>(trace.marks());
        marks.set(mark, new Mark(Optional.of(line), marks.get(mark).knuckle()));
        return new Trace(trace.pieces(), marks, trace.shape());
    }

    private static Trace split(Trace trace, int index, ArcPath path, double into, String line) {
        Trace.Piece piece = trace.pieces().get(index);
        ArcPath.Halves halves = path.split(into);
        List<Trace.Piece> pieces = new ArrayList<>(trace.pieces());
        pieces.set(index, new Trace.Piece(halves.before(), piece.bare()));
        pieces.add(index + 1, new Trace.Piece(halves.after(), piece.bare()));
        List<Mark> marks = new ArrayList<>(trace.marks());
        marks.add(index + 1, new Mark(Optional.of(line), false));
        return new Trace(pieces, marks, trace.shape());
    }
}
