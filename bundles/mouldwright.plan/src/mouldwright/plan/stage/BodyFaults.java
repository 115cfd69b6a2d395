package mouldwright.plan.stage;

import java.util.List;
import mouldwright.geometry.loft.LoftFault;
import mouldwright.geometry.section.SectionFault;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Station;
import mouldwright.units.Dimension;

/** Says what is wrong with sections and loft in the words of the trade, with its place. */
final class BodyFaults {

    private final Measurements measurements;

    BodyFaults(Measurements measurements) {
        this.measurements = measurements;
    }

    void report(SectionFault fault, Station station, Body body) {
        PlanFault.Kind kind = fault.blocking() ? PlanFault.Kind.SECTION : PlanFault.Kind.SECTION_DOUBTFUL;
        measurements.report(switch (fault) {
            case SectionFault.TooFewPoints f -> section(kind, station.origin(), station,
                    "an outline needs two points at least", "add points").at(f.given(), Dimension.RATIO).against(2, Dimension.RATIO);
            case SectionFault.NotFinite f -> section(kind, place(station, f.point()), station,
                    "a coordinate is not a usable number", "correct it");
            case SectionFault.BadFigure f -> section(kind, station.origin(), station,
                    f.what() + " of " + f.value() + " makes no section", "correct it");
            case SectionFault.PointsDoubled f -> section(kind, place(station, f.second()), station,
                    "the same point twice", "drop one of them").mendedBy(ShapeMending.drop(station, f.first(), f.second()));
            case SectionFault.CrossesItself f -> section(kind, station.origin(), station,
                    "the outline crosses itself near " + where(f.y(), f.z()), "put the points in order from bottom centre");
            case SectionFault.WrongWayRound f -> section(kind, station.origin(), station,
                    "the outline runs the wrong way round", "reverse the points: from bottom centre, starboard side first").mendedBy(ShapeMending.reverse(station));
            case SectionFault.NotOnCentreline f -> section(kind, place(station, f.point()), station,
                    "a full section starts and ends at the centreline", "set its half-breadth to 0").at(f.y(), Dimension.LENGTH);
            case SectionFault.NotClosed f -> section(kind, station.origin(), station,
                    "the outline does not end where it starts", "repeat the first point at the end").at(f.gap(), Dimension.LENGTH);
            case SectionFault.NegativeHalfBreadth f -> section(kind, place(station, f.point()), station,
                    "a half section has a point on the port side", "half-breadths are 0 or more").at(f.y(), Dimension.LENGTH);
            case SectionFault.RadiusDoesNotFit f -> section(kind, place(station, f.point()), station,
                    "the corner cannot be rounded so far", "take a smaller radius")
                    .at(f.radius(), Dimension.LENGTH).against(f.largest(), Dimension.LENGTH);
            case SectionFault.Overshoot f -> section(kind, place(station, f.point()), station,
                    "the curve swings past its points near " + where(f.y(), f.z()), "mark a knuckle, or add a point")
                    .at(f.by(), Dimension.LENGTH).mendedBy(ShapeMending.corner(station, f.point(), body));
            case SectionFault.LineNotPlaced f -> section(kind, station.origin(), station,
                    "line " + f.line() + " is placed where the outline does not pass", "place it on the outline");
            case SectionFault.LineTwice f -> section(kind, station.origin(), station,
                    "line " + f.line() + " is on this section twice", "name it once");
        });
    }

    void report(LoftFault fault, Body body, List<Station> shaping) {
        Origin whole = body.stations().isEmpty() ? body.forward().origin() : body.stations().getFirst().origin();
        measurements.report(switch (fault) {
            case LoftFault.TooFewStations f -> PlanFault.of(PlanFault.Kind.LOFT, whole, "stations",
                    "two stations at least shape a body", "add a station").at(f.given(), Dimension.RATIO).against(2, Dimension.RATIO);
            case LoftFault.NotFinite f -> loft(shaping.get(f.station()), "its place is not a usable number", "correct it");
            case LoftFault.OutOfOrder f -> loft(shaping.get(f.aft()),
                    "it stands forward of " + shaping.get(f.fore()).name(), "sort the stations");
            case LoftFault.Together f -> loft(shaping.get(f.aft()),
                    "it stands where " + shaping.get(f.fore()).name() + " stands", "move or drop one of them");
            case LoftFault.KindsDiffer f -> loft(shaping.get(f.aft()), "a half section meets a full one", "state all alike");
            case LoftFault.LineMissing f -> loft(shaping.get(f.missingAt()), "line " + f.line() + " is missing here, but on "
                    + shaping.get(f.missingAt() == f.fore() ? f.aft() : f.fore()).name(), "mark the line on both")
                    .mendedBy(ShapeMending.line(shaping.get(f.missingAt()), shaping.get(f.missingAt() == f.fore() ? f.aft() : f.fore()), f.line()));
            case LoftFault.LinesCross f -> loft(shaping.get(f.aft()), "line " + f.line() + " comes in another order than at "
                    + shaping.get(f.fore()).name(), "mark the lines in one order");
            case LoftFault.KnucklesDiffer f -> loft(shaping.get(f.aft()), between(f) + ": " + f.aftCount()
                    + " knuckles here, " + f.foreCount() + " at " + shaping.get(f.fore()).name(), "mark the nearest point as a knuckle")
                    .mendedBy(f.aftCount() < f.foreCount() ? ShapeMending.knuckle(shaping.get(f.aft()), shaping.get(f.fore()), f.from(), f.to(), body)
                            : ShapeMending.knuckle(shaping.get(f.fore()), shaping.get(f.aft()), f.from(), f.to(), body));
            case LoftFault.PinchedInside f -> loft(shaping.get(f.station()),
                    "only an end of the body may be a point or a knife edge", "give it a section with area");
            case LoftFault.NoBody f -> PlanFault.of(PlanFault.Kind.LOFT, whole, "stations", "no section has an area",
                    "state a section with area");
        });
    }

    /** A station outside the body, or out of order among those that do not shape it. */
    void misplaced(Station station, boolean outside) {
        measurements.report(outside
                ? PlanFault.of(PlanFault.Kind.STATION_OUTSIDE, station.origin(), "station " + station.name(),
                        station.name() + " lies outside the body", "move it between the first and the last station")
                        .at(station.x(), Dimension.LENGTH)
                : loft(station, "it does not stand aft of the station before it", "sort the stations"));
    }

    private static PlanFault section(PlanFault.Kind kind, Origin place, Station station, String message, String remedy) {
        return PlanFault.of(kind, place, "station " + station.name(), station.name() + ": " + message, remedy);
    }

    private static PlanFault loft(Station station, String message, String remedy) {
        return PlanFault.of(PlanFault.Kind.LOFT, station.origin(), "station " + station.name(),
                station.name() + ": " + message, remedy);
    }

    private static String between(LoftFault.KnucklesDiffer f) {
        return "between " + (f.from().isEmpty() ? "the start" : f.from()) + " and " + (f.to().isEmpty() ? "the end" : f.to());
    }

    private static Origin place(Station station, int point) {
        return station.form() instanceof Form.Points p && point >= 0 && point < p.points().size()
                ? p.points().get(point).origin() : station.origin();
    }

    private static String where(double y, double z) {
        return String.format(java.util.Locale.ROOT, "%.0f mm out, %.0f mm up", y * 1000, z * 1000);
    }
}
