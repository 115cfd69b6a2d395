package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.measure.SurfaceRegion;
import mouldwright.plan.Measurements;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;

/** Measures the skin, once: fields of mat bay by bay, and coverage. */
final class SkinMeasuring {

    private final Spec spec;
    private final Skin skin;
    private final ShapeMeasures shape;
    private final Measurements measurements;
    private final BooleanSupplier cancelled;

    SkinMeasuring(Spec spec, ShapeMeasures shape, Measurements measurements, BooleanSupplier cancelled) {
        this.spec = spec;
        this.skin = spec.skin().orElseThrow();
        this.shape = shape;
        this.measurements = measurements;
        this.cancelled = cancelled;
    }

    SkinMeasures measure() {
        List<SkinMeasures.Laying> layings = new ArrayList<>(general());
        List<Coverage.Patch> laid = new ArrayList<>();
        List<Coverage.Patch> asked = new ArrayList<>();
        List<SkinMeasures.OverBare> overBare = new ArrayList<>();
        for (Skin.Rule rule : skin.rules()) {
            Optional<double[]> stretch = stretch(rule.span());
            if (stretch.isEmpty())
                continue;
            double from = stretch.get()[0] * shape.scale();
            double to = stretch.get()[1] * shape.scale();
            GirthBand band = Places.of(rule.band());
            switch (rule) {
                case Skin.Rule.AddPlies add -> {
                    laid.add(new Coverage.Patch(from, to, band, add.count()));
                    if (!band.equals(GirthBand.WHOLE))
                        overBare.add(new SkinMeasures.OverBare(add, shape.measures().area(new SurfaceRegion(from, to, band)).bare().value()));
                    layings.add(new SkinMeasures.Laying(add.mat(), add.count(), false,
                            "added from " + add.span().from() + " to " + add.span().to(), fields(from, to, band)));
                }
                case Skin.Rule.Require require -> asked.add(new Coverage.Patch(from, to, band, require.plies()));
            }
        }
        Coverage coverage = new Coverage(shape, skin.schedule().plies().size(), laid, asked, cancelled);
        double square = shape.scale() * shape.scale();
        Measured ends = new Measured(shape.moulded().stream().mapToDouble(ShapeMeasures.End::area).sum() * square, 0);
        return new SkinMeasures(shape.measures().area().moulded().plus(ends), layings, coverage.uncovered(),
                coverage.lacking(), coverage.gaps(), overBare);
    }

    private Optional<double[]> stretch(BaySpan span) {
        return BayRules.stretch(spec.body(), span, measurements);
    }

    /** Neighbouring plies of one mat are laid alike; the very first ply lies on cut foam and is kept apart. */
    private List<SkinMeasures.Laying> general() {
        List<SkinMeasures.Field> fields = null;
        List<SkinMeasures.Laying> layings = new ArrayList<>();
        for (Schedule.Layer.Ply ply : skin.schedule().plies()) {
            if (fields == null)
                fields = wholeFace();
            boolean first = layings.isEmpty();
            SkinMeasures.Laying last = first ? null : layings.getLast();
            if (!first && !last.first() && last.mat().equals(ply.mat()))
                layings.set(layings.size() - 1, laying(ply.mat(), last.count() + 1, false, fields));
            else
                layings.add(laying(ply.mat(), 1, first, fields));
        }
        return layings;
    }

    private static SkinMeasures.Laying laying(Mat mat, int count, boolean first, List<SkinMeasures.Field> fields) {
        return new SkinMeasures.Laying(mat, count, first, "over the whole moulded face", fields);
    }

    private List<SkinMeasures.Field> wholeFace() {
        List<SkinMeasures.Field> fields = new ArrayList<>(
                fields(shape.plug().startX(), shape.plug().endX(), GirthBand.WHOLE));
        for (ShapeMeasures.End end : shape.moulded()) {
            double across = Math.min(end.breadth(), end.height());
            fields.add(new SkinMeasures.Field("end at " + end.station().name(),
                    new Measured(end.area() * shape.scale() * shape.scale(), 0), new GirthRuns(List.of(across), false),
                    Math.max(end.breadth(), end.height()), Math.max(end.breadth(), end.height())));
        }
        return fields;
    }

    private List<SkinMeasures.Field> fields(double from, double to, GirthBand band) {
        List<SkinMeasures.Field> fields = new ArrayList<>();
        for (Bay bay : shape.bays()) {
            if (cancelled.getAsBoolean())
                throw new CancellationException();
            double start = Math.max(from, bay.fore().station().x() * shape.scale());
            double end = Math.min(to, bay.aft().station().x() * shape.scale());
            if (end > start)
                field(bay, start, end, band).ifPresent(fields::add);
        }
        return fields;
    }

    private Optional<SkinMeasures.Field> field(Bay bay, double start, double end, GirthBand band) {
        Measured area = shape.measures().area(new SurfaceRegion(start, end, band)).moulded();
        GirthRuns middle = GirthRuns.of(shape.plug().at((start + end) / 2), shape.bare(), band);
        GirthRuns widest = middle;
        for (double x : new double[] {start, start + (end - start) / 4, end - (end - start) / 4, end})
            if (!shape.plug().at(x).isDegenerate()) {
                GirthRuns runs = GirthRuns.of(shape.plug().at(x), shape.bare(), band);
                widest = runs.total() > widest.total() ? runs : widest;
            }
        if (!(area.value() > 0) || !(middle.total() > 0))
            return Optional.empty();
        double length = Math.max(end - start, area.value() / middle.total());
        double longest = new DevelopedLength(shape.plug(), shape.bare(), band).longest(start, end);
        return Optional.of(new SkinMeasures.Field(bay.words(), area, widest, length, Math.max(end - start, longest)));
    }
}
