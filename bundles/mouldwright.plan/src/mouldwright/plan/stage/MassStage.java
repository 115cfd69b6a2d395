package mouldwright.plan.stage;

import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.measure.SurfaceCentre;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Measurement;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.ShopDefaults;
import mouldwright.plan.spec.Spec;

/** What plug and mould weigh, where the plug's weight lies, and how many people that takes. */
final class MassStage implements Stage {

    @Override public String name() {
        return "mass";
    }

    @Override public boolean wantedBy(Spec spec) {
        return spec.frame().isPresent() || spec.fill().isPresent() || spec.skin().isPresent();
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) {
        measurements.find(ShapeMeasures.class).ifPresent(shape -> {
            List<MassMeasures.Centre> plates = new ArrayList<>();
            measurements.find(FrameMeasures.class).ifPresent(frame -> frame.plates().forEach(made -> plates.add(new MassMeasures.Centre(
                    made.border().name(), new MassMeasures.Place((made.plate().x() + made.plate().otherX()) / 2, made.centre().z())))));
            List<MassMeasures.Foam> foam = new ArrayList<>();
            double thickness = ShapeStage.thickness(spec);
            measurements.find(FillMeasures.class).ifPresent(fill -> fill.bays().forEach(bay -> foam.add(foam(bay, thickness, cancelled))));
            measurements.keep(new MassMeasures(plates, foam, skin(shape)));
        });
    }

    /** A bay is short against the body, so its centre is taken at half its length. */
    private static MassMeasures.Foam foam(FillMeasures.BayFill bay, double thickness, BooleanSupplier cancelled) {
        if (cancelled.getAsBoolean())
            throw new CancellationException();
        double x = (bay.bay().fore().aftFace(thickness) + bay.bay().aft().forwardFace(thickness)) / 2;
        PlanePoint centre = bay.cavity().at(x).centroid();
        var net = bay.cavity().net();
        return new MassMeasures.Foam(bay.bay(), Math.max(0, net.value()), net.errorEstimate(), new MassMeasures.Place(x, finite(centre.z())));
    }

    private static double finite(double z) {
        return Double.isFinite(z) ? z : 0;
    }

    /** Centre of the moulded surface, end faces counted. */
    private static MassMeasures.Place skin(ShapeMeasures shape) {
        double square = shape.scale() * shape.scale();
        SurfaceCentre lofted = shape.measures().moulded();
        double area = lofted.area().value();
        double x = lofted.x() * area;
        double z = lofted.z() * area;
        for (ShapeMeasures.End end : shape.moulded()) {
            double at = end.station().x() * shape.scale();
            x += end.area() * square * at;
            z += end.area() * square * shape.plug().at(at).centroid().z();
            area += end.area() * square;
        }
        return area > 0 ? new MassMeasures.Place(x / area, z / area) : new MassMeasures.Place(0, 0);
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) { }

    /** A part of the plug with its weight.
     *  @param mass kg */
    private record Part(Node mass, MassMeasures.Place place) { }

    @Override public void conclude(Spec spec, Measurements measurements, TaskBook tasks, OrderBook orders, Ledger ledger) {
        measurements.find(MassMeasures.class).ifPresent(measured -> {
            List<Part> parts = new ArrayList<>();
            plates(spec, measured, ledger, parts);
            foam(measured, ledger, parts);
            skin(measured, ledger, parts);
            if (!parts.isEmpty())
                plug(spec, parts, ledger);
        });
        ledger.find("mould.mass").ifPresent(mould -> ledger.quantity("mass.mould", "Mould", MASS).same(mould).source("as the mould has it"));
    }

