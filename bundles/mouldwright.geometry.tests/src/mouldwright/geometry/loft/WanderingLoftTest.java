package mouldwright.geometry.loft;

import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionForm;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** Bodies nobody would draw, and places past their ends. */
class WanderingLoftTest {

    // sections that jump to and fro leave the chord length no measure of x; every x must be found all the same
    @Test void everyPlaceOfAWanderingBodyIsFound() {
        double[] radii = { 0.1, 2, 0.05, 1.5, 0.1, 3 };
        Loft body = loft(x -> half(Bodies.circle(radii[(int) Math.round(x * 10)], 5)), 0, 0.1, 0.2, 0.3, 0.4, 0.5);
        double before = -1;
        for (double x = 0; x <= 0.5; x += 0.01) {
            SurfacePoint p = body.at(x).point(0, 0.5);
            assertThat(p.x()).isEqualTo(x);
            double v = body.parameter(x);
            assertThat(v).isGreaterThan(before);
            before = v;
        }
        for (int i = 0; i < radii.length; i++)
            assertThat(body.at(body.stations().get(i)).area())
                    .isCloseTo(Math.PI * radii[i] * radii[i], within(1e-6 * radii[i]));
    }

    @Test void aPlacePastAnEndIsTakenAtTheEnd() {
        Loft cone = Bodies.frustum(0.5, 0.3, 0.8, 3);
        assertThat(cone.at(-1).area()).isEqualTo(cone.at(0).area());
        assertThat(cone.at(1e300).area()).isCloseTo(Math.PI * 0.09, within(1e-9));
    }

    @Test void noPlaceAtAllIsAMistakeOfTheCaller() {
        Loft cone = Bodies.frustum(0.5, 0.3, 0.8, 3);
        assertThatIllegalArgumentException().isThrownBy(() -> cone.at(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> cone.scaled(0));
    }

    @Property(tries = 100)
    void noStationsMakeItThrow(@ForAll("stations") List<LoftStation> stations) {
        LoftResult result = Loft.through(stations);
        assertThat(result.loft().isPresent()).isEqualTo(result.faults().isEmpty());
    }

    @Provide
    Arbitrary<List<LoftStation>> stations() {
        Section stem = half(new SectionForm.Points(List.of(mouldwright.geometry.section.OutlinePoint.smooth(0, 0),
                mouldwright.geometry.section.OutlinePoint.smooth(0, 1))));
        List<Section> sections = new ArrayList<>(List.of(half(Bodies.circle(0.5, 1)), half(Bodies.box(0.3, 0, 1)), stem,
                half(new SectionForm.Nose(0, 1)), half(new SectionForm.Superellipse(0.4, 1, 3, 0)),
                Bodies.full(Bodies.circle(0.5, 1))));
        Arbitrary<Double> xs = Arbitraries.oneOf(Arbitraries.doubles().between(0, 3),
                Arbitraries.of(0.0, 1.0, Double.NaN, 1e308, Double.POSITIVE_INFINITY));
        return xs.flatMap(x -> Arbitraries.of(sections).map(s -> new LoftStation(x, s, x > 1))).list().ofMaxSize(6)
                .map(list -> list.stream().sorted((a, b) -> Double.compare(a.x(), b.x())).toList());
    }
}
