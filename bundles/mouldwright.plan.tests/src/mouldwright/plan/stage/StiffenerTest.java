package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.OrderEntry;
import mouldwright.plan.PieceEntry;
import mouldwright.plan.PlanFault;
import mouldwright.plan.PotEntry;
import mouldwright.plan.TaskEntry;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Mould;
import mouldwright.plan.spec.Stiffener;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Stiffeners on the mould of a cylinder 300 mm in radius and 1.2 m long, in two halves. By hand, in closed forms. */
class StiffenerTest {

    private static final double HALF = Math.PI * 0.3;
    private static final double DAY = 86400;

    private static Given metres(String name, double value) {
        return Specs.given(name, Dimension.LENGTH, value);
    }

    private static Stiffener stiffener(Stiffener.Run run, Stiffener.Pitch pitch, Stiffener.Core core, Mat... plies) {
        return new Stiffener(run, metres("width", 0.06), metres("height", 0.04), pitch, core, List.of(plies), metres("lap", 0.05),
                Optional.of(Specs.given("cure before stiffeners", Dimension.TIME, 7 * DAY)), Specs.line(44, "stiffener"));
    }

    private static Stiffener.Pitch every(double spacing) {
        return new Stiffener.Pitch.Every(metres("pitch", spacing));
    }

    private static Stiffener.Pitch count(double count) {
        return new Stiffener.Pitch.Count(Specs.given("stiffeners of a part", Dimension.RATIO, count));
    }

    private static BuildPlan stiffened(Stiffener... stiffeners) {
        Mould mould = Specs.mould(Specs.schedule(Specs.csm450()), Specs.half("Upper", Mould.Pull.UP), Specs.half("Lower", Mould.Pull.DOWN));
        return plan(Specs.cylinder().mould(new Mould(mould.schedule(), mould.draft(), mould.flange(), mould.parts(), mould.release(), mould.hold(),
                List.of(stiffeners), mould.origin())));
    }

    private static BuildPlan ribs() {
        return stiffened(stiffener(Stiffener.Run.ACROSS, every(0.5), new Stiffener.Core.Hollow(), Specs.csm450(), Specs.csm450()));
    }

    @Test void ribsStandNoFartherApartThanStatedAndRunRoundTheGirth() { // 1.2 m in three spans of 400 mm: two ribs of pi r on each half
        BuildPlan plan = ribs();
        assertThat(value(plan, "mould.stiffener.1.count")).isEqualTo(4);
        assertThat(value(plan, "mould.stiffener.1.length")).isCloseTo(4 * HALF, Percentage.withPercentage(0.1));
    }

    @Test void lengthwiseStiffenersRunTheWholeLengthOfEachHalf() {
        BuildPlan plan = stiffened(stiffener(Stiffener.Run.ALONG, count(3), new Stiffener.Core.Hollow(), Specs.csm450()));
        assertThat(value(plan, "mould.stiffener.1.count")).isEqualTo(6);
        assertThat(value(plan, "mould.stiffener.length")).isCloseTo(6 * 1.2, Percentage.withPercentage(0.01));
    }

    @Test void lengthwiseStiffenersAreSpreadOverTheGirth() { // half a girth of 942 mm: two spans of 471 mm
        assertThat(value(stiffened(stiffener(Stiffener.Run.ALONG, every(0.5), new Stiffener.Core.Hollow(), Specs.csm450())), "mould.stiffener.1.count")).isEqualTo(2);
    }

    @Test void whoStatesAStiffenerGetsOneHoweverShortThePart() {
        assertThat(value(stiffened(stiffener(Stiffener.Run.ACROSS, every(3), new Stiffener.Core.Hollow(), Specs.csm450())), "mould.stiffener.1.count")).isEqualTo(2);
    }

    @Test void matGoesUpOverAndDownTheCoreAndOnOverTheMould() { // 60 + 2 x 40 + 2 x 50 = 240 mm; a lap of 75 mm at the end of each strip
        BuildPlan plan = ribs();
        double mat = 2 * 0.45 * 4 * 0.24 * (HALF + 0.075);
        assertThat(value(plan, "mould.stiffener.area")).isCloseTo(0.24 * 4 * HALF, Percentage.withPercentage(0.1));
        assertThat(value(plan, "mould.stiffener.mat.Csm450.mass")).isCloseTo(mat, Percentage.withPercentage(0.1));
        assertThat(value(plan, "mould.stiffener.resin.mass")).isCloseTo(2.5 * mat, Percentage.withPercentage(0.1));
    }

