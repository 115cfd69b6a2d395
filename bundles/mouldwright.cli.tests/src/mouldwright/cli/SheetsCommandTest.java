package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

/** Plates laid on sheets, asked for at the terminal. */
class SheetsCommandTest {

    private static final Path EXAMPLES = Path.of("../../examples").toAbsolutePath().normalize();
    private static final String CANOPY = "rain-canopy/canopy.plug";
    private static final GeometryFactory SHAPES = new GeometryFactory();

    @TempDir Path folder;

    /** Boxes of 600 by 600 mm with what a test adds to the sheet and the frame. */
    private Run boxes(String sheet, String frame, String... more) {
        Specs.write(folder, "b.plug", """
                sheet Ply { size 1220 mm by 2440 mm thickness 12 mm %s }
                plug B {
                    units mm
                    half sections
                    station A at 0 { 0 0 300 0 knuckle 300 600 knuckle 0 600 }
                    station B at 400 like A
                    station C at 800 like A
                    frame { sheet Ply measured 12 %s }
                }
                """.formatted(sheet, frame));
        List<String> arguments = new ArrayList<>(List.of("sheets", "b.plug", "--trials", "12"));
        arguments.addAll(List.of(more));
        return Run.in(folder, arguments.toArray(String[]::new));
    }

    private static JsonObject json(Run run) {
        assertThat(run.code()).as(run.err()).isZero();
        return JsonParser.parseString(run.out()).getAsJsonObject().getAsJsonArray("materials").get(0).getAsJsonObject();
    }

    private static LinearRing ring(JsonElement points) {
        List<Coordinate> corners = new ArrayList<>();
        points.getAsJsonArray().forEach(p -> corners.add(new Coordinate(p.getAsJsonArray().get(0).getAsDouble(), p.getAsJsonArray().get(1).getAsDouble())));
        corners.add(corners.getFirst().copy());
        return SHAPES.createLinearRing(corners.toArray(Coordinate[]::new));
    }

    /** By overlay and distance of the JTS library, which had no part in laying them. */
    @Test void thePlatesOfTheCanopyLieAKerfApartWithinTheirSheets() {
        JsonObject birch = json(Run.in(EXAMPLES, "sheets", CANOPY, "--format", "json", "--trials", "12"));
        double kerf = birch.get("kerf").getAsDouble(), margin = birch.get("margin").getAsDouble();
        JsonArray placements = birch.getAsJsonArray("placements");
        assertThat(placements.size()).isGreaterThan(5);
        for (int i = 0; i < placements.size(); i++) {
            Polygon one = polygon(placements.get(i).getAsJsonObject());
            assertThat(one.getEnvelopeInternal().getMaxX()).isLessThanOrEqualTo(birch.get("length").getAsDouble() - margin + 1e-6);
            assertThat(one.getEnvelopeInternal().getMaxY()).isLessThanOrEqualTo(birch.get("width").getAsDouble() - margin + 1e-6);
            for (int j = 0; j < i; j++)
                if (placements.get(i).getAsJsonObject().get("sheet").equals(placements.get(j).getAsJsonObject().get("sheet")))
                    assertThat(one.distance(polygon(placements.get(j).getAsJsonObject()))).isGreaterThanOrEqualTo(kerf - 1e-6);
        }
        assertThat(birch.get("sheets").getAsInt()).isGreaterThanOrEqualTo(birch.get("leastSheets").getAsInt());
    }

    private static Polygon polygon(JsonObject placement) {
        List<LinearRing> holes = new ArrayList<>();
        placement.getAsJsonArray("openings").forEach(opening -> holes.add(ring(opening)));
        return SHAPES.createPolygon(ring(placement.get("outline")), holes.toArray(LinearRing[]::new));
    }

    @Test void theTableNamesEveryPlateItsSheetAndTheCautions() {
        Run run = Run.in(EXAMPLES, "sheets", CANOPY, "--trials", "8");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("RainCanopy, parts laid on sheets", "at least, from the areas of the parts", "is left whole", "Cut 6 mm", "wear a mask", "local codes");
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        assertThat(run.err()).isEmpty();
    }

    @Test void twiceTheSameIsTheSameToTheByte() {
        assertThat(Run.in(EXAMPLES, "sheets", CANOPY, "--trials", "9")).isEqualTo(Run.in(EXAMPLES, "sheets", CANOPY, "--trials", "9"));
    }

    /** Three plates of 600 mm side by side take 1800 mm and two cuts: a sheet 1220 mm wide has two across, so two lengths of 600 mm. */
    @Test void threePlatesTakeTwoRowsOfASheet() {
        JsonObject ply = json(boxes("kerf 0 mm margin 0 mm", "", "--format", "json"));
        assertThat(ply.get("sheets").getAsInt()).isEqualTo(1);
        assertThat(ply.get("lengthLeft").getAsDouble()).isBetween(1.2, 1.26);
    }

    @Test void whatTheSheetDoesNotSayIsAssumedAloud() {
        assertThat(boxes("", "").out()).contains("Cut 3 mm, assumed:", "kept from the edges 10 mm, assumed:");
        assertThat(boxes("kerf 4 mm margin 0 mm", "").out()).contains("Cut 4 mm; kept from the edges 0").doesNotContain("assumed");
    }

    /** A layer of a backbone bears along its length. */
    @Test void backbonesFollowTheGrainOfTheSheet() {
        assertThat(turns(boxes("grain along", "backbone 60 by 90 above 120", "--format", "json"))).allMatch(turn -> turn % 180 == 0);
        assertThat(turns(boxes("grain across", "backbone 60 by 90 above 120", "--format", "json"))).allMatch(turn -> turn % 180 == 90);
    }

