package mouldwright.exchange.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.LoftStation;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.measure.Measures;
import mouldwright.geometry.offset.BuildUp;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionForm;
import mouldwright.geometry.section.SectionKind;
import mouldwright.geometry.section.SectionRules;
import mouldwright.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Meshes of bodies whose measures are known, and of such as are hard to close. */
class MeshTest {

    private static final double FINE = 5e-5;

    private static LoftStation station(double x, SectionKind kind, SectionForm form) {
        return new LoftStation(x, Section.of(form, kind, SectionRules.LENIENT).section().orElseThrow(), false);
    }

    private static Loft half(Object... placesAndForms) {
        return loft(SectionKind.HALF, placesAndForms);
    }

    private static Loft loft(SectionKind kind, Object... placesAndForms) {
        List<LoftStation> stations = Stream.iterate(0, i -> i < placesAndForms.length, i -> i + 2)
                .map(i -> station((double) placesAndForms[i], kind, (SectionForm) placesAndForms[i + 1])).toList();
        return Loft.through(stations).loft().orElseThrow();
    }

    private static SectionForm round(double radius) {
        return new SectionForm.Superellipse(radius, 2 * radius, 2, 0.3 - radius);
    }

    private static SectionForm points(double... yz) {
        return new SectionForm.Points(Stream.iterate(0, i -> i < yz.length, i -> i + 2).map(i -> i == 0 || i == yz.length - 2
                ? OutlinePoint.smooth(yz[i], yz[i + 1]) : OutlinePoint.knuckle(yz[i], yz[i + 1])).toList());
    }

    private static Loft cylinder() {
        return half(0.0, round(0.2), 0.5, round(0.2), 1.0, round(0.2));
    }

    private static Loft cone() {
        return half(0.0, new SectionForm.Nose(0, 0.3), 0.5, round(0.1), 1.0, round(0.2));
    }

    static Stream<Arguments> bodies() {
        SectionForm open = new SectionForm.Points(List.of(OutlinePoint.knuckle(0, 0), OutlinePoint.smooth(0.1, 0.02), OutlinePoint.knuckle(0.2, 0.1), OutlinePoint.smooth(0.25, 0.3)));
        SectionForm stem = points(0, 0.05, 0, 0.1, 0, 0.35);
        return Stream.of(Arguments.of("a cylinder", cylinder()), Arguments.of("a cone", cone()),
                Arguments.of("a box", half(0.0, points(0, 0, 0.1, 0, 0.1, 0.05, 0, 0.05), 0.4, points(0, 0, 0.1, 0, 0.1, 0.05, 0, 0.05))),
                Arguments.of("an open hull with a stem", half(0.0, points(0, 0.05, 0, 0.35), 0.5, new SectionForm.Points(List.of(OutlinePoint.smooth(0, 0), OutlinePoint.smooth(0.1, 0.02),
                        OutlinePoint.smooth(0.2, 0.1), OutlinePoint.smooth(0.25, 0.3))), 1.0, new SectionForm.Points(List.of(OutlinePoint.smooth(0, 0), OutlinePoint.smooth(0.1, 0.02),
                                OutlinePoint.smooth(0.2, 0.1), OutlinePoint.smooth(0.25, 0.3))))),
                Arguments.of("a hull open above and below", half(0.0, points(0.05, 0, 0.2, 0.1, 0.25, 0.3), 1.0, points(0.0, 0, 0.2, 0.12, 0.1, 0.3))),
                Arguments.of("a drooping bottom", half(0.0, points(0, 0.1, 0.15, 0, 0.2, 0.3, 0.1, 0.2, 0, 0.25), 1.0, points(0, 0.1, 0.15, 0, 0.2, 0.3, 0.1, 0.2, 0, 0.25))),
                Arguments.of("a full body off the middle", loft(SectionKind.FULL, 0.0, points(0, 0, 0.2, 0.05, 0.15, 0.3, -0.05, 0.3, -0.1, 0.02, 0, 0),
                        1.0, points(0, 0, 0.25, 0.05, 0.15, 0.35, -0.05, 0.3, -0.1, 0.02, 0, 0))),
                Arguments.of("a twisted wedge", half(0.0, points(0, 0, 0.2, 0, 0.1, 0.3, 0, 0.3), 0.5, points(0, 0, 0.1, 0, 0.25, 0.3, 0, 0.3))));
    }

