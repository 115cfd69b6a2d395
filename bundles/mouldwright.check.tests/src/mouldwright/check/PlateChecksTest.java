package mouldwright.check;

import static mouldwright.check.Tried.STOCK;
import static mouldwright.check.Tried.cylinder;
import static mouldwright.check.Tried.found;
import static mouldwright.check.Tried.round;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Plates under a build-up, their edges and pockets. Each is told with figure, limit and place, and not in a spec without it;
 *  limits are common practice unless a test says otherwise. */
class PlateChecksTest {

    @Test void aPlateThatTheBuildUpEatsUpVanishes() {
        assertThat(found(STOCK + """
                plug P {
                    half sections
                    station A at 0 superellipse 200 by 400
                    station B at 300 superellipse 0.9 by 1.8 above 199
                    frame { sheet Ply12 measured 12 }
                    skin OnePly { }
                }
                """)).anySatisfy(finding -> assertThat(finding).startsWith("MW201 B:").contains("unplated"));
    }

    @Test void aPocketThatOpensOnASolidBayIsToldWithItsVolume() { // closed form: a disc of 140 mm radius, 12 mm thick: 0.739 l
        assertThat(found(cylinder("frame { sheet Ply12 measured 12 rim 60 } fill Pour36 shell 90 { bay A to B solid }"))).filteredOn(finding -> finding.startsWith("MW315"))
                .hasSize(2).allSatisfy(finding -> assertThat(finding).contains("bay A to B, poured solid", "739 ml", "blank the pocket off"));
    }

    @Test void aPlateBesideASolidBayHasNoPocketUnlessARimIsStated() {
        assertThat(found(cylinder("frame { sheet Ply12 measured 12 } fill Pour36 shell 90 { bay A to B solid }"))).noneMatch(finding -> finding.startsWith("MW315"));
        assertThat(found(cylinder("frame { sheet Ply12 measured 12 rim 60 } fill Pour36 shell 90 { }"))).noneMatch(finding -> finding.startsWith("MW315"));
    }

    @Test void aBevelOver45DegreesIsToldWithItsAngle() {
        assertThat(found(round(100, 250, 600, "frame { sheet Ply12 measured 12 edges bevelled }")))
                .anySatisfy(finding -> assertThat(finding).startsWith("MW210 bevel of").contains("at C", "45 deg at most"));
    }

    @Test void aGapOfMoreThanFourMillimetresAsksForBevelledEdges() {
        // a cone of 1 in 2: the gap is T sin(26.57 deg) = 5.37 mm for 12 mm plywood (closed form)
        assertThat(found(round(100, 250, 400, "frame { sheet Ply12 measured 12 }"))).anySatisfy(finding -> assertThat(finding)
                .startsWith("MW211 gap of 5.3").contains("at the square edge of B", "4 mm at most", "edges bevelled"));
        assertThat(found(round(100, 250, 400, "frame { sheet Ply12 measured 12 edges bevelled }"))).noneMatch(finding -> finding.startsWith("MW211"));
    }

    @Test void aLocalPlyThatStepsMoreThanHalfAMillimetreIsTold() { // 450 g at 28.6 % glass is 1.11 mm (ISO 12215-5)
        assertThat(found(cylinder("skin OnePly { bay A to B add ply Csm450 }"))).singleElement().asString()
                .startsWith("MW205 step of 1.11 mm where the ply of Csm450 from A to B end");
    }
}
