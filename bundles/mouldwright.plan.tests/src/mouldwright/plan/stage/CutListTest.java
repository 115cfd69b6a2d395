package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static mouldwright.plan.stage.Plans.quantity;
import static mouldwright.plan.stage.Plans.value;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.PieceEntry;
import mouldwright.plan.PlanFault;
import mouldwright.plan.Quantity;
import mouldwright.plan.draw.Draws;
import mouldwright.plan.draw.Spread;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Skin;
import mouldwright.units.Dimension;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Pieces of mat and how they come off the rolls; expected figures are worked by hand. */
class CutListTest {

    private static final double HALF = Math.PI * 0.3; // half the girth of the cylinder, 0.9425 m

    private static Mat roll(double width, double length) {
        Mat mat = Specs.csm450();
        return new Mat(mat.name(), mat.areal(), mat.glass(), mat.fibre(), Optional.of(Specs.given("roll width", Dimension.LENGTH, width)),
                Optional.of(Specs.given("roll length", Dimension.LENGTH, length)), mat.lay(), mat.stock());
    }

    /** The cylinder with a bare lower half: one run of 0.9425 m across the top of each of three bays of 0.4 m. */
    private static BuildPlan arch(Mat mat, Skin.Rule... rules) {
        return plan(Specs.cylinder().bare(0, 0.5).skin(Specs.skin(Specs.schedule(mat), rules)));
    }

    @Test void aPieceIsAsLongAsItsBayAndALap() {
        assertThat(arch(Specs.csm450()).pieces()).hasSize(3).allSatisfy(piece -> {
            assertThat(piece.length()).isCloseTo(0.45, within(1e-9));
            assertThat(piece.width()).isCloseTo(HALF, within(1e-4));
        });
    }

