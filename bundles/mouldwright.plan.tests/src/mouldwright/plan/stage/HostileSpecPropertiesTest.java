package mouldwright.plan.stage;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.BaySpan;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Form;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Rates;
import mouldwright.plan.spec.Place;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Skin;
import mouldwright.plan.spec.Survey;
import mouldwright.units.Dimension;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;

/** Whatever figures a spec holds, planning ends with a plan and faults, never with an exception. */
class HostileSpecPropertiesTest {

    @Property(tries = 150, shrinking = ShrinkingMode.OFF)
    void anySectionsGiveAPlanOrFaults(@ForAll("figures") List<Double> f) {
        Specs specs = new Specs().station("A", f.get(0), Specs.rectangle(f.get(1), f.get(2)))
                .station("B", f.get(3), new Form.Superellipse(f.get(4), f.get(5), f.get(6), f.get(7), List.of()))
                .station("C", f.get(8), new Form.Like("A", f.get(9), f.get(10), f.get(11), f.get(12), f.get(13), List.of()));
        sound(Plans.plan(specs.frame(Blocks.frame(0.012)).fill(Blocks.solid(Materials.foam(30, 39), 0.015))
                .skin(Blocks.skin(Materials.schedule(Materials.csm450())))));
    }

    @Property(tries = 150, shrinking = ShrinkingMode.OFF)
    void anyFoamGivesAPlanOrFaults(@ForAll("figures") List<Double> f) {
        Foam foam = new Foam("Odd", Optional.of(given("expansion", Dimension.RATIO, f.get(0))), given("foam density", Dimension.DENSITY, f.get(1)),
                Optional.empty(), Optional.of(given("density of A", Dimension.DENSITY, f.get(2))), Optional.of(given("density of B", Dimension.DENSITY, f.get(3))),
                Optional.of(given("cream time", Dimension.TIME, f.get(4))), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(given("lift", Dimension.LENGTH, f.get(5))), Optional.of(given("pot", Dimension.MASS, f.get(6))), Optional.empty(), Optional.empty(),
                List.of(new Foam.YieldRow(f.get(7), f.get(8), Stated.LIBRARY), new Foam.YieldRow(f.get(9), f.get(10), Stated.LIBRARY)), Materials.foam(30, 39).stock());
        Fill fill = new Fill(foam, new Fill.Core.Shell(given("shell", Dimension.LENGTH, f.get(11))), given("overfill", Dimension.LENGTH, f.get(12)),
                List.of(), Stated.line(34, "fill"));
        sound(Plans.plan(Specs.box().shop(f.get(13)).frame(Blocks.frame(0.012)).fill(fill)));
    }

    @Property(tries = 150, shrinking = ShrinkingMode.OFF)
    void anySkinGivesAPlanOrFaults(@ForAll("figures") List<Double> f) {
        Mat mat = new Mat("Odd", given("areal", Dimension.AREAL_MASS, f.get(0)), given("glass", Dimension.RATIO, f.get(1)),
                given("fibre", Dimension.DENSITY, f.get(2)), Optional.of(given("width", Dimension.LENGTH, f.get(3))), Optional.empty(),
                Optional.of(given("lay", Dimension.AREA_RATE, f.get(4))), Materials.csm450().stock());
        Resin sane = Materials.resin();
        Resin resin = new Resin("Odd", sane.density(), given("cured", Dimension.DENSITY, f.get(5)), Optional.empty(), false, sane.hardener(),
                Optional.of(given("least", Dimension.RATIO, f.get(6))), Optional.of(given("most", Dimension.RATIO, f.get(7))),
                List.of(new Resin.GelRow(f.get(8), f.get(9), f.get(10), Stated.LIBRARY), new Resin.GelRow(20, 0.02, 1080, Stated.LIBRARY)),
                Optional.of(given("pot", Dimension.MASS, f.get(11))), Optional.empty(), Optional.empty(), sane.stock());
        Schedule schedule = new Schedule("Odd", resin, List.of(new Schedule.Layer.Ply(mat, Stated.LIBRARY)), Stated.LIBRARY);
        Skin skin = new Skin(schedule, given("lap", Dimension.LENGTH, f.get(12)), given("gel", Dimension.TIME, f.get(13)),
                given("on foam", Dimension.AREAL_MASS, f.get(14)), List.of(), Stated.line(36, "skin"));
        sound(Plans.plan(Specs.box().shrink(f.get(15)).frame(Blocks.frame(0.012)).skin(skin)));
    }

