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
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.Assumption;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Measurements;
import mouldwright.plan.PieceEntry;
import mouldwright.plan.PlateEntry;
import mouldwright.plan.PotEntry;
import mouldwright.plan.PourEntry;
import mouldwright.plan.Quantity;
import mouldwright.plan.draw.Draws;
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
                node.dimension(), reckoning.low(node), reckoning.likely(node), reckoning.high(node))).toList();
        List<PlateEntry> plates = List.of(plate("S1", "aft", 0.58, 0.310, 0.0012), plate("S2", "forward", 0.6342, 0.288, 0));
        List<PourEntry> pours = List.of(new PourEntry("S1-S2", 1, 0.0425, 0.00151, 1.7, 0.82, 0.88, 2),
                new PourEntry("S1-S2", 2, 0.0425, 0.00151, 1.7, 0.82, 0.88, 2));
        List<PotEntry> pots = List.of(new PotEntry(1, "Csm450", 1.913, 3, new PotEntry.Pot(0.4, 0.0056, 4.83e-6), new PotEntry.Pot(0.7565, 0.0106, 9.13e-6), 0.8, 1500, 1050),
                new PotEntry(2, "Csm450", 1.3, 2, new PotEntry.Pot(0.8, 0.0112, 9.66e-6), new PotEntry.Pot(0.5, 0.007, 6.03e-6), 0.8, 1500, 1050));
        List<PieceEntry> pieces = List.of(new PieceEntry(1, 1, "Csm450", "bay S1 to S2", 1.25, 0.55, 1, 1, 0, 0),
                new PieceEntry(2, 1, "Csm450", "bay S1 to S2", 0.31, 0.55, 1, 2, 0.55, 0), new PieceEntry(3, 2, "Csm450", "end at S2", 0.634, 0.338, 1, 2, 0.55, 0.31));
        return new BuildPlan(spec(name), assumed, quantities, plates, pours, pots, pieces, List.of(), new Measurements(), reckoning);
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
        ledger.quantity("shape.volume", "Volume", VOLUME).measured(new Measurement(0.0894, 2e-7, "Gauss quadrature"));
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

    /** A figure that rests on another one twice. */
    static BuildPlan twice() {
        Ledger ledger = new Ledger();
        ledger.turnTo("shape");
        Node part = ledger.step("part", LENGTH).same(ledger.given(Given.of("stated", LENGTH, 1, line(7, "a line")))).source("test");
        ledger.quantity("sum", "Sum", LENGTH).sum("part + part", List.of(part, part)).source("test");
        return plan("Twice", ledger.close(), List.of());
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