    private static void plates(Spec spec, MassMeasures measured, Ledger ledger, List<Part> parts) {
        List<Node> plates = new ArrayList<>();
        for (MassMeasures.Centre centre : measured.plates())
            ledger.find("station." + centre.station() + ".plate.mass").ifPresent(mass -> {
                parts.add(new Part(mass, centre.place()));
                plates.add(mass);
            });
        Optional<Node> frame = ledger.find("frame.mass").filter(mass -> !plates.isEmpty());
        List<Frame.Backbone> backbones = spec.frame().map(Frame::backbones).orElse(List.of());
        if (frame.isEmpty() || backbones.isEmpty())
            return;
        List<Node> inputs = new ArrayList<>(List.of(frame.get()));
        inputs.addAll(plates);
        Node rest = ledger.step("backbones", MASS).from("frame - plates", inputs, v -> {
            double left = v[0];
            for (int i = 1; i < v.length; i++)
                left -= v[i];
            return Math.max(0, left);
        }).source("difference");
        double x = (measured.plates().getFirst().place().x() + measured.plates().getLast().place().x()) / 2;
        double z = backbones.stream().mapToDouble(b -> b.above().likely() + b.depth().likely() / 2).average().orElse(0);
        parts.add(new Part(rest, new MassMeasures.Place(x, z)));
    }

    private static void foam(MassMeasures measured, Ledger ledger, List<Part> parts) {
        Optional<Node> density = ledger.find("fill.density");
        if (density.isEmpty() || measured.foam().isEmpty())
            return;
        List<Node> all = new ArrayList<>();
        for (MassMeasures.Foam foam : measured.foam()) {
            Node net = ledger.measured("foam that stays, " + foam.bay().words(), VOLUME,
                    new Measurement(foam.net(), foam.error(), "cavity without overfill, integrated over the clear length"));
            Node mass = ledger.step("foam, " + foam.bay().words(), MASS).from("volume x density in place", List.of(net, density.get()), v -> v[0] * v[1])
                    .source("closed form");
            parts.add(new Part(mass, foam.place()));
            all.add(mass);
        }
        ledger.quantity("mass.foam", "Foam in place", MASS).sum("sum over the bays", all).source("carved to the foam line, what was carved off left out");
    }

    private static void skin(MassMeasures measured, Ledger ledger, List<Part> parts) {
        List<Node> skin = new ArrayList<>();
        ledger.written().stream().filter(node -> node.id().startsWith("skin.mat.") && node.id().endsWith(".mass")).forEach(skin::add);
        ledger.find("skin.resin.mass").ifPresent(skin::add);
        ledger.find("skin.catalyst.mass").ifPresent(skin::add);
        if (!skin.isEmpty())
            parts.add(new Part(ledger.quantity("mass.skin", "Skin", MASS).sum("mat + resin + catalyst", skin)
                    .source("as laid; what evaporates and what is sanded off is small against it"), measured.skin()));
    }

    private static void plug(Spec spec, List<Part> parts, Ledger ledger) {
        List<Node> masses = parts.stream().map(Part::mass).toList();
        Node plug = ledger.quantity("mass.plug", "Plug", MASS).sum("plates + backbones + foam in place + skin", masses)
                .source("sum; surfacer, filler, pocket packing and what it stands on are left out");
        centre("mass.centre.x", "Centre of gravity of the plug, aft of the datum", parts, masses, MassMeasures.Place::x, ledger);
        centre("mass.centre.z", "Centre of gravity of the plug, above base", parts, masses, MassMeasures.Place::z, ledger);
        Node each = ledger.given(ShopDefaults.liftPerPerson());
        ledger.quantity("mass.plug.people", "People to lift the plug, or gear", RATIO).from("plug / lift per person", List.of(plug, each),
                v -> Math.max(1, v[0] / v[1])).roundedUp().source("guideline only: weigh it, and look at the grip, the way and the people");
    }

    private static void centre(String id, String label, List<Part> parts, List<Node> masses, java.util.function.ToDoubleFunction<MassMeasures.Place> of,
            Ledger ledger) {
        double[] places = parts.stream().map(Part::place).mapToDouble(of).toArray();
        ledger.quantity(id, label, LENGTH).from("sum of mass x place / sum of masses, each part at its centre", masses, v -> {
            double mass = 0;
            double moment = 0;
            for (int i = 0; i < v.length; i++) {
                mass += v[i];
                moment += v[i] * places[i];
            }
            return mass > 0 ? moment / mass : 0;
        }).source("moments about the datum and the base; a bay's foam at half its length");
    }
}
