package mouldwright.geometry.nest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.data.Offset.offset;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import org.junit.jupiter.api.Test;

/** Layouts whose best answer is known. */
class NestTest {

    private static Outline box(double x, double y, double width, double height) {
        return Outline.of(List.of(new PlanePoint(x, y), new PlanePoint(x + width, y), new PlanePoint(x + width, y + height), new PlanePoint(x, y + height)));
    }

    private static Outline disc(double radius) {
        return Outline.of(IntStream.range(0, 120).mapToObj(k -> new PlanePoint(radius * Math.cos(k * Math.PI / 60), radius * Math.sin(k * Math.PI / 60))).toList());
    }

    private static NestPart plain(String key, Outline outer, Turns turns) {
        return new NestPart(key, outer, List.of(), turns);
    }

    private static NestPart board(String key, double width, double height) {
        return plain(key, box(0, 0, width, height), Turns.QUARTERS);
    }

    private static Nest nest(double length, double width, double kerf, double margin, int trials, NestPart... parts) {
        Nest nest = Nester.nest(new NestOrder(length, width, kerf, margin, List.of(parts), trials, 1), progress -> { }, () -> false);
        LaidApart.check(nest);
        return nest;
    }

    /** Closed form: the boards' areas add up to the sheet's. */
    @Test void boardsThatTileASheetFillItToTheLastDigit() {
        Nest nest = nest(2.44, 1.22, 0, 0, 100, board("a", 1.22, 0.61), board("b", 1.22, 0.61), board("c", 0.61, 0.61), board("d", 0.61, 0.61),
                board("e", 0.305, 0.61), board("f", 0.305, 0.61), board("g", 0.61, 0.305), board("h", 0.61, 0.305));
        assertThat(nest.sheets()).isEqualTo(1);
        assertThat(nest.leastSheets()).isEqualTo(1);
        assertThat(nest.shareUsed()).isCloseTo(1, offset(1e-12));
        assertThat(nest.usedLength()).isCloseTo(2.44, offset(1e-9));
    }

    /** Closed form: six boards, three by two, each a third and a half of what 10 mm margins and the cuts between them leave of a sheet, use all of it. */
    @Test void aCutIsTakenBetweenBoardsAndNotAtTheMargin() {
        double kerf = 0.005, margin = 0.01, board = (1.2 - 2 * margin - 2 * kerf) / 3, depth = (1.2 - 2 * margin - kerf) / 2;
        NestPart[] six = IntStream.range(0, 6).mapToObj(k -> board("b" + k, board, depth)).toArray(NestPart[]::new);
        Nest nest = nest(1.2, 1.2, kerf, margin, 50, six);
        assertThat(nest.sheets()).isEqualTo(1);
        assertThat(nest.usedLength()).isCloseTo(1.2 - margin, offset(1e-6));
        assertThat(nest(1.2, 1.2 - 1e-5, kerf, margin, 50, six).sheets()).isEqualTo(2);
    }

    @Test void aSmallRingLiesInThePocketOfALargerOne() {
        NestPart large = new NestPart("large", disc(0.45), List.of(disc(0.38)), Turns.QUARTERS);
        NestPart middle = new NestPart("middle", disc(0.36), List.of(disc(0.30)), Turns.QUARTERS);
        Nest nest = nest(1, 1, 0.006, 0.01, 20, middle, plain("disc", disc(0.28), Turns.QUARTERS), large);
        assertThat(nest.sheets()).isEqualTo(1);
        assertThat(nest.shareUsed()).isCloseTo(nest.order().parts().stream().mapToDouble(NestPart::area).sum(), offset(1e-12));
    }

    @Test void whatDoesNotFitThePocketTakesASheetOfItsOwn() {
        NestPart large = new NestPart("large", disc(0.45), List.of(disc(0.38)), Turns.QUARTERS);
        assertThat(nest(1, 1, 0.006, 0.01, 20, large, plain("disc", disc(0.375), Turns.QUARTERS)).sheets()).isEqualTo(2);
    }