    private static Map<Long, Integer> directedEdges(TriangleMesh mesh) {
        Map<Long, Integer> edges = new HashMap<>();
        for (int t = 0; t < mesh.triangles(); t++)
            for (int c = 0; c < 3; c++)
                edges.merge((long) mesh.corner(t, c) << 32 | mesh.corner(t, (c + 1) % 3), 1, Integer::sum);
        return edges;
    }

    /** Closed: each edge is run along once each way. Of one piece and without a hole: Euler's places - edges + triangles = 2. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("bodies")
    void isClosedAndOfOnePiece(String name, Loft loft) {
        TriangleMesh mesh = LoftMesh.of(loft, MeshOrder.plain(5e-4));
        Map<Long, Integer> edges = directedEdges(mesh);
        assertThat(edges.values()).containsOnly(1);
        assertThat(edges.keySet()).allMatch(edge -> edges.containsKey(edge << 32 | edge >>> 32));
        long used = edges.keySet().stream().map(edge -> edge >>> 32).distinct().count();
        assertThat(used).isEqualTo(mesh.places());
        assertThat(mesh.places() - edges.size() / 2 + mesh.triangles()).isEqualTo(2);
    }

    /** The loft's own volume is worked out by quadrature of its sections, without a mesh. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("bodies")
    void holdsTheVolumeOfTheLoft(String name, Loft loft) {
        double volume = Measures.of(loft, Bare.NONE, () -> false).volume().volume().value();
        assertThat(LoftMesh.of(loft, MeshOrder.plain(FINE)).volume()).isCloseTo(volume, withinPercentage(0.1));
    }

    /** Closed forms: pi r2 l, and pi r2 h / 3. */
    @Test void cylinderAndConeHoldWhatTheyShould() {
        assertThat(LoftMesh.of(cylinder(), MeshOrder.plain(FINE)).volume()).isCloseTo(Math.PI * 0.04, withinPercentage(0.1));
        assertThat(LoftMesh.of(cone(), MeshOrder.plain(FINE)).volume()).isCloseTo(Math.PI * 0.04 / 3, withinPercentage(0.1));
    }

    @Test void everyNormalOfACylinderPointsOutward() {
        TriangleMesh mesh = LoftMesh.of(cylinder(), MeshOrder.plain(5e-4));
        for (int t = 0; t < mesh.triangles(); t++) {
            double[] n = mesh.across(t);
            double y = 0, z = 0, x = 0;
            for (int c = 0; c < 3; c++) {
                x += mesh.at(mesh.corner(t, c), 0) / 3 - 0.5 / 3;
                y += mesh.at(mesh.corner(t, c), 1) / 3;
                z += (mesh.at(mesh.corner(t, c), 2) - 0.3) / 3;
            }
            assertThat(n[0] * x + n[1] * y + n[2] * z).isPositive();
        }
    }

