package mouldwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** PDF, measured on the page as another program renders it. */
class PdfFilesTest {

    @TempDir java.nio.file.Path folder;

    private java.nio.file.Path write(Paper paper, double correction) throws IOException {
        return Files.write(folder.resolve("drawing.pdf"), new PdfWriter(paper, correction, "Canopy abc").write("Templates", List.of(large())));
    }

    /** Ten pixels a millimetre. */
    private Picture page(java.nio.file.Path file, int number) throws Exception {
        String n = Integer.toString(number);
        Program.run("pdftoppm", "-r", "254", "-gray", "-f", n, "-l", n, "-singlefile", file.toString(), folder.resolve("page").toString());
        return Picture.read(folder.resolve("page.pgm"));
    }

    private static Drawing large() {
        return new Draughtsman().path(Role.CUT, Path.box(new Extent(0, 0, 500, 400))).words("S2", new Spot(250, 200), 10, Mark.Anchor.MIDDLE).finish("Plate S2", "A plate", 0);
    }

    /** Breadth of the check square, mm, from its dashed upright edges: two thirds of them are drawn. */
    private static double square(Picture page, int left, int bottom) {
        int foot = page.height() - bottom * 10;
        List<Integer> columns = page.linesUp(foot - 900, foot - 100, 0.5);
        int first = columns.stream().filter(x -> Math.abs(x - left * 10) < 20).findFirst().orElseThrow();
        int last = columns.stream().filter(x -> Math.abs(x - left * 10 - 1000) < 60).findFirst().orElseThrow();
        return (last - first) / 10.0;
    }

    @Test void theSquareOnEachPageMeasuresAHundredMillimetres() throws Exception {
        java.nio.file.Path file = write(Paper.A4, 1);
        assertThat(square(page(file, 1), 24, 33)).isCloseTo(100, within(0.2));
        assertThat(square(page(file, 4), 24, 33)).isCloseTo(100, within(0.2));
    }

    @Test void aPrinterThatShrinksIsMadeUpFor() throws Exception {
        assertThat(square(page(write(Paper.A4, 100 / 98.0), 1), 24, 33) * 0.98).isCloseTo(100, within(0.2));
    }

    @Test void aPlateOfHalfAMetreTakesAsManyTilesAsOverlappingWindowsCover() throws Exception {
        // A4 shows 190 by 268 mm, 15 mm of it twice: 500 across takes 3 and 400 up takes 2; turned, 277 by 181 takes 2 by 3.
        assertThat(Program.run("pdfinfo", write(Paper.A4, 1).toString())).contains("Pages:           6");
    }

    @Test void aRollTakesItInOnePiece() throws Exception {
        assertThat(Program.run("pdfinfo", write(Paper.ROLL, 1).toString())).contains("Pages:           1");
    }

    @Test void everyPageSaysWhatItIsAndWhichTile() throws Exception {
        assertThat(Program.run("pdftotext", "-f", "5", "-l", "5", write(Paper.A4, 1).toString(), "-")).contains("Plate S2", "row 2 of 2, column 2 of 3", "Canopy abc", "100 mm");
    }

    @Test void theFontTravelsWithTheFile() throws Exception {
        assertThat(Program.run("pdffonts", write(Paper.A3, 1).toString())).containsPattern("DejaVuSans +CID TrueType +Identity-H +yes yes");
    }

    @Test void neighbouringTilesShowTheirCrossAtOnePlaceOfTheDrawing() {
        Tiling tiling = new Tiling(large().extent(), Paper.A4, 1);
        Spot ofLeft = crosses(tiling, tiling.tiles().get(0)).getLast(), ofRight = crosses(tiling, tiling.tiles().get(1)).getFirst();
        assertThat(ofLeft.distance(ofRight)).isLessThan(1e-9);
    }

    /** Places in the drawing of a tile's lower crosses, from left to right. */
    private static List<Spot> crosses(Tiling tiling, Tiling.Tile tile) {
        return tiling.crosses(tile).stream().filter(Mark.Circle.class::isInstance).map(mark -> ((Mark.Circle) mark).centre())
                .map(at -> at.plus(tile.left() - tiling.window().left(), tile.bottom() - tiling.window().bottom()))
                .filter(at -> Math.abs(at.y() - tile.bottom() - tiling.window().height() * 0.2) < 1).sorted(Comparator.comparingDouble(Spot::x)).toList();
    }

    @Test void theSameDrawingGivesTheSameBytes() {
        byte[] one = new PdfWriter(Paper.A4, 1, "c").write("t", List.of(large()));
        assertThat(new PdfWriter(Paper.A4, 1, "c").write("t", List.of(large()))).isEqualTo(one);
    }

    @Test void aLongPartLiesAlongTheRoll() throws Exception {
        Drawing backbone = new Draughtsman().path(Role.CUT, Path.box(new Extent(0, 0, 2000, 90))).finish("Backbone", "A long part", 0);
        java.nio.file.Path file = Files.write(folder.resolve("long.pdf"), new PdfWriter(Paper.ROLL, 1, "c").write("t", List.of(backbone)));
        // 2000 mm and two margins of 10 are 5725.98 points of 1/72 inch; the roll is 24 inches wide.
        assertThat(Program.run("pdfinfo", file.toString())).contains("Pages:           1").contains("5725.98 x 1728 pts");
    }

