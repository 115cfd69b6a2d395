package mouldwright.plan.stage;

import static mouldwright.units.Dimension.DENSITY;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.RATIO;
import static mouldwright.units.Dimension.TIME;
import static mouldwright.units.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.geometry.fill.Attitude;
import java.util.stream.Collectors;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.PourEntry;
import mouldwright.plan.ledger.Ground;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Spec;
import mouldwright.process.Pour;

/** The foam: cavities bay by bay, the liquid they take, in lifts and pots. */
final class FillStage implements Stage {

    @Override public String name() {
        return "fill";
    }

    @Override public boolean wantedBy(Spec spec) {
        return spec.fill().isPresent();
    }

    @Override public void measure(Spec spec, Measurements measurements, BooleanSupplier cancelled) {
        Fill fill = spec.fill().orElseThrow();
        if (makesSense(fill, measurements))
            measurements.find(ShapeMeasures.class).ifPresent(shape -> {
                FillMeasures bays = new FillMeasuring(spec, shape, measurements, cancelled).measure();
                measurements.keep(bays);
                measurements.keep(new RoomMeasuring(spec, shape, cancelled).measure(bays));
                measurements.keep(PourOrder.of(bays.bays()));
                measurements.keep(PourRecords.measure(spec, bays, measurements));
                creamTime(fill.foam(), measurements);
            });
    }

    private static boolean makesSense(Fill fill, Measurements measurements) {
        Foam foam = fill.foam();
        Guard guard = new Guard(measurements).sizeOrNone(fill.overfill()).positive(foam.density())
                .positive(foam.partA()).positive(foam.partB()).notNegative(foam.cream()).positive(foam.pot()).notNegative(foam.firm()).notNegative(foam.rise());
        foam.expansion().ifPresent(expansion -> guard.above(expansion, 1));
        shells(fill).forEach(guard::size);
        guard.size(FoamFacts.lift(foam));
        for (Foam.YieldRow row : foam.yield())
            guard.above(Given.of("yield", RATIO, row.share(), row.origin()), 0)
                    .below(Given.of("yield", RATIO, row.share(), row.origin()), Math.nextUp(1.0));
        long temperatures = foam.yield().stream().mapToDouble(Foam.YieldRow::temperature).distinct().count();
        if (temperatures < foam.yield().size()) {
            measurements.report(PlanFault.of(PlanFault.Kind.FIGURE, foam.yield().getFirst().origin(), "yield table",
                    "the yield table states a temperature twice", "drop one of the rows"));
            return false;
        }
        return guard.clear() && rises(foam, measurements);
    }

    /** Whether warmer foam yields no less than cooler, as any foam does; the first row that falls is reported. */
    private static boolean rises(Foam foam, Measurements measurements) {
        List<Foam.YieldRow> rows = foam.yield().stream().sorted(java.util.Comparator.comparingDouble(Foam.YieldRow::temperature)).toList();
        for (int i = 1; i < rows.size(); i++)
            if (rows.get(i).share() < rows.get(i - 1).share()) {
                measurements.report(PlanFault.of(PlanFault.Kind.FIGURE, rows.get(i).origin(), "yield table of " + foam.name(),
                        "the yield of " + foam.name() + " falls as it gets warmer", "correct the row: warm foam rises more")
                        .at(rows.get(i).share(), RATIO).against(rows.get(i - 1).share(), RATIO));
                return false;
            }
        return true;
    }

    private static List<Given> shells(Fill fill) {
        List<Given> shells = new ArrayList<>();
        if (fill.core() instanceof Fill.Core.Shell(Given thickness))
            shells.add(thickness);
        for (Fill.BayRule rule : fill.bays())
            if (rule.core().isPresent() && rule.core().get() instanceof Fill.Core.Shell(Given thickness))
                shells.add(thickness);
        return shells;
    }

