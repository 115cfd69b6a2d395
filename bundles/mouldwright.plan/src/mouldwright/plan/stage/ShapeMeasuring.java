package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.crown.Crown;
import mouldwright.geometry.crown.Crowns;
import mouldwright.geometry.crown.Subdivision;
import mouldwright.geometry.frame.Plates;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.measure.Measures;
import mouldwright.geometry.offset.BuildUp;
import mouldwright.geometry.plane.Outline;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Carve;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Station;
import mouldwright.process.Cure;
import mouldwright.units.Dimension;

/** Measures the shape, once. */
final class ShapeMeasuring {

    /** How far a chord of an outline that is only measured for its size may leave the curve, m. */
    private static final double CHORD = 1e-4;

    /** More skin and surfacer than any plug carries, m. */
    private static final double THICKEST = 1;

    private final Spec spec;
    private final Measurements measurements;
    private final BooleanSupplier cancelled;

    ShapeMeasuring(Spec spec, Measurements measurements, BooleanSupplier cancelled) {
        this.spec = spec;
        this.measurements = measurements;
        this.cancelled = cancelled;
    }

    /** The measures; empty where there is no body, with the reasons reported. */
    Optional<ShapeMeasures> measure() {
        if (!figuresMakeSense())
            return Optional.empty();
        return new BodyMaker(spec.body(), measurements).loft().map(this::measure);
    }

    private boolean figuresMakeSense() {
        Guard guard = new Guard(measurements).below(spec.body().shrink(), 1);
        Carve carve = ShapeStage.carve(spec);
        guard.size(carve.board()).size(carve.crownLimit());
        spec.frame().ifPresent(frame -> guard.size(frame.thickness()));
        spec.skin().ifPresent(skin -> SkinStage.guard(skin, guard));
        spec.finish().ifPresent(finish -> {
            guard.below(finish.sandedShare(), Math.nextUp(1.0));
            finish.coats().forEach(coats -> guard.notNegative(coats.coating().dry()));
        });
        return guard.clear() && buildUpMakesSense();
    }

    private boolean buildUpMakesSense() {
        double thickness = BuildUps.general(spec);
        if (thickness <= THICKEST)
            return true;
        measurements.report(PlanFault.of(PlanFault.Kind.FIGURE, spec.skin().map(Skin::origin).orElse(spec.origin()), "build-up",
                "no skin and surfacer are as thick as this", "look at the units of mats and films")
                .at(thickness, Dimension.LENGTH).against(THICKEST, Dimension.LENGTH));
        return false;
    }

    private ShapeMeasures measure(Loft part) {
        Bare bare = Places.bare(spec.body().bare());
        double scale = Cure.plugScale(spec.body().shrink().likely());
        Loft plug = scale == 1 ? part : part.scaled(scale);
        Map<String, Double> lines = new HashMap<>();
        spec.body().stations().forEach(station -> lines.put(station.name(), station.x()));
        BuildUp buildUp = BuildUps.of(spec, scale, lines, bare);
        double endBuildUp = BuildUps.general(spec);
        List<Border> borders = borders(plug, scale, endBuildUp);
        List<Bay> bays = new ArrayList<>();
        for (int i = 1; i < borders.size(); i++)
            bays.add(new Bay(borders.get(i - 1), borders.get(i)));
        Measures ofPart = Measures.of(part, bare, cancelled);
        Measures ofPlug = scale == 1 ? ofPart : Measures.of(plug, bare, cancelled);
        return new ShapeMeasures(part, plug, scale, bare, buildUp, endBuildUp, borders, bays, ofPlug, ofPart.volume(),
                ofPart.area(), stations(part, bare), mouldedEnds(part, scale), crowns(plug, bare, borders, bays),
                volumes(ofPart, bays));
    }

    /** The ends of the body always end a bay, plate or not; between them every plate does. */
    private List<Border> borders(Loft plug, double scale, double endBuildUp) {
        List<Station> stations = spec.body().stations();
        List<Station> ending = new ArrayList<>();
        for (int i = 0; i < stations.size(); i++)
            if (i == 0 || i == stations.size() - 1 || stations.get(i).plated())
                ending.add(stations.get(i));
        List<Side> sides = Plates.sides(plug, ending.stream().map(station -> station.x() * scale).toList());
        List<Border> borders = new ArrayList<>();
        for (int i = 0; i < ending.size(); i++) {
            Station station = ending.get(i);
            double x = station.x() * scale;
            boolean plated = station.plated() && !plug.at(x).isDegenerate();
            boolean first = plated && i == 0 && spec.body().forward().moulded();
            boolean last = plated && i == ending.size() - 1 && spec.body().aft().moulded();
            x += first ? endBuildUp : last ? -endBuildUp : 0;
            borders.add(new Border(station, x, plated, sides.get(i), first || last));
        }
        return borders;
    }

    private List<ShapeMeasures.AtStation> stations(Loft part, Bare bare) {
        List<ShapeMeasures.AtStation> all = new ArrayList<>();
        for (Station station : spec.body().stations()) {
            Slice slice = part.at(station.x());
            boolean pinched = slice.isDegenerate();
            double bevel = pinched ? 0 : Plates.largestBevel(part, station.x(), inside(part, station), bare);
            all.add(new ShapeMeasures.AtStation(station, slice.area(), slice.girth(), bevel, pinched));
        }
        return all;
    }

    private static Side inside(Loft part, Station station) {
        return station.x() >= part.endX() ? Side.FORWARD : Side.AFT;
    }

    private List<ShapeMeasures.End> mouldedEnds(Loft part, double scale) {
        List<Station> stations = spec.body().stations();
        List<ShapeMeasures.End> ends = new ArrayList<>();
        if (spec.body().forward().moulded())
            end(part, scale, stations.getFirst()).ifPresent(ends::add);
        if (spec.body().aft().moulded())
            end(part, scale, stations.getLast()).ifPresent(ends::add);
        return ends;
    }

    private static Optional<ShapeMeasures.End> end(Loft part, double scale, Station station) {
        Slice slice = part.at(station.x(), inside(part, station));
        if (slice.isDegenerate())
            return Optional.empty();
        Outline outline = slice.outline(CHORD);
        return Optional.of(new ShapeMeasures.End(station, slice.area(), scale * (outline.maxY() - outline.minY()),
                scale * (outline.maxZ() - outline.minZ())));
    }

    private List<ShapeMeasures.BayCrown> crowns(Loft plug, Bare bare, List<Border> borders, List<Bay> bays) {
        Carve carve = ShapeStage.carve(spec);
        double limit = carve.crownLimit().likely();
        List<Double> lines = borders.stream().map(Border::plugX).toList();
        List<ShapeMeasures.BayCrown> crowns = new ArrayList<>();
        for (Bay bay : bays) {
            Crown crown = carve.flexible()
                    ? Crowns.flexible(plug, lines, bay.fore().plugX(), bay.aft().plugX(), bare, cancelled)
                    : Crowns.stiff(plug, bay.fore().plugX(), bay.aft().plugX(), bare, cancelled);
            Subdivision division = crown.height() <= limit
                    ? new Subdivision(1, List.of(), crown.height(), true)
                    : Crowns.divide(plug, bay.fore().plugX(), bay.aft().plugX(), limit, bare, cancelled);
            crowns.add(new ShapeMeasures.BayCrown(crown, division));
        }
        return crowns;
    }

    private static List<Measured> volumes(Measures ofPart, List<Bay> bays) {
        return bays.stream()
                .map(bay -> ofPart.volume(bay.fore().station().x(), bay.aft().station().x()).volume()).toList();
    }
}