    @Property(tries = 150, shrinking = ShrinkingMode.OFF)
    void anyMouldGivesAPlanOrFaults(@ForAll("figures") List<Double> f) {
        Coating odd = new Coating("Odd", Optional.of(given("density", Dimension.DENSITY, f.get(0))), Optional.of(given("wet film", Dimension.LENGTH, f.get(1))),
                Optional.of(given("dry film", Dimension.LENGTH, f.get(2))), Optional.of(given("transfer", Dimension.RATIO, f.get(3))), Optional.empty(),
                Optional.empty(), Optional.of(given("recoat", Dimension.TIME, f.get(4))), Materials.csm450().stock());
        Coating wax = Materials.spread("Wax", Dimension.COVERAGE_MASS, f.get(5), f.get(6));
        Schedule schedule = new Schedule("Odd", Materials.resin(), List.of(new Schedule.Layer.Coat(odd, Stated.LIBRARY), new Schedule.Layer.Ply(Materials.csm450(), Stated.LIBRARY),
                new Schedule.Layer.Wait(given("wait", Dimension.TIME, f.get(7)))), Stated.LIBRARY);
        Mould mould = new Mould(schedule, given("draft", Dimension.ANGLE, f.get(8)), given("flange", Dimension.LENGTH, f.get(9)),
                List.of(Blocks.half("A", Mould.Pull.values()[Math.floorMod(Math.round(f.get(10) * 10), 6)]), Blocks.half("B", Mould.Pull.values()[Math.floorMod(Math.round(f.get(11) * 10), 6)])),
                List.of(Blocks.coats(3, wax)), given("hold", Dimension.TIME, f.get(12)), Stated.line(42, "mould"));
        Finish finish = new Finish(List.of(Blocks.coats(2, odd)), List.of(80), given("sanded", Dimension.RATIO, 0.3), Stated.line(39, "finish"));
        Rates rates = new Rates("Odd", Optional.empty(), Optional.empty(), List.of(new Rates.Sanding(80, given("rate", Dimension.AREA_RATE, f.get(13)))), Stated.LIBRARY);
        sound(Plans.plan(Specs.box().mouldedEnds().runOut(f.get(14)).rates(rates).finish(finish).part(schedule).mould(mould)));
    }

    @Property(tries = 100, shrinking = ShrinkingMode.OFF)
    void anySurveyGivesAPlanOrFaults(@ForAll("figures") List<Double> f) {
        Survey.Spot spot = new Survey.Spot(new BaySpan("A", "B", Stated.line(61, "gouge")), f.get(0), Survey.Hand.PORT, f.get(1), new Place.OnLine("nowhere"));
        Survey.Spot found = new Survey.Spot(spot.span(), f.get(2) / 10, Survey.Hand.STARBOARD, f.get(3) / 10, Place.BOTTOM);
        Optional<Survey.Mended> mended = Optional.of(new Survey.Mended(LocalDate.of(2027, 3, 10), Optional.of(f.get(4))));
        sound(Plans.plan(Specs.box().frame(Blocks.frame(0.012)).fill(Blocks.solid(Materials.foam(30, 39), 0.015)).carve(0.001).survey(
                new Survey.Reading.Gouge(spot, f.get(5), f.get(6), f.get(7), Optional.empty(), Stated.line(62, "gouge")),
                new Survey.Reading.Hollow(found, f.get(8), f.get(9), f.get(10), mended, Stated.line(63, "void")),
                new Survey.Reading.Unbonded(found, f.get(11), f.get(12), Optional.empty(), Stated.line(64, "unbonded")),
                new Survey.Reading.Gauge(f.get(13), Survey.Hand.PORT, f.get(14), f.get(15), Stated.line(65, "gauge")),
                new Survey.Reading.Setting("A", f.get(5), f.get(6), Stated.line(66, "station")),
                new Survey.Reading.Setting("nowhere", f.get(5), f.get(6), Stated.line(66, "station")),
                new Survey.Reading.Temperature(f.get(7), Stated.line(67, "temperature")),
                new Survey.Reading.Poured(spot.span(), f.get(8), f.get(9) / 20, Stated.line(68, "poured")))));
    }

    private static void sound(BuildPlan plan) {
        assertThat(plan.quantities()).allSatisfy(q -> {
            assertThat(q.value()).isFinite();
            assertThat(q.low()).isLessThanOrEqualTo(q.value());
            assertThat(q.high()).isGreaterThanOrEqualTo(q.value());
        });
        if (plan.quantities().isEmpty())
            assertThat(plan.faults()).isNotEmpty();
    }

    private static Given given(String name, Dimension dimension, double value) {
        return Stated.given(name, dimension, value);
    }

    /** Mostly sane sizes, with nothing, negatives and absurd ones among them. */
    @Provide Arbitrary<List<Double>> figures() {
        return Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(12, Arbitraries.doubles().between(0.02, 1.5)),
                net.jqwik.api.Tuple.of(4, Arbitraries.doubles().between(1, 1500)),
                net.jqwik.api.Tuple.of(1, Arbitraries.of(0.0, -1.0, 1e-9, 1e9, 1e300, -1e300, 1e-300))).list().ofSize(16);
    }
}
