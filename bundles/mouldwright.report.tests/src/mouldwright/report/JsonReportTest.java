package mouldwright.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** An estimate as JSON, held to its schema and to the command line's contract. */
class JsonReportTest {

    private static final PathNames NAMES = new PathNames(Plans.FOLDER);
    private static final String JSON = new JsonReport(NAMES).print(Plans.estimate());

    private static String schemaText() throws IOException {
        try (InputStream in = Estimate.class.getResourceAsStream("/schema/estimate.schema.json")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static Schema schema() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(schemaText());
    }

    private static JsonObject parsed() {
        return JsonParser.parseString(JSON).getAsJsonObject();
    }

    @Test void anEstimateIsAsItsSchemaSays() throws IOException { // JSON Schema 2020-12
        assertThat(schema().validate(JSON, InputFormat.JSON)).isEmpty();
    }

    @Test void theSchemaRefusesAnEstimateWithoutUnits() throws IOException { // or it would hold nothing
        assertThat(schema().validate(JSON.replace("\"unit\": \"kg\",", ""), InputFormat.JSON)).isNotEmpty();
    }

    @Test void theSchemaDescribesEveryProperty() throws IOException {
        List<String> bare = new ArrayList<>();
        collectUndescribed("", JsonParser.parseString(schemaText()), bare);
        assertThat(bare).isEmpty();
    }

    private static void collectUndescribed(String path, JsonElement element, List<String> bare) {
        if (element.isJsonArray()) {
            element.getAsJsonArray().forEach(item -> collectUndescribed(path + "[]", item, bare));
        } else if (element.isJsonObject()) {
            for (Map.Entry<String, JsonElement> entry : element.getAsJsonObject().entrySet()) {
                if (entry.getKey().equals("properties")) {
                    entry.getValue().getAsJsonObject().entrySet().stream().filter(p -> !p.getValue().getAsJsonObject().has("description"))
                            .forEach(p -> bare.add(path + "/" + p.getKey()));
                }
                collectUndescribed(path + "/" + entry.getKey(), entry.getValue(), bare);
            }
        }
    }

    @Test void theKeysStandInTheOrderOfTheContract() {
        assertThat(parsed().keySet()).containsExactly("plug", "revision", "assumed", "findings", "cautions", "quantities", "plates", "parts", "members", "pours",
                "pourOrder", "remedies", "pots", "pieces", "tasks", "orders", "edges", "boards");
        assertThat(parsed().getAsJsonArray("quantities").get(0).getAsJsonObject().keySet())
                .containsExactly("id", "stage", "label", "value", "unit", "low", "high", "derivation");
    }

    @Test void anEstimateWithDrawsIsAsItsSchemaSaysToo() throws IOException { // JSON Schema 2020-12
        String json = new JsonReport(NAMES).print(Plans.drawn());
        assertThat(schema().validate(json, InputFormat.JSON)).isEmpty();
        JsonObject draws = JsonParser.parseString(json).getAsJsonObject().getAsJsonObject("draws");
        assertThat(draws.get("count").getAsInt()).isEqualTo(1000);
        assertThat(draws.get("seed").getAsString()).isEqualTo("1");
        JsonObject liquid = quantity(json, "fill.liquid");
        assertThat(List.of(liquid.get("low"), liquid.get("p10"), liquid.get("p50"), liquid.get("p90"), liquid.get("high")).stream().map(JsonElement::getAsDouble)).isSorted();
    }

    @Test void aPieceStandsWithItsSizeAndItsPlaceOnTheRoll() {
        JsonObject piece = parsed().getAsJsonArray("pieces").get(2).getAsJsonObject();
        assertThat(piece.keySet()).containsExactly("piece", "laminate", "ply", "mat", "where", "width", "length", "roll", "cut", "along", "across");
        assertThat(piece.get("width").getAsDouble()).isEqualTo(0.634);
        assertThat(piece.get("across").getAsDouble()).isEqualTo(0.31);
    }

    @Test void timesAreInMinutesAndAnglesInRadians() { // the contract; UCUM codes
        assertThat(quantity("skin.gel").get("unit").getAsString()).isEqualTo("min");
        assertThat(quantity("skin.gel").get("value").getAsDouble()).isEqualTo(25);
        assertThat(quantity("station.S1.bevel.max").get("unit").getAsString()).isEqualTo("rad");
    }

    @Test void anAmountOfMoneyNamesItsCurrency() {
        assertThat(quantity("plan.cost").get("unit").getAsString()).isEqualTo("EUR");
    }

    @Test void aTaskTellsWhatItWaitsForAndWhen() { // working time in minutes
        JsonObject task = parsed().getAsJsonArray("tasks").get(1).getAsJsonObject();
        assertThat(task.getAsJsonArray("after").get(0).getAsString()).isEqualTo("fill.pour.S1-S2.1");
        assertThat(task.get("start").getAsDouble()).isEqualTo(35);
        assertThat(task.get("endDate").getAsString()).isEqualTo("2027-03-02");
        assertThat(task.get("critical").getAsBoolean()).isTrue();
    }

    @Test void anOrderWithoutAPriceInTheJobsCurrencyHasNoCost() {
        JsonObject order = parsed().getAsJsonArray("orders").get(1).getAsJsonObject();
        assertThat(order.has("cost")).isFalse();
        assertThat(order.get("currency").getAsString()).isEqualTo("USD");
        assertThat(order.get("packs").getAsInt()).isEqualTo(1);
    }

    @Test void aDerivationEndsInALibraryEntryWithItsLine() {
        JsonObject expansion = quantity("fill.liquid").getAsJsonObject("derivation").getAsJsonArray("inputs").get(1).getAsJsonObject();
        JsonObject origin = expansion.getAsJsonObject("origin");
        assertThat(origin.get("library").getAsString()).isEqualTo("stock.foam");
        assertThat(origin.get("line").getAsInt()).isEqualTo(14);
        assertThat(origin.get("text").getAsString()).isEqualTo("expansion 32 from 28 to 33");
    }

    @Test void aMeasureNamesWhatItRestsOn() {
        assertThat(quantity("shape.volume").getAsJsonObject("derivation").getAsJsonArray("grounds")).extracting(JsonElement::getAsString)
                .containsExactly("hatch.plug:2:5  station S1 at 0 like S0", "hatch.plug:3:5  station S2 at 500 like S1");
    }

    @Test void aFigureThatIsListedByItselfStandsInOthersAsAReference() { // or shared branches would be written over and over
        JsonObject cavity = quantity("fill.liquid").getAsJsonObject("derivation").getAsJsonArray("inputs").get(0).getAsJsonObject();
        assertThat(cavity.get("kind").getAsString()).isEqualTo("quantity");
        assertThat(cavity.get("id").getAsString()).isEqualTo("fill.cavity");
    }

    @Test void theSchemaIsPartOfTheBundle() throws IOException {
        try (InputStreamReader in = new InputStreamReader(Estimate.class.getResourceAsStream("/schema/estimate.schema.json"), StandardCharsets.UTF_8)) {
            assertThat(JsonParser.parseReader(in).getAsJsonObject().get("$schema").getAsString())
                    .isEqualTo("https://json-schema.org/draft/2020-12/schema");
        }
    }

    private static JsonObject quantity(String id) {
        return quantity(JSON, id);
    }

    private static JsonObject quantity(String json, String id) {
        for (JsonElement element : JsonParser.parseString(json).getAsJsonObject().getAsJsonArray("quantities")) {
            if (element.getAsJsonObject().get("id").getAsString().equals(id)) {
                return element.getAsJsonObject();
            }
        }
        throw new AssertionError("no " + id);
    }
}
