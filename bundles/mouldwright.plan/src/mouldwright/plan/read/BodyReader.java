package mouldwright.plan.read;

import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import mouldwright.model.AbstractStation;
import mouldwright.model.Amount;
import mouldwright.model.End;
import mouldwright.model.EndName;
import mouldwright.model.Extent;
import mouldwright.model.GirthPlace;
import mouldwright.model.Placement;
import mouldwright.model.Plug;
import mouldwright.model.PlugPackage.Literals;
import mouldwright.model.Point;
import mouldwright.model.StationRow;
import mouldwright.plan.spec.Band;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Station;
import mouldwright.units.Dimension;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Reads the shape of a plug. */
final class BodyReader {

    private final FigureReader figures;
    private final SectionReader sections;

    BodyReader(FigureReader figures, SectionReader sections) {
        this.figures = figures;
        this.sections = sections;
    }

    Body body(Plug m) {
        List<Station> stations = new ArrayList<>();
        m.getStations().forEach(station -> add(station, stations));
        List<Band> bare = new ArrayList<>();
        m.getBares().forEach(b -> band(b.getFrom(), b.getTo(), b).ifPresent(bare::add));
        if (!m.isSetSections())
            figures.silent(Defaults.sections());
        return new Body(m.getSections() == Extent.FULL ? Body.Sections.FULL : Body.Sections.HALF,
                m.getLines().stream().filter(line -> line.getName() != null)
                        .map(line -> new Body.Line(line.getName(), Optional.ofNullable(line.getLabel()), figures.origin(line))).toList(),
                bare, end(m, EndName.FORWARD), end(m, EndName.AFT),
                figures.given("run out", LENGTH, m.getRunOut()), figures.given("trim", LENGTH, m.getTrim()),
                figures.given("shrink", RATIO, m.getShrink()).orElseGet(Defaults::shrink), stations);
    }

    private Body.End end(Plug m, EndName which) {
        for (End end : m.getEnds())
            if (end.getWhich() == which)
                return new Body.End(end.isMoulded(), figures.origin(end));
        return Defaults.end();
    }

    private void add(AbstractStation m, List<Station> stations) {
        switch (m) {
            case mouldwright.model.Station station -> station(station).ifPresent(stations::add);
            case StationRow row -> row(row, stations);
            case null, default -> { } // the parser has said already that something is wrong here
        }
    }

    private Optional<Station> station(mouldwright.model.Station m) {
        if (m.getName() == null)
            return Optional.empty();
        double x = figures.length(m.getAt(), m, Literals.STATION__AT);
        return form(m).map(form -> new Station(m.getName(), x, form, m.isCrease(), !m.isUnplated(), figures.origin(m)));
    }

    /** Stations of a row are taken from the loft; the language has named them. */
    private void row(StationRow m, List<Station> stations) {
        if (m.getStations().isEmpty()) {
            figures.report(ReadProblem.Kind.MISSING, m, Literals.STATION_ROW__LAST,
                    m.getFirst() + " to " + m.getLast() + " is no row of names: the same word with a rising number is");
            return;
        }
        double from = figures.length(m.getFrom(), m, Literals.STATION_ROW__FROM);
        double every = figures.length(m.getEvery(), m, Literals.STATION_ROW__EVERY);
        for (int i = 0; i < m.getStations().size(); i++)
            stations.add(new Station(m.getStations().get(i).getName(), from + i * every, new Form.Lofted(), false,
                    !m.isUnplated(), figures.origin(m)));
    }

    private Optional<Form> form(mouldwright.model.Station m) {
        if (m.getForm() != null && !m.getPoints().isEmpty()) {
            figures.report(ReadProblem.Kind.CONTRADICTION, m, Literals.STATION__FORM,
                    m.getName() + " states its section twice: by a form and by points");
            return Optional.empty();
        }
        List<Form.LinePlace> lines = lines(m);
        return switch (m.getForm()) {
            case null -> m.getPoints().isEmpty() ? noSection(m) : Optional.of(new Form.Points(points(m.getPoints()), lines));
            case mouldwright.model.Superellipse e -> Optional.of(new Form.Superellipse(
                    figures.length(e.getHalfBreadth(), e, Literals.SUPERELLIPSE__HALF_BREADTH),
                    figures.length(e.getHeight(), e, Literals.SUPERELLIPSE__HEIGHT),
                    stated(RATIO, e.getExponent(), Defaults.exponent()), stated(LENGTH, e.getAbove(), Defaults.above()), lines));
            case mouldwright.model.PointForm p -> Optional.of(new Form.Pointed(
                    figures.length(p.getY(), p, Literals.POINT_FORM__Y), figures.length(p.getZ(), p, Literals.POINT_FORM__Z)));
            case mouldwright.model.Like like -> like(like, lines);
            case mouldwright.model.Lofted lofted -> Optional.of(new Form.Lofted());
            case mouldwright.model.Tabled table -> sections.points(m, table).map(points -> new Form.Points(points, lines));
            case mouldwright.model.Drawn drawing -> sections.points(m, drawing).map(points -> new Form.Points(points, lines));
            default -> noSection(m);
        };
    }

