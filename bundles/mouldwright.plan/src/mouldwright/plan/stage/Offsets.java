package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.plane.Crosscut;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import mouldwright.geometry.section.Mark;
import mouldwright.geometry.section.SectionKind;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.OffsetTable;
import mouldwright.plan.OffsetTable.Measure;
import mouldwright.plan.OffsetTable.Row;
import mouldwright.plan.OffsetTable.Surface;
import mouldwright.plan.spec.Station;

/** Takes the offsets off the loft and off the plates. */
public final class Offsets {

    /** How far chords may leave a section, m: a tenth of what is written. */
    private static final double CHORD = 1e-5;
    /** More lines than these fill no table anybody reads. */
    private static final int MOST_LINES = 200;

    private final ShapeMeasures shape;
    private final List<Section> sections = new ArrayList<>();

    /** A station with what is measured at it.
     *  @param finished its section
     *  @param plate    cut line of its plate */
    private record Section(Station station, double x, Slice slice, Region finished, double girth, Optional<Region> plate) { }

    private Offsets(ShapeMeasures shape, Map<String, Region> plates) {
        this.shape = shape;
        for (Station station : shape.stations().stream().map(ShapeMeasures.AtStation::station).toList()) {
            double x = station.x() * shape.scale();
            Slice slice = shape.plug().at(x, x >= shape.plug().endX() ? Side.FORWARD : Side.AFT);
            boolean pinched = slice.isDegenerate();
            sections.add(new Section(station, x, slice, pinched ? Region.EMPTY : Region.of(slice.outline(CHORD)), pinched ? 0 : slice.girth(),
                    Optional.ofNullable(plates.get(station.name()))));
        }
    }

    /** The table.
     *  @param every distance between waterlines and between buttocks, m, positive
     *  @return empty where the plan has no shape, or where lines so near each other would be more than 200 */
    public static Optional<OffsetTable> of(BuildPlan plan, double every) {
        Map<String, Region> plates = new HashMap<>();
        plan.measurements().find(FrameMeasures.class).ifPresent(frame -> frame.plates().forEach(one ->
                plates.put(one.border().name(), Region.of(one.plate().cut()))));
        return plan.measurements().find(ShapeMeasures.class).flatMap(shape -> new Offsets(shape, plates).table(every));
    }

    /** Height and greatest half-breadth of the plug, m: what a distance between lines is chosen by.
     *  @return the larger of the two; 0 where there is no shape */
    public static double extent(BuildPlan plan) {
        return plan.measurements().find(ShapeMeasures.class).map(shape -> new Offsets(shape, Map.of()).extents()).map(e -> Math.max(e[1] - e[0], e[2])).orElse(0.0);
    }

    private double[] extents() {
        double low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY, broad = 0;
        for (Section section : sections)
            for (Outline outline : section.finished().pieces()) {
                low = Math.min(low, outline.minZ());
                high = Math.max(high, outline.maxZ());
                broad = Math.max(broad, Math.max(outline.maxY(), -outline.minY()));
            }
        return low < high ? new double[] { low, high, broad } : new double[] { 0, 0, 0 };
    }

    private Optional<OffsetTable> table(double every) {
        double[] extents = extents();
        double middle = 0.5 * (extents[0] + extents[1]);
        if ((extents[1] - extents[0] + extents[2]) / every > MOST_LINES)
            return Optional.empty();
        List<Row> rows = new ArrayList<>();
        for (Surface surface : Surface.values()) {
            Function<Section, Optional<Region>> on = surface == Surface.FINISHED ? section -> Optional.of(section.finished()) : Section::plate;
            if (surface == Surface.PLATE && sections.stream().noneMatch(section -> section.plate().isPresent()))
                continue;
            lines(surface, on, every, extents, rows);
            if (surface == Surface.FINISHED)
                marks(rows);
            rows.add(row(surface, Measure.DIAGONAL_UP, 0, on, region -> diagonal(region, middle, 1)));
            rows.add(row(surface, Measure.DIAGONAL_DOWN, 0, on, region -> diagonal(region, middle, -1)));
            rows.add(surface == Surface.PLATE ? row(surface, Measure.GIRTH, 0, on, region -> OptionalDouble.of(region.pieces().getFirst().length()))
                    : new Row(surface, Measure.GIRTH, 0, sections.stream().map(section -> section.girth() > 0 ? OptionalDouble.of(section.girth()) : OptionalDouble.empty()).toList()));
        }
        return Optional.of(new OffsetTable(sections.stream().map(section -> new OffsetTable.Column(section.station().name(), section.x())).toList(), rows, middle));
    }

