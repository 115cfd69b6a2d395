package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.nest.NestOrder;
import mouldwright.geometry.nest.NestPart;
import mouldwright.geometry.nest.Nester;
import mouldwright.geometry.nest.Turns;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.sheets.SheetLayout;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Material;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Sheet;
import mouldwright.units.Dimension;
import mouldwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** What is printed of parts laid on sheets. */
class SheetsReportTest {

    private static final Origin MADE_UP = new Origin.Assumed("made up");

    private static PlatePart board(String key, String name, double length, double width, int quantity) {
        Outline outline = Outline.of(List.of(new PlanePoint(0, 0), new PlanePoint(length, 0), new PlanePoint(length, width), new PlanePoint(0, width)));
        return PlatePart.plain(key, PlatePart.Kind.PLATE, name, outline, "Ply12", 0.0117, quantity);
    }

    private static List<SheetLayout> layouts(boolean stopped) {
        List<PlatePart> parts = List.of(board("plate.S1", "S1", 1.0, 0.8, 1), board("plate.S2", "S2", 1.1, 0.7, 1), board("backbone", "Backbone", 2.0, 0.09, 5),
                board("plate.S9", "S9", 2.6, 0.4, 1));
        List<NestPart> pieces = parts.stream()
                .flatMap(part -> java.util.Collections.nCopies(part.quantity(), new NestPart(part.key(), part.outer(), List.of(), Turns.QUARTERS)).stream()).toList();
        Sheet sheet = new Sheet("Ply12", Defaults.sheetWidth(), Defaults.sheetLength(), Given.of("sheet thickness", Dimension.LENGTH, 0.012, MADE_UP), Defaults.sheetDensity(), Optional.empty(), Optional.empty(),
                Sheet.Grain.ANY, Material.Stock.plain(MADE_UP));
        return List.of(new SheetLayout(sheet, 0.0117, Defaults.kerf(), Defaults.margin(), parts,
                Nester.nest(new NestOrder(2.44, 1.22, 0.003, 0.01, pieces, 30, 1), progress -> { }, () -> stopped)));
    }

    @Test void theTableLooksAsItDidWhenSomebodyLastLooked() {
        Golden.compare("sheets-metric.txt", new SheetsText(UnitSystem.METRIC).print("Hatch", layouts(false)));
    }

    @Test void inUsUnitsItLooksAsItDidWhenSomebodyLastLooked() {
        Golden.compare("sheets-us.txt", new SheetsText(UnitSystem.US).print("Hatch", layouts(false)));
    }

    @Test void aStoppedSearchSaysSo() {
        assertThat(new SheetsText(UnitSystem.METRIC).print("Hatch", layouts(true))).contains("stopped early");
        assertThat(new SheetsText(UnitSystem.METRIC).print("Hatch", layouts(false))).doesNotContain("stopped early");
    }

    @Test void theJsonKeepsToItsSchema() throws IOException {
        try (InputStream in = SheetsJson.class.getResourceAsStream("/schema/sheets.schema.json")) {
            var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            assertThat(schema.validate(SheetsJson.print("Hatch", "3fa9", layouts(false)), InputFormat.JSON)).isEmpty();
            assertThat(schema.validate(SheetsJson.print("Hatch", "3fa9", List.of()), InputFormat.JSON)).isEmpty();
            assertThat(schema.validate(SheetsJson.print("Hatch", "3fa9", layouts(false)).replace("\"turned\"", "\"spun\""), InputFormat.JSON)).isNotEmpty();
        }
    }
}
