package mouldwright.geometry.draft;

import static mouldwright.geometry.Bodies.NEVER;
import static mouldwright.geometry.Bodies.full;
import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.measure.SurfaceRegion;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.SectionForm;
import org.junit.jupiter.api.Test;

/** Draft by the slopes of simple bodies. */
class DraftsTest {
    private static final double LIMIT = Math.toRadians(2);
    private static final Loft CYLINDER = loft(x -> half(Bodies.circle(0.5, 1)), 0, 2);
    private static final GirthBand UPPER = new GirthBand(new GirthPlace.AtShare(0.5), GirthPlace.TOP);

    private static DraftReport examine(Loft body, GirthBand band, boolean starboard, boolean port, Pull pull) {
        return Drafts.examine(body, new DraftOrder(new SurfaceRegion(0, 2, band), starboard, port, Bare.NONE, pull, LIMIT), NEVER);
    }

    /** A tray upside down: level top, sides that lean in by an angle going up, no bottom. */
    private static Loft cap(double lean) {
        return loft(x -> half(SectionForm.Points.of(OutlinePoint.smooth(0.4, 0),
                OutlinePoint.knuckle(0.4 - 0.3 * Math.tan(lean), 0.3), OutlinePoint.smooth(0, 0.3))), 0, 2);
    }

    // closed form: the lower half of a cylinder pulled up is undercut, the first 2 degrees above the middle are low and touch
    // the line where the draft is 0
    @Test void theLowerHalfOfACylinderIsCaught() {
        DraftReport whole = examine(CYLINDER, GirthBand.WHOLE, true, true, Pull.UP);
        assertThat(whole.undercut().value()).isCloseTo(Math.PI, within(1e-4));
        assertThat(whole.lowAtParting().value()).isCloseTo(2 * 2 * 0.5 * LIMIT, within(1e-4));
        assertThat(whole.lowElsewhere().value()).isZero();
        assertThat(whole.least().orElseThrow().angle()).isCloseTo(-Math.PI / 2, within(1e-6));
    }

    // the upper half comes off: its strip of low draft starts at the edge of the mould
    @Test void theUpperHalfOfACylinderComesOff() {
        DraftReport upper = examine(CYLINDER, UPPER, true, true, Pull.UP);
        assertThat(upper.undercut().value()).isLessThan(1e-6);
        assertThat(upper.stripWidth()).isCloseTo(0.5 * LIMIT, within(1e-4));
        assertThat(upper.enough().value()).isCloseTo(2 * 0.5 * (Math.PI - 2 * LIMIT), within(1e-4));
        assertThat(upper.least().orElseThrow().angle()).isCloseTo(LIMIT, within(1e-4));
    }

    // common practice: a wall of one degree from edge to corner does not grow away from the parting line
    @Test void anEvenWallOfOneDegreeIsLow() {
        DraftReport cap = examine(cap(Math.toRadians(1)), GirthBand.WHOLE, true, true, Pull.UP);
        assertThat(cap.lowElsewhere().value()).isCloseTo(2 * 2 * 0.3 / Math.cos(Math.toRadians(1)), within(1e-6));
        assertThat(cap.lowAtParting().value()).isZero();
        assertThat(cap.least().orElseThrow().angle()).isCloseTo(Math.toRadians(1), within(1e-6));
    }

    @Test void aWallOfThreeDegreesIsEnough() {
        DraftReport cap = examine(cap(Math.toRadians(3)), GirthBand.WHOLE, true, true, Pull.UP);
        assertThat(cap.lowElsewhere().value()).isZero();
        assertThat(cap.undercut().value()).isZero();
        assertThat(cap.least().orElseThrow().angle()).isCloseTo(Math.toRadians(3), within(1e-6));
    }

    @Test void aWallThatLeansOutIsUndercut() {
        DraftReport cap = examine(cap(Math.toRadians(-1)), GirthBand.WHOLE, true, true, Pull.UP);
        assertThat(cap.undercut().value()).isCloseTo(2 * 2 * 0.3 / Math.cos(Math.toRadians(1)), within(1e-6));
    }

    // a half pulled to port sees the mirror image of what a half pulled to starboard sees
    @Test void thePortHalfLeavesAsTheStarboardHalfDoes() {
        DraftReport starboard = examine(CYLINDER, GirthBand.WHOLE, true, false, Pull.STARBOARD);
        DraftReport port = examine(CYLINDER, GirthBand.WHOLE, false, true, Pull.PORT);
        DraftReport whole = examine(loft(x -> full(Bodies.circle(0.5, 1)), 0, 2), GirthBand.WHOLE, false, true, Pull.PORT);
        assertThat(port.enough().value()).isCloseTo(starboard.enough().value(), within(1e-9));
        assertThat(whole.enough().value()).isCloseTo(starboard.enough().value(), within(1e-5));
        assertThat(starboard.undercut().value()).isLessThan(1e-6);
        assertThat(starboard.enough().value()).isCloseTo(2 * 0.5 * (Math.PI - 2 * LIMIT), within(1e-4));
    }

    // closed form: a side of a cone frustum is its slant length
    @Test void aLineAlongAConeHasItsSlantLength() {
        LongLine line = LongLine.along(Bodies.frustum(0.5, 0.3, 0.8, 3), new GirthPlace.AtShare(0.5), false, 0, 0.8).orElseThrow();
        assertThat(line.length()).isCloseTo(Math.hypot(0.8, 0.2), within(1e-9));
        assertThat(LongLine.along(CYLINDER, new GirthPlace.OnLine("chine"), false, 0, 1)).isEmpty();
    }
}
