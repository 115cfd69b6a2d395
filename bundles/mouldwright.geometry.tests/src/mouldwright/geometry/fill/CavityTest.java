package mouldwright.geometry.fill;

import static mouldwright.geometry.Bodies.NEVER;
import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.offset.BuildUp;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.SectionForm;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Cavities by closed forms. */
class CavityTest {
    private static final BuildUp SKIN = BuildUp.uniform(0.005, Bare.NONE);
    private static final Loft CYLINDER = loft(x -> half(Bodies.circle(0.3, 1)), 0, 1);
    private static final Loft BOX = loft(x -> half(Bodies.box(0.305, 0, 0.41)), 0, 1);

    private static Cavity cavity(Loft body, double overfill, OptionalDouble shell, Outline... backbones) {
        return Cavity.of(body, new CavityOrder(0.1, 0.6, SKIN, overfill, shell, List.of(backbones)), NEVER);
    }

    // closed form: pi r^2 L with overfill and without
    @Test void aSolidCylinderIsPouredWithItsOverfill() {
        Cavity solid = cavity(CYLINDER, 0.015, OptionalDouble.empty());
        assertThat(solid.poured().value()).isCloseTo(Math.PI * 0.31 * 0.31 * 0.5, Percentage.withPercentage(0.01));
        assertThat(solid.net().value()).isCloseTo(Math.PI * 0.295 * 0.295 * 0.5, Percentage.withPercentage(0.01));
        assertThat(solid.trim().value())
                .isCloseTo(Math.PI * (0.31 * 0.31 - 0.295 * 0.295) * 0.5, Percentage.withPercentage(0.1));
        assertThat(solid.pocketEmpty()).isFalse();
    }

    // closed form: pi (R2 - r2) over the width of the plates' edges, none of which stays
    @Test void theOverfillRunsOverPlateEdges() {
        List<CavityOrder.PlateEdge> edges = List.of(new CavityOrder.PlateEdge(0.094, 0.006, 0.5), new CavityOrder.PlateEdge(0.606, 0.006, 0.5));
        Cavity with = Cavity.of(CYLINDER, new CavityOrder(0.1, 0.6, SKIN, 0.015, edges, OptionalDouble.of(0.11), List.of()), NEVER);
        Cavity without = cavity(CYLINDER, 0.015, OptionalDouble.of(0.11));
        double ring = Math.PI * (0.31 * 0.31 - 0.295 * 0.295);
        assertThat(with.poured().value() - without.poured().value()).isCloseTo(ring * 0.012, Percentage.withPercentage(0.1));
        assertThat(with.net().value()).isEqualTo(without.net().value());
        assertThat(with.pocket().value()).isEqualTo(without.pocket().value());
        assertThat(with.rates().plates()).isCloseTo(ring, Percentage.withPercentage(0.1));
    }

    // closed form: the trim is pi (R2 - r2) L, R = r + overfill, r = body less build-up
    @Test void whatIsCarvedOffAnswersToBuildUpAndEnds() {
        CavityRates rates = cavity(CYLINDER, 0.015, OptionalDouble.of(0.11)).trimRates();
        assertThat(rates.buildUp()).isCloseTo(-2 * Math.PI * 0.015 * 0.5, Percentage.withPercentage(0.1));
        assertThat(rates.aftEnd()).isCloseTo(Math.PI * (0.31 * 0.31 - 0.295 * 0.295), Percentage.withPercentage(0.1));
        assertThat(rates.foreEnd()).isCloseTo(-rates.aftEnd(), within(1e-9));
    }

    // closed form: the ring between overfill and pocket
    @Test void aShellLeavesItsPocket() {
        Cavity shell = cavity(CYLINDER, 0.015, OptionalDouble.of(0.11));
        assertThat(shell.poured().value())
                .isCloseTo(Math.PI * (0.31 * 0.31 - 0.185 * 0.185) * 0.5, Percentage.withPercentage(0.02));
        assertThat(shell.pocket().value()).isCloseTo(Math.PI * 0.185 * 0.185 * 0.5, Percentage.withPercentage(0.02));
        assertThat(shell.pocketCloses()).isFalse();
    }

    @Test void aShellThickerThanTheSectionLeavesNoPocket() {
        Cavity shell = cavity(CYLINDER, 0, OptionalDouble.of(0.3));
        assertThat(shell.pocketEmpty()).isTrue();
        assertThat(shell.poured().value()).isEqualTo(shell.net().value());
    }

    // closed form: the pocket of a cone of half angle atan(.25) with skin none and shell s closes where r = s
    @Test void aShellMayCloseItsPocketAtTheNarrowEndOnly() {
        Loft cone = Bodies.frustum(0.3, 0.1, 0.8, 2);
        Cavity shell = Cavity.of(cone, new CavityOrder(0, 0.8, BuildUp.NONE, 0, OptionalDouble.of(0.15), List.of()), NEVER);
        assertThat(shell.pocketCloses()).isTrue();
        assertThat(shell.pocketEmpty()).isFalse();
    }