    private static void creamTime(Foam foam, Measurements measurements) {
        Given cream = FoamFacts.cream(foam);
        if (Pour.largestPot(cream.likely(), FoamFacts.pot(foam).likely()) < FoamMix.LEAST_POT
                && FoamFacts.pot(foam).likely() >= FoamMix.LEAST_POT)
            measurements.report(PlanFault.of(PlanFault.Kind.CREAM_TOO_SHORT, cream.origin(), "foam " + foam.name(),
                    foam.name() + " creams before a pot is mixed and poured", "use a slower foam, or a machine")
                    .at(cream.likely(), TIME).against(Pour.timeFor(FoamMix.LEAST_POT), TIME));
    }

    @Override public void quantify(Spec spec, Measurements measurements, Ledger ledger) {
        measurements.find(FillMeasures.class).ifPresent(fill -> {
            Fill stated = spec.fill().orElseThrow();
            Grounds grounds = new Grounds(spec);
            Rooms rooms = measurements.find(Rooms.class).orElseThrow();
            PourRecords records = measurements.find(PourRecords.class).orElseThrow();
            FoamMix planned = new FoamMix(ledger, stated.foam(), spec.shop());
            FoamMix rest = records.pours().isEmpty() ? planned
                    : new FoamMix(ledger, stated.foam(), spec.shop(), records.share(stated.foam(), ledger));
            List<BayNodes> bays = new ArrayList<>();
            for (int i = 0; i < fill.bays().size(); i++) {
                FillMeasures.BayFill bay = fill.bays().get(i);
                bays.add(bay(spec, records.holds(bay.bay()) ? planned : rest, bay, rooms.bays().get(i), grounds.cavity(bay.core()), ledger));
            }
            totals(planned, planned == rest, bays, ledger);
            new PourTimes(stated, measurements.find(PourOrder.class).orElseThrow(), ledger).write();
            new FillForms(stated, rooms, ledger).write();
        });
    }

    /** What is written of a bay and summed. */
    private record BayNodes(Node cavity, Node trim, Node mass, Node liquid, List<Node> pots) { }

    private static BayNodes bay(Spec spec, FoamMix mix, FillMeasures.BayFill bay, Rooms.Room room, List<Ground> rests, Ledger ledger) {
        Fill fill = spec.fill().orElseThrow();
        String words = bay.bay().words();
        Node cavity = cavity(spec, bay, rests, ledger);
        Node trim = trim(spec, bay, rests, ledger);
        Node mass = mix.mass(ledger.quantity(bay.bay().id("mass"), "Foam, mass, " + words, MASS), cavity);
        Node liquid = mix.liquid(ledger.quantity(bay.bay().id("liquid"), "Foam, liquid, " + words, VOLUME), cavity, mass);
        Node height = ledger.measured("height across gravity, " + bay.attitude().words(), LENGTH,
                Places.exact(bay.height(), "extent of the cavity, overfill included").on(rests));
        Node lifts = ledger.quantity(bay.bay().id("lifts"), "Lifts, " + words, RATIO)
                .from("height / lift limit", List.of(height, ledger.given(FoamFacts.lift(fill.foam()))),
                        v -> Math.min(v[0] / v[1], FillMeasuring.MOST_LIFTS))
                .roundedUp().source("lifts of equal height, none over the limit");
        Cooling.wait(fill, bay, room, height, lifts, ledger);
        List<Node> pots = new ArrayList<>();
        for (int i = 0; i < bay.lifts().size(); i++)
            pots.add(lift(mix, bay, i, cavity, rests, ledger));
        return new BayNodes(cavity, trim, mass, liquid, pots);
    }

    private static Node cavity(Spec spec, FillMeasures.BayFill bay, List<Ground> rests, Ledger ledger) {
        Fill fill = spec.fill().orElseThrow();
        List<Node> inputs = new ArrayList<>(List.of(
                ledger.measured("cavity between the plates", VOLUME, Places.measured(bay.poured(),
                        "foam line grown by the overfill, less pocket and backbones, integrated over the clear length; and half of the overfill "
                                + "over the edge of each plate between bays").on(rests)),
                ledger.given(fill.overfill())));
        if (bay.core() instanceof Fill.Core.Shell(Given thickness))
            inputs.add(ledger.given(thickness));
        String words = "as measured, with overfill" + (inputs.size() > 2 ? " and shell" : ", solid");
        return answering(ledger.quantity(bay.bay().id("cavity"), "Cavity, " + bay.bay().words(), VOLUME), words, inputs, bay.answers(), spec, ledger)
                .source("foam line: the loft less the build-up");
    }

