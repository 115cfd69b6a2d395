package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.LoftResult;
import mouldwright.geometry.loft.LoftStation;
import mouldwright.geometry.section.LinePlace;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionForm;
import mouldwright.geometry.section.SectionKind;
import mouldwright.geometry.section.SectionResult;
import mouldwright.geometry.section.SectionRules;
import mouldwright.geometry.section.SectionShape;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Station;
import mouldwright.units.Dimension;

/** Makes the sections a spec states and lofts the body through them. What cannot be made is reported. */
final class BodyMaker {

    /** How far the curve may swing past its points before it is reported, m: more than surfacer would hide. */
    private static final double OVERSHOOT = 0.005;

    /** Stations nearer than this stand at one place, m. */
    private static final double CLOSEST = 1e-6;

    /** Smallest girth of a section with area, m. */
    private static final double SMALLEST = 1e-3;

    private final Body body;
    private final Measurements measurements;
    private final Map<String, Station> byName = new HashMap<>();
    /** Stations that rest on a circle that was told. */
    private final Set<String> circled = new HashSet<>();
    private final BodyFaults faults;

    BodyMaker(Body body, Measurements measurements) {
        this.body = body;
        this.measurements = measurements;
        this.faults = new BodyFaults(measurements);
    }

    /** The body; empty if it cannot be made, with the reasons reported. */
    Optional<Loft> loft() {
        boolean sound = nameStations();
        List<Station> shaping = body.stations().stream().filter(Station::shapes).toList();
        List<LoftStation> stations = new ArrayList<>();
        for (Station station : shaping) {
            Optional<Section> section = section(station);
            sound &= section.isPresent();
            section.ifPresent(s -> stations.add(new LoftStation(station.x(), s, station.crease())));
        }
        if (!sound)
            return Optional.empty();
        LoftResult result = Loft.through(stations);
        result.faults().forEach(fault -> faults.report(fault, body, shaping));
        return result.loft().filter(this::holdsLoftedStations);
    }

    private boolean nameStations() {
        boolean sound = true;
        for (Station station : body.stations()) {
            if (byName.putIfAbsent(station.name(), station) != null) {
                sound = false;
                measurements.report(PlanFault.of(PlanFault.Kind.NAME_TWICE, station.origin(), "station " + station.name(),
                        "two stations are called " + station.name(), "rename one of them"));
            }
        }
        return sound;
    }

    private Optional<Section> section(Station station) {
        Optional<SectionForm> form = form(station, new HashSet<>());
        if (form.isEmpty() || !statedSizesMakeSense(station))
            return Optional.empty();
        SectionResult result = Section.of(form.get(), kind(), new SectionRules(OVERSHOOT));
        Optional<SectionResult> base = station.form() instanceof Form.Like like ? sectionOf(like) : Optional.empty();
        if (!(station.form() instanceof Form.Like) || base.filter(of -> of.section().isPresent()).isPresent())
            result.faults().stream().filter(fault -> fault.blocking() || base.filter(of -> !of.faults().isEmpty()).isEmpty()).forEach(fault -> faults.report(fault, station, body));
        return result.section().filter(section -> canBeBuilt(station, section));
    }

    /** The geometry judges points one by one; absurd sizes of the other forms are caught here. */
    private boolean statedSizesMakeSense(Station station) {
        boolean sound = switch (station.form()) {
            case Form.Superellipse e -> sensible(e.halfBreadth()) && sensible(e.height()) && sensible(e.exponent());
            case Form.Like like -> sensible(like.scaleY()) && sensible(like.scaleZ());
            default -> true;
        };
        if (!sound)
            measurements.report(PlanFault.of(PlanFault.Kind.SECTION, station.origin(), "station " + station.name(),
                    station.name() + ": a figure of its form makes no section", "look at its sizes and their units"));
        return sound;
    }

    private static boolean sensible(double figure) {
        return figure >= Guard.SMALLEST && figure <= Guard.LARGEST;
    }

