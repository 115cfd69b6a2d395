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
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Measurements;
import mouldwright.plan.Quantity;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Measurement;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Survey;
import mouldwright.plan.stage.FairMeasures;
import mouldwright.plan.stage.PourOrder;
import mouldwright.units.Dimension;
import mouldwright.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** The order of the pours, and what surveys found, as they are printed. */
class BuiltPlugTest {

    private static final Estimate ESTIMATE = Estimate.of(plan(), Plans.REVISION, List.of());
    private static final String TEXT = new TextReport(UnitSystem.METRIC, new PathNames(Plans.FOLDER)).print(ESTIMATE);
    private static final JsonObject JSON = JsonParser.parseString(new JsonReport(new PathNames(Plans.FOLDER)).print(ESTIMATE)).getAsJsonObject();

    private static BuildPlan plan() {
        Ledger ledger = new Ledger();
        ledger.turnTo("fill");
        ledger.quantity("fill.firm", "Firm", Dimension.TIME).measured(new Measurement(1800, 0, "the sheet"));
        ledger.quantity("bay.S1-S2.wait", "Wait", Dimension.TIME).measured(new Measurement(3000, 0, "slab"));
        ledger.quantity("bay.S3-S4.wait", "Wait", Dimension.TIME).measured(new Measurement(3600, 0, "slab"));
        ledger.turnTo("fair");
        ledger.quantity("survey.1.volume", "Volume", Dimension.VOLUME).measured(new Measurement(13e-6, 0, "closed form"));
        Reckoning reckoning = ledger.close();
        Measurements measurements = new Measurements();
        measurements.keep(new PourOrder(List.of(new PourOrder.Trial(), new PourOrder.Pour(0, "S1-S2", 1, 2, Fill.Attitude.UPRIGHT),
                new PourOrder.Pour(2, "S3-S4", 1, 2, Fill.Attitude.UPRIGHT), new PourOrder.Wait(List.of("S1-S2", "S3-S4"), false),
                new PourOrder.Turn(Fill.Attitude.ON_SIDE), new PourOrder.Pour(1, "S2-S3", 1, 1, Fill.Attitude.ON_SIDE), new PourOrder.Wait(List.of("S2-S3"), true))));
        measurements.keep(new FairMeasures(List.of(place(1, FairMeasures.Fault.GOUGE, 0.007, new FairMeasures.Filler(2), List.of("S2")),
                place(2, FairMeasures.Fault.VOID, 0.012, new FairMeasures.Done(), List.of())), List.of()));
        BuildPlan hatch = Plans.hatch();
        List<Quantity> quantities = reckoning.quantities().stream().map(node -> new Quantity(node.id(), node.stage(), node.label(), node.dimension(),
                reckoning.low(node), reckoning.likely(node), reckoning.high(node))).toList();
        return new BuildPlan(hatch.spec(), List.of(), quantities, List.of(), List.of(), List.of(), List.of(), List.of(), measurements, reckoning);
    }

    private static FairMeasures.Place place(int number, FairMeasures.Fault fault, double depth, FairMeasures.Remedy remedy, List<String> plates) {
        return new FairMeasures.Place(number, fault, "in bay S1 to S2", 0.14, Survey.Hand.PORT, 0.4,
                new FairMeasures.Size(Given.of("depth", Dimension.LENGTH, depth, Plans.line(9, "gouge")), Optional.empty(), Optional.empty()), plates,
                Optional.empty(), remedy, LocalDate.of(2027, 3, 9), Plans.line(9, "gouge"));
    }

    @Test void liftsThatArePouredInTurnStandInOneLineAndTheWaitIsTheLongestOfThem() {
        assertThat(TEXT).contains("1   trial cup", "2   pour lift 1 of S1-S2, S3-S4\n", "3   wait 60 min until cool", "6   wait 30 min until firm");
    }

    @Test void turningThePlugComesWithItsCaution() {
        assertThat(TEXT).contains("4   turn the plug on side; weigh it first, with enough people or gear made for it", Caution.LIFTING.words());
    }

    @Test void aPlaceIsListedWithItsRemedyAndWhatItTakes() {
        assertThat(TEXT).containsPattern("1   gouge +S1 to S2 +7\\.0 +filler, 2 layers +13 ml +measure again").containsPattern("2   void +S1 to S2 +12\\.0 +done");
    }

    @Test void noLineIsWiderThanAHundredColumns() { // what the reports are made for
        assertThat(TEXT.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test void theOrderOfThePoursIsInJsonWithWaitsInMinutes() { // the contract: times in minutes
        JsonObject wait = JSON.getAsJsonArray("pourOrder").get(3).getAsJsonObject();
        assertThat(wait.get("act").getAsString()).isEqualTo("wait");
        assertThat(wait.get("wait").getAsDouble()).isEqualTo(60);
        assertThat(JSON.getAsJsonArray("pourOrder").get(5).getAsJsonObject().get("lies").getAsString()).isEqualTo("on side");
    }

    @Test void aRemedyNamesTheFigureItTakesAndThePlatesItCrosses() {
        JsonObject gouge = JSON.getAsJsonArray("remedies").get(0).getAsJsonObject();
        assertThat(gouge.get("amount").getAsString()).isEqualTo("survey.1.volume");
        assertThat(gouge.getAsJsonArray("plates").get(0).getAsString()).isEqualTo("S2");
        assertThat(gouge.get("count").getAsInt()).isEqualTo(2);
        assertThat(gouge.get("measureAgain").getAsBoolean()).isTrue();
    }

    @Test void bothListsAreAsTheirSchemaSays() throws IOException { // JSON Schema 2020-12
        try (InputStream in = Estimate.class.getResourceAsStream("/schema/estimate.schema.json")) {
            assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                    .validate(JSON.toString(), InputFormat.JSON)).isEmpty();
        }
    }

    @Test void oneStageAloneShowsNeitherOfAnother() {
        JsonObject fair = JsonParser.parseString(new JsonReport(new PathNames(Plans.FOLDER)).print(ESTIMATE.only("fair"))).getAsJsonObject();
        assertThat(fair.getAsJsonArray("pourOrder")).isEmpty();
        assertThat(fair.getAsJsonArray("remedies")).hasSize(2);
    }
}
