package mouldwright.geometry.section;

import static mouldwright.geometry.section.OutlinePoint.knuckle;
import static mouldwright.geometry.section.OutlinePoint.smooth;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** What is wrong with a section is told as a value, with its place. */
class SectionFaultTest {

    private static List<SectionFault> half(OutlinePoint... points) {
        return Section.of(SectionForm.Points.of(points), SectionKind.HALF, SectionRules.LENIENT).faults();
    }

    private static List<SectionFault> full(OutlinePoint... points) {
        return Section.of(SectionForm.Points.of(points), SectionKind.FULL, SectionRules.LENIENT).faults();
    }

    @Test void onePointIsTooFew() {
        assertThat(half(smooth(0, 0))).containsExactly(new SectionFault.TooFewPoints(1));
        assertThat(half()).containsExactly(new SectionFault.TooFewPoints(0));
    }

    @Test void aPointGivenTwiceIsNamed() {
        assertThat(half(smooth(0, 0), smooth(1, 0), smooth(1, 0), smooth(0, 1)))
                .containsExactly(new SectionFault.PointsDoubled(1, 2));
    }

    @Test void aNumberThatIsNoneIsNamed() {
        assertThat(half(smooth(0, 0), smooth(Double.NaN, 0), smooth(0, 1))).containsExactly(new SectionFault.NotFinite(1));
        assertThat(half(smooth(0, 0), smooth(1, 1e308), smooth(0, 1))).containsExactly(new SectionFault.NotFinite(1));
        assertThat(half(smooth(0, Double.NEGATIVE_INFINITY), smooth(1, 0))).containsExactly(new SectionFault.NotFinite(0));
    }

    @Test void aPointToPortOfAHalfSectionIsNamed() {
        assertThat(half(smooth(0, 0), smooth(-0.1, 0.5), smooth(0, 1)))
                .containsExactly(new SectionFault.NegativeHalfBreadth(1, -0.1));
    }

    @Test void aSectionThatStartsAtTheTopRunsTheWrongWay() {
        assertThat(half(smooth(0, 1), smooth(1, 0.5), smooth(0, 0))).containsExactly(new SectionFault.WrongWayRound());
    }

    @Test void aFullSectionThatGoesToPortFirstRunsTheWrongWay() {
        assertThat(full(smooth(0, 0), smooth(-1, 1), smooth(0, 2), smooth(1, 1), smooth(0, 0)))
                .containsExactly(new SectionFault.WrongWayRound());
    }

    @Test void aFullSectionMustStartAndEndOnTheCentreline() {
        assertThat(full(smooth(0.2, 0), smooth(1, 1), smooth(-1, 1), smooth(0.2, 0)))
                .contains(new SectionFault.NotOnCentreline(0, 0.2), new SectionFault.NotOnCentreline(3, 0.2));
    }

    @Test void aFullSectionMustEndWhereItStarts() {
        assertThat(full(smooth(0, 0), smooth(1, 1), smooth(-1, 1), smooth(0, 0.25)))
                .containsExactly(new SectionFault.NotClosed(0.25));
    }

    // the two straight sides of a bow tie meet at its middle
    @Test void anOutlineThatCrossesItselfIsShownWhere() {
        assertThat(half(smooth(0, 0), knuckle(2, 0), knuckle(1, 1), knuckle(2, 1), knuckle(1, 0.5), smooth(0, 2)))
                .singleElement().isInstanceOfSatisfying(SectionFault.CrossesItself.class, fault -> {
                    assertThat(fault.y()).isBetween(1.0, 2.0);
                    assertThat(fault.z()).isBetween(0.5, 1.0);
                });
    }

    @Test void aSmoothCurveThatSwingsAcrossTheCentrelineCrossesIt() {
        assertThat(half(smooth(0.5, 0), smooth(0.001, 0.5), smooth(0.4, 0.6), smooth(0.5, 2)))
                .singleElement().isInstanceOf(SectionFault.CrossesItself.class);
    }

    @Test void aLineMarkedTwiceInAHalfSectionIsNamed() {
        assertThat(half(smooth(0, 0), knuckle(1, 0).on("chine"), knuckle(1, 1).on("chine"), smooth(0, 1)))
                .containsExactly(new SectionFault.LineTwice("chine"));
    }

    @Test void aLineAboveTheSectionCannotBePlaced() {
        SectionForm form = new SectionForm.Marked(new SectionForm.Superellipse(1, 2, 2, 0),
                List.of(new LinePlace.AtHeight("chine", 2.5)));
        assertThat(Section.of(form, SectionKind.HALF, SectionRules.LENIENT).faults())
                .containsExactly(new SectionFault.LineNotPlaced("chine"));
    }

    @Test void aSuperellipseWithoutAnExponentIsRefused() {
        assertThat(Section.of(new SectionForm.Superellipse(1, 2, 0, 0), SectionKind.HALF, SectionRules.LENIENT).faults())
                .containsExactly(new SectionFault.BadFigure("exponent", 0));
    }

    // a spline that must turn sharply between uneven points swings past them
    @Test void anOvershootIsToldButDoesNotStopTheSection() {
        SectionForm form = SectionForm.Points.of(knuckle(0, 0), smooth(0.5, 0.001), smooth(1, 0), smooth(1.001, 0.5),
                smooth(1, 1), knuckle(0, 1));
        SectionResult result = Section.of(form, SectionKind.HALF, new SectionRules(0.005));
        assertThat(result.section()).isPresent();
        assertThat(result.faults()).isNotEmpty().allMatch(f -> f instanceof SectionFault.Overshoot o && o.by() > 0.005);
    }

    @Test void aGentleCurveDoesNotOvershoot() {
        List<OutlinePoint> points = mouldwright.geometry.Bodies.halfCircle(1, 9);
        assertThat(Section.of(new SectionForm.Points(points), SectionKind.HALF, new SectionRules(0.005)).faults()).isEmpty();
    }

    @Property(tries = 300)
    void noFiguresMakeItThrow(@ForAll("wild") List<OutlinePoint> points, @ForAll SectionKind kind) {
        List<OutlinePoint> copy = new ArrayList<>(points);
        SectionResult result = Section.of(new SectionForm.Points(copy), kind, new SectionRules(0.01));
        assertThat(result.section().isPresent())
                .isEqualTo(result.faults().stream().noneMatch(SectionFault::blocking));
    }

    @Provide
    Arbitrary<List<OutlinePoint>> wild() {
        Arbitrary<Double> coordinate = Arbitraries.frequencyOf(
                net.jqwik.api.Tuple.of(12, Arbitraries.doubles().between(-0.2, 2)),
                net.jqwik.api.Tuple.of(6, Arbitraries.of(0.0, 1.0, 0.5)),
                net.jqwik.api.Tuple.of(1, Arbitraries.of(Double.NaN, 1e308, -1e308, Double.POSITIVE_INFINITY, 1e-300, -0.0)));
        Arbitrary<OutlinePoint> point = Combinators.combine(coordinate, coordinate, Arbitraries.of(true, false),
                Arbitraries.of(0.0, 0.0, 0.05, 0.3)).as((y, z, corner, radius) ->
                        new OutlinePoint(y, z, corner, radius, java.util.Optional.empty(), false));
        return point.list().ofMinSize(0).ofMaxSize(9).map(list -> {
            List<OutlinePoint> closed = new ArrayList<>(list);
            if (!closed.isEmpty() && closed.size() % 2 == 0)
                closed.add(closed.getFirst());
            return closed;
        });
    }
}