    @Test void aBoardThatFitsOnlyTurnedIsTurned() {
        Nest nest = nest(2.44, 1.22, 0.003, 0.01, 10, board("tall", 0.3, 2.0));
        assertThat(nest.placements()).singleElement().satisfies(p -> assertThat(p.degrees()).isIn(90, 270));
        assertThat(nest(2.44, 1.22, 0.003, 0.01, 10, plain("tall", box(0, 0, 0.3, 2.0), Turns.NONE)).tooLarge()).hasSize(1);
    }

    /** Pythagoras: the diagonal of a sheet of 1 m square is 1.414 m; a lath of 1.2 m lies only along it. */
    @Test void aLathLongerThanTheSheetLiesAcrossItsCorners() {
        assertThat(nest(1, 1, 0.003, 0, 10, plain("lath", box(0, 0, 1.2, 0.05), Turns.FREE)).placements()).singleElement()
                .satisfies(p -> assertThat(p.degrees() % 90).isEqualTo(45));
    }

    /** Three strips across would share one sheet; with their grain along it they take two. */
    @Test void grainIsKeptThoughItCostsASheet() {
        NestPart[] free = IntStream.range(0, 3).mapToObj(k -> plain("f" + k, box(0, 0, 0.9, 0.31), Turns.QUARTERS)).toArray(NestPart[]::new);
        NestPart[] kept = IntStream.range(0, 3).mapToObj(k -> plain("g" + k, box(0, 0, 0.9, 0.31), Turns.ALONG)).toArray(NestPart[]::new);
        assertThat(nest(1.2, 0.95, 0, 0, 20, free).sheets()).isEqualTo(1);
        assertThat(nest(0.94, 0.91, 0, 0, 20, kept).sheets()).isEqualTo(2);
        assertThat(nest(0.94, 0.91, 0, 0, 20, kept).placements()).allSatisfy(p -> assertThat(p.degrees() % 180).isZero());
    }

    @Test void aPartLargerThanAnySheetIsListedAndTheOthersAreLaid() {
        Nest nest = nest(2.44, 1.22, 0.003, 0.01, 10, board("huge", 2.5, 1.0), board("fine", 0.5, 0.5));
        assertThat(nest.tooLarge()).extracting(NestPart::key).containsExactly("huge");
        assertThat(nest.sheets()).isEqualTo(1);
    }

    @Test void nothingToLayTakesNoSheet() {
        assertThat(nest(2.44, 1.22, 0.003, 0.01, 10).sheets()).isZero();
        assertThat(nest(2.44, 1.22, 0.003, 0.01, 10).shareUsed()).isZero();
    }

    /** Two L-shaped brackets of 3/4 of a square each interlock in less than two squares; no box round them could. */
    @Test void bracketsInterlock() {
        Outline bracket = Outline.of(List.of(new PlanePoint(0, 0), new PlanePoint(0.6, 0), new PlanePoint(0.6, 0.2), new PlanePoint(0.2, 0.2),
                new PlanePoint(0.2, 0.6), new PlanePoint(0, 0.6)));
        Nest nest = nest(0.85, 0.62, 0.005, 0.005, 20, plain("a", bracket, Turns.QUARTERS), plain("b", bracket, Turns.QUARTERS));
        assertThat(nest.sheets()).isEqualTo(1);
    }

    /** Discs of one size in two rows lie at 60 degrees; the rows are sqrt 3 / 2 of their pitch apart. The sheet is 2 mm wider than that. */
    @Test void discsLieInEachOthersGaps() {
        double radius = 0.1, kerf = 0.004, pitch = 2 * radius + kerf;
        NestPart[] discs = IntStream.range(0, 9).mapToObj(k -> plain("d" + k, disc(radius), Turns.NONE)).toArray(NestPart[]::new);
        double across = pitch * (1 + Math.sqrt(3) / 2) - kerf + 0.002;
        Nest nest = nest(1.2, across, kerf, 0, 24, discs);
        assertThat(nest.sheets()).isEqualTo(1);
        assertThat(nest.usedLength()).isBetween(4.5 * pitch - 1e-3, 5.5 * pitch);
    }

