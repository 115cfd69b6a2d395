package mouldwright.geometry.measure;

import static mouldwright.geometry.Bodies.NEVER;
import static mouldwright.geometry.Bodies.full;
import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.CancellationException;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.section.LinePlace;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.SectionForm;
import org.junit.jupiter.api.Test;

/** Parts of a surface: spans, bands of the girth, moulded and bare apart. */
class RegionMeasureTest {
    private static final GirthBand LOWER_THIRD = new GirthBand(GirthPlace.BOTTOM, new GirthPlace.AtShare(1.0 / 3));

    private static Loft cylinder() {
        return loft(x -> half(Bodies.circle(0.5, 1)), 0, 1, 2, 3);
    }

    // closed form: girth times length times share
    @Test void aBandOfACylinderIsItsShareOfTheGirth() {
        Measures measures = Measures.of(cylinder(), Bare.NONE, NEVER);
        AreaSplit band = measures.area(new SurfaceRegion(0.25, 1.75, LOWER_THIRD));
        assertThat(band.moulded().value()).isCloseTo(Math.PI * 1.5 / 3, within(1e-7));
    }

    @Test void aBareBandIsCountedApart() {
        AreaSplit area = Measures.of(cylinder(), new Bare(List.of(LOWER_THIRD)), NEVER).area(0, 3);
        assertThat(area.bare().value()).isCloseTo(Math.PI, within(1e-7));
        assertThat(area.moulded().value()).isCloseTo(2 * Math.PI, within(1e-7));
        assertThat(area.total().value()).isCloseTo(3 * Math.PI, within(1e-7));
    }

    // a band given by a line on a full body counts on both sides, though the line is marked to starboard only
    @Test void aLineMarkedToStarboardBoundsTheBandOnBothSides() {
        SectionForm marked = new SectionForm.Marked(Bodies.circle(0.5, 1), List.of(new LinePlace.AtHeight("chine", 0.75)));
        Loft body = loft(x -> full(marked), 0, 1);
        GirthBand band = new GirthBand(GirthPlace.BOTTOM, new GirthPlace.OnLine("chine"));
        AreaSplit area = Measures.of(body, Bare.NONE, NEVER).area(new SurfaceRegion(0, 1, band));
        assertThat(area.moulded().value()).isCloseTo(2 * Math.PI / 6, within(1e-7));
    }

    // spans add up to the whole
    @Test void baysAddUpToTheWhole() {
        Measures measures = Measures.of(Bodies.ellipsoid(2, 1, 1, 11), Bare.NONE, NEVER);
        double sum = 0, volume = 0;
        double[] borders = { -2, -1.3, -0.4, 0.7, 2 };
        for (int i = 0; i + 1 < borders.length; i++) {
            sum += measures.area(borders[i], borders[i + 1]).total().value();
            volume += measures.volume(borders[i], borders[i + 1]).volume().value();
        }
        assertThat(sum).isCloseTo(measures.area().total().value(), within(1e-4));
        assertThat(volume).isCloseTo(measures.volume().volume().value(), within(1e-6));
    }

    @Test void aStretchIsBareWhereBothStationsMarkIt() {
        SectionForm marked = SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.4, 0).afterBare(),
                OutlinePoint.knuckle(0.4, 0.3), OutlinePoint.smooth(0, 0.3));
        Loft body = loft(x -> half(x < 1.5 ? marked : Bodies.box(0.4, 0, 0.3)), 0, 1, 2);
        AreaSplit area = Measures.of(body, Bare.NONE, NEVER).area();
        assertThat(area.bare().value()).isCloseTo(0.8, within(1e-9));
        assertThat(area.moulded().value()).isCloseTo(2 * 2 * 1.1 - 0.8, within(1e-9));
    }

    // a tray open at the top: its closure is 0.8 m wide and 2 m long
    @Test void theClosureOfAnOpenTopIsCountedApart() {
        SectionForm tray = SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.4, 0),
                OutlinePoint.smooth(0.4, 0.3));
        AreaSplit area = Measures.of(loft(x -> half(tray), 0, 2), Bare.NONE, NEVER).area();
        assertThat(area.closure().value()).isCloseTo(1.6, within(1e-9));
        assertThat(area.moulded().value()).isCloseTo(2 * 2 * 0.7, within(1e-9));
    }

    // the integral of a height over a closed cylinder is its mean height times its area
    @Test void aFigureIsAveragedOverTheSurface() {
        Measured heights = Measures.of(cylinder(), Bare.NONE, NEVER)
                .integral(new SurfaceRegion(0, 3, GirthBand.WHOLE), (place, point) -> point.z());
        assertThat(heights.value()).isCloseTo(3 * Math.PI, within(1e-6));
    }

    // closed form: centroid of a cone frustum along its axis, h (R^2 + 2 R r + 3 r^2) / (4 (R^2 + R r + r^2))
    @Test void theCentroidOfAFrustumLiesTowardItsLargeEnd() {
        VolumeCentre centre = Measures.of(Bodies.frustum(0.5, 0.3, 0.8, 3), Bare.NONE, NEVER).volume();
        assertThat(centre.x()).isCloseTo(0.8 * (0.25 + 0.3 + 0.27) / (4 * (0.25 + 0.15 + 0.09)), within(1e-9));
        assertThat(centre.z()).isCloseTo(1, within(1e-9));
        assertThat(centre.y()).isZero();
    }

    // a port-heavy full body has its centroid to port: a rectangle from y = -0.3 to 0.1
    @Test void aLopsidedFullBodyHasItsCentroidToItsHeavySide() {
        SectionForm lopsided = SectionForm.Points.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.1, 0),
                OutlinePoint.knuckle(0.1, 0.2), OutlinePoint.knuckle(-0.3, 0.2), OutlinePoint.knuckle(-0.3, 0),
                OutlinePoint.smooth(0, 0));
        VolumeCentre centre = Measures.of(loft(x -> full(lopsided), 0, 1), Bare.NONE, NEVER).volume();
        assertThat(centre.y()).isCloseTo(-0.1, within(1e-9));
        assertThat(centre.volume().value()).isCloseTo(0.08, within(1e-9));
    }

    @Test void measuringEndsWhenItIsCancelled() {
        Measures measures = Measures.of(cylinder(), Bare.NONE, () -> true);
        assertThatExceptionOfType(CancellationException.class).isThrownBy(measures::area);
    }
}