    private static List<Integer> turns(Run run) {
        List<Integer> turns = new ArrayList<>();
        json(run).getAsJsonArray("placements").forEach(p -> {
            if (p.getAsJsonObject().get("part").getAsString().startsWith("backbone"))
                turns.add(p.getAsJsonObject().get("turned").getAsInt());
        });
        assertThat(turns).isNotEmpty();
        return turns;
    }

    @Test void aMarginThatTakesTheWholeSheetIsAFinding() {
        Run run = boxes("margin 610 mm", "");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("MW221", "610 mm", "1220 mm");
        assertThat(boxes("margin 300 mm", "").err()).doesNotContain("MW221");
    }

    @Test void aPlugWithoutAFrameHasNothingToCut() {
        Specs.write(folder, "box.plug", Specs.BOX);
        Run run = Run.in(folder, "sheets", "box.plug");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("the plug has no frame");
    }

    @Test void outputGoesToAFileAndNeverOverASpec() {
        Run run = boxes("", "", "--out", "sheets.txt");
        assertThat(run.out()).isEmpty();
        assertThat(Specs.read(folder.resolve("sheets.txt"))).contains("B, parts laid on sheets");
        assertThat(boxes("", "", "--out", "other.plug").code()).isEqualTo(2);
    }

    @Test void drawingsGoToAFolderOneForEachSheet() {
        Run run = boxes("", "", "--format", "dxf", "--out", "cut");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("1 drawing in 1 file in cut");
        assertThat(Specs.read(folder.resolve("cut/B-Ply-sheet-1-of-1.dxf"))).contains("CUT", "SHEET");
        assertThat(boxes("", "", "--format", "svg", "--out", "cut").code()).isZero();
        assertThat(Specs.read(folder.resolve("cut/B-Ply-sheet-1-of-1.svg"))).contains("data-about=\"plate.B\"");
        assertThat(boxes("", "", "--paper", "a3").err()).contains("--paper and --measured are for --format pdf");
    }

    @Test void numbersThatMakeNoSenseAreWrongUsage() {
        assertThat(Run.in(EXAMPLES, "sheets", CANOPY, "--trials", "0").err()).contains("--trials takes 1 to 1000000");
        assertThat(Run.in(EXAMPLES, "sheets", CANOPY, "--trials", "few").err()).contains("whole number");
        assertThat(Run.in(EXAMPLES, "sheets", CANOPY, "--turn", "twice").code()).isEqualTo(2);
    }

    @Test void onATerminalTheSearchTellsHowFarItIs() {
        Run run = Run.with(new Cli(), EXAMPLES, Map.of(), true, "sheets", CANOPY, "--trials", "9");
        assertThat(run.err()).contains("9 of 9 layouts, best: ");
        assertThat(run.out()).doesNotContain("layouts, best");
    }

    /** Three plates of 600 mm square: 48 on a full sheet, 36 on three small ones of 12; on small ones at 20 the full sheet is cheaper. */
    @Test void ofTwoSizesOfOnePlywoodTheCheapestAreTaken() {
        Run cheap = boxes("kerf 0 mm margin 0 mm each 48.00 also 610 mm by 610 mm at 12.00", "");
        assertThat(cheap.out()).contains("3 sheets", "cost least together", "36.00", "610 mm by 610 mm");
        assertThat(boxes("kerf 0 mm margin 0 mm each 48.00 also 610 mm by 610 mm at 20.00", "").out()).contains("1 sheet;", "48.00");
        JsonObject ply = json(boxes("kerf 0 mm margin 0 mm each 48.00 also 610 mm by 610 mm at 12.00", "", "--format", "json"));
        assertThat(ply.getAsJsonArray("taken")).hasSize(3).allSatisfy(one -> assertThat(one.getAsJsonObject().get("length").getAsDouble()).isEqualTo(0.61));
        assertThat(boxes("kerf 0 mm margin 0 mm also 610 mm by 610 mm", "").out()).as("without prices").contains("take least area together");
    }

    @Test void aMarginThatTakesOneOfTheSizesIsAFinding() {
        assertThat(boxes("margin 310 mm also 610 mm by 610 mm at 12.00", "").err()).contains("MW221", "310 mm", "610 mm");
    }

    @Test void theSheetOfTheBaseIsHeldToItsMarginToo() {
        Specs.write(folder, "c.plug", """
                sheet Ply { thickness 12 mm }
                sheet Board { size 1220 mm by 2440 mm thickness 18 mm margin 700 mm }
                plug B {
                    units mm
                    half sections
                    station A at 0 { 0 0 300 0 knuckle 300 600 knuckle 0 600 }
                    station B at 400 like A
                    frame { sheet Ply measured 12 base Board margin 50 }
                }
                """);
        assertThat(Run.in(folder, "sheets", "c.plug").err()).contains("MW221", "sheet of Board", "700 mm");
    }

    /** A million layouts take far longer than a second on any machine; what is laid by then is printed. */
    @Test void aSearchMayBeGivenSomeSecondsAndKeepsTheBestSoFar() {
        Run run = Run.in(EXAMPLES, "sheets", CANOPY, "--trials", "1000000", "--seconds", "1");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("The search was stopped early", "at least, from the areas of the parts");
        assertThat(Run.in(EXAMPLES, "sheets", CANOPY, "--seconds", "0").err()).contains("--seconds takes 1 to 86400");
    }
}
