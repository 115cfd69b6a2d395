package mouldwright.exchange.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.exchange.Fault;
import mouldwright.exchange.SectionPoint;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.section.OutlinePoint;
import mouldwright.geometry.section.Section;
import mouldwright.geometry.section.SectionForm;
import mouldwright.geometry.section.SectionKind;
import mouldwright.geometry.section.SectionRules;
import mouldwright.units.Unit;
import mouldwright.units.Units;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawings written and flattened by ezdxf, and read by GDAL, against our own reading of them. */
class DrawingsTest {

    private static final Unit MM = Units.find("mm").orElseThrow();

    @TempDir
    private static Path folder;
    private static Outside.Drawn drawn;
    private static Map<String, List<Point>> byGdal;
    private static Drawing drawing;

    @BeforeAll static void draw() {
        drawn = Outside.drawn(folder);
        byGdal = Outside.byGdal(folder, drawn.file());
        DrawingResult result = Drawings.read(drawn.text());
        assertThat(result.faults()).isEmpty();
        drawing = result.drawing().orElseThrow();
    }

    private static OutlineResult outline(String layer, boolean full) {
        return DrawnSection.of(layer, drawing.layers().get(layer), MM, full, DrawnSection.TOLERANCE);
    }

    private static List<SectionPoint> points(String layer, boolean full) {
        OutlineResult result = outline(layer, full);
        assertThat(result.faults()).isEmpty();
        return result.points();
    }

    private static Outline lofted(String layer, boolean full) {
        List<OutlinePoint> points = points(layer, full).stream().map(p -> new OutlinePoint(p.y(), p.z(), p.knuckle(), 0, p.line(), false)).toList();
        return Section.of(new SectionForm.Points(points), full ? SectionKind.FULL : SectionKind.HALF, SectionRules.LENIENT).section().orElseThrow().outline(1e-5);
    }

    /** As ezdxf flattens them, to 0.01 mm. */
    @ParameterizedTest
    @ValueSource(strings = {"box", "bulged", "old", "weighted", "fifth", "behind", "round", "oval", "ovalbehind", "egg", "fitted", "led"})
    void theLoftedSectionFollowsTheDrawingWithinATenthOfAMillimetre(String layer) {
        assertThat(drawn.places().get(layer)).hasSizeGreaterThan(7);
        assertThat(farthest(layer, drawn.places().get(layer))).isLessThan(1.1e-4);
    }

    /** GDAL flattens to chords between places on the line; splines it renders itself. */
    @ParameterizedTest
    @ValueSource(strings = {"box", "bulged", "old", "weighted", "fifth", "behind", "round", "oval", "ovalbehind", "egg"})
    void placesOnLinesAsGdalReadsThemLieOnTheSection(String layer) {
        assertThat(byGdal.get(layer)).hasSizeGreaterThan(2);
        assertThat(farthest(layer, byGdal.get(layer))).isLessThan(1.1e-4);
    }

    /** How far from the lofted section the farthest of some places lies, metres. */
    private static double farthest(String layer, List<Point> places) {
        Outline outline = lofted(layer, layer.equals("round") || layer.equals("egg"));
        return places.stream().mapToDouble(place -> outline.distance(new PlanePoint(place.x() / 1000, place.y() / 1000))).max().orElseThrow();
    }

    /** A rounded box by its measures: 360 by 330 less the corner a square leaves outside a quarter circle of 60, both sides. */
    @Test void theAreaOfTheRoundedBoxIsThatOfItsMeasures() {
        double area = 2 * (0.36 * 0.33 - 0.06 * 0.06 * (1 - Math.PI / 4));
        assertThat(lofted("box", false).area()).isCloseTo(area, within(1e-4 * 1.4));
    }

    /** Pi a b. */
    @Test void theAreaOfAnEllipseIsThatOfItsAxes() {
        assertThat(lofted("egg", true).area()).isCloseTo(Math.PI * 0.2 * 0.14, within(1e-4 * 1.1));
        assertThat(lofted("oval", false).area()).as("both halves").isCloseTo(Math.PI * 0.18 * 0.108, within(1e-4));
    }

