package mouldwright.plan.read;

import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.TEMPERATURE;
import static mouldwright.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.model.Entry;
import mouldwright.model.GaugeReading;
import mouldwright.model.Gouge;
import mouldwright.model.Hollow;
import mouldwright.model.PlugPackage.Literals;
import mouldwright.model.PouredReading;
import mouldwright.model.Side;
import mouldwright.model.Spot;
import mouldwright.model.StationReading;
import mouldwright.model.TemperatureReading;
import mouldwright.model.TrialReading;
import mouldwright.model.Unbonded;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Survey;
import mouldwright.plan.spec.Survey.Reading;

/** Reads what was built. */
final class SurveyReader {

    private final FigureReader figures;
    private final BodyReader bodies;

    SurveyReader(FigureReader figures, BodyReader bodies) {
        this.figures = figures;
        this.bodies = bodies;
    }

    Optional<Survey> survey(mouldwright.model.Survey m) {
        if (m.getDate() == null) {
            figures.missing(m, Literals.SURVEY__DATE);
            return Optional.empty();
        }
        List<Reading> readings = new ArrayList<>();
        m.getEntries().forEach(entry -> reading(entry).ifPresent(readings::add));
        return figures.date(m.getDate(), m, Literals.SURVEY__DATE).map(day -> new Survey(day, readings, figures.origin(m)));
    }

    private Optional<Reading> reading(Entry entry) {
        return switch (entry) {
            case StationReading m -> setting(m);
            case PouredReading m -> bodies.span(m.getFrom(), m.getTo(), m, Literals.POURED_READING__FROM, Literals.POURED_READING__TO)
                    .map(span -> new Reading.Poured(span, figures.required(MASS, m.getMass(), m, Literals.POURED_READING__MASS),
                            figures.length(m.getRise(), m, Literals.POURED_READING__RISE), figures.origin(m)));
            case GaugeReading m -> Optional.of(new Reading.Gauge(figures.length(m.getAt(), m, Literals.SPOT__AT), hand(m),
                    figures.length(m.getGirth(), m, Literals.SPOT__GIRTH), figures.length(m.getOff(), m, Literals.GAUGE_READING__OFF),
                    figures.origin(m)));
            case Gouge m -> spot(m).map(spot -> new Reading.Gouge(spot, figures.length(m.getDepth(), m, Literals.GOUGE__DEPTH),
                    along(m), across(m), mended(m), figures.origin(m)));
            case Hollow m -> spot(m).map(spot -> new Reading.Hollow(spot, figures.length(m.getDepth(), m, Literals.HOLLOW__DEPTH),
                    along(m), across(m), mended(m), figures.origin(m)));
            case Unbonded m -> spot(m).map(spot -> new Reading.Unbonded(spot, along(m), across(m), mended(m), figures.origin(m)));
            case TemperatureReading m -> figures.si(TEMPERATURE, m.getValue())
                    .map(value -> new Reading.Temperature(value, figures.origin(m)));
            case TrialReading m -> Optional.of(new Reading.Trial(figures.required(TIME, m.getCream(), m, Literals.TRIAL_READING__CREAM),
                    figures.si(TIME, m.getRise()), figures.origin(m)));
            case null, default -> Optional.empty();
        };
    }

    private Optional<Reading> setting(StationReading m) {
        if (!figures.resolved(m.getStation(), m, Literals.STATION_READING__STATION))
            return Optional.empty();
        double high = figures.si(LENGTH, m.getHigh()).orElse(0.0) - figures.si(LENGTH, m.getLow()).orElse(0.0);
        return Optional.of(new Reading.Setting(m.getStation().getName(), figures.si(LENGTH, m.getLean()).orElse(0.0), high,
                figures.origin(m)));
    }

    private Optional<Survey.Spot> spot(Spot m) {
        Optional<BaySpan> span = bodies.span(m.getFrom(), m.getTo(), m, Literals.SPOT__FROM, Literals.SPOT__TO);
        Place from = m.getLine() == null || m.getLine().eIsProxy() ? Place.BOTTOM : new Place.OnLine(m.getLine().getName());
        return span.map(s -> new Survey.Spot(s, figures.length(m.getAt(), m, Literals.SPOT__AT), hand(m),
                figures.length(m.getGirth(), m, Literals.SPOT__GIRTH), from));
    }

    private static Survey.Hand hand(Spot m) {
        return m.getSide() == Side.PORT ? Survey.Hand.PORT : Survey.Hand.STARBOARD;
    }

    private double along(Spot m) {
        return figures.length(m.getAlong(), m, Literals.SPOT__ALONG);
    }

    private double across(Spot m) {
        return figures.length(m.getAcross(), m, Literals.SPOT__ACROSS);
    }

    private Optional<Survey.Mended> mended(Spot m) {
        return figures.date(m.getMended(), m, Literals.SPOT__MENDED)
                .map(day -> new Survey.Mended(day, figures.si(LENGTH, m.getNow())));
    }
}
