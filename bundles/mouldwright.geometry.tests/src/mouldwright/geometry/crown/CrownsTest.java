package mouldwright.geometry.crown;

import static mouldwright.geometry.Bodies.NEVER;
import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Crowns by the sagitta of a circle. */
class CrownsTest {
    private static final double R = 2;

    /** A box whose top is a cylinder of radius R across the body, highest at x = 0. */
    private static Loft arched() {
        return loft(x -> half(Bodies.box(0.3, 0, Math.sqrt(R * R - x * x) - 1)), Bodies.spread(-1, 1, 21));
    }

    /** A box whose top is hollowed by the same cylinder. */
    private static Loft hollowed() {
        return loft(x -> half(Bodies.box(0.3, 0, 3 - Math.sqrt(R * R - x * x))), Bodies.spread(-1, 1, 21));
    }

    /** Sagitta R - sqrt(R^2 - c^2/4) of the chord between two places of the arc. */
    private static double sagitta(double fore, double aft) {
        double chord = Math.hypot(aft - fore, Math.sqrt(R * R - aft * aft) - Math.sqrt(R * R - fore * fore));
        return R - Math.sqrt(R * R - chord * chord / 4);
    }

    // closed form: the sagitta
    @Test void theCrownOfAnArchIsItsSagitta() {
        Crown crown = Crowns.stiff(arched(), -0.5, 0.5, Bare.NONE, NEVER);
        CrownPeak peak = crown.convex().orElseThrow();
        assertThat(peak.height()).isCloseTo(sagitta(-0.5, 0.5), Percentage.withPercentage(0.1));
        assertThat(peak.place().x()).isCloseTo(0, within(0.01));
        assertThat(peak.place().stretch()).isEqualTo(2);
    }

    // measured along the normal: on a sloping chord the same formula holds, a height measured upright would be larger
    @Test void theCrownOfASlopingBayIsMeasuredAlongTheNormal() {
        Crown crown = Crowns.stiff(arched(), 0.3, 0.9, Bare.NONE, NEVER);
        assertThat(crown.signedHeight()).isCloseTo(sagitta(0.3, 0.9), Percentage.withPercentage(0.3));
    }

    @Test void aHollowHasANegativeCrown() {
        Crown crown = Crowns.stiff(hollowed(), -0.5, 0.5, Bare.NONE, NEVER);
        assertThat(crown.hollow().orElseThrow().height()).isCloseTo(-sagitta(-0.5, 0.5), Percentage.withPercentage(0.1));
        assertThat(crown.convex()).isEmpty();
        assertThat(crown.height()).isPositive();
    }

    // a board lies flat along a cone
    @Test void aConeHasNoCrown() {
        Crown crown = Crowns.stiff(Bodies.frustum(0.5, 0.3, 0.8, 4), 0.1, 0.7, Bare.NONE, NEVER);
        assertThat(crown.convex()).isEmpty();
        assertThat(crown.hollow()).isEmpty();
        assertThat(crown.height()).isZero();
    }

    @Test void aBareTopIsNotLookedAt() {
        Bare top = new Bare(List.of(new GirthBand(new GirthPlace.AtShare(0.5), GirthPlace.TOP)));
        double whole = Crowns.stiff(arched(), -0.5, 0.5, Bare.NONE, NEVER).height();
        assertThat(Crowns.stiff(arched(), -0.5, 0.5, top, NEVER).height()).isLessThan(whole / 10);
    }

    // the crown falls with the square of the length: n = ceil(sqrt(crown / limit)); common practice
    @Test void aBayIsDividedUntilEachPartPasses() {
        double limit = 0.0015;
        Subdivision division = Crowns.divide(arched(), -0.5, 0.5, limit, Bare.NONE, NEVER);
        int least = (int) Math.ceil(Math.sqrt(sagitta(-0.5, 0.5) / limit));
        assertThat(division.enough()).isTrue();
        assertThat(division.bays()).isBetween(least, least + 1);
        assertThat(division.stations()).hasSize(division.bays() - 1);
        assertThat(division.worst()).isLessThanOrEqualTo(limit);
        assertThat(division.stations().getFirst()).isCloseTo(-0.5 + 1.0 / division.bays(), within(1e-12));
    }

    @Test void aBayThatPassesIsLeftAlone() {
        assertThat(Crowns.divide(arched(), -0.05, 0.05, 0.0015, Bare.NONE, NEVER).bays()).isEqualTo(1);
    }

    @Test void aLimitOfNothingIsNeverMet() {
        assertThat(Crowns.divide(arched(), -0.5, 0.5, 0, Bare.NONE, NEVER).enough()).isFalse();
    }

    // a board that bends over five plates follows an arc closely
    @Test void aFlexibleBoardFollowsAnArch() {
        List<Double> plates = List.of(-1.0, -0.5, 0.0, 0.5, 1.0);
        double stiff = Crowns.stiff(arched(), 0, 0.5, Bare.NONE, NEVER).height();
        double flexible = Crowns.flexible(arched(), plates, 0, 0.5, Bare.NONE, NEVER).height();
        assertThat(flexible).isLessThan(stiff / 50);
    }

    @Test void aFlexibleBoardOnTwoPlatesIsStraight() {
        double stiff = Crowns.stiff(arched(), -0.5, 0.5, Bare.NONE, NEVER).height();
        assertThat(Crowns.flexible(arched(), List.of(-0.5, 0.5), -0.5, 0.5, Bare.NONE, NEVER).height())
                .isCloseTo(stiff, Percentage.withPercentage(1));
    }

    // a bulge is proud, a waist is hollow
    @Property(tries = 30)
    void theSignTellsBulgeFromWaist(@ForAll @DoubleRange(min = -0.05, max = 0.05) double rise) {
        Loft body = loft(x -> half(Bodies.circle(0.4 + rise * (1 - x * x), 1)), Bodies.spread(-1, 1, 5));
        double crown = Crowns.stiff(body, -0.5, 0.5, Bare.NONE, NEVER).signedHeight();
        if (Math.abs(rise) > 1e-6)
            assertThat(Math.signum(crown)).isEqualTo(Math.signum(rise));
        assertThat(crown).isCloseTo(rise / 4, within(2e-3 * Math.abs(rise) + 1e-9));
    }
}
