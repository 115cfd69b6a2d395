package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table or drawing becomes a spec that checks, in the one layout. */
class ImportCommandTest {

    private static final String TABLE = "station,x (mm),y (mm),z (mm),mark\nA,0,0,0,\nA,0,100,0,chine\nA,0,100,50,knuckle\nA,0,0,50,\n"
            + "B,400,0,0,\nB,400,100,0,chine\nB,400,100,50,knuckle\nB,400,0,50,\n";

    @TempDir
    private Path folder;

    private void soundAndLaidOut(String file) {
        assertThat(Run.in(folder, "check", "--strict", file).err()).isEmpty();
        assertThat(Run.in(folder, "format", "--check", file)).isEqualTo(new Run("", "", 0));
    }

    @Test void aTableOfPointsBecomesASpecWithItsLinesAndKnuckles() {
        Specs.write(folder, "box.csv", TABLE);
        Run run = Run.in(folder, "import", "box.csv");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("/** Read from box.csv. */\nplug Box {\n    units mm\n    half sections\n\n    line chine\n\n    station A at 0 {\n        0 0\n        100 0 knuckle chine\n        100 50 knuckle\n");
        assertThat(Run.in(folder, "import", "box.csv", "--name", "Crate", "--out", "crate.plug")).isEqualTo(new Run("", "", 0));
        soundAndLaidOut("crate.plug");
        assertThat(Run.in(folder, "estimate", "crate.plug", "--stage", "shape").out()).contains("Volume", "4.00", "shape.volume"); // 200 by 50 by 400 mm
    }

    @Test void aTableOfOffsetsInFeetInchesAndEighthsBecomesASpecInInches() {
        Specs.write(folder, "skiff.csv", "Offsets,1,2\nposition,0,2-0-0\nheight of keel,0-1-0,0-0-4+\nwaterline 0-3-0,0-5-1,0-6-0\nheight of deck,0-9-0,0-9-4\nhalf-breadth of deck,0-7-0,0-8-0\n");
        assertThat(Run.in(folder, "import", "skiff.csv", "--out", "skiff.plug")).isEqualTo(new Run("", "", 0));
        String text = Specs.read(folder.resolve("skiff.plug"));
        assertThat(text).contains("units in\n", "station S1 at 0 {", "station S2 at 24 {", "0 0.5625", "5.125 3");
        soundAndLaidOut("skiff.plug");
    }

    @Test void aTableWithNegativeBreadthsIsOfFullSections() {
        String ring = "station;x;y;z;mark\n";
        for (int x : new int[] {0, 300})
            ring += x + ";" + x + ";0;0;\n" + x + ";" + x + ";80;0;knuckle\n" + x + ";" + x + ";60,5;90;knuckle\n" + x + ";" + x + ";-70;90;knuckle\n" + x + ";" + x + ";-70;0;knuckle\n" + x + ";" + x + ";0;0;\n";
        Specs.write(folder, "cowl.csv", ring);
        assertThat(Run.in(folder, "import", "cowl.csv", "--units", "mm", "--out", "cowl.plug")).isEqualTo(new Run("", "", 0));
        assertThat(Specs.read(folder.resolve("cowl.plug"))).contains("full sections", "station S300 at 300 {", "60.5 90 knuckle");
        soundAndLaidOut("cowl.plug");
    }

    private static String drawing(String... layers) {
        StringBuilder out = new StringBuilder("0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n");
        for (String layer : layers)
            for (int[] line : new int[][] {{100, 50, 0, 50}, {0, 0, 100, 0}, {100, 50, 100, 0}})
                out.append("0\nLINE\n8\n" + layer + "\n10\n" + line[0] + "\n20\n" + line[1] + "\n11\n" + line[2] + "\n21\n" + line[3] + "\n");
        return out.append("0\nENDSEC\n0\nEOF\n").toString();
    }

    @Test void layersSayWhereTheirStationsStandOrTheCommandDoes() {
        Specs.write(folder, "box.dxf", drawing("S1 at 0", "S2 at 400"));
        assertThat(Run.in(folder, "import", "box.dxf", "--out", "box.plug")).isEqualTo(new Run("", "", 0));
        assertThat(Specs.read(folder.resolve("box.plug"))).contains("station S1 at 0 {", "station S2 at 400 {", "100 0 knuckle");
        soundAndLaidOut("box.plug");
        Specs.write(folder, "crate.dxf", drawing("at", "station"));
        assertThat(Run.in(folder, "import", "crate.dxf", "--every", "1 ft").out()).contains("station Sat at 0 {", "station Sstation at 304.8 {");
        Run without = Run.in(folder, "import", "crate.dxf");
        assertThat(without.code()).isEqualTo(1);
        assertThat(without.err()).contains("MW151", "nothing says where it stands", "`--every 300mm`");
    }

