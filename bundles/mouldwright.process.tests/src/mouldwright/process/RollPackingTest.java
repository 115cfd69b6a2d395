package mouldwright.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import mouldwright.process.RollPacking.Piece;
import mouldwright.process.RollPacking.Placed;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class RollPackingTest {

    @Test
    void stripsLieSideBySideWhereTheyFit() {
        // by hand: 0.8 + 0.45 fill a roll of 1.25; a sum of areas says 1.0 m, a sum of lengths 2 m
        RollPacking packing = RollPacking.of(List.of(new Piece(0.8, 1), new Piece(0.45, 1)), 1.25, 50);
        assertThat(packing.length()).isCloseTo(1, within(1e-12));
        assertThat(packing.offcut()).isCloseTo(0, within(1e-12));
    }

    @Test
    void stripsThatDoNotFitSideBySideTakeTheirOwnLengthThoughTheirAreaIsSmaller() {
        // by hand: three strips of 0.7 m by 1 m have 2.1 m2, which is 1.68 m of roll by area; each takes a cut of its own
        RollPacking packing = RollPacking.of(Collections.nCopies(3, new Piece(0.7, 1)), 1.25, 50);
        assertThat(packing.length()).isCloseTo(3, within(1e-12));
        assertThat(packing.offcut()).isCloseTo(3 * 0.55, within(1e-12));
    }

    @Test
    void aShortPieceUsesTheWidthBesideALongOne() { // by hand: the piece of 0.5 m lies in the cut of 0.9 m
        RollPacking packing = RollPacking.of(List.of(new Piece(0.4, 0.5), new Piece(0.8, 0.9)), 1.25, 50);
        assertThat(packing.length()).isCloseTo(0.9, within(1e-12));
        assertThat(packing.placed()).extracting(Placed::across).containsExactly(0.8, 0.0);
        assertThat(packing.offcut()).isCloseTo(0.9 * 1.25 - 0.2 - 0.72, within(1e-12));
    }

    @Test
    void aPieceGoesIntoTheTightestCutThatHoldsIt() {
        // by hand: 0.40 fits beside 0.85 and beside 0.60; beside 0.85 it leaves room for the 0.65 elsewhere
        RollPacking packing = RollPacking.of(List.of(new Piece(0.60, 1.2), new Piece(0.85, 1.1), new Piece(0.40, 1.0), new Piece(0.65, 0.9)), 1.25, 50);
        assertThat(packing.length()).isCloseTo(1.2 + 1.1, within(1e-12));
    }

    @Test
    void noPieceIsCutOverTheEndOfARoll() { // by hand: of three cuts of 0.4 m two come off a roll of 1 m
        RollPacking packing = RollPacking.of(Collections.nCopies(3, new Piece(1, 0.4)), 1, 1);
        assertThat(packing.rolls()).isEqualTo(2);
        assertThat(packing.placed()).extracting(Placed::roll).containsExactly(1, 1, 2);
        assertThat(packing.length()).isCloseTo(1.2, within(1e-12));
    }

    @Test
    void nothingToCutTakesNoRoll() {
        RollPacking packing = RollPacking.of(List.of(), 1.25, 50);
        assertThat(packing.rolls()).isZero();
        assertThat(packing.length()).isZero();
    }

    @Test
    void aPieceWiderOrLongerThanTheRollIsRefused() {
        assertThatThrownBy(() -> RollPacking.of(List.of(new Piece(1.3, 1)), 1.25, 50)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RollPacking.of(List.of(new Piece(1, 51)), 1.25, 50)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Piece(0, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Property(tries = 300)
    void piecesNeverOverlapAndNeverLeaveTheRoll(@ForAll @Size(max = 40) List<@DoubleRange(min = 0.01, max = 1.25) Double> widths,
            @ForAll @Size(40) List<@DoubleRange(min = 0.01, max = 3) Double> lengths) {
        List<Placed> placed = RollPacking.of(pieces(widths, lengths), 1.25, 4).placed();
        for (Placed a : placed) {
            assertThat(a.across() + a.piece().width()).isLessThanOrEqualTo(1.25 + 1e-9);
            assertThat(a.along() + a.piece().length()).isLessThanOrEqualTo(4 + 1e-9);
            for (Placed b : placed) {
                assertThat(a == b || a.roll() != b.roll() || apart(a, b)).isTrue();
            }
        }
    }

    private static boolean apart(Placed a, Placed b) {
        double rounding = 1e-8;
        return a.along() + a.piece().length() <= b.along() + rounding || b.along() + b.piece().length() <= a.along() + rounding
                || a.across() + a.piece().width() <= b.across() + rounding || b.across() + b.piece().width() <= a.across() + rounding;
    }

    @Property(tries = 300)
    void aPackingTakesNoLessThanItsAreaAndNoMoreThanItsLengths(@ForAll @Size(max = 40) List<@DoubleRange(min = 0.01, max = 1.25) Double> widths,
            @ForAll @Size(40) List<@DoubleRange(min = 0.01, max = 3) Double> lengths) { // the bounds of any packing
        List<Piece> pieces = pieces(widths, lengths);
        RollPacking packing = RollPacking.of(pieces, 1.25, 50);
        assertThat(packing.length()).isBetween(pieces.stream().mapToDouble(Piece::area).sum() / 1.25 - 1e-9,
                pieces.stream().mapToDouble(Piece::length).sum() + 1e-9);
        assertThat(packing.placed()).extracting(Placed::piece).containsExactlyElementsOf(pieces);
    }

    private static List<Piece> pieces(List<Double> widths, List<Double> lengths) {
        return new ArrayList<>(IntStream.range(0, widths.size()).mapToObj(i -> new Piece(widths.get(i), lengths.get(i))).toList());
    }
}