    private void lines(Surface surface, Function<Section, Optional<Region>> on, double every, double[] extents, List<Row> rows) {
        for (double z : multiples(every, extents[0], extents[1])) {
            rows.add(row(surface, Measure.HALF_BREADTH, z, on, region -> outer(Crosscut.level(region, z), false)));
            if (shape.plug().kind() == SectionKind.FULL)
                rows.add(row(surface, Measure.HALF_BREADTH_PORT, z, on, region -> outer(Crosscut.level(region, z), true)));
        }
        for (double y : multiples(every, 0, extents[2])) {
            rows.add(row(surface, Measure.HEIGHT_BELOW, y, on, region -> {
                List<Crosscut.Span> spans = Crosscut.upright(region, y);
                return spans.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(spans.getFirst().from());
            }));
            rows.add(row(surface, Measure.HEIGHT_ABOVE, y, on, region -> {
                List<Crosscut.Span> spans = Crosscut.upright(region, y);
                return spans.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(spans.getLast().to());
            }));
        }
    }

    /** Lines of the body and corners between them, to starboard, and the ends of a half section that do not lie on the centreline. */
    private void marks(List<Row> rows) {
        List<Mark> marks = shape.plug().marks();
        int corners = 0;
        for (int k = 0; k < marks.size(); k++) {
            boolean end = k == 0 || k + 1 == marks.size();
            if (end && shape.plug().kind() == SectionKind.FULL || !end && marks.get(k).line().isEmpty() && !marks.get(k).knuckle())
                continue;
            int mark = k;
            List<SurfacePoint> places = sections.stream().map(section -> place(section.slice(), mark)).toList();
            if (places.stream().anyMatch(place -> place.y() < -CHORD) || end && places.stream().allMatch(place -> place.y() <= CHORD))
                continue;
            String name = end ? k == 0 ? "keel" : "sheer" : marks.get(k).line().orElse("knuckle " + ++corners);
            rows.add(of(Measure.LINE_HEIGHT, name, places, SurfacePoint::z));
            rows.add(of(Measure.LINE_HALF_BREADTH, name, places, SurfacePoint::y));
        }
    }

    private static SurfacePoint place(Slice slice, int mark) {
        return mark < slice.stretches() ? slice.point(mark, 0) : slice.point(mark - 1, 1);
    }

    private Row of(Measure measure, String name, List<SurfacePoint> places, ToDoubleFunction<SurfacePoint> figure) {
        List<OptionalDouble> values = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++)
            values.add(sections.get(i).finished().isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(figure.applyAsDouble(places.get(i))));
        return new Row(Surface.FINISHED, measure, name, 0, values);
    }

    private static OptionalDouble outer(List<Crosscut.Span> spans, boolean port) {
        return spans.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(port ? -spans.getFirst().from() : spans.getLast().to());
    }

    /** Where a line at 45 degrees from the centreline leaves the section for good. @param up 1 or -1 */
    private static OptionalDouble diagonal(Region region, double from, int up) {
        double furthest = Double.NaN;
        for (Outline outline : region.pieces())
            for (int i = 0; i < outline.size(); i++) {
                int j = (i + 1) % outline.size();
                PlanePoint a = new PlanePoint(outline.y(i), outline.z(i)), b = new PlanePoint(outline.y(j), outline.z(j));
                double offA = a.z() - from - up * a.y(), offB = b.z() - from - up * b.y();
                if (offA <= 0 != offB <= 0) {
                    double y = a.y() + (b.y() - a.y()) * offA / (offA - offB);
                    if (y >= 0 && !(y * Math.sqrt(2) <= furthest))
                        furthest = y * Math.sqrt(2);
                }
            }
        return Double.isNaN(furthest) ? OptionalDouble.empty() : OptionalDouble.of(furthest);
    }

    private static List<Double> multiples(double every, double low, double high) {
        List<Double> all = new ArrayList<>();
        for (long k = (long) Math.ceil(low / every - 1e-9); k * every < high - 1e-9; k++)
            all.add(k * every);
        return all;
    }

    private Row row(Surface surface, Measure measure, double at, Function<Section, Optional<Region>> on, Function<Region, OptionalDouble> of) {
        return new Row(surface, measure, at, sections.stream().map(section -> on.apply(section).filter(region -> !region.isEmpty()).map(of)
                .orElse(OptionalDouble.empty())).toList());
    }
}
