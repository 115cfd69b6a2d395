package mouldwright.geometry.measure;

import static mouldwright.geometry.Bodies.NEVER;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Where the weight of a skin lies. Closed forms. */
class SurfaceCentreTest {

    @Test void theSkinOfAConeFrustumLiesTowardItsBase() { // h / 3 (r1 + 2 r2) / (r1 + r2) from the end of radius r1
        SurfaceCentre skin = Measures.of(Bodies.frustum(0.5, 0.3, 0.8, 3), Bare.NONE, NEVER).moulded();
        assertThat(skin.x()).isCloseTo(0.8 / 3 * (0.5 + 0.6) / 0.8, Percentage.withPercentage(0.05));
        assertThat(skin.z()).isCloseTo(1, Percentage.withPercentage(0.01));
        assertThat(skin.area().value()).isCloseTo(Math.PI * 0.8 * Math.hypot(0.8, 0.2), Percentage.withPercentage(0.05));
    }

    @Test void halfACylinderHasItsSkinTwoOverPiOfTheRadiusUp() { // a half circle's arc: 2 r / pi above its diameter
        Bare lower = new Bare(List.of(new GirthBand(GirthPlace.BOTTOM, new GirthPlace.AtShare(0.5))));
        SurfaceCentre skin = Measures.of(Bodies.frustum(0.5, 0.5, 2, 3), lower, NEVER).moulded();
        assertThat(skin.z() - 1).isCloseTo(1 / Math.PI, Percentage.withPercentage(0.1));
        assertThat(skin.x()).isCloseTo(1, within(1e-6));
    }
}
