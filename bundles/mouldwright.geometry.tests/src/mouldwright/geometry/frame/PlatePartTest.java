package mouldwright.geometry.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.geometry.frame.PlatePart.Bore;
import mouldwright.geometry.frame.PlatePart.Opening;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import org.junit.jupiter.api.Test;

/** What a part is, and what makes it impossible to cut. */
class PlatePartTest {

    static Outline box(double fromY, double fromZ, double toY, double toZ) {
        return Outline.of(List.of(new PlanePoint(fromY, fromZ), new PlanePoint(toY, fromZ), new PlanePoint(toY, toZ), new PlanePoint(fromY, toZ)));
    }

    static PlatePart part(Outline outer, List<Outline> pockets, Bore... bores) {
        return new PlatePart("plate.A", PlatePart.Kind.PLATE, "A", outer, pockets.stream().map(ring -> new Opening(Opening.Use.POCKET, ring)).toList(), List.of(bores),
                List.of(), List.of(), List.of(), List.of(), "Ply12", 0.012, 1);
    }

    @Test void itsAreaLeavesOutOpeningsAndHoles() { // closed form: 1 x 0.5 less 0.2 x 0.1 less a circle of 10 mm
        PlatePart part = part(box(0, 0, 1, 0.5), List.of(box(0.1, 0.1, 0.3, 0.2)), new Bore(new PlanePoint(0.8, 0.4), 0.010, "wire"));
        assertThat(part.area()).isCloseTo(0.5 - 0.02 - Math.PI * 0.005 * 0.005, within(1e-15));
        assertThat(part.flaw()).isEmpty();
    }

    @Test void aRingThatCrossesItselfCannotBeCut() {
        Outline bow = Outline.of(List.of(new PlanePoint(0, 0), new PlanePoint(1, 1), new PlanePoint(1, 0), new PlanePoint(0, 1.5)));
        assertThat(part(bow, List.of()).flaw()).hasValueSatisfying(words -> assertThat(words).contains("crosses"));
    }

    @Test void anOpeningOutsideTheCutLineCannotBeCut() {
        assertThat(part(box(0, 0, 1, 1), List.of(box(2, 2, 3, 3))).flaw()).hasValueSatisfying(words -> assertThat(words).contains("outside"));
    }

    @Test void openingsThatOverlapCannotBeCut() {
        assertThat(part(box(0, 0, 1, 1), List.of(box(0.1, 0.1, 0.5, 0.5), box(0.3, 0.3, 0.7, 0.7))).flaw()).isPresent();
    }

    @Test void aHoleThatRunsOutOfTheWoodCannotBeBored() {
        assertThat(part(box(0, 0, 1, 1), List.of(), new Bore(new PlanePoint(0.003, 0.5), 0.008, "wire")).flaw())
                .hasValueSatisfying(words -> assertThat(words).contains("wire"));
    }

    @Test void aPlaceIsClearByItsDistanceToTheNearestEdge() { // closed form
        PlatePart part = part(box(0, 0, 1, 1), List.of(box(0.4, 0.4, 0.6, 0.6)));
        assertThat(part.clear(new PlanePoint(0.3, 0.5))).isCloseTo(0.1, within(1e-15));
        assertThat(part.clear(new PlanePoint(0.5, 0.5))).isCloseTo(-0.1, within(1e-15));
        assertThat(part.clear(new PlanePoint(-0.2, 0.5))).isCloseTo(-0.2, within(1e-15));
    }

    @Test void notesStandInTheWoodOfARing() {
        PlatePart ring = part(box(0, 0, 1, 1), List.of(box(0.06, 0.06, 0.94, 0.94)));
        assertThat(NoteSpace.write(ring.wood(), List.of("S1", "aft face this side"))).hasSize(2).allSatisfy(note -> {
            assertThat(ring.clear(note.at())).isPositive();
            assertThat(note.height()).isGreaterThanOrEqualTo(0.005);
        });
    }
}
