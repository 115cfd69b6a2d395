package mouldwright.check;

import static mouldwright.check.Tried.cylinder;
import static mouldwright.check.Tried.found;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Resin, catalyst and glass of a laminate. Each is told with figure, limit and place, and not in a spec without it;
 *  limits are common practice unless a test says otherwise. */
class LaminateChecksTest {

    @Test void aGelTimeThatTheTableEndsBeforeIsLateAndAsksForMoreTable() {
        // the table ends at 2 %, the resin's limit is 2.5 %: at 15 degC 2 % gels in 30 min, later than the 25 min wanted
        assertThat(found(cylinder("shop 15 degC skin OnePly { gel for 25 min }"))).singleElement().asString()
                .startsWith("MW602 the gel table ends at 2 % of catalyst, within the resin's limits; that much gels later than wanted")
                .contains("-> extend the table from the supplier's sheet, or warm the shop");
    }

    @Test void aGelTimeTheMostCatalystCannotReachAsksForAWarmerShop() {
        assertThat(found(cylinder("shop 15 degC skin OnePly { gel for 25 min }").replace("1 % to 2.5 %", "1 % to 2 %"))).singleElement().asString()
                .startsWith("MW602 even the most catalyst, 2 %, gels later than wanted").contains("-> warm the shop");
    }

    @Test void aGelTimeTheLeastCatalystComesTooSoonForAsksForSmallerPots() {
        assertThat(found(cylinder("shop 25 degC skin OnePly { gel for 40 min }"))).singleElement().asString()
                .startsWith("MW602 even the least catalyst, 1 %, gels sooner than wanted").contains("-> mix smaller pots");
    }

    @Test void aHeavyMatFirstAgainstAGelCoatIsTold() { // 450 g/m2 at most next to gel coat: class rule text on production procedures
        assertThat(found("schedule Part using Ortho { coat Gel ply Csm600 }\n" + cylinder("part Part skin OnePly { }")))
                .singleElement().asString().startsWith("MW508 Part: Csm600 of 600 g/m2 lies first against a gel coat, 450 g/m2 at most");
        assertThat(found("schedule Part using Ortho { coat Gel ply Csm450 ply Csm600 }\n" + cylinder("part Part skin OnePly { }"))).isEmpty();
    }

    @Test void tooManyPliesAtOnceRunHot() { // 4 x 450 g at 2.5 : 1 cure to 4.45 mm (ISO 12215-5); three to 3.34 mm
        assertThat(found("schedule Thick using Ortho { 4 of ply Csm450 }\n" + cylinder("skin Thick { }")))
                .singleElement().asString().startsWith("MW509 Thick: 4 plies laid at once cure to 4.45 mm, 4 mm at most").contains("wait 12 h");
        assertThat(found("schedule Thick using Ortho { 3 of ply Csm450 wait 12 h ply Csm450 }\n" + cylinder("skin Thick { }"))).isEmpty();
    }

    @Test void localPliesRunHotWithTheSkinTheyLieOn() {
        assertThat(found(cylinder("skin OnePly { bay A to C add 3 of ply Csm450 }"))).singleElement().asString().startsWith("MW509 3 plies of Csm450 added to the skin cure with it to 4.45 mm");
        assertThat(found(cylinder("skin OnePly { bay A to C add 2 of ply Csm450 }"))).isEmpty();
    }

    @Test void glassOutsideWhatAnyKindHoldsIsTold() { // 25 to 35 % for mat, published guides and a class test laminate
        assertThat(found(cylinder("skin OnePly { }").replaceFirst("areal 450 g/m2 glass 28.6 %", "areal 450 g/m2 glass 20 %")))
                .singleElement().asString().startsWith("MW510 glass of 20 % in Csm450, chopped strand mat holds 25 % to 35 %");
        assertThat(found(cylinder("skin OnePly { }").replaceFirst("areal 450 g/m2 glass 28.6 %", "areal 450 g/m2 glass 25 %"))).isEmpty();
    }

    @Test void aLocalPlyOfNothingButGlassIsAnErrorAndNoCrash() { // a share of glass is above 0 and under 100 %
        assertThat(found(cylinder("skin OnePly { bay A to B add ply Csm450 }").replaceFirst("areal 450 g/m2 glass 28.6 %", "areal 450 g/m2 glass 100 %")))
                .anyMatch(finding -> finding.startsWith("MW906")).noneMatch(finding -> finding.startsWith("MW205"));
    }
}
