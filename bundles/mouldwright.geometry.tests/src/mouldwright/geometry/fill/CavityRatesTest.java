package mouldwright.geometry.fill;

import static mouldwright.geometry.Bodies.NEVER;
import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.offset.BuildUp;
import mouldwright.geometry.offset.Layer;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.SectionForm;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.api.Test;
import org.assertj.core.data.Percentage;

/** How fast a cavity changes, by closed forms and against measuring it again. */
class CavityRatesTest {
    private static final GirthPlace CHINE = new GirthPlace.OnLine("chine");
    private static final double SKIN = 0.003, OVERFILL = 0.015, SHELL = 0.09;

    private record Case(String name, Loft body, Bare bare, List<Outline> backbones, OptionalDouble shell) {
        @Override public String toString() {
            return name;
        }

        CavityOrder order(double scale, double fore, double aft, double skin) {
            List<Layer> layers = new ArrayList<>();
            layers.add(new Layer(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, GirthBand.WHOLE, skin));
            layers.add(new Layer(0.35 * scale, 0.9 * scale, new GirthBand(new GirthPlace.AtShare(0.6), new GirthPlace.AtShare(0.9)), 0.001));
            return new CavityOrder(fore, aft, new BuildUp(layers, bare), OVERFILL, shell, backbones);
        }

        double volume(double scale, double fore, double aft, double skin) {
            return Cavity.of(scale == 1 ? body : body.scaled(scale), order(scale, fore, aft, skin), NEVER).poured().value();
        }

        CavityRates rates() {
            return Cavity.of(body, order(1, 0.2, 0.8, SKIN), NEVER).rates();
        }
    }

    private static SectionForm chined(double scale) {
        return SectionForm.Points.of(OutlinePoint.smooth(0, 0.02), OutlinePoint.knuckle(0.4 * scale, 0.08).on("chine"),
                OutlinePoint.smooth(0.47 * scale, 0.25), OutlinePoint.smooth(0.4 * scale, 0.42), OutlinePoint.smooth(0.2 * scale, 0.5),
                OutlinePoint.smooth(0, 0.52));
    }

    private static Outline member(double fromZ, double toZ) {
        return Outline.of(List.of(new PlanePoint(-0.03, fromZ), new PlanePoint(0.03, fromZ), new PlanePoint(0.03, toZ), new PlanePoint(-0.03, toZ)));
    }

    static Stream<Case> cases() {
        Bare bottom = new Bare(List.of(new GirthBand(GirthPlace.BOTTOM, CHINE)));
        Loft chined = loft(x -> half(chined(1 - 0.2 * x * x)), Bodies.spread(0, 1, 6));
        DoubleFunction<Loft> steep = slope -> Bodies.frustum(1.2, 1.2 - slope, 1, 3);
        return Stream.of(
                new Case("cone, solid", Bodies.frustum(0.5, 0.3, 1, 3), Bare.NONE, List.of(), OptionalDouble.empty()),
                new Case("cone with a shell", Bodies.frustum(0.5, 0.3, 1, 3), Bare.NONE, List.of(), OptionalDouble.of(SHELL)),
                new Case("cone steeper than 45 degrees", steep.apply(1.1), Bare.NONE, List.of(), OptionalDouble.empty()),
                new Case("chined, bare bottom, shell, a backbone through the pocket's edge", chined, bottom, List.of(member(0.12, 0.21)),
                        OptionalDouble.of(SHELL)),
                new Case("chined, solid, a backbone out of its bottom", chined, bottom, List.of(member(-0.1, 0.1)), OptionalDouble.empty()));
    }