    @Test void theSquareStandsWhereNothingIsDrawn() {
        Drawing corner = new Draughtsman().path(Role.CUT, Path.box(new Extent(0, 0, 90, 90))).line(Role.CUT, new Spot(0, 0), new Spot(180, 0)).finish("Corner", "A part in the corner", new Extent(0, 0, 190, 268));
        Tiling tiling = new Tiling(corner.extent(), Paper.A4, 1);
        Extent square = new CheckSquare(corner).on(tiling, tiling.tiles().getFirst(), 1).getFirst().extent();
        assertThat(square.bottom() - tiling.window().bottom()).isGreaterThan(90);
        assertThat(square.width()).isEqualTo(100);
    }

    @Test void theSquareIsNamedSoThatNobodyCutsIt() throws Exception {
        assertThat(Program.run("pdftotext", "-f", "1", "-l", "1", write(Paper.A4, 1).toString(), "-")).contains("not part of the drawing, do not cut");
    }

    @Test void aDrawingOfMorePagesThanAnybodyJoinsIsNamedBeforeAnyIsMade() {
        Drawing wide = new Draughtsman().path(Role.CUT, Path.box(new Extent(0, 0, 40_000, 3_000))).finish("Plate S9", "A plate in metres taken for millimetres", 0);
        // Turned A4 shows 277 by 181 mm: 153 columns of 262 mm and 18 rows of 166 mm. Upright it takes 229 by 12.
        assertThat(PdfWriter.tooLarge(List.of(large(), wide), Paper.A4, 1)).contains(new PdfWriter.TooLarge("Plate S9", 2748, 400));
        assertThat(PdfWriter.tooLarge(List.of(large(), wide), Paper.ROLL, 1)).isEmpty();
    }

    @Test void namesTooLongForTheFootAreShortenedAndTheRestStays() throws Exception {
        Drawing named = new Draughtsman().path(Role.CUT, Path.box(new Extent(0, 0, 500, 400))).finish("Plate " + "VeryLongName".repeat(20), "A plate", 0);
        java.nio.file.Path file = Files.write(folder.resolve("n.pdf"), new PdfWriter(Paper.A4, 1, "Plug".repeat(40) + " rev").write("t", List.of(named)));
        String printed = Program.run("pdftotext", "-f", "1", "-l", "1", "-layout", file.toString(), "-");
        assertThat(printed).contains("row 1 of 2, column 1 of 3", "print at 100 %, measure the square", "\u2026");
        double edge = 0, ofTitle = 0, beginning = Double.MAX_VALUE;
        for (String line : Program.run("pdftotext", "-bbox", "-f", "1", "-l", "1", file.toString(), "-").lines().filter(l -> l.contains("<word")).toList()) {
            double from = Double.parseDouble(line.replaceAll(".*xMin=\"([^\"]*)\".*", "$1")), to = Double.parseDouble(line.replaceAll(".*xMax=\"([^\"]*)\".*", "$1"));
            edge = Math.max(edge, to);
            ofTitle = line.contains(">3</word>") ? to : ofTitle;
            beginning = line.contains("PlugPlug") ? from : beginning;
        }
        assertThat(edge).isLessThan(210 / 25.4 * 72);
        assertThat(beginning).isGreaterThan(ofTitle);
    }

    /** The first window of A4 ends 190 mm in, the second begins at 175: words of some 60 mm about that place fit on neither as they stand. */
    @Test void wordsThatFallOnASeamStandWholeOnOneOfThePages() throws Exception {
        Drawing seam = new Draughtsman().path(Role.CUT, Path.box(new Extent(0, 0, 300, 200))).words("stands-aft-of-its-line-at-S2", new Spot(182, 100), 3.5, Mark.Anchor.MIDDLE)
                .words("beside", new Spot(182, 60), 2.5, Mark.Anchor.MIDDLE).finish("Plate", "A plate", 0);
        java.nio.file.Path file = Files.write(folder.resolve("seam.pdf"), new PdfWriter(Paper.A4, 1, "c").write("t", List.of(seam)));
        List<String> boxes = Program.run("pdftotext", "-bbox", file.toString(), "-").lines().filter(line -> line.contains(">stands-aft-of-its-line-at-S2<")).toList();
        assertThat(boxes).as("once, and not cut").hasSize(1);
        double from = Double.parseDouble(boxes.getFirst().replaceAll(".*xMin=\"([^\"]*)\".*", "$1")), to = Double.parseDouble(boxes.getFirst().replaceAll(".*xMax=\"([^\"]*)\".*", "$1"));
        assertThat(from).isGreaterThanOrEqualTo(10 / 25.4 * 72);
        assertThat(to).isLessThanOrEqualTo(200 / 25.4 * 72);
        assertThat(Program.run("pdftotext", file.toString(), "-").split("beside", -1)).as("words both show whole stand on both").hasSize(3);
    }
}