    private static Node trim(Spec spec, FillMeasures.BayFill bay, List<Ground> rests, Ledger ledger) {
        String words = bay.bay().words();
        List<Node> inputs = new ArrayList<>(List.of(
                ledger.measured("overfill as measured", VOLUME, Places.measured(bay.trim(), "volume with overfill less volume without").on(rests)),
                ledger.given(spec.fill().orElseThrow().overfill())));
        return answering(ledger.step("trim, " + words, VOLUME), "as measured", inputs, bay.trimAnswers(), spec, ledger)
                .source("all that is poured past the foam line");
    }

    /** The first input is the volume as measured; it is not measured anew, but moved in proportion as each thing with a range
     *  leaves its likely value. */
    private static Ledger.Sourced answering(Ledger.Entry entry, String words, List<Node> stated, FillMeasures.Answers answers, Spec spec, Ledger ledger) {
        List<Node> inputs = new ArrayList<>(stated);
        List<Response> responses = new ArrayList<>();
        answer(inputs, responses, ledger.find("shape.buildup"), answers.toBuildUp());
        answer(inputs, responses, Optional.of(ledger.given(spec.body().shrink())), answers.toShrink());
        answer(inputs, responses, spec.frame().map(frame -> ledger.given(frame.thickness())), answers.toSheet());
        return entry.from(responses.isEmpty() ? words : words + ", moved in proportion as " + driven(inputs.subList(stated.size(), inputs.size()))
                + " leaves its likely value, at the rate its sections have there", inputs, v -> {
                    double volume = v[0];
                    for (int i = 0; i < responses.size(); i++)
                        volume += responses.get(i).change(v[stated.size() + i]);
                    return Math.max(0, volume);
                });
    }

    private static String driven(List<Node> drivers) {
        return drivers.stream().map(node -> node.label().substring(0, 1).toLowerCase(Locale.ROOT) + node.label().substring(1)).collect(Collectors.joining(" or "));
    }

    private static void answer(List<Node> inputs, List<Response> responses, Optional<Node> driver, Response response) {
        if (driver.isPresent() && !response.equals(Response.NONE)) {
            inputs.add(driver.get());
            responses.add(response);
        }
    }

    private static Node lift(FoamMix mix, FillMeasures.BayFill bay, int i, Node cavity, List<Ground> rests, Ledger ledger) {
        String id = liftId(bay, i);
        String words = bay.bay().words() + ", lift " + (i + 1);
        Node slice = ledger.measured("slice", VOLUME, Places.measured(bay.lifts().get(i), "cavity between two heights, as measured").on(rests));
        double measured = bay.poured().value();
        Node volume = ledger.quantity(id + ".volume", "Volume, " + words, VOLUME)
                .from("slice x cavity / cavity as measured", List.of(slice, cavity), v -> v[0] * v[1] / measured)
                .source("lifts of equal height; all grow with the cavity");
        Node mass = mix.mass(ledger.quantity(id + ".mass", "Foam, mass, " + words, MASS), volume);
        mix.liquid(ledger.quantity(id + ".liquid", "Foam, liquid, " + words, VOLUME), volume, mass);
        mix.partA(ledger.quantity(id + ".a", "Part A, " + words, MASS), mass);
        mix.partB(ledger.quantity(id + ".b", "Part B, " + words, MASS), mass);
        return mix.pots(ledger.quantity(id + ".pots", "Pots, " + words, RATIO), mass);
    }

    static String liftId(FillMeasures.BayFill bay, int i) {
        return bay.bay().id("lift." + (i + 1));
    }

