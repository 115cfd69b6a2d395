package mouldwright.plan.stage;

import static mouldwright.units.Dimension.ANGLE;
import static mouldwright.units.Dimension.AREAL_MASS;
import static mouldwright.units.Dimension.AREA_RATE;
import static mouldwright.units.Dimension.DENSITY;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
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
import mouldwright.plan.spec.Carve;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Hardener;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Material;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Sheet;
import mouldwright.plan.spec.ShopDefaults;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Station;
import mouldwright.plan.spec.Survey;
import mouldwright.plan.spec.Workshop;
import mouldwright.units.Dimension;

/** Specs for tests, written by hand: a builder whose blocks are all absent until asked for. Lengths in metres. */
final class Specs {

    static final Origin.Text LIBRARY = new Origin.Text("stock/polyester.plug", 1, 1, "library stock.polyester");

    private final List<Station> stations = new ArrayList<>();
    private final List<Band> bare = new ArrayList<>();
    private Body.End forward = Defaults.end();
    private Body.End aft = Defaults.end();
    private Given shrink = Defaults.shrink();
    private Given shop = Defaults.shopTemperature();
    private Given persons = Defaults.persons();
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
    private Given day = Defaults.day();
    private Optional<java.time.LocalDate> start = Optional.empty();
    private Optional<Given> wage = Optional.empty();
    private mouldwright.plan.spec.Airing air = ShopDefaults.air(Defaults.shopTemperature());
    private List<mouldwright.plan.spec.Consumable> consumables = List.of();

    static Origin line(int line, String text) {
        return new Origin.Text("test.plug", line, 5, text);
    }

    static Given given(String name, Dimension dimension, double value) {
        return Given.of(name, dimension, value, line(9, name));
    }

    static Given given(String name, Dimension dimension, double low, double likely, double high) {
        return new Given(name, dimension, low, likely, high, line(9, name));
    }

    static Given stock(String material, String name, Dimension dimension, double value) {
        return Given.of(name, dimension, value, new Origin.Library("stock.polyester", material, LIBRARY));
    }

    Specs station(String name, double x, Form form) {
        return station(name, x, form, true);
    }

    Specs station(String name, double x, Form form, boolean plated) {
        stations.add(new Station(name, x, form, false, plated, line(stations.size() + 10, "station " + name)));
        return this;
    }

    Specs full() {
        sections = Body.Sections.FULL;
        return this;
    }

    Specs mouldedEnds() {
        forward = new Body.End(true, line(5, "end forward moulded"));
        aft = new Body.End(true, line(6, "end aft moulded"));
        return this;
    }

    Specs bare(double from, double to) {
        bare.add(new Band(new Place.AtShare(from), new Place.AtShare(to), line(7, "bare")));
        return this;
    }

    Specs shrink(double share) {
        shrink = given("shrink", RATIO, share);
        return this;
    }

    Specs shrink(double low, double likely, double high) {
        shrink = given("shrink", RATIO, low, likely, high);
        return this;
    }

    Specs shop(double temperature) {
        shop = given("shop temperature", TEMPERATURE, temperature);
        return this;
    }

    Specs persons(int count) {
        persons = given("crew", RATIO, count);
        return this;
    }

    Specs day(double seconds) {
        day = given("working day", TIME, seconds);
        return this;
    }

    Specs start(java.time.LocalDate date) {
        start = Optional.of(date);
        return this;
    }

    Specs wage(double perHour) {
        wage = Optional.of(given("wage per hour", RATIO, perHour));
        return this;
    }

    /** @param ppm of styrene */
    Specs air(double ppm, double mixing, double temperature) {
        air = new mouldwright.plan.spec.Airing(given("styrene limit in the air", RATIO, ppm * 1e-6), given("mixing factor of the air", RATIO, mixing),
                given("temperature of the air", TEMPERATURE, temperature));
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
        carve = Optional.of(new Carve(Defaults.board(), false, given("crown limit", LENGTH, crownLimit), Optional.empty(), line(40, "carve")));
        return this;
    }

    Specs carve(Carve stated) {
        carve = Optional.of(stated);
        return this;
    }

    Specs survey(Survey.Reading... readings) {
        surveys.add(new Survey(LocalDate.of(2027, 3, 9).plusDays(surveys.size()), List.of(readings), line(60, "survey Test on 2027-03-09 {")));
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
        trim = Optional.of(given("trim", LENGTH, distance));
        return this;
    }

    Specs runOut(double length) {
        runOut = Optional.of(given("run-out", LENGTH, length));
        return this;
    }

    Spec build() {
        return new Spec("Test", Optional.empty(),
                new Workshop(shop, persons, wage, day, start, rates, "EUR", ShopDefaults.week(), air, consumables),
                new Body(sections, List.of(), bare, forward, aft, runOut, trim, shrink, stations),
                part, frame, fill, carve, skin, finish, mould, List.of(), surveys, line(1, "plug Test {"));
    }

