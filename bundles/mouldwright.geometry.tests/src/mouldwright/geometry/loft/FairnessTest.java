package mouldwright.geometry.loft;

import static mouldwright.geometry.Bodies.half;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.section.Fairness;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.SectionForm;
import mouldwright.geometry.section.SectionKind;
import mouldwright.geometry.section.Standoff;
import org.junit.jupiter.api.Test;

/** Slips of the pen in a table of offsets. */
class FairnessTest {

    /** A half circle of 0.3 m with two figures of one half-breadth exchanged: 0.2853 typed as 0.2583. */
    private static List<OutlinePoint> slipped() {
        List<OutlinePoint> points = new ArrayList<>(Bodies.halfCircle(0.3, 11));
        OutlinePoint good = points.get(4);
        points.set(4, OutlinePoint.smooth(0.2583, good.z()));
        return points;
    }

    // closed form: the point belongs on the circle
    @Test void aSlipRoundTheSectionIsFoundWithItsFairedPlace() {
        List<Standoff> slips = Fairness.slips(slipped(), SectionKind.HALF, 0.002);
        assertThat(slips).singleElement().satisfies(slip -> {
            assertThat(slip.point()).isEqualTo(4);
            assertThat(Math.hypot(slip.fairY(), slip.fairZ())).isCloseTo(0.3, within(0.001));
            assertThat(slip.off()).isCloseTo(0.026, within(0.003));
        });
    }

    @Test void aFairSectionHasNoSlip() {
        assertThat(Fairness.slips(Bodies.halfCircle(0.3, 11), SectionKind.HALF, 0.002)).isEmpty();
    }

    @Test void fourPointsBetweenKnucklesTellNothing() {
        assertThat(Fairness.round(List.of(OutlinePoint.smooth(0, 0), OutlinePoint.smooth(0.2, 0.1), OutlinePoint.smooth(0.3, 0.2),
                OutlinePoint.smooth(0, 0.3)), SectionKind.HALF)).isEmpty();
    }

    private static List<LoftStation> spindle(double slip) {
        List<LoftStation> stations = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            double x = 0.25 * i, r = 0.3 + 0.1 * Math.sin(x) + (i == 4 ? slip : 0);
            stations.add(new LoftStation(x, half(new SectionForm.Points(Bodies.halfCircle(r, 9))), false));
        }
        return stations;
    }

    // closed form: without the slip the station has the radius 0.3 + 0.1 sin 1
    @Test void aSlipAlongTheBodyIsFoundWithItsFairedPlace() {
        double fair = 0.3 + 0.1 * Math.sin(1);
        List<PlanePoint> points = Bodies.halfCircle(fair + 0.02, 9).stream().map(p -> new PlanePoint(p.y(), p.z())).toList();
        assertThat(LoftFairness.along(spindle(0.02), 4, points)).hasSize(9).allSatisfy(standoff -> {
            assertThat(standoff.off()).isCloseTo(0.02, within(1e-4));
            assertThat(Math.hypot(standoff.fairY(), standoff.fairZ())).isCloseTo(fair, within(1e-4));
        });
    }

    @Test void aFairStationStandsOffByNextToNothing() {
        double fair = 0.3 + 0.1 * Math.sin(1);
        List<PlanePoint> points = Bodies.halfCircle(fair, 9).stream().map(p -> new PlanePoint(p.y(), p.z())).toList();
        assertThat(LoftFairness.along(spindle(0), 4, points)).allSatisfy(s -> assertThat(s.off()).isLessThan(1e-4));
    }

    @Test void anEndStationHasNothingToBeComparedWith() {
        assertThat(LoftFairness.along(spindle(0), 0, List.of(new PlanePoint(0.3, 0)))).isEmpty();
    }
}
