package mouldwright.plan.stage;

import static mouldwright.units.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Station;
import mouldwright.plan.spec.Survey;
import mouldwright.process.PlateSetting;

/** Finds where a plate that leans or is set off its height carries the surface furthest out or in: e = d . n over the moulded
 *  face of its station, d = (lean z / H, 0, high). Heights count from the base, or from the lowest place of a body that
 *  reaches below it. */
final class PlateErrors {

    /** Places looked at on each stretch; between them the error changes by less than a thousandth of itself. */
    private static final int PLACES = 200;

    private final Spec spec;
    private final ShapeMeasures shape;

    PlateErrors(Spec spec, ShapeMeasures shape) {
        this.spec = spec;
        this.shape = shape;
    }

    /** The last reading of each station, in the order of the text. */
    List<FairMeasures.PlateError> find() {
        Map<String, Survey.Reading.Setting> last = new LinkedHashMap<>();
        spec.surveys().stream().sorted((a, b) -> a.day().compareTo(b.day())).forEach(survey -> survey.readings().forEach(reading -> {
            if (reading instanceof Survey.Reading.Setting setting)
                last.put(setting.station(), setting);
        }));
        List<FairMeasures.PlateError> errors = new ArrayList<>();
        last.values().forEach(setting -> worst(setting).ifPresent(errors::add));
        return errors;
    }

    private Optional<FairMeasures.PlateError> worst(Survey.Reading.Setting setting) {
        Optional<Station> station = spec.body().stations().stream().filter(s -> s.name().equals(setting.station())).findFirst();
        if (station.isEmpty())
            return Optional.empty();
        double x = station.get().x() * shape.scale();
        Slice slice = shape.plug().at(x, x >= shape.plug().endX() ? Side.FORWARD : Side.AFT);
        double low = 0;
        double top = Double.NEGATIVE_INFINITY;
        for (SurfacePoint point : points(slice)) {
            low = Math.min(low, point.z());
            top = Math.max(top, point.z());
        }
        return slice.isDegenerate() || !(top > low) ? Optional.empty() : Optional.of(worst(setting, slice, low, top - low));
    }

    private FairMeasures.PlateError worst(Survey.Reading.Setting setting, Slice slice, double low, double height) {
        double worst = 0;
        double aft = 0;
        double up = 0;
        double share = 0;
        for (int stretch = 0; stretch < slice.stretches(); stretch++)
            for (int k = 0; k <= PLACES; k++) {
                double u = (double) k / PLACES;
                SurfacePoint point = slice.point(stretch, u);
                if (slice.isBare(slice.place(stretch, u), shape.bare()) || !Double.isFinite(point.nx() + point.nz()))
                    continue;
                double error = PlateSetting.surfaceError(setting.leans(), point.z() - low, height, setting.high(), point.nx(), point.nz());
                if (Math.abs(error) > Math.abs(worst)) {
                    worst = error;
                    aft = (point.z() - low) / height * point.nx();
                    up = point.nz();
                    share = slice.place(stretch, u).share();
                }
            }
        return new FairMeasures.PlateError(setting.station(), Given.of("lean of " + setting.station(), LENGTH, setting.leans(), setting.origin()),
                Given.of("height off of " + setting.station(), LENGTH, setting.high(), setting.origin()), aft, up, share, worst, setting.origin());
    }

    private static List<SurfacePoint> points(Slice slice) {
        List<SurfacePoint> points = new ArrayList<>();
        for (int stretch = 0; stretch < slice.stretches(); stretch++)
            for (int k = 0; k <= PLACES; k++)
                points.add(slice.point(stretch, (double) k / PLACES));
        return points;
    }
}