    /** A figure in SI, or its default where none is stated. */
    private double stated(Dimension dimension, Amount amount, Given otherwise) {
        return amount == null ? figures.silent(otherwise) : figures.si(dimension, amount).orElse(otherwise.likely());
    }

    private Optional<Form> noSection(mouldwright.model.Station m) {
        figures.report(ReadProblem.Kind.MISSING, m, Literals.STATION__POINTS, m.getName() + " states no section");
        return Optional.empty();
    }

    private Optional<Form> like(mouldwright.model.Like m, List<Form.LinePlace> lines) {
        if (!figures.resolved(m.getStation(), m, Literals.LIKE__STATION))
            return Optional.empty();
        if (m.getScaleY() != null && m.getAboutY() == null)
            figures.silent(Defaults.centre());
        return Optional.of(new Form.Like(m.getStation().getName(), figures.si(RATIO, m.getScaleY()).orElse(1.0),
                figures.si(RATIO, m.getScaleZ()).orElse(1.0), figures.si(LENGTH, m.getAboutY()).orElse(0.0),
                figures.si(LENGTH, m.getAboutZ()).orElse(0.0), figures.si(LENGTH, m.getRaised()).orElse(0.0), lines));
    }

    private List<Form.Point> points(List<Point> points) {
        List<Form.Point> read = new ArrayList<>();
        for (Point m : points) {
            Optional<Double> radius = figures.si(LENGTH, m.getRadius());
            Optional<String> line = m.getLine() != null && figures.resolved(m.getLine(), m, Literals.POINT__LINE)
                    ? Optional.of(m.getLine().getName()) : Optional.empty();
            read.add(new Form.Point(figures.length(m.getY(), m, Literals.POINT__Y), figures.length(m.getZ(), m, Literals.POINT__Z),
                    m.isKnuckle(), line, radius.map(OptionalDouble::of).orElse(OptionalDouble.empty()), m.isBare(),
                    figures.origin(m)));
        }
        return read;
    }

    private List<Form.LinePlace> lines(mouldwright.model.Station m) {
        List<Form.LinePlace> lines = new ArrayList<>();
        for (Placement place : m.getPlaces()) {
            if (!figures.resolved(place.getLine(), place, Literals.PLACEMENT__LINE))
                continue;
            String line = place.getLine().getName();
            if (place.getHeight() != null)
                lines.add(new Form.LinePlace.AtHeight(line, figures.length(place.getHeight(), place, Literals.PLACEMENT__HEIGHT),
                        figures.origin(place)));
            else
                lines.add(new Form.LinePlace.AtGirth(line,
                        figures.required(RATIO, place.getGirth(), place, Literals.PLACEMENT__GIRTH), figures.origin(place)));
        }
        return lines;
    }

    /** A band of the girth; empty, and reported, where a place of it cannot be understood. */
    Optional<Band> band(GirthPlace from, GirthPlace to, EObject owner) {
        Optional<Place> low = place(from);
        Optional<Place> high = place(to);
        return low.flatMap(f -> high.map(t -> new Band(f, t, figures.origin(owner))));
    }

    private Optional<Place> place(GirthPlace m) {
        if (m == null)
            return Optional.empty();
        if (m.getAt() == null)
            return figures.resolved(m.getLine(), m, Literals.GIRTH_PLACE__LINE)
                    ? Optional.of(new Place.OnLine(m.getLine().getName())) : Optional.empty();
        Optional<Double> share = figures.si(RATIO, m.getAt());
        if (share.isPresent() && !(share.get() >= 0 && share.get() <= 1)) {
            figures.report(ReadProblem.Kind.NUMBER, m, Literals.GIRTH_PLACE__AT, "a share of the girth is 0 % to 100 %");
            return Optional.empty();
        }
        return share.map(Place.AtShare::new);
    }

    /** A stretch from one station to another; empty, and reported, where a name leads nowhere. */
    Optional<BaySpan> span(mouldwright.model.Station from, mouldwright.model.Station to, EObject owner,
            EStructuralFeature fromFeature, EStructuralFeature toFeature) {
        boolean known = figures.resolved(from, owner, fromFeature) & figures.resolved(to, owner, toFeature);
        return known ? Optional.of(new BaySpan(from.getName(), to.getName(), figures.origin(owner))) : Optional.empty();
    }
}