    @Test void aMixedSetTakesTheLeastSheetsItsAreasAllow() {
        List<NestPart> parts = new ArrayList<>();
        for (int k = 0; k < 6; k++) {
            parts.add(new NestPart("ring" + k, disc(0.28), List.of(disc(0.22)), Turns.QUARTERS));
            parts.add(plain("disc" + k, disc(0.2), Turns.QUARTERS));
            parts.add(board("strip" + k, 0.9, 0.06));
            parts.add(board("square" + k, 0.15, 0.15));
        }
        Nest nest = nest(2.44, 1.22, 0.006, 0.01, 24, parts.toArray(NestPart[]::new));
        assertThat(nest.sheets()).isEqualTo(nest.leastSheets()).isEqualTo(1);
    }

    /** Brunn-Minkowski, by hand: a disc grown by half a cut is a disc, so eleven discs of 1/11 of the sheet each are one sheet, twelve are two. */
    @Test void theLeastSheetsFollowFromAreas() {
        double kerf = 0.01, grown = Math.sqrt((1 + kerf) * (1 + kerf) / 11 / Math.PI);
        NestPart disc = plain("d", disc(grown - kerf / 2), Turns.NONE);
        NestOrder order = new NestOrder(1, 1, kerf, 0, List.of(disc), 1, 1);
        assertThat(NestOrder.leastSheets(order, java.util.Collections.nCopies(11, disc))).isEqualTo(1);
        assertThat(NestOrder.leastSheets(order, java.util.Collections.nCopies(12, disc))).isEqualTo(2);
        assertThat(NestOrder.leastSheets(order, List.of())).isZero();
    }

    /** A pocket nothing fits is lost to all. */
    @Test void aPocketTooSmallForAnyPartCountsAsTaken() {
        NestPart ring = new NestPart("r", box(0, 0, 0.7, 0.7), List.of(box(0.1, 0.1, 0.5, 0.5)), Turns.NONE);
        NestOrder order = new NestOrder(1, 1, 0, 0, List.of(ring), 1, 1);
        assertThat(NestOrder.leastSheets(order, List.of(ring, ring, ring))).isEqualTo(2);
        assertThat(NestOrder.leastSheets(order, List.of(ring, ring, ring, board("s", 0.4, 0.4)))).isEqualTo(1);
    }

    private static NestPart[] lots() {
        return IntStream.range(0, 14).mapToObj(k -> k % 2 == 0 ? board("b" + k, 0.1 + 0.03 * k, 0.4 - 0.02 * k) : plain("d" + k, disc(0.05 + 0.01 * k), Turns.QUARTERS))
                .toArray(NestPart[]::new);
    }

    private static List<String> places(Nest nest) {
        return nest.placements().stream().map(p -> p.sheet() + " " + p.part().key() + " " + p.degrees() + " " + p.x() + " " + p.y()).toList();
    }

    @Test void theSameOrderGivesTheSamePlaces() {
        assertThat(places(nest(1.5, 0.8, 0.004, 0.01, 30, lots()))).isEqualTo(places(nest(1.5, 0.8, 0.004, 0.01, 30, lots())));
    }

    @Test void moreTrialsAreNeverWorse() {
        Nest few = nest(1.5, 0.8, 0.004, 0.01, 8, lots()), many = nest(1.5, 0.8, 0.004, 0.01, 48, lots());
        assertThat(many.sheets() + many.usedLength() / 10).isLessThanOrEqualTo(few.sheets() + few.usedLength() / 10);
        assertThat(many.tried()).isEqualTo(48);
        assertThat(many.stopped()).isFalse();
    }