    @Test void theMouldWeighsItsStiffenersToo() {
        BuildPlan plan = ribs();
        assertThat(value(plan, "mould.stiffener.mass")).isCloseTo(3.5 * value(plan, "mould.stiffener.mat.Csm450.mass"), Percentage.withPercentage(1e-6));
        assertThat(value(plan, "mould.mass")).isCloseTo(value(stiffened(), "mould.mass") + value(plan, "mould.stiffener.mass"), Percentage.withPercentage(1e-6));
    }

    @Test void aCoreOfSheetIsStripsOnEdge() { // 12 mm sheet: five strips of 40 mm side by side, of 695 kg/m3
        var sheet = Specs.frame(0.012).sheet();
        BuildPlan plan = stiffened(stiffener(Stiffener.Run.ALONG, count(1), new Stiffener.Core.Cut(sheet), Specs.csm450()));
        double area = 2 * 1.2 * 0.04 * Math.rint(0.06 / sheet.thickness().likely());
        assertThat(value(plan, "mould.stiffener.1.core.mass")).isCloseTo(area * sheet.thickness().likely() * sheet.density().likely(), Percentage.withPercentage(0.1));
        assertThat(value(plan, "mould.stiffener.1.sheets")).isCloseTo(area / (sheet.width().likely() * sheet.length().likely() * 0.7), Percentage.withPercentage(0.1));
        assertThat(plan.orders()).extracting(OrderEntry::name).contains(sheet.name());
    }

    @Test void stiffenersFollowTheCureAndTheMouldFollowsThem() { // 7 d before them, what is left of 14 d after them
        BuildPlan plan = ribs();
        assertThat(task(plan, "mould.lay.1").pause()).isCloseTo(7 * DAY, within(1e-6));
        assertThat(task(plan, "mould.stiffen.1").after()).containsExactly("mould.lay.1");
        assertThat(task(plan, "mould.stiffen.1").pause()).isCloseTo(7 * DAY, within(1e-6));
        assertThat(task(plan, "mould.off").after()).containsExactly("mould.stiffen.1");
    }

    @Test void theLastStiffenerCuresBeforeTheMouldIsTakenOff() { // cured for the whole hold: the resin's own time is left to the stiffeners, 12 h
        Stiffener late = stiffener(Stiffener.Run.ACROSS, every(0.5), new Stiffener.Core.Hollow(), Specs.csm450());
        late = new Stiffener(late.run(), late.width(), late.height(), late.pitch(), late.core(), late.plies(), late.lap(),
                Optional.of(Specs.given("cure before stiffeners", Dimension.TIME, 14 * DAY)), late.origin());
        assertThat(task(stiffened(late), "mould.stiffen.1").pause()).isCloseTo(12 * 3600, within(1e-6));
    }

    @Test void stripsAreInTheCutListWithTheirHalf() {
        List<PieceEntry> strips = ribs().pieces().stream().filter(piece -> piece.laminate().equals("mould.stiffener")).toList();
        assertThat(strips).hasSize(8).allSatisfy(strip -> assertThat(strip.width()).isCloseTo(0.24, within(1e-9)));
        assertThat(strips).filteredOn(strip -> strip.where().endsWith("half Upper")).hasSize(4);
    }

    @Test void theirPotsAreListedApart() {
        assertThat(ribs().pots()).extracting(PotEntry::laminate).containsExactly("mould", "mould.stiffener", "mould.stiffener");
    }

    @Test void matResinAndFormersAreOrdered() {
        OrderEntry former = ribs().orders().stream().filter(order -> order.name().equals("former for stiffeners")).findFirst().orElseThrow();
        assertThat(former.amount()).isCloseTo(4 * HALF, Percentage.withPercentage(0.1));
        OrderEntry mat = ribs().orders().stream().filter(order -> order.name().equals("Csm450")).findFirst().orElseThrow();
        assertThat(mat.amount()).isCloseTo(value(ribs(), "mould.mat.Csm450.roll.mass") + value(ribs(), "mould.stiffener.mat.Csm450.roll.mass"), Percentage.withPercentage(1e-6));
    }

    @Test void aStiffenerOfNoWidthIsAFaultAndNoFigure() {
        Stiffener sane = stiffener(Stiffener.Run.ACROSS, every(0.5), new Stiffener.Core.Hollow(), Specs.csm450());
        BuildPlan plan = stiffened(new Stiffener(sane.run(), metres("width", -1), sane.height(), sane.pitch(), sane.core(), sane.plies(), sane.lap(), sane.cured(), sane.origin()));
        assertThat(plan.faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.FIGURE);
        assertThat(plan.quantity("mould.stiffener.mass")).isEmpty();
    }

    private static TaskEntry task(BuildPlan plan, String id) {
        return plan.tasks().stream().filter(task -> task.id().equals(id)).findFirst().orElseThrow(() -> new AssertionError("no " + id));
    }
}
