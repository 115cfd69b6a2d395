package mouldwright.geometry.offset;

import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;
import mouldwright.geometry.loft.GirthPlace;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.plane.Region;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionForm;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

/** What holds for the foam line of any chined body with a bare bottom and a local ply. */
class FoamLinePropertyTest {
    private static final double SKIN = 0.003, PLY = 0.002, OVERFILL = 0.015;
    private static final GirthPlace CHINE = new GirthPlace.OnLine("chine");
    private static final BuildUp BUILD_UP = new BuildUp(List.of(
            new Layer(-1, 2, GirthBand.WHOLE, SKIN), new Layer(0.35, 0.9, new GirthBand(CHINE, new GirthPlace.AtShare(0.6)), PLY)),
            new Bare(List.of(new GirthBand(GirthPlace.BOTTOM, CHINE))));

    private static Section section(double scale, double shape) {
        double b = 0.3 * scale, h = 0.5 * scale;
        return half(SectionForm.Points.of(OutlinePoint.smooth(0, 0),
                OutlinePoint.knuckle(b * (0.6 + 0.3 * shape), 0.02 + 0.1 * (1 - shape)).on("chine"),
                OutlinePoint.smooth(b, 0.35 * h), OutlinePoint.smooth(b * (0.9 + 0.2 * shape), 0.6 * h),
                OutlinePoint.knuckle(b * (0.5 + 0.2 * shape), (0.65 + 0.2 * shape) * h), OutlinePoint.smooth(0.4 * b, 0.95 * h),
                OutlinePoint.smooth(0, h)));
    }

    @Property(tries = 60)
    void skinMakesItSmallerAndOverfillLargerInOnePieceEach(
            @ForAll @Size(6) List<@DoubleRange(min = 0.6, max = 1.2) Double> scales,
            @ForAll @Size(6) List<@DoubleRange(min = 0, max = 1) Double> shapes,
            @ForAll @DoubleRange(min = 0, max = 1) double x) {
        Loft body = loft(at -> section(scales.get((int) Math.round(at * 5)), shapes.get((int) Math.round(at * 5))), 0, 0.2, 0.4,
                0.6, 0.8, 1);
        double area = body.at(x).area(), girth = body.at(x).girth();
        Region foam = FoamLine.at(body, x, Side.AFT, BUILD_UP);
        Region form = FoamLine.grown(body, x, Side.AFT, BUILD_UP, OVERFILL);
        Region pocket = FoamLine.within(body, x, Side.AFT, BUILD_UP, 0.05);
        assertThat(foam.pieces()).hasSize(1);
        assertThat(form.pieces()).hasSize(1);
        assertThat(foam.holes()).isEmpty();
        assertThat(area - foam.area()).isBetween(0.3 * SKIN * girth, 3 * (SKIN + PLY) * girth);
        assertThat(form.area() - foam.area()).isBetween(0.4 * OVERFILL * girth, 1.1 * OVERFILL * girth);
        assertThat(pocket.area()).isLessThan(foam.area());
    }
}
