package mouldwright.check;

import static mouldwright.check.Tried.STOCK;
import static mouldwright.check.Tried.cylinder;
import static mouldwright.check.Tried.found;
import static mouldwright.check.Tried.surveyed;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Foam, its cavities and its lifts. Each is told with figure, limit and place, and not in a spec without it;
 *  limits are common practice unless a test says otherwise. */
class FillChecksTest {

    @Test void foamPouredTooColdIsTold() {
        assertThat(found(cylinder("shop 12 degC fill Pour36 solid { }")))
                .singleElement().asString().startsWith("MW306 shop at 12 degC, Pour36 asks for 18 degC at least");
    }

    @Test void expansionAndDensityMustMakeTheLiquidItsComponentsMake() {
        // 25 x 36 = 900 kg/m3 against 1170 of the components, 23 % apart
        assertThat(found(cylinder("fill Pour36 solid { }").replace("expansion 32", "expansion 25")))
                .singleElement().asString().startsWith("MW305 Pour36:").contains("10 % apart at most");
    }

    @Test void overfillMustCoverTheCrownAndFiveMillimetres() {
        assertThat(found(cylinder("fill Pour36 solid { overfill 4 }")))
                .hasSize(2).allSatisfy(finding -> assertThat(finding).startsWith("MW308 overfill of 4 mm").contains("-> state `overfill` of 5 mm"));
    }

    @Test void aDeepPourOfAFoamWithoutStatedLiftIsTold() {
        assertThat(found(cylinder("fill Pour36 solid { }").replace("lift 200 mm at most", "")))
                .singleElement().asString().startsWith("MW309 Pour36 states no lift");
    }

    @Test void aBroadShallowBayIsPackedFromInside() { // common practice: opening over 3 x depth
        String flat = STOCK + """
                plug P {
                    half sections
                    station A at 0 { 0 0 300 0 knuckle 300 DEEP knuckle 0 DEEP }
                    station B at 400 like A
                    fill Pour36 solid { overfill 5 }
                }
                """;
        assertThat(found(flat.replace("DEEP", "100"))).singleElement().asString().startsWith("MW310 bay A to B opens 400 mm wide and is 110 mm deep").contains("shell");
        assertThat(found(flat.replace("DEEP", "130"))).isEmpty();
    }

    @Test void aShellUnderFiftyMillimetresDoesNotFill() { // a supplier's notes: cavities of 50 to 300 mm
        assertThat(found(cylinder("fill Pour36 shell 30 { }"))).hasSize(2).allSatisfy(finding -> assertThat(finding).startsWith("MW311").contains("45 mm wide, 50 mm at least"));
        assertThat(found(cylinder("fill Pour36 shell 35 { }"))).isEmpty();
    }

    @Test void aThickBlockIsHotLongAfterItIsFirm() { // 200 mm cool in 2.3 h (slab, 5e-7 m2/s), firm after half an hour
        String tall = cylinder("fill Pour36 solid { }").replace("200 by 400", "200 by 570");
        assertThat(found(tall)).hasSize(2).first().asString().startsWith("MW312 a lift of bay A to B is firm after 30 min and cool after 2.");
        assertThat(found(tall.replace("lift 200 mm", "lift 150 mm"))).isEmpty();
    }

    @Test void aPourWithoutATrialCupIsTold() { // start small until the cure is known: common practice
        assertThat(found(surveyed("poured A to B 1 kg rise 200"))).singleElement().asString().startsWith("MW313 foam was poured and no trial cup is on record");
        assertThat(found(surveyed("trial cream 36 s rise 150 s poured A to B 1 kg rise 200"))).isEmpty();
    }

    @Test void aCupThatCreamsSoonerThanItsSheetSaysMakesPotsTooLarge() { // the sheet: 36 s
        assertThat(found(surveyed("trial cream 28 s"))).singleElement().asString().startsWith("MW314 the trial cup creamed after 28 s, Pour36 states 36 s at least");
        assertThat(found(surveyed("trial cream 40 s"))).isEmpty();
    }

    @Test void aYieldTableThatDoesNotReachTheShopIsTold() { // outside its rows no supplier answers for a yield
        String one = cylinder("shop 20 degC fill Pour36 solid { }").replace("cream 36 s", "cream 36 s yield { 25 degC 95 % }");
        assertThat(found(one)).singleElement().asString().startsWith("MW318 shop at 20 degC, the yield table of Pour36 begins at 25 degC: the yield of that row is taken, and the foam will rise less");
        assertThat(found(one.replace("yield { 25 degC", "yield { 19 degC"))).singleElement().asString().contains("ends at 19 degC");
        assertThat(found(one.replace("yield { 25 degC 95 % }", "yield { 19 degC 90 % 25 degC 95 % }"))).isEmpty();
        assertThat(found(one.replace("shop 20 degC", "shop 12 degC"))).singleElement().asString().startsWith("MW306");
    }
}
