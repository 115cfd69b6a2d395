package mouldwright.report;

import mouldwright.check.Severity;
import static mouldwright.units.Dimension.ANGLE;
import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;
import static mouldwright.units.Dimension.VOLUME;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.Assumption;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Hazard;
import mouldwright.plan.Measurements;
import mouldwright.plan.OrderEntry;
import mouldwright.plan.PieceEntry;
import mouldwright.plan.PlateEntry;
import mouldwright.plan.PotEntry;
import mouldwright.plan.PourEntry;
import mouldwright.plan.Quantity;
import mouldwright.plan.TaskEntry;
import mouldwright.plan.draw.Draws;
import mouldwright.plan.ledger.Ground;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Measurement;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Spec;
import mouldwright.plan.spec.Workshop;
import mouldwright.units.Dimension;

/** A small plan made by hand, with a figure of every kind, so that what is printed of it stays the same while the engine learns. */
final class Plans {

    static final Path FOLDER = Path.of("/shop");
    static final Path FILE = FOLDER.resolve("hatch.plug");
    static final String REVISION = "3fa9c0d1e2b4";
    static final TextFinding WARNING = new TextFinding("MW412", Severity.WARNING,
            "crown of 3.1 mm between S1 and S2, 1.5 mm at most: a straight board would flatten it", FILE, 3, 5, 7,
            Optional.of("insert a station at 823 mm with the lofted section"));

    private Plans() { }

    /** A hatch of two stations: shape, frame, fill and skin. */
    static BuildPlan hatch() {
        Ledger ledger = new Ledger();
        shape(ledger);
        frame(ledger);
        fill(ledger);
        skin(ledger);
        rest(ledger);
        return plan("Hatch", ledger.close(), List.of(
                Assumption.of(Defaults.shopTemperature()), Assumption.of(Defaults.rim()),
                Assumption.of(new Given("extra resin on foam", Dimension.AREAL_MASS, 0.2, 0.35, 0.5,
                        new Origin.Assumed("cut foam drinks resin; common practice"))),
                Assumption.choice("forward end", "bare", new Origin.Assumed("an end face is bare unless the spec says moulded"))));
    }

    static Estimate estimate() {
        return Estimate.of(hatch(), REVISION, List.of(WARNING));
    }

    /** The same with its uncertain figures drawn. */
    static Estimate drawn() {
        return estimate().with(Draws.of(hatch().reckoning(), 1000, 1, () -> false));
    }

    static BuildPlan plan(String name, Reckoning reckoning, List<Assumption> assumed) {
        List<Quantity> quantities = reckoning.quantities().stream().map(node -> new Quantity(node.id(), node.stage(), node.label(),
                node.dimension(), reckoning.low(node), reckoning.likely(node), reckoning.high(node), node.currency())).toList();
        List<PlateEntry> plates = List.of(plate("S1", "aft", 0.58, 0.310, 0.0012), plate("S2", "forward", 0.6342, 0.288, 0));
        List<PourEntry> pours = List.of(new PourEntry("S1-S2", 1, 0.0425, 0.00151, 1.7, 0.82, 0.88, 2),
                new PourEntry("S1-S2", 2, 0.0425, 0.00151, 1.7, 0.82, 0.88, 2));
        List<PotEntry> pots = List.of(new PotEntry("skin", 1, "Csm450", 1.913, 3, new PotEntry.Pot(0.4, 0.0056, 4.83e-6), new PotEntry.Pot(0.7565, 0.0106, 9.13e-6), 0.8, 1500, 1050),
                new PotEntry("skin", 2, "Csm450", 1.3, 2, new PotEntry.Pot(0.8, 0.0112, 9.66e-6), new PotEntry.Pot(0.5, 0.007, 6.03e-6), 0.8, 1500, 1050));
        List<PieceEntry> pieces = List.of(new PieceEntry(1, "skin", 1, "Csm450", "bay S1 to S2", 1.25, 0.55, 1, 1, 0, 0),
                new PieceEntry(2, "skin", 1, "Csm450", "bay S1 to S2", 0.31, 0.55, 1, 2, 0.55, 0), new PieceEntry(3, "skin", 2, "Csm450", "end at S2", 0.634, 0.338, 1, 2, 0.55, 0.31));
        return new BuildPlan(spec(name), assumed, quantities, plates, pours, pots, pieces, tasks(), orders(), List.of(), new Measurements(), reckoning);
    }