    @Test void aFileThatIsThereIsWrittenOverByForceAlone() throws Exception {
        Specs.write(folder, "box.csv", TABLE);
        Path old = Specs.write(folder, "box.plug", "mine");
        Run run = Run.in(folder, "import", "box.csv", "--out", "box.plug");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("box.plug is there already; --force writes over it");
        assertThat(Specs.read(old)).isEqualTo("mine");
        assertThat(Run.in(folder, "import", "box.csv", "--out", "box.plug", "--force").code()).isZero();
        assertThat(Specs.read(old)).startsWith("/** Read from box.csv. */");
    }

    @Test void aTableThatCannotBeReadIsToldWithItsLineAndNothingIsWritten() {
        Specs.write(folder, "box.csv", TABLE.replace("100,50,knuckle\nA,0,0,50", "=C3,50,knuckle\nA,0,0,50"));
        Run run = Run.in(folder, "import", "box.csv", "--out", "box.plug");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("box.csv:4:1  error MW150  cell C4: `=C3` is a formula, not a figure");
        assertThat(Files.exists(folder.resolve("box.plug"))).isFalse();
        assertThat(Run.in(folder, "import", "none.csv").code()).isEqualTo(3);
        assertThat(Run.in(folder, "import", "box.csv", "--units", "kg").code()).isEqualTo(2);
        assertThat(Run.in(folder, "import", "box.csv", "--every", "-5").code()).isEqualTo(2);
        assertThat(Run.in(folder, "import", "box.csv", "--out", "box.csv").code()).isEqualTo(2);
    }

    /** The offsets of a body that closes above, read back and taken off again: to what the table is rounded to on waterlines, where the figures lie close; a
     *  little more on buttocks, of which those are left out that fall beside a waterline. */
    @Test void theOffsetsOfAClosedBodyMakeTheSameBodyAgain() {
        Specs.write(folder, "pod.plug", """
                plug Pod {
                    units mm
                    half sections
                    line chine
                    station A at 0 { 0 20 120 40 knuckle chine 150 120 110 210 0 240 }
                    station B at 300 { 0 10 150 35 knuckle chine 190 130 140 240 0 280 }
                    station C at 600 { 0 20 120 40 knuckle chine 150 120 110 210 0 240 }
                }
                """);
        assertThat(Run.in(folder, "offsets", "pod.plug", "--every", "15mm", "--out", "pod.csv").code()).isZero();
        assertThat(Run.in(folder, "import", "pod.csv", "--name", "Again", "--out", "again.plug").err()).isEmpty();
        assertThat(Specs.read(folder.resolve("again.plug"))).contains("knuckle chine");
        List<String[]> before = figures("pod.plug"), after = figures("again.plug");
        assertThat(after).hasSameSizeAs(before);
        for (int row = 0; row < before.size(); row++)
            for (int cell = 2; cell < before.get(row).length; cell++) {
                String label = before.get(row)[1];
                double most = label.startsWith("waterline") || label.contains(" of chine") ? 0.1001 : 0.5001;
                assertThat(after.get(row)[1]).isEqualTo(label);
                assertThat(Double.parseDouble(after.get(row)[cell])).as(label).isCloseTo(Double.parseDouble(before.get(row)[cell]), org.assertj.core.api.Assertions.within(most));
            }
    }

    private List<String[]> figures(String spec) {
        Run run = Run.in(folder, "offsets", spec, "--every", "15mm");
        assertThat(run.code()).as(run.err()).isZero();
        return run.out().lines().skip(2).filter(line -> !line.contains(",,") && !line.endsWith(",")).map(line -> line.split(",")).toList();
    }

    /** Written and read by ourselves: that each agrees with other programs is tested where they are. */
    @Test void aPlateWithoutASkinIsTheSectionItsTemplateIsReadBackTo() {
        Specs.write(folder, "rt.plug", """
                sheet Ply { thickness 12 mm }
                plug Rt {
                    units mm
                    full sections
                    station A at 0 { 0 20 150 20 knuckle 180 120 130 240 0 260 -130 240 -180 120 -150 20 knuckle 0 20 }
                    station B at 300 like A
                    frame { sheet Ply measured 12 holes 0 }
                }
                """);
        assertThat(Run.in(folder, "templates", "rt.plug", "--format", "dxf", "--out", "cut").code()).isZero();
        Specs.write(folder, "back.plug", "plug Back { units mm full sections station A at 0 drawing \"cut/Rt-plate.A.dxf\" layer \"CUT\" station B at 300 like A }\n");
        List<String[]> before = figures("rt.plug"), after = figures("back.plug");
        List<String> labels = after.stream().map(row -> row[1]).toList();
        assertThat(labels).contains("waterline 60", "waterline 60 port", "buttock 90 lower", "girth");
        for (String[] row : before)
            if (labels.contains(row[1]) && !row[0].equals("plate"))
                for (int cell = 2; cell < row.length; cell++)
                    assertThat(Double.parseDouble(after.get(labels.indexOf(row[1]))[cell])).as(row[1])
                            .isCloseTo(Double.parseDouble(row[cell]), org.assertj.core.api.Assertions.within(row[1].equals("girth") ? 0.5 : 0.15));
    }
}