    /** Totals over the bays: from the whole cavity where all are poured alike, else the sum of what each bay takes. */
    private static void totals(FoamMix mix, boolean alike, List<BayNodes> bays, Ledger ledger) {
        Node cavity = ledger.quantity("fill.cavity", "Cavity, overfill included", VOLUME)
                .sum("sum over the bays", bays.stream().map(BayNodes::cavity).toList()).source("sum");
        ledger.quantity("fill.trim", "Foam carved off again", VOLUME)
                .sum("sum over the bays", bays.stream().map(BayNodes::trim).toList()).source("sum");
        Ledger.Entry massEntry = ledger.quantity("fill.mass", "Foam, mass", MASS);
        Node mass = alike ? mix.mass(massEntry, cavity)
                : massEntry.sum("sum over the bays", bays.stream().map(BayNodes::mass).toList()).source("sum");
        Ledger.Entry liquidEntry = ledger.quantity("fill.liquid", "Foam, liquid", VOLUME);
        if (alike)
            mix.liquid(liquidEntry, cavity, mass);
        else
            liquidEntry.sum("sum over the bays", bays.stream().map(BayNodes::liquid).toList()).source("sum");
        mix.partA(ledger.quantity("fill.mass.a", "Foam, part A", MASS), mass);
        mix.partB(ledger.quantity("fill.mass.b", "Foam, part B", MASS), mass);
        Ledger.Entry inPlace = ledger.quantity("fill.density", "Foam, density in place", DENSITY);
        if (alike)
            mix.inPlace(inPlace);
        else
            inPlace.from("mass / cavity", List.of(mass, cavity), v -> v[0] / v[1]).source("a foam that rose less is denser");
        ledger.quantity("fill.pots", "Foam, pots", RATIO)
                .sum("sum over the lifts", bays.stream().flatMap(bay -> bay.pots().stream()).toList()).source("sum");
        Node trial = ledger.quantity("fill.trial.mass", "Trial cup", MASS).same(ledger.given(Defaults.trialCup()))
                .source("the first pour of a job: cream and rise of today's foam in today's shop");
        mix.partA(ledger.quantity("fill.trial.a", "Trial cup, part A", MASS), trial);
        mix.partB(ledger.quantity("fill.trial.b", "Trial cup, part B", MASS), trial);
    }

    @Override public void tasks(Spec spec, Measurements measurements, Ledger ledger, TaskBook tasks) {
        measurements.find(PourOrder.class).ifPresent(order -> new FillTasks(spec, ledger, tasks).write(order));
    }

    @Override public void orders(Spec spec, Measurements measurements, Ledger ledger, OrderBook orders) {
        Foam foam = spec.fill().orElseThrow().foam();
        ledger.find("fill.mass").ifPresent(mass -> orders.need(foam, mass));
        ledger.find("fill.trial.mass").ifPresent(mass -> orders.need(foam, mass));
        ledger.find("fill.forms.area").ifPresent(area -> orders.need("Shuttering", area));
        ledger.find("fill.film.area").ifPresent(area -> orders.need("Release film for shuttering", area));
        ledger.find("fill.standoffs").ifPresent(count -> orders.need("Stand-offs", count));
        ledger.find("fill.packing").ifPresent(volume -> orders.need("Packing of pockets", volume));
    }

    @Override public void list(Spec spec, Measurements measurements, Reckoning reckoning, Lists lists) {
        measurements.find(FillMeasures.class).ifPresent(fill -> {
            for (FillMeasures.BayFill bay : fill.bays())
                for (int i = 0; i < bay.lifts().size(); i++) {
                    String id = liftId(bay, i);
                    lists.pour(new PourEntry(bay.bay().name(), i + 1, likely(reckoning, id + ".volume"),
                            likely(reckoning, id + ".liquid"), likely(reckoning, id + ".mass"), likely(reckoning, id + ".a"),
                            likely(reckoning, id + ".b"), (int) likely(reckoning, id + ".pots")));
                }
        });
    }

    /** The geometry's word for how the plug lies. */
    static Attitude lying(Fill.Attitude attitude) {
        return switch (attitude) {
            case UPRIGHT -> Attitude.UPRIGHT;
            case UPSIDE_DOWN -> Attitude.UPSIDE_DOWN;
            case ON_SIDE -> Attitude.ON_SIDE;
        };
    }

    private static double likely(Reckoning reckoning, String id) {
        return reckoning.likely(reckoning.find(id).orElseThrow());
    }
}
