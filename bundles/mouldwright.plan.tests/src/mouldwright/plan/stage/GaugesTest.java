package mouldwright.plan.stage;

import static mouldwright.plan.stage.Plans.plan;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.frame.PlatePart.Score;
import mouldwright.plan.BuildPlan;
import org.junit.jupiter.api.Test;

/** Gauges for the finished surface, on a cylinder and a cone whose sections are circles. */
class GaugesTest {

    private static final BuildPlan CYLINDER = plan(Specs.cylinder().frame(Specs.frame(0.012)).skin(Specs.skin(Specs.schedule(Specs.csm450()))));

    @Test void everyBayHasTwoHalves() {
        assertThat(Gauges.midBays(CYLINDER)).extracting(PlatePart::key).containsExactly("gauge.S1-S2.port", "gauge.S1-S2.starboard", "gauge.S2-S3.port",
                "gauge.S2-S3.starboard", "gauge.S3-S4.port", "gauge.S3-S4.starboard");
    }

    @Test void theInsideIsTheFinishedSurfaceWithItsSkin() { // closed form: the radius of the cylinder, not of its plates
        for (PlatePart half : Gauges.midBays(CYLINDER))
            assertThat(half.outer().points().stream().filter(p -> Math.abs(p.y()) > 1e-9 && Math.abs(p.y()) < 0.35)).isNotEmpty()
                    .allSatisfy(p -> assertThat(Math.hypot(p.y(), p.z() - 0.5)).isCloseTo(0.3, within(3e-5)));
    }

    @Test void theBodyIsStraightAndAsDeepAsStated() { // 100 mm unless the spec says otherwise
        PlatePart half = Gauges.midBays(CYLINDER).get(1);
        assertThat(half.outer().maxY()).isCloseTo(0.4, within(1e-6));
        assertThat(half.outer().maxZ()).isCloseTo(0.9, within(1e-6));
        assertThat(half.flaw()).isEmpty();
    }

    @Test void aGaugeIsMadeForAnyPlaceAlongTheBody() { // closed form: half way along the cone its radius is 400 mm
        List<PlatePart> halves = Gauges.at(plan(Specs.cone().frame(Specs.frame(0.012))), 0.4);
        assertThat(halves).hasSize(2);
        assertThat(halves.get(1).outer().points().stream().filter(p -> p.y() > 1e-9 && p.y() < 0.45)).isNotEmpty()
                .allSatisfy(p -> assertThat(Math.hypot(p.y(), p.z() - 0.6)).isCloseTo(0.4, within(1e-4)));
    }

    @Test void itsHeightLineIsThatOfThePlates() {
        double height = CYLINDER.alignment().orElseThrow().rows().getFirst().height();
        assertThat(Gauges.midBays(CYLINDER)).allSatisfy(half -> assertThat(half.scores()).filteredOn(score -> score.use() == Score.Use.HEIGHT)
                .isNotEmpty().allSatisfy(score -> assertThat(score.points()).allSatisfy(p -> assertThat(p.z()).isEqualTo(height))));
    }

    @Test void pastTheEndsThereIsNothingToGauge() {
        assertThat(Gauges.at(CYLINDER, -0.1)).isEmpty();
        assertThat(Gauges.at(CYLINDER, 1.3)).isEmpty();
    }
}
