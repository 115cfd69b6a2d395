package mouldwright.plan.stage;

import java.util.List;
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

    private static void guard(Coating coating, Guard guard) {
        guard.positive(coating.density()).positive(coating.wet()).notNegative(coating.dry()).positive(coating.coverage())
                .notNegative(coating.recoat());
        coating.transfer().ifPresent(transfer -> guard.positive(transfer).below(transfer, Math.nextUp(1.0)));
    }
}
