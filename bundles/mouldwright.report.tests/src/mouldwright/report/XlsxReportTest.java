package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import mouldwright.units.UnitSystem;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workbook of an estimate, opened by LibreOffice, which writes each sheet as a text file. */
class XlsxReportTest {

    @TempDir
    private static Path folder;

    private static byte[] print(Estimate estimate) {
        return new XlsxReport(UnitSystem.METRIC, new PathNames(Plans.FOLDER)).print(estimate);
    }

    @BeforeAll
    static void openedByAnotherProgram() throws IOException {
        Files.write(folder.resolve("hatch.xlsx"), print(Plans.estimate()));
        Files.write(folder.resolve("hostile.xlsx"), print(Estimate.of(Plans.single("x", "=HYPERLINK(\"http://x\")", 1, OptionalDouble.of(2)), "r", List.of())));
        Tool.run(folder, "soffice", "-env:UserInstallation=" + folder.resolve("profile").toUri(), "--headless", "--convert-to",
                "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false,false,false,-1", "hatch.xlsx", "hostile.xlsx");
    }

    private static List<String> sheet(String name) {
        try {
            return Files.readAllLines(folder.resolve(name + ".csv"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static List<String> row(String sheet, String begins) {
        return sheet(sheet).stream().filter(line -> line.startsWith(begins)).findFirst().map(line -> List.of(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))).orElseThrow();
    }

    @Test void everyTableHasASheet() throws IOException {
        try (var files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString()).filter(name -> name.startsWith("hatch-"))).contains("hatch-about.csv", "hatch-quantities.csv",
                    "hatch-plates.csv", "hatch-pours.csv", "hatch-pots skin.csv", "hatch-pieces skin.csv", "hatch-tasks.csv", "hatch-orders.csv", "hatch-findings.csv", "hatch-assumed.csv");
        }
    }

    @Test void aNumberIsANumberInFull() { // the plan's figure, not the three figures shown
        Estimate estimate = Plans.estimate();
        double litres = estimate.plan().quantity("fill.liquid").orElseThrow().value() * 1000;
        List<String> row = row("hatch-quantities", "fill.liquid,");
        assertThat(Double.parseDouble(row.get(3))).isCloseTo(litres, within(1e-9 * litres));
        assertThat(row.get(4)).isEqualTo("l");
    }

    @Test void aUnitStandsUnderItsHead() {
        assertThat(sheet("hatch-plates").get(0)).isEqualTo("plate,stands,thickness,breadth,height,gap,mass");
        assertThat(sheet("hatch-plates").get(1)).isEqualTo(",,mm,mm,mm,mm,kg");
        assertThat(Double.parseDouble(row("hatch-plates", "S2,").get(3))).isCloseTo(634.2, within(1e-9));
    }

    @Test void aDayIsADay() { // ISO 8601
        assertThat(row("hatch-tasks", "*,\"Pour")).contains("2027-03-01");
    }

    @Test void theQuantitiesAreAllThere() {
        assertThat(sheet("hatch-quantities")).hasSize(1 + Plans.estimate().quantities().size());
    }

    @Test void wordsThatLookLikeAFormulaStayWords() {
        assertThat(row("hostile-quantities", "x,").get(2)).isEqualTo("\"'=HYPERLINK(\"\"http://x\"\")\"");
    }

    @Test void cautionsGoWithTheFigures() {
        assertThat(sheet("hatch-about")).anyMatch(line -> line.contains("isocyanate")).anyMatch(line -> line.contains("no permission"));
    }

    @Test void theSameEstimateGivesTheSameBytes() {
        assertThat(print(Plans.estimate())).isEqualTo(print(Plans.estimate()));
    }
}
