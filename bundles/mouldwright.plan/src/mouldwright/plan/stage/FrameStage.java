package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.plane.Outline;
import mouldwright.plan.CutParts;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlateEntry;
import mouldwright.plan.ledger.Ground;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Fittings;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Spec;

/** The bulkheads: plates smaller than the body by the build-up, their mass and the sheets they take. */
final class FrameStage implements Stage {

    /** A scarf longer than this many thicknesses is a slip of the pen. */
    private static final double STEEPEST = 100;
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
                .positive(frame.sheet().density()).sizeOrNone(frame.fittings().holes()).size(frame.fittings().gauge());
        guardFittings(frame, guard);
        frame.backbones().forEach(backbone -> guard.size(backbone.width()).size(backbone.depth()));
        if (guard.clear())
            measurements.find(ShapeMeasures.class).ifPresent(shape ->
                    keep(spec, frame, shape, new PlateMaking(spec, frame, shape, measurements, cancelled).measure(), measurements));
    }

    private static void guardFittings(Frame frame, Guard guard) {
        switch (frame.fittings().join()) {
            case Fittings.Join.Scarf(Given slope) -> guard.positive(slope).below(slope, STEEPEST);
            case Fittings.Join.Strap(Optional<Given> length) -> length.ifPresent(guard::size);
        }
        frame.fittings().base().ifPresent(base -> guard.sizeOrNone(base.margin()).size(base.sheet().width()).size(base.sheet().length())
                .size(base.sheet().thickness()).positive(base.sheet().density()));
        frame.fittings().strongback().ifPresent(ladder -> {
            guard.size(ladder.width()).size(ladder.depth());
            ladder.apart().ifPresent(guard::size);
        });
    }

    private static void keep(Spec spec, Frame frame, ShapeMeasures shape, FrameMeasures made, Measurements measurements) {
        measurements.keep(made);
        measurements.keep(new PartMaking(spec, frame, shape, made, measurements).parts());
        new Aligning(spec, frame, made).alignment().ifPresent(measurements::keep);
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
        measurements.find(FrameMeasures.class).ifPresent(made -> {
            Frame frame = spec.frame().orElseThrow();
            Grounds grounds = new Grounds(spec);
            CutParts parts = measurements.find(CutParts.class).orElseThrow();
            List<Node> backbones = frame.backbones().stream().map(backbone -> ledger.measured("side of a backbone", AREA,
                    Places.exact(BackboneMaking.sideArea(frame, made, backbone), "depth x length over all plates, less what is halved").on(grounds.plate(false)))).toList();
            mass(frame, made, parts, backbones, grounds, ledger);
            sheets(frame, parts, backbones, grounds.plate(false), ledger);
            FrameBase.quantify(frame, parts, grounds.plate(false), ledger);
        });
    }

    private static void mass(Frame frame, FrameMeasures made, CutParts parts, List<Node> backbones, Grounds grounds, Ledger ledger) {
        Node thickness = ledger.given(frame.thickness());
        Node density = ledger.given(frame.sheet().density());
        List<Node> masses = new ArrayList<>();
        for (FrameMeasures.Made one : made.plates()) {
            String plate = "plate " + one.border().name();
            List<Node> inputs = new ArrayList<>(List.of(ledger.measured(plate + ", area", AREA, Places.exact(one.netArea(),
                    one.pocketed() ? "cut line less pocket, slots and holes" : "cut line less slots and holes")
                    .on(grounds.plate(one.pocketed()))), thickness, density));
            if (one.pocketed())
                inputs.add(ledger.given(frame.rim()));
            masses.add(ledger.quantity("station." + one.border().name() + ".plate.mass", "Mass, " + plate, MASS)
                    .from("area x sheet thickness x sheet density", inputs, v -> v[0] * v[1] * v[2]).source("closed form"));
        }
        for (int i = 0; i < backbones.size(); i++)
            masses.add(backbone(frame, frame.backbones().get(i), backbones.get(i), thickness, ledger));
        double straps = area(parts, PlatePart.Kind.STRAP, PlatePart::area);
        if (straps > 0)
            masses.add(ledger.step("straps", MASS).from("area x sheet thickness x sheet density", List.of(ledger.measured("straps, area", AREA,
                    Places.exact(straps, "over the butts").on(grounds.plate(false))), thickness, density), v -> v[0] * v[1] * v[2]).source("closed form"));
        ledger.quantity("frame.mass", "Frame, mass", MASS).sum(straps > 0 ? "plates + backbones + straps" : "plates + backbones", masses).source("sum");
    }

    private static Node backbone(Frame frame, Frame.Backbone backbone, Node side, Node thickness, Ledger ledger) {
        if (backbone.timber())
            return ledger.step("backbone", MASS).from("width x side x timber density", List.of(ledger.given(backbone.width()), side,
                    ledger.given(Defaults.timberDensity())), v -> v[0] * v[1] * v[2]).source("closed form");
        return ledger.step("backbone", MASS).from("layers x sheet thickness x side x backbone density", List.of(layers(frame, backbone, ledger), thickness, side,
                ledger.given(Defaults.backboneDensity(frame.sheet()))), v -> v[0] * v[1] * v[2] * v[3]).source("closed form");
    }

    private static Node layers(Frame frame, Frame.Backbone backbone, Ledger ledger) {
        return ledger.measured("layers of a backbone", RATIO, Places.exact(frame.layers(backbone), "as come nearest to its width"));
    }

    private static double area(CutParts parts, PlatePart.Kind kind, java.util.function.ToDoubleFunction<PlatePart> of) {
        return parts.parts().stream().filter(part -> part.kind() == kind).mapToDouble(part -> of.applyAsDouble(part) * part.quantity()).sum();
    }

    private static void sheets(Frame frame, CutParts parts, List<Node> backbones, List<Ground> outline, Ledger ledger) {
        double plates = area(parts, PlatePart.Kind.PLATE, part -> part.outer().area());
        List<Node> areas = new ArrayList<>(List.of(ledger.measured("cut lines of all plates", AREA, Places.exact(plates, "area inside the cut lines").on(outline))));
        for (int i = 0; i < backbones.size(); i++)
            if (!frame.backbones().get(i).timber())
                areas.add(ledger.step("layers of a backbone, area", AREA).from("layers x side", List.of(layers(frame, frame.backbones().get(i), ledger), backbones.get(i)),
                        v -> v[0] * v[1]).source("a backbone is glued up of as many layers of the sheet as come nearest to its width"));
        double straps = area(parts, PlatePart.Kind.STRAP, part -> part.outer().area());
        if (straps > 0)
            areas.add(ledger.measured("cut lines of all straps", AREA, Places.exact(straps, "area inside the cut lines").on(outline)));
        boolean alone = areas.size() == 1;
        Node area = alone ? areas.getFirst() : ledger.step("area to cut", AREA).sum("plates + layers of backbones + straps", areas).source("sum");
        Node used = ledger.quantity("frame.sheets.used", "Sheets used, parts of one counted", RATIO)
                .from(SHEETS,
                        List.of(area, ledger.given(frame.sheet().width()), ledger.given(frame.sheet().length()), ledger.given(Defaults.sheetUse())),
                        v -> v[0] / (v[1] * v[2] * v[3])).source("area bound");
        ledger.quantity("frame.sheets", alone ? "Sheets, for plates" : "Sheets, for plates and backbones", RATIO)
                .from("sheets used", List.of(used), v -> v[0])
                .roundedUp().source("area bound; the low figure is the least that nesting could ever reach");
    }

    @Override public void tasks(Spec spec, Measurements measurements, Ledger ledger, TaskBook tasks) {
        measurements.find(FrameMeasures.class).ifPresent(made -> FrameWork.tasks(spec, made, ledger, tasks));
    }

    /** Sheets are not rounded here: other stages may cut from them too, and packs are counted once. */
    @Override public void orders(Spec spec, Measurements measurements, Ledger ledger, OrderBook orders) {
        ledger.find("frame.sheets.used").ifPresent(used -> orders.need(spec.frame().orElseThrow().sheet(), used));
        FrameBase.orders(spec.frame().orElseThrow(), ledger, orders);
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
