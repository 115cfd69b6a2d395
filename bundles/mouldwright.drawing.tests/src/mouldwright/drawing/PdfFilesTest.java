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

    /** Breadth of the check square, mm, from its upright edges half way up. */
    private static double square(Picture page) {
        int y = page.height() - 850;
        List<Integer> columns = page.linesUp(y, y + 200);
        int first = columns.stream().filter(x -> x > 150 && x < 170).findFirst().orElseThrow();
        int last = columns.stream().filter(x -> x > 1100 && x < 1250).findFirst().orElseThrow();
        return (last - first) / 10.0;
    }

    @Test void theSquareOnEachPageMeasuresAHundredMillimetres() throws Exception {
        java.nio.file.Path file = write(Paper.A4, 1);
        assertThat(square(page(file, 1))).isCloseTo(100, within(0.2));
        assertThat(square(page(file, 4))).isCloseTo(100, within(0.2));
    }

    @Test void aPrinterThatShrinksIsMadeUpFor() throws Exception {
        assertThat(square(page(write(Paper.A4, 100 / 98.0), 1)) * 0.98).isCloseTo(100, within(0.2));
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
}