    private static double distance(TriangleMesh mesh, SurfacePoint p) {
        double least = Double.POSITIVE_INFINITY;
        for (int t = 0; t < mesh.triangles(); t++)
            least = Math.min(least, ToTriangle.distance(mesh, t, p.x(), p.y(), p.z()));
        return least;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("bodies")
    void leavesTheSurfaceByNoMoreThanTheTolerance(String name, Loft loft) {
        double tolerance = 1e-3;
        TriangleMesh mesh = LoftMesh.of(loft, MeshOrder.plain(tolerance));
        for (int i = 0; i <= 7; i++)
            for (int stretch = 0; stretch < loft.stretches(); stretch++)
                for (int k = 0; k <= 5; k++) {
                    double x = loft.startX() + (loft.endX() - loft.startX()) * i / 7;
                    assertThat(distance(mesh, loft.at(x).point(stretch, k / 5.0))).isLessThanOrEqualTo(tolerance);
                }
    }

    @Test void aFinerToleranceMakesMoreTriangles() {
        assertThat(LoftMesh.of(cylinder(), MeshOrder.plain(1e-4)).triangles()).isGreaterThan(2 * LoftMesh.of(cylinder(), MeshOrder.plain(1e-3)).triangles());
    }

    /** A cylinder less a skin all round, end faces bare: pi (r - t)2 l. */
    @Test void theSurfaceUnderTheSkinOfACylinderIsACylinder() {
        TriangleMesh mesh = LoftMesh.of(cylinder(), new MeshOrder(FINE, BuildUp.uniform(0.005, Bare.NONE), 0, 0));
        assertThat(mesh.volume()).isCloseTo(Math.PI * 0.195 * 0.195, withinPercentage(0.1));
        assertThat(mesh.extent(0)).isCloseTo(1, within(1e-6));
        assertThat(directedEdges(mesh).values()).containsOnly(1);
        assertThat(LoftMesh.of(cylinder(), new MeshOrder(FINE, BuildUp.uniform(0.005, Bare.NONE), 0.005, 0)).extent(0)).isCloseTo(0.995, within(1e-5));
    }

    /** Under a skin t the tip of a cone lies t / sin(half angle) down the axis: here the tangent of the half angle is 0.2. */
    @Test void theTipUnderTheSkinLiesDownTheAxis() {
        TriangleMesh mesh = LoftMesh.of(cone(), new MeshOrder(FINE, BuildUp.uniform(0.005, Bare.NONE), 0, 0));
        assertThat(1 - mesh.extent(0)).isCloseTo(0.005 / Math.sin(Math.atan(0.2)), within(2e-5));
    }

    /** A box less a skin: the corners mitre. */
    @Test void theSkinOfABoxMitresAtItsCorners() {
        Loft box = half(0.0, points(0, 0, 0.1, 0, 0.1, 0.05, 0, 0.05), 0.4, points(0, 0, 0.1, 0, 0.1, 0.05, 0, 0.05));
        assertThat(LoftMesh.of(box, new MeshOrder(FINE, BuildUp.uniform(0.005, Bare.NONE), 0.005, 0.005)).volume()).isCloseTo(0.19 * 0.04 * 0.39, withinPercentage(0.01));
    }

    /** 80 bytes of head, four of count, fifty a triangle, low bytes first: the layout of the format. */
    @Test void anStlIsLaidOutAsTheFormatHasIt() {
        TriangleMesh mesh = LoftMesh.of(cylinder(), MeshOrder.plain(5e-4));
        byte[] bytes = MeshFiles.stl(mesh, "Cylinder", Units.find("mm").orElseThrow());
        assertThat(bytes).hasSize(84 + 50 * mesh.triangles());
        assertThat(new String(bytes, 0, 80, StandardCharsets.US_ASCII)).startsWith("Mouldwright, in mm").doesNotStartWith("solid");
        ByteBuffer in = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(in.getInt(80)).isEqualTo(mesh.triangles());
        double six = 0;
        for (int t = 0; t < mesh.triangles(); t++) {
            float[] f = new float[12];
            for (int i = 0; i < 12; i++)
                f[i] = in.getFloat(84 + 50 * t + 4 * i);
            assertThat((double) f[0] * f[0] + f[1] * f[1] + f[2] * f[2]).isCloseTo(1, within(1e-5));
            six += f[3] * ((double) f[7] * f[11] - (double) f[8] * f[10]) - f[4] * ((double) f[6] * f[11] - (double) f[8] * f[9]) + f[5] * ((double) f[6] * f[10] - (double) f[7] * f[9]);
        }
        assertThat(six / 6 * 1e-9).isCloseTo(mesh.volume(), withinPercentage(0.001));
    }

    @Test void anObjNamesItsUnitAndCountsFromOne() {
        Loft box = half(0.0, points(0, 0, 0.1, 0, 0.1, 0.05, 0, 0.05), 0.4, points(0, 0, 0.1, 0, 0.1, 0.05, 0, 0.05));
        TriangleMesh mesh = LoftMesh.of(box, MeshOrder.plain(5e-4));
        List<String> lines = new String(MeshFiles.obj(mesh, "Box", Units.find("mm").orElseThrow()), StandardCharsets.UTF_8).lines().toList();
        assertThat(lines.get(1)).isEqualTo("# in mm; x aft, y to starboard, z up");
        assertThat(lines).contains("v 400 100 50", "v 0 -100 0").filteredOn(line -> line.startsWith("v ")).hasSize(mesh.places());
        assertThat(lines).filteredOn(line -> line.startsWith("f ")).hasSize(mesh.triangles()).allMatch(line -> !line.contains(" 0"));
    }
}
