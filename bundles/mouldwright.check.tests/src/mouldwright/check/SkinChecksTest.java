package mouldwright.check;

import static mouldwright.check.Tried.cylinder;
import static mouldwright.check.Tried.found;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Plies on the plug: whether they cover it, and how they meet. Each is told with figure, limit and place, and not in a spec without it;
 *  limits are common practice unless a test says otherwise. */
class SkinChecksTest {

    @Test void aFaceWithoutAnyPlyIsToldWithItsArea() {
        assertThat(found(cylinder("skin NoPly { bay A to B add ply Csm450 }"))).anySatisfy(finding -> assertThat(finding)
                .startsWith("MW501").contains("m2 of the moulded face has no ply"));
    }

    @Test void fewerPliesThanRequiredAreToldWithTheirArea() {
        assertThat(found(cylinder("skin OnePly { bay A to B require 2 }"))).singleElement().asString().startsWith("MW502").contains("fewer plies than required");
        assertThat(found(cylinder("skin OnePly { bay A to B add ply Csm450 bay A to B require 2 }"))).noneMatch(finding -> finding.startsWith("MW502"));
    }

    @Test void aLapUnderFiftyMillimetresIsToldWithItsWidth() { // laps of 50 mm are common on a plug
        assertThat(found(cylinder("skin OnePly { lap 30 }"))).singleElement().asString().startsWith("MW505 lap of 30 mm, 50 mm at least");
        assertThat(found(cylinder("skin OnePly { lap 2 in }"))).isEmpty();
    }

    @Test void aPlyOverABareFaceIsToldWithItsArea() {
        // closed form: the band of 0 to 30 % lies over 20 % of a girth of 1.257 m that is bare, 300 mm long
        assertThat(found(cylinder("bare 0 % to 20 % skin OnePly { bay A to B girth 0 % to 30 % add ply Csm150 }")))
                .singleElement().asString().startsWith("MW506 ply of Csm150 asked for over 0.075").contains("that is bare");
        assertThat(found(cylinder("bare 0 % to 20 % skin OnePly { bay A to B girth 20 % to 30 % add ply Csm150 }"))).isEmpty();
    }

    @Test void aLocalPlyOfTheWholeGirthMeansTheMouldedFace() {
        assertThat(found(cylinder("bare 0 % to 20 % skin OnePly { bay A to B add ply Csm150 }"))).noneMatch(finding -> finding.startsWith("MW506"));
    }

    @Test void pliesThatEndInOneLineAreToldWithTheLine() {
        assertThat(found(cylinder("skin OnePly { bay A to B girth 0 % to 30 % add ply Csm150 bay A to C girth 10 % to 30 % add ply Csm150 }")))
                .singleElement().asString().startsWith("MW507 2 plies end in one line at 30 % of the girth, 1 at most");
        assertThat(found(cylinder("skin OnePly { bay A to B girth 0 % to 30 % add ply Csm150 bay A to C girth 0 % to 40 % add ply Csm150 }"))).isEmpty();
    }

    @Test void pliesThatEndAtOneStationStackOnlyWhereTheirBandsMeet() {
        assertThat(found(cylinder("skin OnePly { bay A to B girth 0 % to 30 % add ply Csm150 bay A to B girth 20 % to 40 % add ply Csm150 }")))
                .singleElement().asString().startsWith("MW507 2 plies end in one line at B");
        assertThat(found(cylinder("skin OnePly { bay A to B girth 0 % to 30 % add ply Csm150 bay A to B girth 60 % to 80 % add ply Csm150 }"))).isEmpty();
    }

    @Test void theEdgesOfTheBodyAreNoStackedEdges() {
        assertThat(found(cylinder("skin OnePly { bay A to C add 2 of ply Csm150 }"))).isEmpty();
        assertThat(found(cylinder("skin OnePly { bay A to B add 2 of ply Csm150 }"))).anyMatch(finding -> finding.startsWith("MW507 2 plies end in one line at B"));
    }

    @Test void aRollOnWhichNothingIsGainedGivesTooManyPieces() {
        assertThat(found(cylinder("skin OnePly { lap 50 }").replace("roll 1.25 m by 50 m", "roll 50.1 mm by 50 m")))
                .singleElement().asString().startsWith("MW511 Csm450 would be cut in more pieces than anybody lays");
    }

    @Test void aPieceLongerThanItsRollIsTold() {
        assertThat(found(cylinder("skin OnePly { }").replace("roll 1.25 m by 50 m", "roll 1.25 m by 300 mm")))
                .singleElement().asString().startsWith("MW512 a piece of Csm450 is longer than its roll (350 mm against 300 mm)");
    }
}
