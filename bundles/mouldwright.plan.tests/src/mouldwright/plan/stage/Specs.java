package mouldwright.plan.stage;

import static mouldwright.units.Dimension.DENSITY;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TEMPERATURE;
import static mouldwright.units.Dimension.TIME;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.spec.Band;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.BodyDefaults;
import mouldwright.plan.spec.Carve;
import mouldwright.plan.spec.FairDefaults;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.FrameDefaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.ShopDefaults;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Station;
import mouldwright.plan.spec.Survey;
import mouldwright.plan.spec.Workshop;

/** Specs for tests, written by hand: a builder whose blocks are all absent until asked for. Lengths in metres. */
final class Specs {

    private final List<Station> stations = new ArrayList<>();
    private final List<Band> bare = new ArrayList<>();
    private Body.End forward = BodyDefaults.end();
    private Body.End aft = BodyDefaults.end();
    private Given shrink = BodyDefaults.shrink();
    private Given shop = ShopDefaults.shopTemperature();
    private Given persons = ShopDefaults.persons();
    private Optional<Frame> frame = Optional.empty();
    private Optional<Fill> fill = Optional.empty();
    private Optional<Carve> carve = Optional.empty();
    private Optional<Skin> skin = Optional.empty();
    private Optional<Finish> finish = Optional.empty();
    private Optional<Mould> mould = Optional.empty();
    private Optional<Schedule> part = Optional.empty();
    private Optional<Rates> rates = Optional.empty();
    private Optional<Given> runOut = Optional.empty();
    private Optional<Given> trim = Optional.empty();
    private final List<Survey> surveys = new ArrayList<>();
    private Body.Sections sections = Body.Sections.HALF;
    private Given day = ShopDefaults.day();
    private Optional<java.time.LocalDate> start = Optional.empty();
    private Optional<Given> wage = Optional.empty();
    private mouldwright.plan.spec.Airing air = ShopDefaults.air(ShopDefaults.shopTemperature());
    private List<mouldwright.plan.spec.Consumable> consumables = List.of();

    Specs station(String name, double x, Form form) {
        return station(name, x, form, true);
    }

    Specs station(String name, double x, Form form, boolean plated) {
        stations.add(new Station(name, x, form, false, plated, Stated.line(stations.size() + 10, "station " + name)));
        return this;
    }

    Specs full() {
        sections = Body.Sections.FULL;
        return this;
    }

    Specs mouldedEnds() {
        forward = new Body.End(true, Stated.line(5, "end forward moulded"));
        aft = new Body.End(true, Stated.line(6, "end aft moulded"));
        return this;
    }

    Specs bare(double from, double to) {
        bare.add(new Band(new Place.AtShare(from), new Place.AtShare(to), Stated.line(7, "bare")));
        return this;
    }

    Specs shrink(double share) {
        shrink = Stated.given("shrink", RATIO, share);
        return this;
    }

    Specs shrink(double low, double likely, double high) {
        shrink = Stated.given("shrink", RATIO, low, likely, high);
        return this;
    }

    Specs shop(double temperature) {
        shop = Stated.given("shop temperature", TEMPERATURE, temperature);
        return this;
    }

    Specs persons(int count) {
        persons = Stated.given("crew", RATIO, count);
        return this;
    }

    Specs day(double seconds) {
        day = Stated.given("working day", TIME, seconds);
        return this;
    }

    Specs start(java.time.LocalDate date) {
        start = Optional.of(date);
        return this;
    }

    Specs wage(double perHour) {
        wage = Optional.of(Stated.given("wage per hour", RATIO, perHour));
        return this;
    }

    /** @param ppm of styrene */
    Specs air(double ppm, double mixing, double temperature) {
        air = new mouldwright.plan.spec.Airing(Stated.given("styrene limit in the air", RATIO, ppm * 1e-6), Stated.given("mixing factor of the air", RATIO, mixing),
                Stated.given("temperature of the air", TEMPERATURE, temperature));
        return this;
    }

    Specs consumes(mouldwright.plan.spec.Consumable... used) {
        consumables = List.of(used);
        return this;
    }

    Specs frame(Frame stated) {
        frame = Optional.of(stated);
        return this;
    }

    Specs fill(Fill stated) {
        fill = Optional.of(stated);
        return this;
    }

    Specs carve(double crownLimit) {
        carve = Optional.of(new Carve(FairDefaults.board(), false, Stated.given("crown limit", LENGTH, crownLimit), Optional.empty(), Stated.line(40, "carve")));
        return this;
    }

    Specs carve(Carve stated) {
        carve = Optional.of(stated);
        return this;
    }

    Specs survey(Survey.Reading... readings) {
        surveys.add(new Survey(LocalDate.of(2027, 3, 9).plusDays(surveys.size()), List.of(readings), Stated.line(60, "survey Test on 2027-03-09 {")));
        return this;
    }

    Specs skin(Skin stated) {
        skin = Optional.of(stated);
        return this;
    }

    Specs finish(Finish stated) {
        finish = Optional.of(stated);
        return this;
    }

    Specs mould(Mould stated) {
        mould = Optional.of(stated);
        return this;
    }

    Specs part(Schedule stated) {
        part = Optional.of(stated);
        return this;
    }

    Specs rates(Rates stated) {
        rates = Optional.of(stated);
        return this;
    }