    @Test void onATaperTheLengthIsThatOfTheSlope() { // closed form: 0.2667 m along and 0.0667 m inward
        BuildPlan plan = plan(Specs.cone().skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        assertThat(plan.pieces().getFirst().length()).isCloseTo(Math.hypot(0.8 / 3, 0.2 / 3) + 0.05, within(1e-6));
    }

    @Test void fullWidthsAndARestGoRoundTheGirth() { // closed form: 1.885 m and two laps are 1.25 m and 0.735 m
        BuildPlan plan = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        assertThat(plan.pieces().subList(0, 2)).extracting(PieceEntry::width).satisfiesExactly(
                full -> assertThat(full).isEqualTo(1.25), rest -> assertThat(rest).isCloseTo(2 * HALF + 0.1 - 1.25, within(1e-4)));
        assertThat(value(plan, "skin.mat.Csm450.pieces")).isEqualTo(6);
    }

    @Test void aNarrowLocalPlyComesOffBesideTheWideOne() {
        // by hand: 2 x 15 % of 0.9425 m is 0.283 m, which lies beside 0.9425 m on 1.25 m: no more length than without it. A sum of areas
        // says 1.32 m, lengths one after the other 2.70 m.
        BuildPlan plan = arch(Specs.csm450(), Specs.add("S1", "S4", Specs.girth(0.85, 1), Specs.csm450(), 1));
        assertThat(value(plan, "skin.mat.Csm450.length")).isCloseTo(3 * 0.45, Percentage.withPercentage(0.01));
        assertThat(value(plan, "skin.mat.Csm450.offcut")).isCloseTo(3 * 0.45 * (1.25 - 1.3 * HALF), within(2e-4));
    }

    @Test void aWiderLocalPlyTakesCutsOfItsOwn() { // by hand: 2 x 20 % is 0.377 m, which does not fit beside; three lie in one cut
        BuildPlan plan = arch(Specs.csm450(), Specs.add("S1", "S4", Specs.girth(0.8, 1), Specs.csm450(), 1));
        assertThat(value(plan, "skin.mat.Csm450.length")).isCloseTo(4 * 0.45, Percentage.withPercentage(0.01));
    }

    @Test void whatIsSpoiltIsOrderedToo() { // none likely, 15 % at most, assumed
        BuildPlan plan = arch(Specs.csm450());
        assertThat(quantity(plan, "skin.mat.Csm450.length").low()).isEqualTo(value(plan, "skin.mat.Csm450.length"));
        assertThat(quantity(plan, "skin.mat.Csm450.length").high()).isCloseTo(1.15 * 3 * 0.45, within(1e-6));
        assertThat(value(plan, "skin.mat.Csm450.roll.mass")).isCloseTo(3 * 0.45 * 1.25 * 0.45, within(1e-6)); // length x width x areal mass
    }

    @Test void aPlugGrownByShrinkTakesLongerPieces() { // closed form: 1 / (1 - 0.003)
        BuildPlan plan = plan(Specs.cylinder().shrink(0.003).bare(0, 0.5).skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        assertThat(plan.pieces().getFirst().length()).isCloseTo(0.4 / 0.997 + 0.05, within(1e-9));
    }

    @Test void piecesAreNumberedInTheOrderOfLaying() {
        BuildPlan plan = arch(Specs.csm450(), Specs.add("S1", "S2", Specs.girth(0.85, 1), Specs.csm450(), 2));
        assertThat(plan.pieces()).extracting(PieceEntry::piece).containsExactly(1, 2, 3, 4, 5);
        assertThat(plan.pieces()).extracting(PieceEntry::ply).containsExactly(1, 1, 1, 2, 3);
        assertThat(plan.pieces()).extracting(PieceEntry::where).containsExactly("bay S1 to S2", "bay S2 to S3", "bay S3 to S4", "bay S1 to S2", "bay S1 to S2");
    }

    @Test void noPieceIsCutOverTheEndOfARoll() { // by hand: two cuts of 0.45 m come off a roll of 1 m
        BuildPlan plan = arch(roll(1.25, 1));
        assertThat(value(plan, "skin.mat.Csm450.rolls")).isEqualTo(2);
        assertThat(plan.pieces()).extracting(PieceEntry::roll).containsExactly(1, 1, 2);
        assertThat(plan.faults()).isEmpty();
    }

    @Test void aPieceLongerThanItsRollIsReported() {
        assertThat(arch(roll(1.25, 0.4)).faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.PIECE_TOO_LONG);
    }

    @Test void morePiecesThanAnybodyCutsAreReportedAndNotPacked() { // 0.2 mm of gain a piece would take 9425 round the girth
        BuildPlan plan = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(roll(0.0502, 50)))));
        assertThat(plan.faults()).extracting(PlanFault::kind).containsExactly(PlanFault.Kind.TOO_MANY_PIECES);
        assertThat(plan.pieces()).isEmpty();
    }

    @Test void piecesOfAWholeSpecLieApartOnTheirRolls() {
        List<PieceEntry> pieces = Plans.plan(Specs.canopy()).pieces();
        assertThat(pieces).isNotEmpty();
        for (PieceEntry a : pieces)
            for (PieceEntry b : pieces)
                if (a != b && a.laminate().equals(b.laminate()) && a.mat().equals(b.mat()) && a.roll() == b.roll())
                    assertThat(a.along() + a.length() < b.along() + 1e-8 || b.along() + b.length() < a.along() + 1e-8
                            || a.across() + a.width() < b.across() + 1e-8 || b.across() + b.width() < a.across() + 1e-8).isTrue();
    }

    @Test void thePiecesOfABayAreWideEnoughForItsGirthAndTheirLaps() { // n widths less n - 1 laps, or n laps all round
        BuildPlan plan = plan(Specs.cylinder().skin(Specs.skin(Specs.schedule(Specs.csm450()))));
        for (int bay = 0; bay < 3; bay++)
            assertThat(plan.pieces().get(2 * bay).width() + plan.pieces().get(2 * bay + 1).width() - 2 * 0.05).isCloseTo(2 * HALF, within(1e-4));
    }

    @Test void anUncertainLapMovesPiecesAndLength() { // by hand: with a lap of 0.35 m 1.885 m takes three pieces round
        Skin skin = Specs.skin(Specs.schedule(Specs.csm450()));
        Skin ranged = new Skin(skin.schedule(), Specs.given("lap", Dimension.LENGTH, 0.05, 0.05, 0.35), skin.gel(), skin.onFoam(), List.of(), skin.origin());
        assertThat(quantity(plan(Specs.cylinder().skin(ranged)), "skin.mat.Csm450.pieces").high()).isEqualTo(9);
    }

    @Test void drawsOfAWholeSpecKeepToItsLowsAndHighs() {
        BuildPlan plan = Plans.plan(Specs.canopy());
        Draws draws = Draws.of(plan.reckoning(), 200, 3, () -> false);
        assertThat(draws.spreads().keySet()).containsExactlyElementsOf(plan.quantities().stream().map(Quantity::id).toList());
        for (var quantity : plan.quantities()) {
            if (quantity.id().equals("plan.waiting")) // another path may become the critical one between two corners
                continue;
            Spread spread = draws.spread(quantity.id()).orElseThrow();
            double rounding = 1e-9 * Math.abs(quantity.value());
            assertThat(List.of(quantity.low() - rounding, spread.tenth(), spread.half(), spread.ninety(), quantity.high() + rounding)).as(quantity.id()).isSorted();
        }
    }

    @Test void anOrderToBeNinetyPercentSureLiesBetweenLikelyAndHigh() { // the foam's share of resin and the glass share both vary
        BuildPlan plan = Plans.plan(Specs.canopy());
        Spread resin = Draws.of(plan.reckoning(), 500, 1, () -> false).spread("skin.resin.mass").orElseThrow();
        assertThat(resin.ninety()).isStrictlyBetween(value(plan, "skin.resin.mass"), quantity(plan, "skin.resin.mass").high());
    }

    @Test void everyPlyOfASpecIsCut() { // as many plies as there are sets of pots
        BuildPlan plan = Plans.plan(Specs.canopy());
        assertThat(plan.pieces().stream().filter(piece -> piece.laminate().equals("skin")).map(PieceEntry::ply).distinct()).containsExactlyElementsOf(IntStream.rangeClosed(1, (int) plan.pots().stream().filter(pot -> pot.laminate().equals("skin")).count()).boxed().toList());
    }
}