    // stated: within 2 % of the change, for ranges as they come: 0.5 mm of build-up, 0.1 % of shrink, 0.3 mm of sheet
    @ParameterizedTest
    @MethodSource("cases")
    void aThickerSkinAnswersAsMeasuredAgain(Case c) {
        double change = c.volume(1, 0.2, 0.8, SKIN + 0.0005) - c.volume(1, 0.2, 0.8, SKIN - 0.0005);
        assertThat(c.rates().buildUp() * 0.001).isCloseTo(change, Percentage.withPercentage(2));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aLargerPlugAnswersAsMeasuredAgain(Case c) {
        double change = c.volume(1.001, 0.2002, 0.8008, SKIN) - c.volume(0.999, 0.1998, 0.7992, SKIN);
        assertThat(c.rates().scale() * 0.002).isCloseTo(change, Percentage.withPercentage(2));
    }

    @ParameterizedTest
    @MethodSource("cases")
    void thickerPlatesAnswerAsMeasuredAgain(Case c) {
        double fore = c.volume(1, 0.2003, 0.8, SKIN) - c.volume(1, 0.1997, 0.8, SKIN);
        double aft = c.volume(1, 0.2, 0.8003, SKIN) - c.volume(1, 0.2, 0.7997, SKIN);
        assertThat(c.rates().foreEnd() * 0.0006).isCloseTo(fore, Percentage.withPercentage(2));
        assertThat(c.rates().aftEnd() * 0.0006).isCloseTo(aft, Percentage.withPercentage(2));
    }

    // closed form: a cylinder's shell loses its outer and gains its inner girth; grown by k, its area is pi ((kr - t + o)^2 - (kr - t - s)^2)
    @Test void aCylinderAnswersByItsGirths() {
        Loft cylinder = loft(x -> half(Bodies.circle(0.3, 1)), 0, 1);
        CavityRates rates = Cavity.of(cylinder, new CavityOrder(0.1, 0.6, BuildUp.uniform(SKIN, Bare.NONE), OVERFILL,
                OptionalDouble.of(SHELL), List.of()), NEVER).rates();
        double outer = 0.3 - SKIN + OVERFILL, inner = 0.3 - SKIN - SHELL, area = Math.PI * (outer * outer - inner * inner);
        assertThat(rates.buildUp()).isCloseTo(-2 * Math.PI * (outer - inner) * 0.5, Percentage.withPercentage(0.05));
        assertThat(rates.scale()).isCloseTo(0.5 * (area + 2 * Math.PI * 0.3 * (outer - inner)), Percentage.withPercentage(0.05));
        assertThat(rates.foreEnd()).isCloseTo(-area, Percentage.withPercentage(0.05));
        assertThat(rates.aftEnd()).isCloseTo(area, Percentage.withPercentage(0.05));
    }

    @Test void anEndPastTheBodyMovesNothing() {
        Loft cylinder = loft(x -> half(Bodies.circle(0.3, 1)), 0, 1);
        CavityRates rates = Cavity.of(cylinder, new CavityOrder(-0.1, 1.2, BuildUp.NONE, 0, OptionalDouble.empty(), List.of()), NEVER).rates();
        assertThat(rates.foreEnd()).isZero();
        assertThat(rates.aftEnd()).isZero();
    }

    // closed form: two members of 60 mm that share 50 mm of their height
    @Test void backbonesThatOverlapAreTakenOffOnce() {
        Loft box = loft(x -> half(Bodies.box(0.3, 0, 0.4)), 0, 1);
        CavityOrder one = new CavityOrder(0, 1, BuildUp.NONE, 0, OptionalDouble.empty(), List.of(member(0.1, 0.2), member(0.15, 0.3)));
        assertThat(Cavity.of(box, one, NEVER).poured().value()).isCloseTo(0.6 * 0.4 - 0.06 * 0.2, within(1e-7));
    }

    // what sticks out of the bottom bounds no foam: the form stands on the box, not on the member
    @Test void aBackboneThatCarriesTheBottomAwayRaisesIt() {
        Outline wide = Outline.of(List.of(new PlanePoint(-1, -0.1), new PlanePoint(1, -0.1), new PlanePoint(1, 0.1), new PlanePoint(-1, 0.1)));
        Loft box = loft(x -> half(Bodies.box(0.3, 0, 0.4)), 0, 1);
        Cavity cavity = Cavity.of(box, new CavityOrder(0, 1, BuildUp.NONE, 0, OptionalDouble.empty(), List.of(wide)), NEVER);
        assertThat(cavity.extent(Attitude.UPRIGHT).low()).isCloseTo(0.1, within(1e-7));
    }
}
