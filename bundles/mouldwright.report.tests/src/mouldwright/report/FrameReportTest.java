package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.plan.Alignment;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.CutParts;
import mouldwright.plan.Measurements;
import mouldwright.plan.Member;
import mouldwright.plan.OffsetTable;
import mouldwright.plan.Quantity;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Measurement;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.units.Dimension;
import mouldwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** Parts, timber and the alignment of a frame, as they are printed. */
class FrameReportTest {

    private static final Estimate ESTIMATE = Estimate.of(plan(), Plans.REVISION, List.of());

    private static BuildPlan plan() {
        Ledger ledger = new Ledger();
        ledger.turnTo("frame");
        ledger.quantity("frame.mass", "Frame, mass", Dimension.MASS).measured(new Measurement(12, 0, "weighed"));
        Reckoning reckoning = ledger.close();
        Measurements measurements = new Measurements();
        Outline box = Outline.of(List.of(new PlanePoint(-0.3, 0), new PlanePoint(0.3, 0), new PlanePoint(0.3, 0.4), new PlanePoint(-0.3, 0.4)));
        PlatePart part = new PlatePart("plate.S1", PlatePart.Kind.PLATE, "S1", box, List.of(), List.of(new PlatePart.Bore(new PlanePoint(0.1, 0.2), 0.008, "wire")),
                List.of(new PlatePart.Score(PlatePart.Score.Use.CENTRELINE, List.of(new PlanePoint(0, 0), new PlanePoint(0, 0.4)), false, "centreline")),
                List.of(new PlatePart.LineMark("chine", new PlanePoint(0.3, 0.1), new PlanePoint(0.28, 0.1))), List.of(new PlatePart.BevelMark(new PlanePoint(0.3, 0.2), 0.1)),
                List.of(), "Ply12", 0.012, 1);
        Member rail = new Member("strongback.rail", "Strongback rail", 0.045, 0.095, 1.5, 2, List.of(new Member.Mark("S1", 0.15), new Member.Mark("S2", 0.75)));
        measurements.keep(new CutParts(List.of(part), List.of(rail), List.of(), List.of()));
        measurements.keep(new Alignment(0, 0.5, new Alignment.Square(0.3, 0.4, 0.5), 0.0015, List.of(new Alignment.Hole(0.1, 0.2, 0.008, List.of("S2"))),
                List.of(row("S1", 0, Optional.empty()), row("S2", 0.6, Optional.of(new Alignment.Reading(0.002, -0.0005, false))))));
        List<Quantity> quantities = reckoning.quantities().stream().map(node -> new Quantity(node.id(), node.stage(), node.label(), node.dimension(),
                reckoning.low(node), reckoning.likely(node), reckoning.high(node))).toList();
        return new BuildPlan(Plans.hatch().spec(), List.of(), quantities, List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), measurements, reckoning);
    }

    private static Alignment.Row row(String station, double offset, Optional<Alignment.Reading> reading) {
        double diagonal = Math.sqrt(offset * offset + 0.64 + 0.04);
        return new Alignment.Row(station, "aft", offset, 0.2, 0.3, 0.3, diagonal, diagonal, 0.4, reading);
    }

    private static String text(UnitSystem system) {
        return new TextReport(system, new PathNames(Plans.FOLDER)).print(ESTIMATE);
    }

    @Test void theAlignmentIsPrintedToATenthOfAMillimetre() { // Pythagoras: sqrt(0.6^2 + 0.8^2 + 0.2^2) = 1.0198 m
        assertThat(text(UnitSystem.METRIC)).contains("500.0 mm off the", "300.0 along it", "1019.8")
                .contains("Hole of 8 mm to line them up, 100.0 to starboard and 200.0 above base; no room for it in S2")
                .contains("S2 as last read: leans 2 mm aft, 0.5 mm low, out of tolerance");
    }

    @Test void inUsUnitsItIsPrintedInFeetInchesAndEighths() { // 0.6 m is 1 ft 11 5/8 in, 23.62 in
        assertThat(text(UnitSystem.US)).contains("ft-in-8ths", "1-11-5");
    }

    @Test void timberIsPrintedWithItsMarks() {
        assertThat(text(UnitSystem.METRIC)).contains("Strongback rail, mm from its forward end: S1 150, S2 750");
    }

    @Test void partsTimberAndAlignmentAreAsTheSchemaSays() throws IOException { // JSON Schema 2020-12
        String json = new JsonReport(new PathNames(Plans.FOLDER)).print(ESTIMATE);
        try (InputStream in = Estimate.class.getResourceAsStream("/schema/estimate.schema.json")) {
            assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .validate(json, InputFormat.JSON)).isEmpty();
        }
        JsonObject parsed = JsonParser.parseString(json).getAsJsonObject();
        assertThat(parsed.getAsJsonArray("parts").get(0).getAsJsonObject().get("kind").getAsString()).isEqualTo("plate");
        assertThat(parsed.getAsJsonArray("members")).hasSize(1);
        assertThat(parsed.getAsJsonObject("alignment").getAsJsonArray("plates").get(1).getAsJsonObject().get("within").getAsBoolean()).isFalse();
    }

    @Test void aTableOfOffsetsLeavesWhatIsNotThereEmpty() {
        OffsetTable table = new OffsetTable(List.of(new OffsetTable.Column("=S1", 0), new OffsetTable.Column("S2", 0.6)), List.of(
                new OffsetTable.Row(OffsetTable.Surface.FINISHED, OffsetTable.Measure.HALF_BREADTH, 0.1, List.of(OptionalDouble.of(0.25), OptionalDouble.empty())),
                new OffsetTable.Row(OffsetTable.Surface.PLATE, OffsetTable.Measure.GIRTH, 0, List.of(OptionalDouble.of(1), OptionalDouble.of(2)))), 0.2);
        assertThat(new OffsetReport(UnitSystem.METRIC).print(table, List.of(OffsetTable.Surface.FINISHED)))
                .isEqualTo("surface,offsets in mm,'=S1,S2\n,position,0.0,600.0\nfinished,waterline 100,250.0,\n");
        assertThat(new OffsetReport(UnitSystem.US).print(table, List.of(OffsetTable.Surface.PLATE))).contains("offsets in ft-in-8ths", "plate,girth,3-3-3,6-6-6\n");
    }
}
