package mouldwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** DXF, read back by ezdxf and by GDAL, two readers that have nothing to do with one another or with us. */
class DxfFilesTest {

    @TempDir java.nio.file.Path folder;

    private java.nio.file.Path write(Drawing drawing) throws IOException {
        return Files.writeString(folder.resolve("drawing.dxf"), DxfWriter.write(drawing), StandardCharsets.US_ASCII);
    }

    private static Drawing plate() {
        Path bend = new Path(new Spot(0, 0), List.of(new Stroke.Curve(new Spot(0, 100), new Spot(100, 200), new Spot(200, 200))), false);
        return new Draughtsman().path(Role.CUT, Path.box(new Extent(0, 0, 400, 300))).circle(Role.CUT, new Spot(200, 150), 60).path(Role.SCORE, bend)
                .words("S2 \u00b0 <&>", new Spot(10, 10), 8, Mark.Anchor.START).finish("Plate S2", "A plate", 10);
    }

    @Test void anAuditFindsNothingWrongAndTheUnitIsTheMillimetre() throws Exception {
        String said = Program.python("""
                import sys, ezdxf
                doc = ezdxf.readfile(sys.argv[1])
                auditor = doc.audit()
                print(len(auditor.errors), len(auditor.fixes), doc.header['$INSUNITS'], doc.dxfversion)
                print([str(e) for e in auditor.errors], [str(f) for f in auditor.fixes])
                """, write(plate()));
        assertThat(said.lines().findFirst().orElse("")).as(said).isEqualTo("0 0 4 AC1015");
    }

    @Test void aHalfCircleIsAnArcOfItsRadius() throws Exception {
        Path half = new Path(new Spot(100, 0), List.of(new Stroke.Arc(new Spot(-100, 0), 1)), true);
        String said = Program.python("""
                import sys, ezdxf
                line = next(iter(ezdxf.readfile(sys.argv[1]).modelspace().query('LWPOLYLINE')))
                arc = next(e for e in line.virtual_entities() if e.dxftype() == 'ARC')
                print(arc.dxf.radius, abs(arc.dxf.center.x) + abs(arc.dxf.center.y), max(p.y for p in arc.flattening(0.001)), line.dxf.layer)
                """, write(new Draughtsman().path(Role.CUT, half).finish("Half", "Half a circle", 0)));
        String[] figures = said.strip().split(" ");
        assertThat(Double.parseDouble(figures[0])).isCloseTo(100, within(1e-4));
        assertThat(Double.parseDouble(figures[1])).isCloseTo(0, within(1e-4));
        assertThat(Double.parseDouble(figures[2])).isCloseTo(100, within(0.002));
        assertThat(figures[3]).isEqualTo("CUT");
    }

    @Test void aBendIsLeftByNoMoreThanATwentiethOfAMillimetre() throws Exception {
        String said = Program.python("""
                import sys, ezdxf
                from ezdxf.math import Bezier4P
                line = next(iter(ezdxf.readfile(sys.argv[1]).modelspace().query('LWPOLYLINE[layer=="SCORE"]')))
                chords = [(p[0], p[1]) for p in line.get_points()]
                def off(p, a, b):
                    dx, dy = b[0] - a[0], b[1] - a[1]
                    t = max(0, min(1, ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / (dx * dx + dy * dy)))
                    return ((p[0] - a[0] - t * dx) ** 2 + (p[1] - a[1] - t * dy) ** 2) ** 0.5
                curve = Bezier4P([(0, 0), (0, 100), (100, 200), (200, 200)])
                print(max(min(off((q.x, q.y), a, b) for a, b in zip(chords, chords[1:])) for q in (curve.point(i / 500) for i in range(501))))
                """, write(plate()));
        assertThat(Double.parseDouble(said.strip())).isLessThanOrEqualTo(DxfWriter.TOLERANCE);
    }

    @Test void wordsComeBackAsTheyWereWritten() throws Exception {
        String said = Program.python("""
                import sys, ezdxf
                from ezdxf.lldxf.encoding import decode_dxf_unicode
                text = next(iter(ezdxf.readfile(sys.argv[1]).modelspace().query('TEXT')))
                print(ascii(decode_dxf_unicode(text.dxf.text)), text.dxf.height)
                """, write(plate()));
        assertThat(said.strip()).isEqualTo("'S2 \\xb0 <&>' 8.0");
    }

    @Test void anotherReaderFindsTheSameLayersAndSizes() throws Exception {
        String said = Program.run("ogrinfo", "-al", "-q", write(plate()).toString());
        assertThat(said).contains("Layer (String) = CUT").contains("Layer (String) = SCORE").contains("Layer (String) = TEXT").contains("400 300");
    }

    @Test void theSameDrawingGivesTheSameBytes() {
        assertThat(DxfWriter.write(plate())).isEqualTo(DxfWriter.write(plate()));
    }
}
