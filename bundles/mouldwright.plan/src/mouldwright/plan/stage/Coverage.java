package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.measure.SurfaceRegion;

/** How many plies lie where, against how many are asked for. The surface is cut into cells along the edges of all rules;
 *  within a cell both counts are the same throughout. Edges that cross between two stations are taken in the order they
 *  have at the middle. */
final class Coverage {

    /** A part of the surface with a number of plies, laid or asked for.
     *  @param fromX on the plug, m
     *  @param toX   on the plug, m */
    record Patch(double fromX, double toX, GirthBand band, int plies) { }

    private final ShapeMeasures shape;
    private final int everywhere;
    private final List<Patch> laid;
    private final List<Patch> asked;
    private final List<SkinMeasures.Gap> gaps = new ArrayList<>();
    private Measured uncovered = Measured.ZERO;
    private Measured lacking = Measured.ZERO;

    /** Counts.
     *  @param everywhere plies laid over the whole moulded face, which asks for one by itself */
    Coverage(ShapeMeasures shape, int everywhere, List<Patch> laid, List<Patch> asked) {
        this.shape = shape;
        this.everywhere = everywhere;
        this.laid = laid;
        this.asked = asked;
        count();
    }

    Measured uncovered() {
        return uncovered;
    }

    Measured lacking() {
        return lacking;
    }

    List<SkinMeasures.Gap> gaps() {
        return gaps;
    }

    private void count() {
        List<Double> cuts = List.copyOf(cuts());
        for (int i = 1; i < cuts.size(); i++)
            span(cuts.get(i - 1), cuts.get(i));
        if (everywhere == 0)
            for (ShapeMeasures.End end : shape.moulded()) {
                double area = end.area() * shape.scale() * shape.scale();
                double x = end.station().x() * shape.scale();
                add(new SkinMeasures.Gap(x, x, GirthBand.WHOLE, 0, 1, area), new Measured(area, 0));
            }
    }

    private TreeSet<Double> cuts() {
        TreeSet<Double> cuts = new TreeSet<>(List.of(shape.plug().startX(), shape.plug().endX()));
        if (laid.isEmpty() && asked.isEmpty())
            return cuts;
        cuts.addAll(shape.plug().stations());
        for (Patch patch : all()) {
            cuts.add(Math.clamp(patch.fromX(), shape.plug().startX(), shape.plug().endX()));
            cuts.add(Math.clamp(patch.toX(), shape.plug().startX(), shape.plug().endX()));
        }
        return cuts;
    }

    private List<Patch> all() {
        List<Patch> all = new ArrayList<>(laid);
        all.addAll(asked);
        return all;
    }

    private void span(double from, double to) {
        double middle = (from + to) / 2;
        Slice slice = shape.plug().at(middle);
        List<GirthPlace> edges = new ArrayList<>(List.of(GirthPlace.BOTTOM, GirthPlace.TOP));
        for (Patch patch : all())
            if (over(patch, middle)) {
                edges.add(patch.band().from());
                edges.add(patch.band().to());
            }
        edges.sort(Comparator.comparingDouble(place -> share(slice, place)));
        for (int i = 1; i < edges.size(); i++)
            cell(slice, from, to, new GirthBand(edges.get(i - 1), edges.get(i)));
    }

    private void cell(Slice slice, double from, double to, GirthBand band) {
        double low = share(slice, band.from());
        double high = share(slice, band.to());
        if (!(high > low))
            return;
        double middle = (low + high) / 2;
        int plies = everywhere;
        for (Patch patch : laid)
            plies += holds(patch, slice, middle) ? patch.plies() : 0;
        int wanted = 1;
        for (Patch patch : asked)
            wanted = holds(patch, slice, middle) ? Math.max(wanted, patch.plies()) : wanted;
        if (plies < wanted) {
            Measured area = shape.measures().area(new SurfaceRegion(from, to, band)).moulded();
            if (area.value() > 0)
                add(new SkinMeasures.Gap(from, to, band, plies, wanted, area.value()), area);
        }
    }

    private void add(SkinMeasures.Gap gap, Measured area) {
        gaps.add(gap);
        lacking = lacking.plus(area);
        if (gap.laid() == 0)
            uncovered = uncovered.plus(area);
    }

    private static boolean over(Patch patch, double x) {
        return x > patch.fromX() && x < patch.toX();
    }

    private static boolean holds(Patch patch, Slice slice, double share) {
        double a = share(slice, patch.band().from());
        double b = share(slice, patch.band().to());
        return over(patch, slice.x()) && share > Math.min(a, b) && share < Math.max(a, b);
    }

    /** A line that is not known there bounds nothing. */
    private static double share(Slice slice, GirthPlace place) {
        return slice.share(place, false).orElse(0.0);
    }
}
