package mouldwright.plan.stage;

import static mouldwright.units.Dimension.ANGLE;
import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.frame.Plates;
import mouldwright.geometry.measure.Measured;
import mouldwright.plan.Assumption;
import mouldwright.plan.Measurements;
import mouldwright.plan.ledger.Ground;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Body;
import mouldwright.plan.spec.Carve;
import mouldwright.plan.spec.FairDefaults;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Spec;

/** The body: its size, its sections and its bays. {@code shape.*}, {@code station.*} and the bays' volumes are of the part
 *  as stated; clear lengths and crowns are of the plug, which is larger by the shrink allowed for. */
final class ShapeStage implements Stage {

    private static final String QUADRATURE = "Gauss quadrature over the lofted patches, error from two orders";

    @Override public String name() {
        return "shape";
    }

    @Override public boolean wantedBy(Spec spec) {
        return true;
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) {
        new ShapeMeasuring(spec, measurements, cancelled).measure().ifPresent(measurements::keep);
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
        measurements.find(ShapeMeasures.class).ifPresent(shape -> {
            ends(spec.body(), measurements);
            Grounds grounds = new Grounds(spec);
            whole(shape, grounds.part(), ledger);
            BuildUps.write(spec, ledger);
            shape.stations().forEach(station -> station(station, grounds, ledger));
            for (int i = 0; i < shape.bays().size(); i++)
                bay(spec, shape, i, grounds, ledger);
        });
    }

    private static void ends(Body body, Measurements measurements) {
        if (body.forward().origin() instanceof Origin.Assumed why)
            measurements.assume(Assumption.choice("forward end", "bare", why));
        if (body.aft().origin() instanceof Origin.Assumed why)
            measurements.assume(Assumption.choice("aft end", "bare", why));
    }

    private static void whole(ShapeMeasures shape, List<Ground> part, Ledger ledger) {
        Node start = line(ledger, shape.borders().getFirst());
        Node end = line(ledger, shape.borders().getLast());
        ledger.quantity("shape.length", "Length", LENGTH)
                .from("last station - first station", List.of(start, end), v -> v[1] - v[0]).source("the stations as stated");
        ledger.quantity("shape.volume", "Volume", VOLUME)
                .measured(Places.measured(shape.volume().volume(), "integral of the section area along the body, " + QUADRATURE).on(part));
        ledger.quantity("shape.area", "Lofted surface, without end faces", AREA)
                .measured(Places.measured(shape.area().total(), QUADRATURE).on(part));
        List<Node> moulded = new ArrayList<>();
        moulded.add(ledger.measured("lofted moulded surface", AREA, Places.measured(shape.area().moulded(), QUADRATURE).on(part)));
        for (ShapeMeasures.End end1 : shape.moulded())
            moulded.add(ledger.measured("moulded end at " + end1.station().name(), AREA,
                    Places.exact(end1.area(), "area of the section").on(part)));
        ledger.quantity("shape.area.moulded", "Moulded surface", AREA)
                .sum("lofted moulded surface + moulded ends", moulded).source("definition: what gets skin and mould");
        ledger.quantity("shape.centroid.x", "Centroid of volume, aft of the datum", LENGTH)
                .measured(Places.exact(shape.volume().x(), QUADRATURE).on(part));
        ledger.quantity("shape.centroid.z", "Centroid of volume, above base", LENGTH)
                .measured(Places.exact(shape.volume().z(), QUADRATURE).on(part));
    }

    private static void station(ShapeMeasures.AtStation at, Grounds grounds, Ledger ledger) {
        String id = "station." + at.station().name();
        String label = "Station " + at.station().name();
        ledger.quantity(id + ".area", label + ", area", AREA)
                .measured(Places.exact(at.area(), "area inside the whole outline").on(grounds.section(at.station())));
        ledger.quantity(id + ".girth", label + ", girth", LENGTH)
                .measured(Places.exact(at.girth(), "length of the whole outline, both sides, closures counted").on(grounds.section(at.station())));
        if (!at.pinched())
            ledger.quantity(id + ".bevel.max", label + ", largest bevel", ANGLE)
                    .measured(Places.exact(at.bevel(), "largest asin of the normal's aft part over the moulded surface").on(grounds.loft(at.station())));
    }

