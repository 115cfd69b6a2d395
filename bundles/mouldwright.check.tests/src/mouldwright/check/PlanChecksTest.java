package mouldwright.check;

import static mouldwright.check.Tried.cylinder;
import static mouldwright.check.Tried.found;
import static mouldwright.check.Tried.priced;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Programme, orders and weights, and a plan with nothing to be found. Each is told with figure, limit and place, and not in a spec without it;
 *  limits are common practice unless a test says otherwise. */
class PlanChecksTest {

    @Test void aCylinderThatIsFilledCarvedAndSkinnedHasNoFindings() {
        assertThat(found(cylinder("""
                frame { sheet Ply12 measured 12 }
                fill Pour36 solid { }
                carve { }
                skin OnePly { }
                """))).isEmpty();
    }

    @Test void aMaterialWithoutAPriceIsToldWhereOthersHaveOne() {
        assertThat(found(priced("fill Pour36 solid { } skin OnePly { }"))).singleElement().asString()
                .startsWith("MW805 Csm450, Ortho, Mekp are ordered without a pack and its price");
        assertThat(found(priced("fill Pour36 solid { }"))).isEmpty();
        assertThat(found(cylinder("fill Pour36 solid { } skin OnePly { }"))).isEmpty();
    }

    @Test void aPlugHeavierThanItsCrewShouldLiftIsTold() { // guideline of 25 kg each
        String large = "fill Pour36 solid { }";
        assertThat(found(cylinder(large).replace("200 by 400", "600 by 1200"))).anySatisfy(finding -> assertThat(finding)
                .startsWith("MW806 a plug of").contains("2 people or gear", "the crew is 1", "weigh it first"));
        assertThat(found(cylinder("crew 2 " + large).replace("200 by 400", "600 by 1200"))).noneMatch(finding -> finding.startsWith("MW806"));
    }

    @Test void aPriceInAnotherCurrencyIsTold() {
        String text = "library stock.test currency USD\n" + priced("currency EUR fill Pour36 solid { }");
        assertThat(found(text)).anySatisfy(finding -> assertThat(finding).startsWith("MW803 Pour36 is priced in USD, the job in EUR"));
        assertThat(found(text.replace("currency EUR", "currency USD"))).noneMatch(finding -> finding.startsWith("MW803"));
    }

    @Test void aMaterialSoldInAnotherMeasureThanItIsUsedInIsTold() {
        String fill = "fill Pour36 solid { }";
        assertThat(found(cylinder(fill).replace("pot 1 kg at most", "pot 1 kg at most pack 40 l at 310.00"))).singleElement().asString()
                .startsWith("MW804 Pour36 is used by mass and sold by volume");
        assertThat(found(priced(fill))).isEmpty();
    }

    @Test void aDayOfMoreHoursThanAClockHasIsTold() {
        assertThat(found(cylinder("day 25 h fill Pour36 solid { }"))).singleElement().asString().startsWith("MW906 a working day is 24 h at most");
        assertThat(found(cylinder("day 24 h fill Pour36 solid { }"))).isEmpty();
    }

    @Test void aRateThatTakesDecadesIsTold() { // a square centimetre takes a worker's life
        assertThat(found("rates Slow { carve 1e-6 m2/h }\n" + cylinder("rates Slow fill Pour36 solid { } carve { }")))
                .anySatisfy(finding -> assertThat(finding).startsWith("MW802 ").contains("would take decades"));
    }
}
