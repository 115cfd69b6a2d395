package mouldwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** SVG, rendered by librsvg and measured in its pixels. */
class SvgFilesTest {

    @TempDir java.nio.file.Path folder;

    /** Ten pixels a millimetre. */
    private Picture render(Drawing drawing) throws Exception {
        java.nio.file.Path svg = Files.writeString(folder.resolve("d.svg"), SvgWriter.file(drawing, Palette.PAPER)), pdf = folder.resolve("d.pdf");
        Program.run("rsvg-convert", "--format", "pdf", "--dpi-x", "96", "--dpi-y", "96", "-o", pdf.toString(), svg.toString());
        Program.run("pdftoppm", "-r", "254", "-gray", "-singlefile", pdf.toString(), folder.resolve("d").toString());
        return Picture.read(folder.resolve("d.pgm"));
    }

    @Test void aMillimetreIsAMillimetre() throws Exception {
        Picture picture = render(new Draughtsman().path(Role.CUT, Path.box(new Extent(0, 0, 100, 40))).finish("Box", "A box", 5));
        assertThat(picture.width()).isCloseTo(1100, within(2));
        List<Integer> edges = picture.linesUp(200, 300);
        assertThat(edges.getLast() - edges.getFirst()).isCloseTo(1000 + 3, within(2));
    }

    @Test void whatIsUpIsUp() throws Exception {
        Mark band = new Mark.Area(List.of(Path.box(new Extent(0, 30, 100, 40))), new Mark.Fill.Even(Tone.INK, 1));
        Picture picture = render(new Draughtsman().draw(Role.AREA, band).finish("Box", "A band at the top", new Extent(0, 0, 100, 40)));
        assertThat(picture.dark(500, 50)).isTrue();
        assertThat(picture.dark(500, 350)).isFalse();
    }

    @Test void anArcBendsTheWayItsBulgeSays() throws Exception {
        Path arc = new Path(new Spot(0, 0), List.of(new Stroke.Arc(new Spot(40, 0), 1)), false);
        Picture picture = render(new Draughtsman().path(Role.CUT, arc).finish("Arc", "From left to right through the lower half", new Extent(-5, -25, 45, 25)));
        assertThat(picture.dark(250, 450)).as("20 mm below the chord").isTrue();
    }

    @Test void aHoleIsNotFilled() throws Exception {
        Mark ring = new Mark.Area(List.of(Path.box(new Extent(0, 0, 40, 40)), Path.circle(new Spot(20, 20), 10)), new Mark.Fill.Even(Tone.INK, 1));
        Picture picture = render(new Draughtsman().draw(Role.AREA, ring).finish("Ring", "A plate with a hole", 0));
        assertThat(picture.dark(200, 200)).isFalse();
        assertThat(picture.dark(50, 50)).isTrue();
    }

    @Test void aNameIsNeverTakenForMarkup() throws Exception {
        Drawing drawing = new Draughtsman().words("</text><script>alert('x')</script>&\u0007", new Spot(0, 0), 3, Mark.Anchor.START).finish("<b>\"title\"</b>", "]]>", 1);
        java.nio.file.Path file = Files.writeString(folder.resolve("n.svg"), SvgWriter.file(drawing, Palette.PAPER));
        var document = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
        assertThat(document.getElementsByTagName("script").getLength()).isZero();
        assertThat(document.getElementsByTagName("text").item(0).getTextContent()).isEqualTo("</text><script>alert('x')</script>&");
        assertThat(document.getElementsByTagName("title").item(0).getTextContent()).isEqualTo("<b>\"title\"</b>");
    }
}