    private boolean canBeBuilt(Station station, Section section) {
        double girth = section.girth();
        boolean sound = section.shape() != SectionShape.BODY || girth >= SMALLEST && girth <= Guard.LARGEST;
        sound &= Math.abs(station.x()) <= Guard.LARGEST;
        if (!sound)
            measurements.report(PlanFault.of(PlanFault.Kind.SECTION, station.origin(), "station " + station.name(),
                    station.name() + ": no plug is as small or as large as this", "look at the unit").at(girth, Dimension.LENGTH));
        return sound;
    }

    /** What came of the section a station is like: a fault of its own is told there and not again here. */
    private Optional<SectionResult> sectionOf(Form.Like like) {
        Station other = byName.get(like.station());
        return other == null || other.form() instanceof Form.Lofted ? Optional.empty()
                : form(other, new HashSet<>()).map(form -> Section.of(form, kind(), new SectionRules(OVERSHOOT)));
    }

    private SectionKind kind() {
        return body.sections() == Body.Sections.HALF ? SectionKind.HALF : SectionKind.FULL;
    }

    private Optional<SectionForm> form(Station station, Set<String> asked) {
        return switch (station.form()) {
            case Form.Points points -> Optional.of(marked(new SectionForm.Points(
                    points.points().stream().map(BodyMaker::point).toList()), points.lines()));
            case Form.Superellipse e -> Optional.of(marked(
                    new SectionForm.Superellipse(e.halfBreadth(), e.height(), e.exponent(), e.above()), e.lines()));
            case Form.Pointed(double y, double z) -> Optional.of(new SectionForm.Nose(y, z));
            case Form.Like like -> like(station, like, asked);
            case Form.Lofted lofted -> {
                measurements.report(PlanFault.of(PlanFault.Kind.LIKE_NOTHING, station.origin(), "station " + station.name(),
                        station.name() + " is lofted and has no section that another could be like",
                        "name a station that shapes the body"));
                yield Optional.empty();
            }
        };
    }

    private Optional<SectionForm> like(Station station, Form.Like like, Set<String> asked) {
        Station other = byName.get(like.station());
        if (other == null || !asked.add(station.name())) {
            if (other == null)
                refuse(station, PlanFault.Kind.NAME, "no station is called " + like.station());
            else if (Collections.disjoint(circled, asked)) {
                circled.addAll(asked);
                refuse(station, PlanFault.Kind.LIKE_CIRCLE, station.name() + " is like " + like.station() + ", which in the end is like it");
            }
            return Optional.empty();
        }
        return form(other, asked).map(of -> marked(new SectionForm.Scaled(of, like.scaleY(), like.scaleZ(),
                like.aboutY(), like.aboutZ(), like.raised()), like.lines()));
    }

    private void refuse(Station station, PlanFault.Kind kind, String message) {
        measurements.report(PlanFault.of(kind, station.origin(), "station " + station.name(), message, "name a station with a section of its own"));
    }

    private static OutlinePoint point(Form.Point point) {
        return new OutlinePoint(point.y(), point.z(), point.knuckle(), point.radius().orElse(0), point.line(),
                point.bare());
    }

    private static SectionForm marked(SectionForm form, List<Form.LinePlace> lines) {
        return lines.isEmpty() ? form : new SectionForm.Marked(form, lines.stream().map(BodyMaker::line).toList());
    }

    private static LinePlace line(Form.LinePlace place) {
        return switch (place) {
            case Form.LinePlace.AtHeight at -> new LinePlace.AtHeight(at.line(), at.height());
            case Form.LinePlace.AtGirth at -> new LinePlace.AtGirth(at.line(), at.share());
        };
    }

    private boolean holdsLoftedStations(Loft loft) {
        boolean sound = true;
        double before = Double.NEGATIVE_INFINITY;
        for (Station station : body.stations()) {
            boolean outside = !(station.x() >= loft.startX() && station.x() <= loft.endX());
            if (outside || station.x() - before < CLOSEST) {
                sound = false;
                faults.misplaced(station, outside);
            }
            before = station.x();
        }
        return sound;
    }
}