    /** Ninety points on an ellipse: pi a b. */
    @Test void aSplineThroughPointsOfAnEllipseHasItsArea() {
        assertThat(lofted("fitted", false).area()).isCloseTo(Math.PI * 0.15 * 0.18, within(1e-4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"40\n0", "11\n0\n21\n0", "31\n5"})
    void anEllipseThatIsNoneIsTold(String groups) {
        String oval = "0\nELLIPSE\n8\nE\n10\n0\n20\n0\n" + groups + "\n" + (groups.startsWith("11") ? "" : "11\n100\n21\n0\n") + (groups.startsWith("40") ? "" : "40\n0.5\n");
        Drawing read = Drawings.read("0\nSECTION\n2\nENTITIES\n" + oval + "0\nENDSEC\n0\nEOF\n").drawing().orElseThrow();
        assertThat(read.layers().get("E").faults()).singleElement().satisfies(fault -> assertThat(fault.words()).contains("ELLIPSE"));
    }

    @Test void aSplineThroughOnePointIsTold() {
        Drawing read = Drawings.read("0\nSECTION\n2\nENTITIES\n0\nSPLINE\n8\nS\n11\n5\n21\n5\n11\n5\n21\n5\n0\nENDSEC\n0\nEOF\n").drawing().orElseThrow();
        assertThat(read.layers().get("S").faults()).singleElement().satisfies(fault -> assertThat(fault.words()).contains("too few points"));
    }

    @Test void cornersAreKnucklesAndTangentsAreNot() {
        assertThat(points("box", false)).filteredOn(SectionPoint::knuckle).containsExactly(SectionPoint.corner(0.36, 0.02));
    }

    @Test void aHalfDrawnToPortComesOutToStarboard() {
        assertThat(points("bulged", false)).allMatch(point -> point.y() >= 0);
        assertThat(points("bulged", false).getFirst().z()).isEqualTo(0.03, within(1e-12));
    }

    @Test void aFullSectionBeginsAndEndsAtBottomCentreStarboardFirst() {
        List<SectionPoint> round = points("round", true);
        assertThat(round.getFirst()).isEqualTo(round.getLast());
        assertThat(round.getFirst().y()).isZero();
        assertThat(round.getFirst().z()).isCloseTo(0.2 - Math.sqrt(0.15 * 0.15 - 0.03 * 0.03), within(1e-9));
        assertThat(round.get(1).y()).isPositive();
    }

    private static String fault(String layer, boolean full) {
        return outline(layer, full).faults().stream().map(Fault::words).findFirst().orElse("");
    }

    @Test void whatCannotBeReadIsToldWithItsLineAndEntity() {
        assertThat(fault("space", false)).matches("line \\d+, POLYLINE: it is a polyline in space, or a mesh");
        assertThat(fault("block", false)).matches("line \\d+, INSERT: it is not read");
        assertThat(outline("block", false).faults().getFirst().remedy()).isEqualTo("explode the block into its lines");
    }

    @Test void aGapIsToldWithItsWidth() {
        assertThat(fault("gap", false)).isEqualTo("layer gap: it is in pieces; the narrowest gap is 3 wide, at 100, 0");
        assertThat(fault("round", false)).contains("it shows both sides");
        assertThat(fault("box", true)).contains("it does not close");
    }

    @Test void unitsAreThoseOfTheHead() {
        assertThat(drawing.unit()).contains(MM);
        assertThat(Drawings.read(drawn.text().replaceFirst("\\$INSUNITS", "\\$NOTHING")).drawing().orElseThrow().unit()).isEmpty();
    }

    @Test void aDrawingThatIsCutOffIsTold() {
        assertThat(Drawings.read(drawn.text().substring(0, drawn.text().length() - 8)).faults()).singleElement()
                .satisfies(fault -> assertThat(fault.remedy()).contains("cut off"));
        assertThat(Drawings.read("Some Binary DXF\r\n").faults()).singleElement().satisfies(fault -> assertThat(fault.words()).contains("binary"));
    }

    private static final String SMALL = String.join("\n", "0", "SECTION", "2", "HEADER", "9", "$INSUNITS", "70", "4", "0", "ENDSEC", "0", "SECTION", "2", "ENTITIES",
            "0", "LINE", "8", "A", "10", "0", "20", "0", "11", "100", "21", "10", "0", "ARC", "8", "A", "10", "0", "20", "10", "40", "100", "50", "0", "51", "90",
            "0", "ENDSEC", "0", "EOF", "");

    @Test void noBeginningOfADrawingMakesItFail() {
        for (int end = 0; end <= SMALL.length(); end++) {
            DrawingResult result = Drawings.read(SMALL.substring(0, end));
            assertThat(result.drawing().isPresent()).as("the first %d characters", end).isEqualTo(result.faults().isEmpty());
        }
        assertThat(Drawings.read(SMALL).drawing()).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"nan", "NaN", "1e300", "Infinity", "", "ten", "--5"})
    void aFigureThatIsNoneIsToldWithItsLine(String written) {
        Drawing read = Drawings.read(SMALL.replace("\n11\n100\n", "\n11\n" + written + "\n")).drawing().orElseThrow();
        assertThat(read.layers().get("A").faults()).singleElement().satisfies(fault -> assertThat(fault.words()).startsWith("line 24, LINE: `" + written + "` is no "));
    }

