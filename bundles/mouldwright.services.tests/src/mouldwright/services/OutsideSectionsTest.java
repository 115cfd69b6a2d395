package mouldwright.services;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import mouldwright.report.TextFinding;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sections that stand in a table or a drawing beside the spec. */
class OutsideSectionsTest {

    private static final String BOX = """
            plug Box {
                units mm
                half sections
                line edge
                station A at 0 table "in/box.csv" column "A"
                station B at 400 drawing "in/box.dxf" layer "B" {
                    edge at height 50
                }
            }
            """;
    private static final String TABLE = "station,y,z,mark\nA,0,0,\nA,100,0,knuckle\nA,100,50,edge\nA,0,50,\n";

    private static SpecSession session;

    @TempDir
    private Path folder;

    @BeforeAll
    static void setUp() {
        session = SpecSession.start();
    }

    @BeforeEach
    void fill() throws IOException {
        write("in/box.csv", TABLE);
        write("in/box.dxf", drawing("70", "4"));
    }

    /** The upper line first, the upright one from above, the corners as drawn. */
    private static String drawing(String code, String units) {
        return String.join("\n", "0", "SECTION", "2", "HEADER", "9", "$INSUNITS", code, units, "0", "ENDSEC", "0", "SECTION", "2", "ENTITIES") + line(100, 50, 0, 50)
                + line(100, 50, 100, 0) + line(0, 0, 100, 0) + "\n0\nENDSEC\n0\nEOF\n";
    }

    private static String line(int y, int z, int toY, int toZ) {
        return "\n0\nLINE\n8\nB\n10\n" + y + "\n20\n" + z + "\n11\n" + toY + "\n21\n" + toZ;
    }

    private Path write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private Checked check(String text) throws IOException {
        return session.check(write("box.plug", text), () -> false);
    }

    private List<String> findings(String text) throws IOException {
        return check(text).findings().stream().map(f -> f.line() + " " + f.code() + " " + f.message()).toList();
    }

    /** Closed form: 200 by 50 by 400 mm are four litres. */
    @Test void aBoxOfATableAndADrawingHoldsFourLitres() throws IOException {
        Checked checked = check(BOX);
        assertThat(checked.findings()).isEmpty();
        assertThat(checked.plans().get("Box").quantity("shape.volume").orElseThrow().value()).isCloseTo(0.004, within(1e-9));
    }

    @Test void theRevisionChangesWithTheTable() throws IOException {
        String before = check(BOX).revision();
        write("in/box.csv", TABLE.replace("100", "101"));
        Checked after = check(BOX);
        assertThat(after.revision()).isNotEqualTo(before);
        assertThat(after.texts()).containsKeys(folder.resolve("in/box.csv"), folder.resolve("in/box.dxf"));
        assertThat(after.plans().get("Box").quantity("shape.volume").orElseThrow().value()).isGreaterThan(0.004);
    }

    @Test void whatIsNotThereIsToldAtItsPlace() throws IOException {
        assertThat(findings(BOX.replace("in/box.csv", "in/bx.csv"))).containsExactly("5 MW150 \"in/bx.csv\" is not read: there is no such file");
        assertThat(findings(BOX.replace("in/box.csv", "../box.csv"))).containsExactly("5 MW150 \"../box.csv\" leads out of the project");
        assertThat(findings(BOX.replace("\"A\"", "\"a\""))).containsExactly("5 MW150 no station `a` in in/box.csv; `A`?");
        assertThat(findings(BOX.replace("\"B\"", "\"BB\""))).containsExactly("6 MW151 nothing lies on a layer `BB` in in/box.dxf; `B`?");
        assertThat(findings(BOX.replace("line edge", "line brim").replace("edge at height", "brim at height")))
                .containsExactly("5 MW150 in/box.csv marks a line `edge`, which this plug does not declare");
    }

    @Test void whatIsWrongInAFileIsToldWithItsCellOrLine() throws IOException {
        write("in/box.csv", TABLE.replace("100,50", "=B3,50"));
        assertThat(findings(BOX)).containsExactly("5 MW150 in/box.csv, cell B4: `=B3` is a formula, not a figure");
        write("in/box.csv", TABLE);
        write("in/box.dxf", drawing("70", "4").replace("LINE\n8\nB\n10\n0", "INSERT\n8\nB\n10\n0"));
        assertThat(findings(BOX)).containsExactly("6 MW151 in/box.dxf B, line 40, INSERT: it is not read");
    }

    @Test void aDrawingWithoutUnitsAsksForThemAndTakesThose() throws IOException {
        write("in/box.dxf", drawing("70", "0"));
        assertThat(findings(BOX)).singleElement().asString().contains("6 MW151").contains("`drawing \"in/box.dxf\" units mm layer \"B\"`");
        assertThat(findings(BOX.replace("dxf\" layer", "dxf\" units mm layer"))).isEmpty();
        assertThat(findings(BOX.replace("dxf\" layer", "dxf\" units kg layer"))).singleElement().asString().startsWith("6 MW904 kg is no unit of length");
    }

    /** A file is told about once, however many stations rest on it. */
    @Test void aBrokenFileIsToldOnce() throws IOException {
        write("in/box.csv", "station,y\nA,0\n");
        String twice = BOX.replace("    station B", "    station A2 at 200 table \"in/box.csv\" column \"A\"\n    station B");
        List<TextFinding> findings = check(twice).findings();
        assertThat(findings).isNotEmpty().allMatch(finding -> finding.line() == 5);
    }
}
