package mouldwright.plan.stage;

import java.util.List;
import mouldwright.plan.Measurements;
import mouldwright.plan.PlanFault;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Given;
import mouldwright.units.Dimension;

/** What a coating states, or the defaults. */
final class CoatFacts {

    private CoatFacts() { }

    static Given wet(Coating coating) {
        return coating.wet().orElseGet(Defaults::wetFilm);
    }

    static Given transfer(Coating coating) {
        return coating.transfer().orElseGet(Defaults::transfer);
    }

    /** Whether it spreads by volume, as film and primer do, and not by mass, as paste wax does. */
    static boolean byVolume(Given coverage) {
        return coverage.dimension().equals(Dimension.COVERAGE_VOLUME);
    }

    /** Looks at the figures of coatings. */
    static void guard(List<Finish.Coats> coats, Guard guard) {
        coats.forEach(one -> guard(one.coating(), guard));
    }

    /** Reports a shop too cold or warm for any guide of catalyst in a coating that is cured with one. */
    static void outsideGuide(List<Finish.Coats> coats, Given shop, Measurements measurements) {
        if (shop.likely() >= ResinCure.GUIDE_FROM && shop.likely() <= ResinCure.GUIDE_TO)
            return;
        coats.stream().map(Finish.Coats::coating).filter(coating -> coating.curing().isPresent()).map(Coating::name).distinct()
                .forEach(name -> measurements.report(PlanFault.of(PlanFault.Kind.NO_CATALYST, shop.origin(), "coating " + name,
                        "no guide gives a catalyst level for " + name + " at this temperature", "work between 15 and 25 degC").at(shop.likely(), shop.dimension())));
    }

    private static void guard(Coating coating, Guard guard) {
        guard.positive(coating.density()).positive(coating.wet()).notNegative(coating.dry()).positive(coating.coverage())
                .notNegative(coating.recoat());
        coating.curing().ifPresent(curing -> guard.fraction(curing.least()).fraction(curing.most()).positive(curing.hardener().density())
                .atMost(curing.least(), curing.most()));
        coating.transfer().ifPresent(transfer -> guard.positive(transfer).below(transfer, Math.nextUp(1.0)));
    }
}
