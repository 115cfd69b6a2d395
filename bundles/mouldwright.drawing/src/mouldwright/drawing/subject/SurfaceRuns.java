package mouldwright.drawing.subject;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthRange;
import mouldwright.geometry.loft.ShareSet;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.section.SectionKind;

/** The outline of a section as it is drawn: moulded runs, and bare ones, each with its outward normals in the section plane. */
final class SurfaceRuns {

    /** How far straight pieces may leave the outline, metres: a tenth of a line's width on paper. */
    private static final double CHORD = 1e-4;

    /** A place of a run. @param y @param z metres @param ny @param nz outward unit normal in the section plane */
    record Edge(double y, double z, double ny, double nz) { }

    private final Slice slice;
    private final Bare bare;

    SurfaceRuns(Slice slice, Bare bare) {
        this.slice = slice;
        this.bare = bare;
    }

    /** What gets skin, within a band, both sides. */
    List<List<Edge>> moulded(GirthBand band) {
        List<List<Edge>> runs = new ArrayList<>();
        for (boolean port : sides())
            for (GirthRange range : slice.ranges(slice.shares(band, port).intersection(slice.bareShares(bare, port).complement()), port))
                if (!slice.isBare(range.stretch()))
                    add(runs, range);
        return runs;
    }

    /** What gets none, both sides; closures are left out. */
    List<List<Edge>> bare() {
        List<List<Edge>> runs = new ArrayList<>();
        for (boolean port : sides()) {
            for (GirthRange range : slice.ranges(slice.bareShares(bare, port), port))
                add(runs, range);
            for (GirthRange range : slice.ranges(slice.bareShares(bare, port).complement(), port))
                if (slice.isBare(range.stretch()))
                    add(runs, range);
        }
        return runs;
    }

    private boolean[] sides() {
        return slice.loft().kind() == SectionKind.HALF ? new boolean[] {false} : new boolean[] {false, true};
    }

    /** A range that goes on where the last one ended is joined to it; those of a half body are mirrored in the end. */
    private void add(List<List<Edge>> runs, GirthRange range) {
        List<Edge> edges = new ArrayList<>();
        for (double u : slice.chords(range, CHORD))
            edges.add(edge(slice.point(range.stretch(), u)));
        if (edges.size() < 2)
            return;
        runs.add(edges);
        if (slice.loft().kind() == SectionKind.HALF)
            runs.add(edges.stream().map(e -> new Edge(-e.y, e.z, -e.ny, e.nz)).toList());
    }

    private static Edge edge(SurfacePoint point) {
        double length = Math.hypot(point.ny(), point.nz());
        return length == 0 ? new Edge(point.y(), point.z(), 0, 0) : new Edge(point.y(), point.z(), point.ny() / length, point.nz() / length);
    }
}
