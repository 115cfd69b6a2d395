package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.plane.Outline;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlateEntry;
import mouldwright.plan.ledger.Ground;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Spec;

/** The bulkheads: plates smaller than the body by the build-up, their mass and the sheets they take. */
final class FrameStage implements Stage {

    private static final String SHEETS = "area / (sheet width x sheet length x share of a sheet used)";

    @Override public String name() {
        return "frame";
    }

    @Override public boolean wantedBy(Spec spec) {
        return spec.frame().isPresent();
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) {
        Frame frame = spec.frame().orElseThrow();
        Guard guard = new Guard(measurements).size(frame.thickness()).sizeOrNone(frame.clearance())
                .size(frame.rim()).size(frame.sheet().width()).size(frame.sheet().length())
                .positive(frame.sheet().density());
        frame.backbones().forEach(backbone -> guard.size(backbone.width()).size(backbone.depth()));
        if (guard.clear())
            measurements.find(ShapeMeasures.class).ifPresent(shape ->
                    keep(spec, frame, shape, new PlateMaking(spec, frame, shape, measurements, cancelled).measure(), measurements));
    }

    private static void keep(Spec spec, Frame frame, ShapeMeasures shape, FrameMeasures made, Measurements measurements) {
        measurements.keep(made);
        measurements.keep(new PartMaking(spec, frame, shape, made, measurements).parts());
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
        measurements.find(FrameMeasures.class).ifPresent(made -> {
            Frame frame = spec.frame().orElseThrow();
            Node length = ledger.measured("length over all plates", LENGTH,
                    Places.exact(made.backboneLength(), "from the first plate's outer face to the last one's"));
            Grounds grounds = new Grounds(spec);
            mass(frame, made, length, grounds, ledger);
            sheets(frame, made, length, grounds.plate(false), ledger);
        });
    }

    private static void mass(Frame frame, FrameMeasures made, Node length, Grounds grounds, Ledger ledger) {
        Node thickness = ledger.given(frame.thickness());
        Node density = ledger.given(frame.sheet().density());
        List<Node> masses = new ArrayList<>();
        for (FrameMeasures.Made one : made.plates()) {
            String plate = "plate " + one.border().name();
            List<Node> inputs = new ArrayList<>(List.of(ledger.measured(plate + ", area", AREA, Places.exact(one.netArea(),
                    one.pocketed() ? "cut line less pocket and slots" : "cut line less slots")
                    .on(grounds.plate(one.pocketed()))), thickness, density));
            if (one.pocketed())
                inputs.add(ledger.given(frame.rim()));
            masses.add(ledger.quantity("station." + one.border().name() + ".plate.mass", "Mass, " + plate, MASS)
                    .from("area x sheet thickness x sheet density", inputs, v -> v[0] * v[1] * v[2]).source("closed form"));
        }
        for (Frame.Backbone backbone : frame.backbones())
            masses.add(ledger.step("backbone", MASS).from("layers x sheet thickness x depth x length x backbone density",
                    List.of(ledger.measured("layers of a backbone", RATIO, Places.exact(frame.layers(backbone), "as come nearest to its width")), thickness,
                            ledger.given(backbone.depth()), length, ledger.given(Defaults.backboneDensity(frame.sheet()))),
                    v -> v[0] * v[1] * v[2] * v[3] * v[4]).source("closed form"));
        ledger.quantity("frame.mass", "Frame, mass", MASS).sum("plates + backbones", masses).source("sum");
    }

    private static void sheets(Frame frame, FrameMeasures made, Node length, List<Ground> outline, Ledger ledger) {
        List<Node> areas = new ArrayList<>(List.of(ledger.measured("cut lines of all plates", AREA, Places.exact(
                made.plates().stream().mapToDouble(one -> one.plate().cut().area()).sum(), "area inside the cut lines").on(outline))));
        for (Frame.Backbone backbone : frame.backbones())
            areas.add(layers(frame, backbone, length, ledger));
        boolean plates = frame.backbones().isEmpty();
        Node area = plates ? areas.getFirst() : ledger.step("area to cut", AREA).sum("plates + layers of backbones", areas).source("sum");
        Node used = ledger.quantity("frame.sheets.used", "Sheets used, parts of one counted", RATIO)
                .from(SHEETS,
                        List.of(area, ledger.given(frame.sheet().width()), ledger.given(frame.sheet().length()), ledger.given(Defaults.sheetUse())),
                        v -> v[0] / (v[1] * v[2] * v[3])).source("area bound");
        ledger.quantity("frame.sheets", plates ? "Sheets, for plates" : "Sheets, for plates and backbones", RATIO)
                .from("sheets used", List.of(used), v -> v[0])
                .roundedUp().source("area bound; the low figure is the least that nesting could ever reach");
    }

    /** What a backbone takes out of sheets: as many layers as come nearest to its width, each as deep and as long as it is. */
    private static Node layers(Frame frame, Frame.Backbone backbone, Node length, Ledger ledger) {
        Node count = ledger.measured("layers of a backbone", RATIO, Places.exact(frame.layers(backbone), "as come nearest to its width"));
        return ledger.step("layers of a backbone, area", AREA).from("layers x depth x length", List.of(count, ledger.given(backbone.depth()), length),
                v -> v[0] * v[1] * v[2]).source("closed form");
    }

    @Override public void tasks(Spec spec, Measurements measurements, Ledger ledger, TaskBook tasks) {
        measurements.find(FrameMeasures.class).ifPresent(made -> FrameWork.tasks(spec, made, ledger, tasks));
    }

    /** Sheets are not rounded here: other stages may cut from them too, and packs are counted once. */
    @Override public void orders(Spec spec, Measurements measurements, Ledger ledger, OrderBook orders) {
        ledger.find("frame.sheets.used").ifPresent(used -> orders.need(spec.frame().orElseThrow().sheet(), used));
    }

    @Override public void list(Spec spec, Measurements measurements, Reckoning reckoning, Lists lists) {
        boolean square = spec.frame().map(frame -> frame.edges() == Frame.Edges.SQUARE).orElse(true);
        measurements.find(FrameMeasures.class).ifPresent(made -> made.plates().forEach(one -> lists.plate(
                new PlateEntry(one.border().name(), one.plate().side().name().toLowerCase(java.util.Locale.ROOT), !square,
                        one.plate().thickness(), square ? one.plate().gapInPlane() : 0,
                        square ? one.plate().gapAlongNormal() : 0, one.plate().cut().points(),
                        one.plate().bevelLine().map(Outline::points).orElse(List.of())))));
    }
}