    private static void bay(Spec spec, ShapeMeasures shape, int i, Grounds grounds, Ledger ledger) {
        Bay bay = shape.bays().get(i);
        Measured volume = shape.volumes().get(i);
        ledger.quantity(bay.id("volume"), "Volume, " + bay.words(), VOLUME).measured(Places.measured(volume, QUADRATURE).on(grounds.part()));
        clear(spec, bay, ledger);
        ShapeMeasures.BayCrown crowned = shape.crowns().get(i);
        Node crown = new Growth(spec.body().shrink(), ledger).quantity(bay.id("crown"), "Crown, " + bay.words(), LENGTH, Places.exact(
                crowned.crown().signedHeight(), "largest distance of the surface from the board, along the normal, + convex").on(grounds.crown()));
        Node limit = ledger.given(carve(spec).crownLimit());
        Node inserted = ledger.measured("stations that let each part pass", RATIO, Places.exact(
                crowned.division().bays() - 1, "the bay was divided anew until each part kept the limit").on(grounds.crown()));
        ledger.quantity(bay.id("stations"), "Stations to insert, " + bay.words(), RATIO)
                .from("sqrt(crown / limit) - 1, rounded up, and more until each part passes", List.of(crown, limit, inserted), v -> v[2])
                .source("sagitta of a chord grows as the square of its length");
    }

    /** What is taken off the distance of the station lines: the build-up at moulded ends, and plates that stand inside. */
    private static void clear(Spec spec, Bay bay, Ledger ledger) {
        List<Node> inputs = new ArrayList<>(List.of(line(ledger, bay.fore()), line(ledger, bay.aft()), ledger.given(spec.body().shrink())));
        StringBuilder words = new StringBuilder("(aft line - fore line) / (1 - shrink)");
        int moved = (bay.fore().moved() ? 1 : 0) + (bay.aft().moved() ? 1 : 0);
        Optional<Node> buildUp = ledger.find("shape.buildup").filter(t -> moved > 0);
        buildUp.ifPresent(t -> {
            inputs.add(t);
            words.append(" - build-up at ").append(moved == 1 ? "a moulded end" : "both moulded ends");
        });
        int plates = standingIn(bay);
        boolean sheet = spec.frame().isPresent() && plates > 0;
        if (sheet) {
            inputs.add(ledger.given(spec.frame().get().thickness()));
            words.append(" - ").append(plates).append(" x sheet thickness");
        }
        int t = buildUp.isPresent() ? 3 : -1;
        int thickness = sheet ? inputs.size() - 1 : -1;
        ledger.quantity(bay.id("clear"), "Clear length, " + bay.words(), LENGTH)
                .from(words.toString(), inputs, v -> Plates.clearLength((v[1] - v[0]) / (1 - v[2]) - (t < 0 ? 0 : moved * v[t]),
                        bay.fore().plated() && thickness >= 0 ? v[thickness] : 0, bay.fore().side(),
                        bay.aft().plated() && thickness >= 0 ? v[thickness] : 0, bay.aft().side()))
                .source(sheet ? "first plate stands aft, last forward, others toward the neighbour of larger area"
                        : "no plate stands in this bay, or no sheet is stated");
    }

    private static int standingIn(Bay bay) {
        int aft = bay.fore().aftFace(1) > bay.fore().plugX() ? 1 : 0;
        return aft + (bay.aft().forwardFace(1) < bay.aft().plugX() ? 1 : 0);
    }

    private static Node line(Ledger ledger, Border border) {
        return ledger.given(Given.of("station line " + border.name(), LENGTH, border.station().x(),
                border.station().origin()));
    }

    /** The carving rules, or their defaults. */
    static Carve carve(Spec spec) {
        return spec.carve().orElseGet(FairDefaults::carve);
    }

    /** Likely sheet thickness, m; 0 where no frame is stated. */
    static double thickness(Spec spec) {
        return spec.frame().map(Frame::thickness).map(Given::likely).orElse(0.0);
    }
}
