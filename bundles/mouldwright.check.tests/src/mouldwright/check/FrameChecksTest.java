package mouldwright.check;

import static mouldwright.check.CatalogueTest.found;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Each check of a frame finds its trouble, with figure, limit and place, and nothing in a spec just inside the limit. The plates are circles of 200 mm
 *  radius about a height of 200 mm, 12 mm thick. Limits are common practice. */
class FrameChecksTest {

    private static List<String> frame(String more) {
        return found(CatalogueTest.cylinder("frame { sheet Ply12 measured 12 " + more + " }"));
    }

    /** A box 1.3 m broad and 2 m high, whose plates are larger than a sheet of 1.22 m by 2.44 m. */
    private static List<String> large(String half, String more) {
        return found(CatalogueTest.cylinder("frame { sheet Ply12 measured 12 " + more + " }").replaceAll("superellipse 200 by 400 exponent 2",
                "{ 0 0 " + half + " 0 knuckle " + half + " 2000 knuckle 0 2000 }")).stream().filter(finding -> !finding.startsWith("MW806")).toList();
    }

    /** The same plates 1500 mm apart: what runs through them is longer than a sheet. */
    private static List<String> longBody(String more) {
        return found(CatalogueTest.cylinder("frame { sheet Ply12 measured 12 " + more + " }").replace("at 300", "at 1500").replace("at 600", "at 3000")).stream()
                .filter(finding -> finding.startsWith("MW207")).toList();
    }

    @Test void aPlainFrameHasNoFindings() {
        assertThat(frame("")).isEmpty();
        assertThat(frame("backbone 60 by 90 above 120")).isEmpty();
    }

    @Test void aSlotNearTheEdgeLeavesATooThinWeb() { // closed form: its corner lies 200 - hypot(30.1, 185.1) = 12.5 mm inside the circle
        assertThat(frame("backbone 60 by 90 above 15")).hasSize(3).first().asString().startsWith("MW206 web of 12.5 mm in plate A").contains("20 mm at least");
    }

    @Test void aRimNarrowerThanTheLeastWebIsTold() {
        assertThat(frame("rim 15")).hasSize(3).allSatisfy(finding -> assertThat(finding).startsWith("MW206 web of 15 mm"));
        assertThat(frame("rim 20")).isEmpty();
    }

    @Test void aHalvedSlotLeavesWoodAboveIt() { // closed form: up to 345 + 90 / 2 = 390 mm of 400 mm
        assertThat(frame("backbone 12 by 90 above 345 halved")).anySatisfy(finding -> assertThat(finding).startsWith("MW206 web of 10 mm in plate B"));
        assertThat(frame("backbone 12 by 90 above 100 halved")).isEmpty();
    }

    @Test void aPlateLargerThanItsSheetIsToldWithItsPieces() {
        assertThat(large("650", "")).hasSize(3).first().asString().startsWith("MW207 plate A is larger than a sheet of 1220 mm by 2440 mm: it is cut in 2 pieces, butted")
                .contains("join scarf 8");
        assertThat(large("650", "join scarf 8")).hasSize(3).first().asString().contains("scarfed");
        assertThat(large("550", "")).isEmpty();
    }

    @Test void layersOfALongBackboneAreJointedInTurn() { // 3000 mm on sheets of 2440
        assertThat(longBody("backbone 60 by 90 above 120")).anySatisfy(finding -> assertThat(finding).startsWith("MW207 backbone 1 is larger than a sheet")
                .contains("its even layers in", "each butt between layers that run through", "joints of neighbouring layers are staggered"));
        assertThat(longBody("backbone 60 by 90 above 120 timber")).isEmpty();
    }

    @Test void aPlateThatNoJointsMakeFitIsAnError() { // 30 m broad
        assertThat(large("15000", "")).anySatisfy(finding -> assertThat(finding).startsWith("MW207 plate A").contains("eight pieces do not make it fit"));
    }

    @Test void aBackboneThatIsNoWholeNumberOfLayersIsTold() { // closed form: 5 x 12 = 60 mm
        assertThat(frame("backbone 58 by 90 above 120")).singleElement().asString()
                .startsWith("MW208 backbone 58 mm wide, but 5 layers of 12 mm measure 60 mm").contains("backbone 60 mm by");
        assertThat(frame("backbone 59.8 by 90 above 120")).isEmpty();
        assertThat(frame("backbone 58 by 90 above 120 timber")).isEmpty();
    }

    @Test void aBackboneThatReachesOutOfAPlateIsTold() { // closed form: a corner 30 mm off the middle at 410 mm stands hypot(30, 210) - 200 = 12.1 mm out
        assertThat(frame("backbone 60 by 90 above 320")).filteredOn(finding -> finding.startsWith("MW209")).hasSize(3)
                .first().asString().startsWith("MW209 backbone from 320 mm to 410 mm above base reaches 12.1 mm out of plate A, which stands from 0 mm to 400 mm");
    }

    @Test void aSheetThatIsNotMeasuredIsNoted() {
        assertThat(found(CatalogueTest.cylinder("frame { sheet Ply12 }"))).singleElement().asString()
                .startsWith("MW212 the sheet is not measured: slots and bays are reckoned with the nominal 12 mm of Ply12").contains("sheet Ply12 measured");
    }

    @Test void aBackboneThatCutsAPlateInTwoIsAnError() { // 380 mm wide and higher than the plate: two slivers are left
        assertThat(frame("backbone 384 by 600 above -100")).anySatisfy(finding -> assertThat(finding).startsWith("MW213 plate A cannot be cut").contains("pieces"));
    }

    @Test void aStatedHoleThatFitsNotEveryPlateIsTold() { // it needs 4 + 10 mm of wood: up to 186 mm off the middle at mid-height
        assertThat(frame("holes 8 at 187 200")).singleElement().asString().startsWith("MW214 hole of 8 mm at 187 mm and 200 mm does not fit in A, B, C");
        assertThat(frame("holes 8 at 185 200")).isEmpty();
        assertThat(frame("holes 0")).isEmpty();
    }

    @Test void railsThatLeaveNoRoomForCrossMembersAreTold() { // closed form: 2 x 45 mm
        assertThat(frame("strongback 45 by 95 apart 90")).singleElement().asString().startsWith("MW215 rails 90 mm apart over all leave no room between them, each 45 mm wide");
        assertThat(frame("strongback 45 by 95 apart 91")).isEmpty();
        assertThat(frame("strongback 45 by 95 base Ply12")).isEmpty();
    }
}