    // closed form: cone frustum R .5, r .3, h .8 without skin: .410501440
    @Test void aTaperedBayIsIntegratedAlongTheBody() {
        Loft cone = Bodies.frustum(0.5, 0.3, 0.8, 2);
        Measured net = Cavity.of(cone, new CavityOrder(0, 0.8, BuildUp.NONE, 0, OptionalDouble.empty(), List.of()), NEVER).net();
        assertThat(net.value()).isCloseTo(0.410501440, Percentage.withPercentage(0.01));
        assertThat(net.errorEstimate()).isLessThan(1e-4);
    }

    // two members of 60 by 90 mm pass through the bay
    @Test void backbonesAreTakenOff() {
        Outline starboard = rectangle(0.1, 0.16), port = rectangle(-0.16, -0.1);
        Cavity with = cavity(BOX, 0.015, OptionalDouble.empty(), starboard, port);
        Cavity without = cavity(BOX, 0.015, OptionalDouble.empty());
        assertThat(without.poured().value() - with.poured().value()).isCloseTo(2 * 0.06 * 0.09 * 0.5, within(1e-9));
    }

    private static Outline rectangle(double fromY, double toY) {
        return Outline.of(List.of(new PlanePoint(fromY, 0.12), new PlanePoint(toY, 0.12), new PlanePoint(toY, 0.21),
                new PlanePoint(fromY, 0.21)));
    }

    // closed form: the box grown by the overfill, 630 by 430 mm, in three equal lifts
    @Test void aBoxIsPouredInEqualLifts() {
        Cavity box = cavity(BOX, 0.015, OptionalDouble.empty());
        Extent extent = box.extent(Attitude.UPRIGHT);
        assertThat(extent.low()).isCloseTo(-0.01, within(1e-9));
        assertThat(extent.height()).isCloseTo(0.43, within(1e-9));
        assertThat(box.lifts(Attitude.UPRIGHT, 3)).hasSize(3)
                .allSatisfy(lift -> assertThat(lift.value()).isCloseTo(0.63 * 0.43 * 0.5 / 3, within(1e-9)));
    }

    @Test void onItsSideTheBoxIsAsHighAsItIsBroad() {
        Cavity box = cavity(BOX, 0.015, OptionalDouble.empty());
        assertThat(box.extent(Attitude.ON_SIDE).height()).isCloseTo(0.63, within(1e-9));
        assertThat(box.between(Attitude.ON_SIDE, -1, 0).value()).isCloseTo(box.poured().value() / 2, within(1e-9));
    }

    // what is low upright is high upside down
    @Test void upsideDownTheLiftsComeInReverse() {
        Loft wedge = loft(x -> half(SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.4, 0.4),
                OutlinePoint.smooth(0, 0.4))), 0, 1);
        Cavity cavity = Cavity.of(wedge, new CavityOrder(0, 1, BuildUp.NONE, 0, OptionalDouble.empty(), List.of()), NEVER);
        List<Measured> upright = cavity.lifts(Attitude.UPRIGHT, 2), turned = cavity.lifts(Attitude.UPSIDE_DOWN, 2);
        assertThat(upright.get(0).value()).isCloseTo(0.04, within(1e-6));
        assertThat(turned.get(0).value()).isCloseTo(0.12, within(1e-6));
        assertThat(upright.get(1).value()).isCloseTo(turned.get(0).value(), within(1e-9));
    }

    // a shell's lifts add up to what is poured
    @Test void theLiftsOfAShellAddUp() {
        Cavity shell = cavity(CYLINDER, 0.015, OptionalDouble.of(0.1));
        double sum = shell.lifts(Attitude.UPRIGHT, 4).stream().mapToDouble(Measured::value).sum();
        assertThat(sum).isCloseTo(shell.poured().value(), within(1e-9));
    }

    @Test void aBayWithoutLengthHoldsNothing() {
        Cavity none = Cavity.of(BOX, new CavityOrder(0.5, 0.5, SKIN, 0.015, OptionalDouble.empty(), List.of()), NEVER);
        assertThat(none.poured().value()).isZero();
        assertThat(none.extent(Attitude.UPRIGHT).height()).isZero();
    }

    @Test void measuringACavityEndsWhenItIsCancelled() {
        CavityOrder order = new CavityOrder(0.1, 0.6, SKIN, 0, OptionalDouble.empty(), List.of());
        assertThatExceptionOfType(CancellationException.class).isThrownBy(() -> Cavity.of(BOX, order, () -> true));
    }
}
