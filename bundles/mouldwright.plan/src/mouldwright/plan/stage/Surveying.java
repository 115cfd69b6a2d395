package mouldwright.plan.stage;

import static mouldwright.units.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Survey;
import mouldwright.plan.spec.Survey.Reading;
import mouldwright.process.Hollow;

/** Finds the places of surveys on the plug and what mends them. Distances of a survey are those of the plug, which is larger than
 *  the part by the shrink. */
final class Surveying {

    private final Spec spec;
    private final ShapeMeasures shape;
    private final FillerFacts filler;
    private final Measurements measurements;
    private final List<FairMeasures.Place> places = new ArrayList<>();

    Surveying(Spec spec, ShapeMeasures shape, FillerFacts filler, Measurements measurements) {
        this.spec = spec;
        this.shape = shape;
        this.filler = filler;
        this.measurements = measurements;
    }

    /** A place on the plug.
     *  @param where in words */
    private record Found(String where, double x, Survey.Hand hand, double share) { }

    List<FairMeasures.Place> places() {
        for (Survey survey : spec.surveys())
            for (Reading reading : survey.readings())
                switch (reading) {
                    case Reading.Gouge g -> hollow(survey, FairMeasures.Fault.GOUGE, g.spot(), g.depth(), g.alongX(), g.alongGirth(), g.mended(), g.origin());
                    case Reading.Hollow h -> hollow(survey, FairMeasures.Fault.VOID, h.spot(), h.depth(), h.alongX(), h.alongGirth(), h.mended(), h.origin());
                    case Reading.Unbonded u -> unbonded(survey, u);
                    case Reading.Gauge g -> gauge(survey, g);
                    case Reading.Setting s -> { }
                    case Reading.Poured p -> { }
                    case Reading.Temperature t -> { }
                    case Reading.Trial t -> { }
                }
        return places;
    }

    private void hollow(Survey survey, FairMeasures.Fault fault, Survey.Spot spot, double depth, double along, double across,
            Optional<Survey.Mended> mended, Origin origin) {
        Optional<Given> length = Optional.of(size("length of a " + fault.words(), along, origin));
        Optional<Given> width = Optional.of(size("width of a " + fault.words(), across, origin));
        Given stated = size("depth of a " + fault.words(), depth, origin);
        if (!new Guard(measurements).size(stated).size(length.get()).size(width.get()).clear())
            return;
        boolean done = mended.isPresent() && mended.get().now().orElse(0.0) <= limit();
        Given now = mended.flatMap(Survey.Mended::now).filter(n -> !done).map(n -> size("depth of a " + fault.words() + " after mending", n, origin))
                .orElse(stated);
        find(spot, origin).ifPresent(found -> add(survey, fault, found, new FairMeasures.Size(now, length, width), mended,
                done ? new FairMeasures.Done() : byDepth(now.likely()), origin));
    }

    private void unbonded(Survey survey, Reading.Unbonded u) {
        Optional<Given> length = Optional.of(size("length of unbonded skin", u.alongX(), u.origin()));
        Optional<Given> width = Optional.of(size("width of unbonded skin", u.alongGirth(), u.origin()));
        if (new Guard(measurements).size(length.get()).size(width.get()).clear())
            find(u.spot(), u.origin()).ifPresent(found -> add(survey, FairMeasures.Fault.UNBONDED, found,
                    new FairMeasures.Size(size("depth", 0, u.origin()), length, width), u.mended(),
                    u.mended().isPresent() ? new FairMeasures.Done() : new FairMeasures.LaidAnew(), u.origin()));
    }

    /** A gauge tells a depth at one place, not how far it reaches; what is within the crown limit is left. */
    private void gauge(Survey survey, Reading.Gauge g) {
        FairMeasures.Remedy remedy = g.off() >= 0 ? new FairMeasures.BoardedDown() : byDepth(-g.off());
        Place from = Place.BOTTOM;
        found("at " + Math.round(g.x() * 1000) + " mm", g.x(), shape.plug().startX(), shape.plug().endX(), g.hand(), g.girth(), from, g.origin())
                .filter(found -> Math.abs(g.off()) > limit()).ifPresent(found -> add(survey, FairMeasures.Fault.GAUGE, found,
                        new FairMeasures.Size(size("off the gauge", Math.abs(g.off()), g.origin()), Optional.empty(), Optional.empty()),
                        Optional.empty(), remedy, g.origin()));
    }

    private void add(Survey survey, FairMeasures.Fault fault, Found found, FairMeasures.Size size, Optional<Survey.Mended> mended,
            FairMeasures.Remedy remedy, Origin origin) {
        places.add(new FairMeasures.Place(places.size() + 1, fault, found.where(), found.x(), found.hand(), found.share(), size,
                crossed(found.x(), size.along().map(Given::likely).orElse(0.0)), mended, remedy, survey.day(), origin));
    }

    private FairMeasures.Remedy byDepth(double depth) {
        return switch (Hollow.remedy(depth, filler.ply(), (int) filler.extraPlies().likely(), filler.layer().likely(), filler.total().likely())) {
            case Hollow.Plies(int count) -> new FairMeasures.Plies(count);
            case Hollow.Filler(int layers) -> new FairMeasures.Filler(layers);
            case Hollow.NewFoam() -> new FairMeasures.NewFoam();
        };
    }

    private double limit() {
        return ShapeStage.carve(spec).crownLimit().likely();
    }

    private List<String> crossed(double x, double along) {
        double thickness = ShapeStage.thickness(spec);
        return shape.borders().stream().filter(border -> border.plated() && x - along / 2 < border.aftFace(thickness) && x + along / 2 > border.forwardFace(thickness))
                .map(Border::name).toList();
    }

    private Optional<Found> find(Survey.Spot spot, Origin origin) {
        return BayRules.stretch(spec.body(), spot.span(), measurements).flatMap(stretch -> found("in bay " + spot.span().from() + " to " + spot.span().to(),
                stretch[0] * shape.scale() + spot.along(), stretch[0] * shape.scale(), stretch[1] * shape.scale(), spot.hand(), spot.girth(), spot.from(), origin));
    }

    private Optional<Found> found(String where, double x, double fromX, double toX, Survey.Hand hand, double girth, Place from, Origin origin) {
        if (!(x >= fromX && x <= toX)) {
            outside(where, "a place " + where + " does not lie between its ends, so it is not reckoned with", x, x < fromX ? fromX : toX, origin);
            return Optional.empty();
        }
        boolean port = hand == Survey.Hand.PORT;
        Slice slice = shape.plug().at(x, x >= shape.plug().endX() ? Side.FORWARD : Side.AFT);
        double half = slice.girth() / 2;
        Optional<Double> start = slice.share(Places.of(from), port);
        double share = start.orElse(Double.NaN) + girth / half;
        if (!(share >= 0 && share <= 1)) {
            outside(where, "a place " + where + " lies past the girth of the plug, so it is not reckoned with", girth,
                    (1 - start.orElse(0.0)) * half, origin);
            return Optional.empty();
        }
        return Optional.of(new Found(where, x, hand, share));
    }

    private void outside(String what, String message, double figure, double limit, Origin origin) {
        PlanFault fault = PlanFault.of(PlanFault.Kind.SURVEY_OUTSIDE, origin, what, message, "measure again, and from the right station or line");
        measurements.report(Double.isFinite(figure) ? fault.at(figure, LENGTH).against(limit, LENGTH) : fault);
    }

    private static Given size(String name, double value, Origin origin) {
        return Given.of(name, LENGTH, value, origin);
    }
}
