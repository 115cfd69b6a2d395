package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.frame.PlatePart.Opening;
import mouldwright.geometry.frame.PlatePart.Score;
import mouldwright.geometry.plane.Crosscut;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Member;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Fittings;
import mouldwright.plan.spec.Frame;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Sheet;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class PlatePartsTest {

    private static Frame withBackbone(Given rim, double width, double depth, double above) {
        Frame plain = Specs.frame(0.0117, Frame.Edges.SQUARE, rim);
        return new Frame(plain.sheet(), plain.thickness(), plain.clearance(), plain.edges(), plain.rim(),
                List.of(new Frame.Backbone(Specs.given("w", Dimension.LENGTH, width), Specs.given("d", Dimension.LENGTH, depth),
                        Specs.given("h", Dimension.LENGTH, above), Specs.line(31, "backbone"))), plain.tolerance(), plain.origin());
    }

    private static PlatePart part(BuildPlan plan, String key) {
        return plan.parts().stream().filter(part -> part.key().equals(key)).findFirst().orElseThrow();
    }

    @Test void eachPlateIsAPartThatCanBeCut() {
        BuildPlan plan = plan(Specs.cone().frame(Specs.frame(0.012)));
        assertThat(plan.parts()).hasSameSizeAs(plan.plates()).allSatisfy(part -> {
            assertThat(part.flaw()).isEmpty();
            assertThat(part.kind()).isEqualTo(PlatePart.Kind.PLATE);
            assertThat(part.thickness()).isEqualTo(0.012);
        });
    }

    @Test void aSlotIsAsWideAsItsLayersMeasureAndTheClearance() { // closed form: 5 x 11.7 mm, not 60; common practice
        BuildPlan plan = plan(Specs.cylinder().frame(withBackbone(Defaults.rim(), 0.060, 0.090, 0.4)));
        PlatePart plate = plan.parts().getFirst();
        assertThat(plate.openings()).hasSize(1).first().satisfies(slot -> {
            assertThat(slot.use()).isEqualTo(Opening.Use.SLOT);
            assertThat(slot.ring().maxY() - slot.ring().minY()).isCloseTo(5 * 0.0117 + 0.0002, within(1e-7));
            assertThat(slot.ring().maxZ() - slot.ring().minZ()).isCloseTo(0.090 + 0.0002, within(1e-7));
        });
        assertThat(part(plan, "backbone.1").quantity()).isEqualTo(5);
    }

    @Test void aBackboneInAPocketStandsOnAPostOfWood() { // closed form: slot and a rim of 60 mm on both sides
        BuildPlan plan = plan(Specs.cylinder().frame(withBackbone(Specs.given("rim", Dimension.LENGTH, 0.06), 0.060, 0.090, 0.4)));
        PlatePart plate = plan.parts().getFirst();
        assertThat(plate.openings()).extracting(Opening::use).containsExactlyInAnyOrder(Opening.Use.POCKET, Opening.Use.SLOT);
        assertThat(plate.clear(new PlanePoint(0.0293 + 0.030, 0.44))).isCloseTo(0.030, within(1e-3));
        assertThat(plate.clear(new PlanePoint(0.0293 + 0.062, 0.44))).isNegative();
    }

    @Test void theCentrelineIsScoredAndAHeightOnEveryPlate() {
        BuildPlan plan = plan(Specs.cone().frame(Specs.frame(0.012)));
        assertThat(plan.parts()).allSatisfy(part -> {
            assertThat(part.scores()).anySatisfy(score -> {
                assertThat(score.use()).isEqualTo(Score.Use.CENTRELINE);
                assertThat(score.points()).allSatisfy(p -> assertThat(p.y()).isZero());
            });
            assertThat(part.scores()).anySatisfy(score -> {
                assertThat(score.use()).isEqualTo(Score.Use.HEIGHT);
                assertThat(score.points()).allSatisfy(p -> assertThat(p.z()).isCloseTo(0.6, within(1e-12))); // the axis of the cone
            });
        });
    }

    @Test void aBevelledEdgeIsMarkedWithItsBevel() { // closed form: a cone of slope 0.25
        BuildPlan plan = plan(Specs.cone().frame(Specs.frame(0.012, Frame.Edges.BEVELLED, Defaults.rim())));
        PlatePart plate = plan.parts().get(1);
        assertThat(plate.bevels()).isNotEmpty().allSatisfy(mark -> assertThat(Math.abs(mark.angle())).isCloseTo(Math.atan(0.25), within(1e-4)));
        assertThat(plate.scores()).extracting(Score::use).contains(Score.Use.BEVEL);
        assertThat(plan(Specs.cone().frame(Specs.frame(0.012))).parts().get(1).bevels()).isEmpty();
    }

    @Test void whatIsWrittenOnAPlateStandsInItsWood() {
        BuildPlan plan = plan(Specs.cylinder().frame(withBackbone(Specs.given("rim", Dimension.LENGTH, 0.06), 0.060, 0.090, 0.4)));
        assertThat(plan.parts()).allSatisfy(part -> assertThat(part.notes()).isNotEmpty().allSatisfy(note ->
                assertThat(part.clear(note.at())).as(part.key() + " " + note).isPositive()));
        assertThat(plan.parts().getFirst().notes()).extracting(PlatePart.Note::words)
                .contains(plan.plates().getFirst().station(), "aft face this side", "stands aft of its line");
    }

    @Test void thePartsOfPlatesWeighWhatThePlanSays() {
        BuildPlan plan = plan(Specs.cylinder().frame(withBackbone(Specs.given("rim", Dimension.LENGTH, 0.06), 0.060, 0.090, 0.4)));
        double mass = plan.parts().stream().mapToDouble(part -> part.area() * part.thickness() * part.quantity() * 695).sum();
        assertThat(Plans.value(plan, "frame.mass")).isCloseTo(mass, Percentage.withPercentage(0.001));
    }

    private static Frame fitted(Frame frame, Fittings fittings) {
        return new Frame(frame.sheet(), frame.thickness(), frame.clearance(), frame.edges(), frame.rim(), frame.backbones(), frame.tolerance(), fittings, frame.origin());
    }

    private static Given length(double value) {
        return Specs.given("length", Dimension.LENGTH, value);
    }

    private static Frame halved(double depth, double above) {
        Frame plain = Specs.frame(0.012);
        return new Frame(plain.sheet(), plain.thickness(), plain.clearance(), plain.edges(), plain.rim(),
                List.of(new Frame.Backbone(length(0.012), length(depth), length(above), false, true, Specs.line(31, "backbone"))), plain.tolerance(), plain.origin());
    }

    @Test void halfLapsMeet() { // closed form: what plate and backbone are slotted adds up to the backbone's depth
        BuildPlan plan = plan(Specs.cylinder().frame(halved(0.200, 0.300)));
        PlatePart plate = plan.parts().getFirst(), backbone = part(plan, "backbone.1");
        double slotTop = Crosscut.upright(plate.wood(), 0).getFirst().from();
        double notchFloor = Crosscut.upright(backbone.wood(), 0.006).getFirst().to();
        assertThat(slotTop).isCloseTo(0.400, within(1e-9));
        assertThat(notchFloor).isCloseTo(slotTop, within(1e-9));
        assertThat(slotTop - 0.300 + 0.500 - notchFloor).isCloseTo(0.200, within(1e-9));
    }

    @Test void aNotchIsAsWideAsThePlateMeasuresAndTheClearance() { // closed form: 12.2 mm at each of four plates
        PlatePart backbone = part(plan(Specs.cylinder().frame(halved(0.200, 0.300))), "backbone.1");
        assertThat(backbone.area()).isCloseTo(1.2 * 0.2 - (2 * 0.0122 + 2 * 0.0121) * 0.1, within(1e-9)); // at the ends half of the clearance lies past it
    }

    @Test void holesAreBoredAtOnePlaceOfEveryPlate() {
        BuildPlan plan = plan(Specs.cone().frame(Specs.frame(0.012)));
        assertThat(plan.parts()).allSatisfy(part -> assertThat(part.bores()).hasSize(2).allSatisfy(bore -> assertThat(bore.diameter()).isEqualTo(0.008)));
        assertThat(plan.parts().stream().map(part -> part.bores().getFirst().centre()).distinct()).hasSize(1);
    }

    @Test void holesAreBoredWhereTheSpecSays() {
        Fittings stated = new Fittings(length(0.010), List.of(new Fittings.HolePlace(length(0.1), length(0.6))), Fittings.assumed().join(), Optional.empty(),
                Optional.empty(), Defaults.gauge());
        BuildPlan plan = plan(Specs.cone().frame(fitted(Specs.frame(0.012), stated)));
        assertThat(plan.parts()).allSatisfy(part -> assertThat(part.bores()).extracting(PlatePart.Bore::centre).containsExactly(new PlanePoint(0.1, 0.6)));
    }

    @Test void noHolesAreBoredWhereNoneAreWanted() {
        Fittings none = new Fittings(length(0), List.of(), Fittings.assumed().join(), Optional.empty(), Optional.empty(), Defaults.gauge());
        assertThat(plan(Specs.cone().frame(fitted(Specs.frame(0.012), none))).parts()).allSatisfy(part -> assertThat(part.bores()).isEmpty());
    }

    private static Specs broad() {
        return new Specs().station("A", 0, Specs.rectangle(0.9, 2.0)).station("B", 1, Specs.rectangle(0.9, 2.0));
    }

    @Test void aPlateLargerThanItsSheetIsButtedUnlessTheSpecSaysScarf() { // 1.8 m by 2 m on a sheet of 1.22 m by 2.44 m
        BuildPlan butted = plan(broad().frame(Specs.frame(0.012)));
        assertThat(butted.parts()).extracting(PlatePart::key).contains("plate.A.1", "plate.A.2", "plate.A.strap.1");
        assertThat(butted.assumed()).anySatisfy(assumed -> assertThat(assumed.name()).isEqualTo("strap"));
        Fittings scarf = new Fittings(Defaults.holes(), List.of(), new Fittings.Join.Scarf(Defaults.scarf()), Optional.empty(), Optional.empty(), Defaults.gauge());
        BuildPlan scarfed = plan(broad().frame(fitted(Specs.frame(0.012), scarf)));
        assertThat(scarfed.parts()).noneMatch(part -> part.kind() == PlatePart.Kind.STRAP);
        assertThat(scarfed.assumed()).anySatisfy(assumed -> assertThat(assumed.name()).isEqualTo("scarf"));
    }

    @Test void strapsCountInTheMassOfTheFrame() { // closed form: 192 mm across, 12 mm inside both edges
        BuildPlan plan = plan(broad().frame(Specs.frame(0.012)));
        double holes = 2 * 2 * Math.PI * 0.004 * 0.004;
        assertThat(Plans.value(plan, "frame.mass")).isCloseTo((2 * 1.8 * 2.0 - holes + 2 * (1.8 - 0.024) * 0.192) * 0.012 * 695, Percentage.withPercentage(0.05));
    }

    private static Frame based() {
        Frame plain = Specs.frame(0.012);
        return fitted(plain, new Fittings(Defaults.holes(), List.of(), Fittings.assumed().join(),
                Optional.of(new Fittings.Base(plain.sheet(), length(0.150), Specs.line(33, "base"))),
                Optional.of(new Fittings.Strongback(length(0.045), length(0.095), Optional.of(length(0.400)), Specs.line(34, "strongback"))), Defaults.gauge()));
    }

    @Test void theBaseReachesItsMarginPastThePlatesAllRound() { // closed form: 1.2 m by 0.6 m and 150 mm
        BuildPlan plan = plan(Specs.cylinder().frame(based()));
        assertThat(part(plan, "base").area()).isCloseTo(1.5 * 0.9, Percentage.withPercentage(0.01));
        assertThat(part(plan, "base").scores()).filteredOn(score -> score.use() == Score.Use.STATION).extracting(Score::label).containsExactly("S1", "S2", "S3", "S4", "datum P", "datum S");
        assertThat(Plans.value(plan, "frame.base.mass")).isCloseTo(1.5 * 0.9 * 0.012 * 695, Percentage.withPercentage(0.01));
    }

    @Test void theStrongbackIsTwoRailsAndACrossMemberUnderEveryPlate() { // closed form: 2 x 1.5 m, 4 x (400 - 2 x 45) mm
        BuildPlan plan = plan(Specs.cylinder().frame(based()));
        assertThat(plan.members()).extracting(Member::quantity).containsExactly(2, 4);
        assertThat(plan.members().get(1).length()).isCloseTo(0.310, within(1e-12));
        assertThat(Plans.value(plan, "frame.strongback.length")).isCloseTo(2 * 1.5 + 4 * 0.310, within(1e-9));
        assertThat(plan.members().getFirst().marks()).extracting(Member.Mark::at).satisfies(at -> assertThat(at.get(1) - at.getFirst()).isCloseTo(0.4, within(1e-12)));
    }

    @Test void timberIsListedByItsLengthAndCutFromNoSheet() {
        Frame plain = Specs.frame(0.012);
        Frame frame = new Frame(plain.sheet(), plain.thickness(), plain.clearance(), plain.edges(), plain.rim(),
                List.of(new Frame.Backbone(length(0.045), length(0.095), length(0.4), true, false, Specs.line(31, "backbone"))), plain.tolerance(), plain.origin());
        BuildPlan plan = plan(Specs.cylinder().frame(frame));
        assertThat(plan.parts()).noneMatch(part -> part.kind() == PlatePart.Kind.BACKBONE);
        assertThat(plan.members()).singleElement().satisfies(member -> assertThat(member.length()).isCloseTo(1.2, within(1e-12)));
        assertThat(plan.parts().getFirst().openings().getFirst().ring().maxY()).isCloseTo(0.0452 / 2, within(1e-9));
    }

    @Test void aPartIsJoinedWhenTheMarginOfItsOwnSheetLeavesItNoRoom() { // a disc of 600 mm on 1220: 310 mm are left on both sides
        assertThat(plan(Specs.cylinder().frame(onSheet(0.3099))).parts()).noneMatch(part -> part.key().contains(".1"));
        assertThat(plan(Specs.cylinder().frame(onSheet(0.3111))).parts()).anyMatch(part -> part.key().endsWith(".1"));
    }

    private static Frame onSheet(double margin) {
        Frame plain = Specs.frame(0.012);
        Sheet ply = plain.sheet();
        Sheet edged = new Sheet(ply.name(), ply.width(), ply.length(), ply.thickness(), ply.density(), ply.kerf(), Optional.of(Specs.given("margin", Dimension.LENGTH, margin)), ply.grain(),
                ply.stock());
        return new Frame(edged, plain.thickness(), plain.clearance(), plain.edges(), plain.rim(), List.of(), plain.tolerance(), plain.origin());
    }

    @Test void aPartThatFitsALargerSizeOfItsSheetIsLeftWhole() {
        Frame narrow = onSheet(0.3111);
        Sheet ply = narrow.sheet();
        Sheet stocked = new Sheet(ply.name(), ply.width(), ply.length(), ply.thickness(), ply.density(), ply.kerf(), ply.margin(), ply.grain(), ply.stock(),
                List.of(new Sheet.Size(Specs.given("width", Dimension.LENGTH, 1.525), Specs.given("length", Dimension.LENGTH, 3.050), OptionalDouble.empty())));
        assertThat(plan(Specs.cylinder().frame(new Frame(stocked, narrow.thickness(), narrow.clearance(), narrow.edges(), narrow.rim(), List.of(), narrow.tolerance(), narrow.origin()))).parts())
                .noneMatch(part -> part.key().endsWith(".1"));
    }

    /** Common practice: where one layer is jointed its neighbours run through, over as much as the joint itself takes: 16 thicknesses of a butt's strap, twice the
     *  8 of a scarf. */
    @Test void jointsOfNeighbouringLayersOfABackboneAreStaggered() {
        for (Fittings.Join join : List.of(new Fittings.Join.Strap(Optional.empty()), new Fittings.Join.Scarf(Defaults.scarf()))) {
            Frame frame = withBackbone(Defaults.rim(), 0.060, 0.090, 0.4);
            Fittings plain = Fittings.assumed();
            BuildPlan plan = plan(longCylinder().frame(fitted(frame, new Fittings(plain.holes(), plain.places(), join, plain.base(), plain.strongback(), plain.gauge()))));
            List<PlatePart> odd = pieces(plan, "backbone.1.odd."), even = pieces(plan, "backbone.1.even.");
            assertThat(odd.getFirst().quantity() + even.getFirst().quantity()).isEqualTo(5);
            assertThat(plan.parts()).noneMatch(part -> part.key().startsWith("backbone.1.") && part.kind() == PlatePart.Kind.STRAP);
            for (int i = 0; i + 1 < odd.size(); i++)
                for (int j = 0; j + 1 < even.size(); j++)
                    assertThat(Math.abs(joint(odd, i) - joint(even, j))).isGreaterThanOrEqualTo(16 * 0.0117 - 1e-9);
            assertThat(odd.getFirst().notes()).extracting(PlatePart.Note::words).anySatisfy(words -> assertThat(words).matches("joints of neighbouring layers \\d+ mm apart"));
            double length = odd.getLast().outer().maxY() - odd.getFirst().outer().minY();
            assertThat(even.getLast().outer().maxY() - even.getFirst().outer().minY()).isCloseTo(length, within(1e-9));
        }
    }

    private static List<PlatePart> pieces(BuildPlan plan, String key) {
        List<PlatePart> pieces = plan.parts().stream().filter(part -> part.key().startsWith(key)).toList();
        assertThat(pieces).hasSizeGreaterThan(1);
        return pieces;
    }

    /** Its middle: pieces of a butt meet there, those of a scarf lie over each other. */
    private static double joint(List<PlatePart> pieces, int i) {
        return 0.5 * (pieces.get(i).outer().maxY() + pieces.get(i + 1).outer().minY());
    }

    private static Specs longCylinder() {
        Specs specs = new Specs();
        for (int i = 0; i < 7; i++)
            specs.station("S" + (i + 1), 0.5 * i, Specs.circle(0.3, 0.5));
        return specs;
    }
}
