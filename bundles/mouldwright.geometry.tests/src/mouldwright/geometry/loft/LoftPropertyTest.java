package mouldwright.geometry.loft;

import static mouldwright.geometry.Bodies.NEVER;
import static mouldwright.geometry.Bodies.full;
import static mouldwright.geometry.Bodies.half;
import static mouldwright.geometry.Bodies.loft;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.Bodies;
import mouldwright.geometry.measure.Measures;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.SectionForm;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** What holds for every body. */
class LoftPropertyTest {

    private static double area(Loft body) {
        return Measures.of(body, Bare.NONE, NEVER).area().total().value();
    }

    private static double volume(Loft body) {
        return Measures.of(body, Bare.NONE, NEVER).volume().volume().value();
    }

    private static List<OutlinePoint> chined(double breadth, double height) {
        return List.of(OutlinePoint.smooth(0, 0), OutlinePoint.knuckle(0.8 * breadth, 0.2 * height),
                OutlinePoint.smooth(breadth, 0.5 * height), OutlinePoint.smooth(0.9 * breadth, 0.8 * height),
                OutlinePoint.knuckle(0.7 * breadth, height), OutlinePoint.smooth(0, height));
    }

    private static Loft body(double[] xs, List<Double> breadths) {
        List<LoftStation> stations = new ArrayList<>();
        for (int i = 0; i < xs.length; i++)
            stations.add(new LoftStation(xs[i], half(new SectionForm.Points(chined(breadths.get(i), 0.5))), false));
        return loft(stations);
    }

    private static final double[] XS = { 0, 0.4, 1.1, 1.5, 2.2 };

    @Property(tries = 25)
    void scalingByKScalesAreaByItsSquareAndVolumeByItsCube(
            @ForAll @Size(5) List<@DoubleRange(min = 0.2, max = 0.5) Double> breadths,
            @ForAll @DoubleRange(min = 0.1, max = 30) double k) {
        Loft body = body(XS, breadths), scaled = body.scaled(k);
        assertThat(area(scaled) / (k * k)).isCloseTo(area(body), within(1e-9));
        assertThat(volume(scaled) / (k * k * k)).isCloseTo(volume(body), within(1e-9));
    }

    @Property(tries = 25)
    void turningTheBodyEndForEndChangesNothing(@ForAll @Size(5) List<@DoubleRange(min = 0.2, max = 0.5) Double> breadths) {
        double[] turned = new double[XS.length];
        for (int i = 0; i < turned.length; i++)
            turned[i] = -XS[XS.length - 1 - i];
        Loft body = body(XS, breadths), back = body(turned, breadths.reversed());
        assertThat(area(back)).isCloseTo(area(body), within(1e-9));
        assertThat(volume(back)).isCloseTo(volume(body), within(1e-9));
        assertThat(back.at(-0.7).area()).isCloseTo(body.at(0.7).area(), within(1e-9));
    }

    @Property(tries = 25)
    void aFullBodyMadeOfBothHalvesIsTheHalfBody(@ForAll @Size(5) List<@DoubleRange(min = 0.2, max = 0.5) Double> breadths) {
        List<LoftStation> stations = new ArrayList<>();
        for (int i = 0; i < XS.length; i++)
            stations.add(new LoftStation(XS[i], full(Bodies.mirroredRing(ends(chined(breadths.get(i), 0.5)))), false));
        Loft both = loft(stations), one = body(XS, breadths);
        assertThat(volume(both)).isCloseTo(volume(one), within(1e-9));
        assertThat(area(both)).isCloseTo(area(one), within(1e-8));
    }

    /** A full section's straight bottom and top run through the centreline, so no knuckle is needed there. */
    private static List<OutlinePoint> ends(List<OutlinePoint> half) {
        List<OutlinePoint> points = new ArrayList<>(half);
        points.set(0, OutlinePoint.knuckle(0, half.getFirst().z()));
        points.set(points.size() - 1, OutlinePoint.knuckle(0, half.getLast().z()));
        return points;
    }

    @Property(tries = 25)
    void namingTheKnucklesChangesNothing(@ForAll @Size(5) List<@DoubleRange(min = 0.2, max = 0.5) Double> breadths) {
        List<LoftStation> stations = new ArrayList<>();
        for (int i = 0; i < XS.length; i++) {
            List<OutlinePoint> points = new ArrayList<>(chined(breadths.get(i), 0.5));
            points.set(1, points.get(1).on("chine"));
            points.set(4, points.get(4).on("rail"));
            stations.add(new LoftStation(XS[i], half(new SectionForm.Points(points)), false));
        }
        Loft named = loft(stations), plain = body(XS, breadths);
        assertThat(area(named)).isEqualTo(area(plain));
        assertThat(volume(named)).isEqualTo(volume(plain));
    }

    // twice the stations leave a smaller error against the closed form of a spheroid
    @Property(tries = 8)
    void moreStationsComeCloser(@ForAll @IntRange(min = 9, max = 16) int stations) {
        double exact = 21.478435328;
        double coarse = Math.abs(area(Bodies.ellipsoid(2, 1, 1, stations)) - exact);
        double fine = Math.abs(area(Bodies.ellipsoid(2, 1, 1, 2 * stations - 1)) - exact);
        assertThat(fine).isLessThan(coarse / 2);
    }

    @Property(tries = 50)
    void theLoftPassesThroughItsStations(@ForAll @Size(5) List<@DoubleRange(min = 0.2, max = 0.5) Double> breadths,
            @ForAll @IntRange(min = 0, max = 4) int station) {
        Loft body = body(XS, breadths);
        double given = half(new SectionForm.Points(chined(breadths.get(station), 0.5))).area();
        assertThat(body.at(XS[station]).area()).isCloseTo(given, within(1e-8));
    }
}