    private static List<TaskEntry> tasks() {
        LocalDate monday = LocalDate.of(2027, 3, 1);
        return List.of(
                new TaskEntry("fill.pour.S1-S2.1", "fill", "Pour bay S1 to S2, lift 1", 600, 2, 0, 300, 1800, List.of(), true, 1, 1,
                        Optional.of(new TaskEntry.Dates(monday, monday, monday)), List.of(Hazard.ISOCYANATE, Hazard.EXOTHERM)),
                new TaskEntry("skin.lay.1", "skin", "Lay 2 plies of Csm450 over the whole moulded face of it", 30_000, 1, 2100, 32_100, 43_200,
                        List.of("fill.pour.S1-S2.1"), true, 1, 2, Optional.of(new TaskEntry.Dates(monday, monday.plusDays(1), monday.plusDays(2))),
                        List.of(Hazard.STYRENE)),
                new TaskEntry("odd", "skin", "Make a crate", 3600, 1, 2100, 5700, 0, List.of(), false, 1, 1, Optional.empty(), List.of()));
    }

    private static List<OrderEntry> orders() {
        return List.of(
                new OrderEntry("Csm450", Optional.of("Chopped strand mat"), true, MASS, 2.1, 2.0, 2.2, List.of("skin"), Optional.of(
                        new OrderEntry.Packing(28, 1, 1, 1, 25.9, 118, OptionalDouble.of(118), "EUR"))),
                new OrderEntry("Mekp", Optional.empty(), true, MASS, 0.109, 0.065, 0.181, List.of("skin"), Optional.of(
                        new OrderEntry.Packing(5, 1, 1, 1, 4.891, 60, OptionalDouble.empty(), "USD"))),
                new OrderEntry("release film", Optional.empty(), false, AREA, 4, 4, 4, List.of("fill"), Optional.empty()));
    }

    private static Spec spec(String name) {
        Origin.Text origin = line(1, "plug " + name + " \"A hatch\" {");
        Workshop shop = new Workshop(Defaults.shopTemperature(), Defaults.persons(), Optional.empty(), Defaults.day(), Optional.empty(),
                Optional.empty(), "EUR");
        Body body = new Body(Body.Sections.HALF, List.of(), List.of(), Defaults.end(), Defaults.end(), Optional.empty(), Optional.empty(),
                Defaults.shrink(), List.of());
        return new Spec(name, Optional.of("A hatch"), shop, body, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of(), origin);
    }

    private static PlateEntry plate(String station, String stands, double breadth, double height, double gap) {
        double y = breadth / 2;
        return new PlateEntry(station, stands, false, 0.0117, gap, gap, List.of(new PlanePoint(-y, 0.06), new PlanePoint(y, 0.06),
                new PlanePoint(y, 0.06 + height), new PlanePoint(-y, 0.06 + height)), List.of());
    }

    static Origin.Text line(int number, String text) {
        return new Origin.Text("hatch.plug", number, 5, text);
    }

    private static void shape(Ledger ledger) {
        ledger.turnTo("shape");
        ledger.quantity("shape.length", "Length", LENGTH).from("last station - first station",
                List.of(ledger.given(Given.of("station S1", LENGTH, 0, line(2, "    station S1 at 0 like S0"))),
                        ledger.given(Given.of("station S2", LENGTH, 0.5, line(3, "    station S2 at 500 like S1")))), v -> v[1] - v[0])
                .source("the stations as stated");
        ledger.quantity("shape.volume", "Volume", VOLUME).measured(new Measurement(0.0894, 2e-7, "Gauss quadrature").on(List.of(
                new Ground.Part("station S1", line(2, "    station S1 at 0 like S0")), new Ground.Part("station S2", line(3, "    station S2 at 500 like S1")))));
        ledger.quantity("station.S1.area", "Station S1, area", AREA).measured(new Measurement(0.1798, 0, "closed form"));
        ledger.quantity("station.S1.bevel.max", "Station S1, largest bevel", ANGLE).measured(new Measurement(0.0524, 0, "closed form"));
        ledger.quantity("station.S2.area", "Station S2, area", AREA).measured(new Measurement(0.1826, 0, "closed form"));
        ledger.quantity("bay.S1-S2.volume", "Volume, bay S1 to S2", VOLUME).measured(new Measurement(0.0894, 0, "closed form"));
        ledger.quantity("bay.S1-S2.crown", "Crown, bay S1 to S2", LENGTH).measured(new Measurement(-0.0004, 0, "closed form"));
    }

    private static void frame(Ledger ledger) {
        ledger.turnTo("frame");
        Node plate = ledger.quantity("station.S1.plate.mass", "Mass, plate S1", MASS).measured(new Measurement(1.342, 0, "closed form"));
        ledger.quantity("frame.mass", "Frame, mass", MASS).sum("plates", List.of(plate)).source("sum");
    }

