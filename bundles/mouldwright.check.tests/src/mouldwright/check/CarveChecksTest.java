package mouldwright.check;

import static mouldwright.check.Tried.cylinder;
import static mouldwright.check.Tried.found;
import static mouldwright.check.Tried.round;
import static mouldwright.check.Tried.surveyed;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Boards, crowns and what a survey found. Each is told with figure, limit and place, and not in a spec without it;
 *  limits are common practice unless a test says otherwise. */
class CarveChecksTest {

    @Test void crownOverTheLimitAsksForAStationWhereItIsHighest() {
        // a barrel: 200, 230, 200 over 600 mm is a bulge of radius 1515 mm; between stations 300 apart the sagitta is 7.4 mm
        assertThat(found(round(200, 230, 200, "carve { crown 2 at most }")))
                .hasSize(2).first().asString().startsWith("MW412 crown of 7.").contains("between A and B, 2 mm at most", "-> insert ");
        assertThat(found(round(200, 230, 200, "carve { crown 10 at most }"))).isEmpty();
    }

    @Test void aHollowIsLeftHighByTheBoard() {
        assertThat(found(round(230, 200, 230, "carve { crown 2 at most }"))).first().asString().startsWith("MW412 hollow of 7.");
    }

    @Test void aBoardMustReachOverTwoPlates() {
        assertThat(found(cylinder("carve { board 350 }"))).hasSize(2).first().asString().startsWith("MW431 bay A to B is 300 mm long, the board 350 mm");
        assertThat(found(cylinder("carve { board 400 }"))).isEmpty();
    }

    @Test void aGougeIsMendedByItsDepth() {
        assertThat(found(surveyed("gouge A to B at 150 port girth 300 depth 7 over 90 by 40"))).singleElement().asString()
                .startsWith("MW441 gouge of 7 mm in bay A to B, below the edges of its plates").endsWith("fill it with Stopper in 2 layers, each left to harden");
        assertThat(found(surveyed("gouge A to B at 150 port girth 300 depth 14 over 90 by 40"))).singleElement().asString().contains("bond in new foam");
        assertThat(found(surveyed("gouge A to B at 150 port girth 300 depth 7 over 90 by 40 mended on 2027-03-10 now 0.2"))).isEmpty();
    }

    @Test void aGougeAcrossAPlateIsCheckedAgainstThePlate() {
        assertThat(found(surveyed("gouge A to B at 280 port girth 300 depth 7 over 90 by 40"))).singleElement().asString()
                .startsWith("MW441 gouge of 7 mm in bay A to B, and across plate B").contains("template first");
    }

    @Test void aPlateOutOfToleranceIsToldWithWhatItDoesToTheSurface() { // e = d . n; 1.5 mm as a straightedge reaches, common practice
        assertThat(found(surveyed("station B low 2"))).singleElement().asString()
                .startsWith("MW442 plate B stands 2 mm low, 1.5 mm at most: carved to it the surface is up to 2 mm");
        assertThat(found(surveyed("station B low 1.4"))).isEmpty();
    }

    @Test void aDeepVoidIsFilledInLayers() {
        assertThat(found(surveyed("void A to B at 150 port girth 300 depth 8 over 30 by 30"))).singleElement().asString()
                .startsWith("MW443 void in bay A to B is 8 mm deep, a layer of Stopper 6 mm at most").contains("2 layers");
        assertThat(found(surveyed("void A to B at 150 port girth 300 depth 5 over 30 by 30"))).isEmpty();
    }

    @Test void whatWasMendedIsMeasuredAgain() {
        assertThat(found(surveyed("void A to B at 150 port girth 300 depth 5 over 30 by 30 mended on 2027-03-10"))).singleElement().asString()
                .startsWith("MW444 void in bay A to B was mended on 2027-03-10");
        assertThat(found(surveyed("void A to B at 150 port girth 300 depth 5 over 30 by 30 mended on 2027-03-10 now 0.2"))).isEmpty();
    }

    @Test void aPlaceOutsideThePlugIsTold() {
        assertThat(found(surveyed("gouge A to B at 350 port girth 300 depth 7 over 90 by 40"))).singleElement().asString().startsWith("MW440");
        assertThat(found(surveyed("gouge A to B at 150 port girth 700 depth 7 over 90 by 40"))).singleElement().asString().startsWith("MW440").contains("past the girth");
        assertThat(found(surveyed("trial cream 36 s poured A to C 3 kg rise 200"))).singleElement().asString().startsWith("MW440 A-C is no bay");
    }
}