    // sections

    /** A rectangle standing on the base, its bottom and top on the centreline. */
    static Form rectangle(double halfBreadth, double height) {
        return new Form.Points(List.of(Form.Point.smooth(0, 0, line(20, "0 0")),
                Form.Point.knuckle(halfBreadth, 0, line(21, "corner")), Form.Point.knuckle(halfBreadth, height, line(22, "corner")),
                Form.Point.smooth(0, height, line(23, "top"))), List.of());
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

    // blocks

    static Frame frame(double thickness) {
        return frame(thickness, Frame.Edges.SQUARE, Defaults.rim());
    }

    static Frame frame(double thickness, Frame.Edges edges, Given rim) {
        Sheet sheet = new Sheet("BirchPly12", stock("BirchPly12", "sheet width", LENGTH, 1.220),
                stock("BirchPly12", "sheet length", LENGTH, 2.440), stock("BirchPly12", "sheet thickness", LENGTH, 0.012),
                stock("BirchPly12", "sheet density", DENSITY, 695), Optional.empty(), Optional.empty(), Sheet.Grain.ANY, Material.Stock.plain(LIBRARY));
        return new Frame(sheet, given("sheet thickness", LENGTH, thickness), Defaults.clearance(), edges, rim, List.of(),
                Defaults.tolerance(), line(30, "frame"));
    }

    static Foam foam(double expansion, double density) {
        return foam(Optional.of(given("expansion", RATIO, expansion)), density, Optional.empty(), Optional.empty());
    }

    static Foam foam(Optional<Given> expansion, double density, Optional<Given> partA, Optional<Given> partB) {
        return new Foam("Pour36", expansion, given("foam density", DENSITY, density),
                Optional.of(new Foam.Ratio(100, 100, true, LIBRARY)), partA, partB, Optional.of(given("cream time", TIME, 36)),
                Optional.of(given("rise time", TIME, 150)), Optional.of(given("firm time", TIME, 1800)), Optional.empty(),
                Optional.of(given("lift", LENGTH, 0.200)), Optional.of(given("foam pot", MASS, 1)), Optional.empty(),
                Optional.empty(), List.of(new Foam.YieldRow(15, 0.80, LIBRARY), new Foam.YieldRow(20, 0.90, LIBRARY),
                        new Foam.YieldRow(25, 0.95, LIBRARY)), Material.Stock.plain(LIBRARY));
    }

    static Fill solid(Foam foam, double overfill) {
        return new Fill(foam, new Fill.Core.Solid(line(34, "solid")), given("overfill", LENGTH, overfill), List.of(), line(34, "fill"));
    }

    static Fill shell(Foam foam, double thickness, double overfill, Fill.BayRule... rules) {
        return new Fill(foam, new Fill.Core.Shell(given("shell", LENGTH, thickness)), given("overfill", LENGTH, overfill),
                List.of(rules), line(34, "fill"));
    }

    static Resin resin() {
        return new Resin("Laminating", stock("Laminating", "resin density", DENSITY, 1130), Defaults.curedResin(), Optional.empty(),
                false, Optional.of(new Hardener("Mekp", stock("Mekp", "catalyst density", DENSITY, 1160), Material.Stock.plain(LIBRARY))),
                Optional.of(stock("Laminating", "least catalyst", RATIO, 0.01)), Optional.of(stock("Laminating", "most catalyst", RATIO, 0.025)),
                List.of(gel(15, 0.01, 55), gel(15, 0.02, 30), gel(20, 0.01, 35), gel(20, 0.02, 18), gel(25, 0.01, 24), gel(25, 0.02, 12)),
                Optional.of(stock("Laminating", "resin pot", MASS, 2)), Optional.empty(), Optional.empty(), Material.Stock.plain(LIBRARY));
    }

    private static Resin.GelRow gel(double temperature, double catalyst, double minutes) {
        return new Resin.GelRow(temperature, catalyst, minutes * 60, LIBRARY);
    }

    static Mat mat(String name, double areal, double glass) {
        return new Mat(name, stock(name, "areal mass of " + name, AREAL_MASS, areal), stock(name, "glass share of " + name, RATIO, glass),
                Defaults.glassDensity(), Optional.of(stock(name, "roll width of " + name, LENGTH, 1.25)), Optional.empty(),
                Optional.of(stock(name, "lay rate of " + name, AREA_RATE, 4 / 3600.0)), Material.Stock.plain(LIBRARY));
    }

    static Mat csm450() {
        return mat("Csm450", 0.450, 1 / 3.5);
    }

    static Schedule schedule(Mat... mats) {
        List<Schedule.Layer> layers = new ArrayList<>();
        for (Mat mat : mats)
            layers.add(new Schedule.Layer.Ply(mat, LIBRARY));
        return new Schedule("ProtectiveSkin", resin(), layers, LIBRARY);
    }

    static Skin skin(Schedule schedule, Skin.Rule... rules) {
        return new Skin(schedule, given("lap", LENGTH, 0.050), given("gel time wanted", TIME, 25 * 60), Defaults.onFoam(),
                List.of(rules), line(36, "skin"));
    }

    static Skin.Rule add(String from, String to, Band band, Mat mat, int count) {
        return new Skin.Rule.AddPlies(new BaySpan(from, to, line(37, "bay")), band, mat, count);
    }

    static Skin.Rule require(String from, String to, Band band, int plies) {
        return new Skin.Rule.Require(new BaySpan(from, to, line(38, "bay")), band, plies);
    }

    static Band whole() {
        return Band.whole(line(37, "bay"));
    }

    static Band girth(double from, double to) {
        return new Band(new Place.AtShare(from), new Place.AtShare(to), line(37, "girth"));
    }

    static Finish finish(int coats, double dry) {
        Coating surfacer = new Coating("Surfacer", Optional.of(given("density", DENSITY, 1300)), Optional.of(given("wet", LENGTH, 2e-4)),
                Optional.of(given("dry film", LENGTH, dry)), Optional.of(given("transfer", RATIO, 0.7)), Optional.empty(), Optional.empty(),
                Optional.empty(), Material.Stock.plain(LIBRARY));
        return new Finish(List.of(new Finish.Coats(coats, surfacer, line(39, "coats"))), List.of(80, 120), Defaults.sandedShare(), line(39, "finish"));
    }

    /** What spreads by weight, as wax does, or by volume, as film does. */
    static Coating spread(String name, Dimension dimension, double coverage, double recoat) {
        return new Coating(name, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(given("coverage of " + name, dimension, coverage)), Optional.empty(),
                Optional.of(given("recoat of " + name, TIME, recoat)), Material.Stock.plain(LIBRARY));
    }

    static Coating gelCoat(double wet, double transfer) {
        return new Coating("ToolingGel", Optional.of(given("density", DENSITY, 1200)), Optional.of(given("wet film", LENGTH, wet)),
                Optional.empty(), Optional.of(given("transfer", RATIO, transfer)), Optional.empty(), Optional.empty(),
                Optional.empty(), Material.Stock.plain(LIBRARY));
    }

    static Finish.Coats coats(int count, Coating coating) {
        return new Finish.Coats(count, coating, line(41, "coats"));
    }

    static Mould mould(Schedule schedule, Mould.Part... parts) {
        return new Mould(schedule, given("draft", ANGLE, Math.toRadians(2)), given("flange", LENGTH, 0.075), List.of(parts),
                List.of(coats(5, spread("Wax", Dimension.COVERAGE_MASS, 80, 3600)), coats(1, spread("Film", Dimension.COVERAGE_VOLUME, 12000, 1800))),
                Defaults.hold(), line(42, "mould"));
    }

    static Mould.Part half(String name, Mould.Pull pull) {
        return new Mould.Part(Optional.of(name), new Mould.Reach.PullSide(), pull, line(43, "half " + name));
    }

    static Mould.Part half(String name, Mould.Reach reach, Mould.Pull pull) {
        return new Mould.Part(Optional.of(name), reach, pull, line(43, "half " + name));
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
        Frame plain = frame(0.0117, Frame.Edges.SQUARE, Defaults.rim());
        Frame frame = new Frame(plain.sheet(), plain.thickness(), plain.clearance(), plain.edges(), plain.rim(),
                List.of(new Frame.Backbone(given("backbone width", LENGTH, 0.06), given("backbone depth", LENGTH, 0.09),
                        given("backbone height", LENGTH, 0.2), line(31, "backbone"))), plain.tolerance(), plain.origin());
        Foam foam = foam(Optional.of(given("expansion", RATIO, 28, 32, 33)), 36, Optional.of(given("density of A", DENSITY, 1120)),
                Optional.of(given("density of B", DENSITY, 1220)));
        return specs.bare(0, 0.2).shrink(0.003).persons(2).mouldedEnds().frame(frame)
                .fill(shell(foam, 0.11, 0.015, new Fill.BayRule(new BaySpan("S1", "S2", line(35, "bay S1 to S2 solid")),
                        Optional.of(new Fill.Core.Solid(line(35, "solid"))), Optional.of(Fill.Attitude.ON_SIDE))))
                .carve(0.0015)
                .skin(skin(schedule(csm450()), add("S2", "S4", whole(), csm450(), 1), require("S2", "S4", whole(), 2),
                        add("S2", "S5", girth(0.2, 0.35), csm450(), 2)))
                .finish(finish(3, 150e-6)).part(schedule(csm450(), csm450()))
                .mould(mould(schedule(csm450(), csm450(), csm450(), csm450(), csm450()), half("Port", Mould.Pull.PORT), half("Starboard", Mould.Pull.STARBOARD)))
                .build();
    }
}