    private static void fill(Ledger ledger) {
        ledger.turnTo("fill");
        Node cavity = ledger.quantity("fill.cavity", "Cavity, overfill included", VOLUME).measured(new Measurement(0.085, 1e-6, "slicing"));
        Node expansion = ledger.given(new Given("expansion", RATIO, 28, 32, 33,
                new Origin.Library("stock.foam", "Pour36", new Origin.Text("stock/foam.plug", 14, 5, "    expansion 32 from 28 to 33"))));
        Node yield = ledger.given(new Given("yield", RATIO, 0.75, 0.9, 1, new Origin.Assumed("common practice at 20 degC")));
        Node liquid = ledger.quantity("fill.liquid", "Foam, liquid", VOLUME).from("cavity / (expansion * yield)",
                List.of(cavity, expansion, yield), v -> v[0] / (v[1] * v[2])).source("expansion as the supplier states it");
        Node pot = ledger.given(Given.of("pot limit", VOLUME, 0.0008, line(9, "    pot 0.8 l at most")));
        ledger.quantity("fill.pots", "Foam, pots", RATIO).from("liquid / pot", List.of(liquid, pot), v -> v[0] / v[1]).roundedUp()
                .source("common practice");
    }

    private static void skin(Ledger ledger) {
        ledger.turnTo("skin");
        ledger.quantity("skin.gel", "Skin, gel time", TIME).measured(new Measurement(1500, 0, "the resin's gel table"));
        Node resin = ledger.given(new Given("resin", MASS, 2.9, 3.213, 3.6, line(12, "    skin Two { }")));
        ledger.quantity("skin.resin.mass", "Skin, resin", MASS).same(resin).source("as stated");
        ledger.quantity("skin.thickness", "Skin, cured thickness", LENGTH).measured(new Measurement(0.00176, 0, "rule of mixtures"));
    }

    private static void rest(Ledger ledger) {
        ledger.turnTo("plan");
        ledger.quantity("plan.labour", "Labour", TIME).same(ledger.given(new Given("labour", TIME, 90_000, 180_000, 270_000, line(4, "crew 1")))).source("test");
        ledger.quantity("plan.elapsed", "From the first morning until all is done and cured", TIME).measured(new Measurement(4.5 * 86_400, 0, "timetable"));
        ledger.turnTo("orders");
        ledger.quantity("order.Csm450.need", "Csm450, needed", MASS).measured(new Measurement(2.1, 0, "sum"));
        ledger.turnTo("cost");
        ledger.money("plan.cost", "Cost", "EUR").same(ledger.given(new Given("cost", RATIO, 1200.5, 1599.163, 2000, line(4, "crew 1")))).source("test");
        ledger.turnTo("air");
        ledger.quantity("air.session.skin.lay.1.styrene", "Styrene, Lay 2 plies of Csm450", MASS).measured(new Measurement(0.294, 0, "table 3"));
        ledger.quantity("air.session.skin.lay.1.rate", "Styrene, rate of Lay 2 plies of Csm450", Dimension.MASS_RATE).measured(new Measurement(1.3e-4, 0, "table 3"));
        ledger.quantity("air.flow", "Air to thin it out", Dimension.VOLUME_RATE).measured(new Measurement(4.5, 0, "dilution"));
    }

    /** A figure that rests on another one twice. */
    static BuildPlan twice() {
        Ledger ledger = new Ledger();
        ledger.turnTo("shape");
        Node part = ledger.step("part", LENGTH).same(ledger.given(Given.of("stated", LENGTH, 1, line(7, "a line")))).source("test");
        ledger.quantity("sum", "Sum", LENGTH).sum("part + part", List.of(part, part)).source("test");
        return plan("Twice", ledger.close(), List.of());
    }

    /** A measure that rests on a body of many stations, and on a board; and another one that rests on the same. */
    static BuildPlan grounded(int stations) {
        List<Ground> grounds = new ArrayList<>();
        for (int i = 1; i <= stations; i++)
            grounds.add(new Ground.Part("station S" + i, line(i, "    station S" + i + " at " + 100 * i + " {")));
        grounds.add(new Ground.Figure(Given.of("board", LENGTH, 1.2, new Origin.Assumed("a common board"))));
        grounds.add(new Ground.Listed("shape.buildup", "build-up", LENGTH, 0.0014));
        Ledger ledger = new Ledger(grounds);
        ledger.turnTo("shape");
        Node one = ledger.measured("one", LENGTH, new Measurement(1, 0, "closed form"));
        Node other = ledger.measured("other", LENGTH, new Measurement(2, 0, "closed form"));
        ledger.quantity("sum", "Sum", LENGTH).sum("one + other", List.of(one, other)).source("test");
        return plan("Grounded", ledger.close(), List.of());
    }

    /** Nothing assumed, one figure. */
    static BuildPlan single(String id, String label, double value, OptionalDouble high) {
        Ledger ledger = new Ledger();
        ledger.turnTo("shape");
        double most = high.orElse(value);
        ledger.quantity(id, label, LENGTH).same(ledger.given(new Given("stated", LENGTH, value, value, most, line(1, "a line")))).source("test");
        return plan("Single", ledger.close(), List.of());
    }
}
