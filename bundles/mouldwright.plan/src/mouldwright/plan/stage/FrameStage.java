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
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Sheet;
import mouldwright.plan.spec.Spec;

/** The bulkheads: plates smaller than the body by the build-up, their mass and the sheets they take. */
final class FrameStage implements Stage {

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
                    measurements.keep(new PlateMaking(spec, frame, shape, measurements, cancelled).measure()));
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
        measurements.find(FrameMeasures.class).ifPresent(made -> {
            Frame frame = spec.frame().orElseThrow();
            mass(frame, made, ledger);
            sheets(frame.sheet(), made, ledger);
        });
    }

    private static void mass(Frame frame, FrameMeasures made, Ledger ledger) {
        Node thickness = ledger.given(frame.thickness());
        Node density = ledger.given(frame.sheet().density());
        List<Node> masses = new ArrayList<>();
        for (FrameMeasures.Made one : made.plates()) {
            String plate = "plate " + one.border().name();
            List<Node> inputs = new ArrayList<>(List.of(ledger.measured(plate + ", area", AREA, Places.exact(one.netArea(),
                    one.pocketed() ? "cut line less pocket and slots" : "cut line less slots")), thickness, density));
            if (one.pocketed())
                inputs.add(ledger.given(frame.rim()));
            masses.add(ledger.quantity("station." + one.border().name() + ".plate.mass", "Mass, " + plate, MASS)
                    .from("area x sheet thickness x sheet density", inputs, v -> v[0] * v[1] * v[2]).source("closed form"));
        }
        for (Frame.Backbone backbone : frame.backbones()) {
            Node length = ledger.measured("length over all plates", LENGTH,
                    Places.exact(made.backboneLength(), "from the first plate's outer face to the last one's"));
            masses.add(ledger.step("backbone", MASS).from("width x depth x length x sheet density",
                    List.of(ledger.given(backbone.width()), ledger.given(backbone.depth()), length, density),
                    v -> v[0] * v[1] * v[2] * v[3]).source("closed form; a backbone is taken to be as dense as the sheet"));
        }
        ledger.quantity("frame.mass", "Frame, mass", MASS).sum("plates + backbones", masses).source("sum");
    }

    private static void sheets(Sheet sheet, FrameMeasures made, Ledger ledger) {
        Node area = ledger.measured("cut lines of all plates", AREA, Places.exact(
                made.plates().stream().mapToDouble(one -> one.plate().cut().area()).sum(), "area inside the cut lines"));
        ledger.quantity("frame.sheets", "Sheets", RATIO)
                .from("area / (sheet width x sheet length x share of a sheet used)",
                        List.of(area, ledger.given(sheet.width()), ledger.given(sheet.length()), ledger.given(Defaults.sheetUse())),
                        v -> v[0] / (v[1] * v[2] * v[3]))
                .roundedUp().source("area bound; the low figure is the least that nesting could ever reach");
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