    Specs trim(double distance) {
        trim = Optional.of(Stated.given("trim", LENGTH, distance));
        return this;
    }

    Specs runOut(double length) {
        runOut = Optional.of(Stated.given("run-out", LENGTH, length));
        return this;
    }

    Spec build() {
        return new Spec("Test", Optional.empty(),
                new Workshop(shop, persons, wage, day, start, rates, "EUR", ShopDefaults.week(), air, consumables),
                new Body(sections, List.of(), bare, forward, aft, runOut, trim, shrink, stations),
                part, frame, fill, carve, skin, finish, mould, List.of(), surveys, Stated.line(1, "plug Test {"));
    }

    /** A rectangle standing on the base, its bottom and top on the centreline. */
    static Form rectangle(double halfBreadth, double height) {
        return new Form.Points(List.of(Form.Point.smooth(0, 0, Stated.line(20, "0 0")),
                Form.Point.knuckle(halfBreadth, 0, Stated.line(21, "corner")), Form.Point.knuckle(halfBreadth, height, Stated.line(22, "corner")),
                Form.Point.smooth(0, height, Stated.line(23, "top"))), List.of());
    }

    static Form circle(double radius, double centre) {
        return new Form.Superellipse(radius, 2 * radius, 2, centre - radius, List.of());
    }

    /** Two rectangles: 200 mm by 50 mm, 400 mm apart, as the smallest spec of the language has it. */
    static Specs box() {
        return new Specs().station("A", 0, rectangle(0.100, 0.050)).station("B", 0.400, Form.Like.same("A"));
    }

    /** A cylinder of 300 mm radius, four plates 400 mm apart. */
    static Specs cylinder() {
        Specs specs = new Specs();
        for (int i = 0; i < 4; i++)
            specs.station("S" + (i + 1), 0.4 * i, circle(0.3, 0.5));
        return specs;
    }

    /** A cone from 500 mm radius to 300 mm over 800 mm, plates at thirds. */
    static Specs cone() {
        Specs specs = new Specs();
        for (int i = 0; i < 4; i++)
            specs.station("S" + (i + 1), 0.8 * i / 3, circle(0.5 - 0.2 * i / 3, 0.6));
        return specs;
    }

    /** All stages, with everything that can be stated: a body like the canopy of the language's reference. */
    static Spec canopy() {
        Specs specs = new Specs().station("S1", 0, new Form.Superellipse(0.28, 0.44, 2.4, 0.06, List.of()))
                .station("S2", 0.3, new Form.Superellipse(0.3, 0.48, 2.4, 0.06, List.of()))
                .station("S2a", 0.475, new Form.Lofted())
                .station("S3", 0.65, new Form.Superellipse(0.31, 0.5, 2.4, 0.06, List.of()))
                .station("S4", 1.0, new Form.Superellipse(0.30, 0.48, 2.4, 0.07, List.of()))
                .station("S5", 1.35, new Form.Like("S2", 0.9, 0.85, 0, 0.06, 0.01, List.of()))
                .station("R1", 1.5, new Form.Lofted()).station("R2", 1.6, new Form.Lofted()).station("R3", 1.7, new Form.Lofted())
                .station("S6", 1.8, new Form.Like("S5", 0.7, 0.7, 0, 0.06, 0, List.of()));
        Frame plain = Blocks.frame(0.0117, Frame.Edges.SQUARE, FrameDefaults.rim());
        Frame frame = new Frame(plain.sheet(), plain.thickness(), plain.clearance(), plain.edges(), plain.rim(),
                List.of(new Frame.Backbone(Stated.given("backbone width", LENGTH, 0.06), Stated.given("backbone depth", LENGTH, 0.09),
                        Stated.given("backbone height", LENGTH, 0.2), Stated.line(31, "backbone"))), plain.tolerance(), plain.origin());
        Foam foam = Materials.foam(Optional.of(Stated.given("expansion", RATIO, 28, 32, 33)), 36, Optional.of(Stated.given("density of A", DENSITY, 1120)),
                Optional.of(Stated.given("density of B", DENSITY, 1220)));
        return specs.bare(0, 0.2).shrink(0.003).persons(2).mouldedEnds().frame(frame)
                .fill(Blocks.shell(foam, 0.11, 0.015, new Fill.BayRule(new BaySpan("S1", "S2", Stated.line(35, "bay S1 to S2 solid")),
                        Optional.of(new Fill.Core.Solid(Stated.line(35, "solid"))), Optional.of(Fill.Attitude.ON_SIDE))))
                .carve(0.0015)
                .skin(Blocks.skin(Materials.schedule(Materials.csm450()), Blocks.add("S2", "S4", Blocks.whole(), Materials.csm450(), 1), Blocks.require("S2", "S4", Blocks.whole(), 2),
                        Blocks.add("S2", "S5", Blocks.girth(0.2, 0.35), Materials.csm450(), 2)))
                .finish(Blocks.finish(3, 150e-6)).part(Materials.schedule(Materials.csm450(), Materials.csm450()))
                .mould(Blocks.mould(Materials.schedule(Materials.csm450(), Materials.csm450(), Materials.csm450(), Materials.csm450(), Materials.csm450()), Blocks.half("Port", Mould.Pull.PORT), Blocks.half("Starboard", Mould.Pull.STARBOARD)))
                .build();
    }
}