    @Test void aGroupCodeThatIsNoneIsToldWithItsLine() {
        assertThat(Drawings.read(SMALL.replaceFirst("\n8\nA", "\nx8\nA")).faults()).singleElement()
                .satisfies(fault -> assertThat(fault.words()).isEqualTo("line 17: `x8` is no group code"));
    }

    @Test void moreThanAHundredThousandEntitiesAreToldToBeTooMany() {
        String line = "0\nLINE\n8\nA\n10\n0\n20\n0\n11\n1\n21\n1\n";
        String text = "0\nSECTION\n2\nENTITIES\n" + line.repeat(100_001) + "0\nENDSEC\n0\nEOF\n";
        assertThat(Drawings.read(text).faults()).singleElement().satisfies(fault -> assertThat(fault.words()).contains("more than 100000 entities"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"40\n0\n40\n0\n40\n0\n40\n0", "40\n0\n40\n0\n40\n1\n40\n1", "40\n0\n40\n1\n40\n0\n40\n1", ""})
    void aSplineWhoseKnotsMakeNoneIsToldOrDrawn(String knots) {
        String spline = "0\nSPLINE\n8\nS\n71\n1\n" + knots + (knots.isEmpty() ? "" : "\n") + "10\n0\n20\n0\n10\n5\n20\n5\n";
        Drawing read = Drawings.read("0\nSECTION\n2\nENTITIES\n" + spline + "0\nENDSEC\n0\nEOF\n").drawing().orElseThrow();
        assertThat(read.layers().get("S").faults()).hasSize(knots.startsWith("40\n0\n40\n0\n40\n1\n40\n1") ? 0 : 1);
    }

    /** Half a circle of thousands of chords: edges shorter than the tolerance hold together, and what is too much is told. */
    @Test void edgesShorterThanTheToleranceAreNoGap() {
        assertThat(DrawnSection.of("A", arcOf(4000, 20), MM, false, DrawnSection.TOLERANCE).faults()).isEmpty();
        assertThat(DrawnSection.of("A", arcOf(8_000, 300), MM, false, DrawnSection.TOLERANCE).faults().stream().map(Fault::words)).singleElement().asString()
                .matches("layer A: its outline has \\d+ points, more than 2000");
        assertThat(DrawnSection.of("A", arcOf(20_001, 300), MM, false, DrawnSection.TOLERANCE).faults()).hasSize(1);
    }

    private static Drawing.Layer arcOf(int edges, double radius) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < edges; i++)
            curves.add(new Straight(onArc(Math.PI * i / edges, radius), onArc(Math.PI * (i + 1) / edges, radius)));
        return new Drawing.Layer(curves, List.of());
    }

    private static Point onArc(double angle, double radius) {
        return new Point(radius * Math.sin(angle), radius - radius * Math.cos(angle));
    }

    @Test void aLayerOfNothingIsTold() {
        OutlineResult result = DrawnSection.of("A", new Drawing.Layer(List.of(), List.of()), MM, false, 1e-4);
        assertThat(result.faults().stream().map(Fault::words)).containsExactly("layer A: nothing lies on it");
        assertThat(Optional.of(result.points())).hasValue(List.of());
    }
}