    @Test void stoppedAtOnceItStillLaysEveryPart() {
        Nest nest = Nester.nest(new NestOrder(1.5, 0.8, 0.004, 0.01, List.of(lots()), 500, 1), progress -> { }, () -> true);
        LaidApart.check(nest);
        assertThat(nest.stopped()).isTrue();
        assertThat(nest.tried()).isEqualTo(1);
    }

    @Test void stoppedOnTheWayItKeepsTheBestSoFar() {
        AtomicInteger rounds = new AtomicInteger();
        List<NestProgress> told = new ArrayList<>();
        Nest nest = Nester.nest(new NestOrder(1.5, 0.8, 0.004, 0.01, List.of(lots()), 500, 1), progress -> {
            rounds.incrementAndGet();
            told.add(progress);
        }, () -> rounds.get() >= 3);
        LaidApart.check(nest);
        assertThat(nest.stopped()).isTrue();
        assertThat(told).hasSize(3).last().satisfies(last -> {
            assertThat(last.sheets()).isEqualTo(nest.sheets());
            assertThat(last.usedLength()).isEqualTo(nest.usedLength());
        });
    }

    @Test void sheetsWithNothingInsideTheirMarginAreRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> new NestOrder(1, 0.02, 0, 0.01, List.of(), 1, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> board("none", 0, 1));
    }

    /** Closed form: five squares of one metre cost 6 on five small sheets, 8 on two large ones, and 5.2 on one of each. */
    @Test void ofTwoSizesTheCheapestTogetherAreTaken() {
        NestPart[] five = IntStream.range(0, 5).mapToObj(k -> board("b" + k, 1, 1)).toArray(NestPart[]::new);
        Nest nest = Nester.nest(new NestOrder(List.of(new NestSheet(1, 1, 1.2), new NestSheet(2, 2, 4)), 0, 0, List.of(five), 40, 1), progress -> { }, () -> false);
        LaidApart.check(nest);
        assertThat(nest.cost()).isCloseTo(5.2, offset(1e-12));
        assertThat(nest.taken()).extracting(NestSheet::length).containsExactlyInAnyOrder(1.0, 2.0);
    }

    /** Four on the large sheet cost 4; with the small ones at 0.9 they cost 3.6, though they are four. */
    @Test void aCheapSizeIsTakenThoughItTakesMoreSheets() {
        NestPart[] four = IntStream.range(0, 4).mapToObj(k -> board("b" + k, 1, 1)).toArray(NestPart[]::new);
        Nest nest = Nester.nest(new NestOrder(List.of(new NestSheet(2, 2, 4), new NestSheet(1, 1, 0.9)), 0, 0, List.of(four), 40, 1), progress -> { }, () -> false);
        assertThat(nest.sheets()).isEqualTo(4);
        assertThat(nest.leastSheets()).as("all on the largest").isEqualTo(1);
    }

    @Test void aPartThatFitsOnlyTheLargerSizeBringsOneAlong() {
        Nest nest = Nester.nest(new NestOrder(List.of(new NestSheet(1, 1, 1), new NestSheet(3, 1.5, 9)), 0.003, 0.01, List.of(board("long", 2.5, 0.2), board("short", 0.5, 0.5)), 20, 1),
                progress -> { }, () -> false);
        LaidApart.check(nest);
        assertThat(nest.tooLarge()).isEmpty();
        assertThat(nest.taken()).as("the short one lies beside it").extracting(NestSheet::length).containsExactly(3.0);
    }

    @Test void withTwoSizesTooTheSameOrderGivesTheSameLayout() {
        NestOrder order = new NestOrder(List.of(NestSheet.byArea(1.5, 0.8), NestSheet.byArea(1, 0.7)), 0.004, 0.01, List.of(lots()), 60, 7);
        Nest once = Nester.nest(order, progress -> { }, () -> false);
        LaidApart.check(once);
        assertThat(Nester.nest(order, progress -> { }, () -> false).placements()).isEqualTo(once.placements());
    }
}
