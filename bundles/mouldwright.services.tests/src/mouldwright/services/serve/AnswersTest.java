package mouldwright.services.serve;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import mouldwright.units.Unit;
import mouldwright.units.Units;
import org.eclipse.lsp4j.*;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What an editor is told of a place in a spec. */
class AnswersTest {

    private static Client client;

    @TempDir
    private Path folder;
    private Served served;

    /** One server for all: each test has a project of its own. */
    @BeforeAll
    static void serve() {
        client = new Client(true);
    }

    @AfterAll
    static void end() {
        client.close();
    }

    @BeforeEach
    void begin() {
        served = new Served(folder);
    }

    @AfterEach
    void close() {
        client.closeAll();
        assertThat(client.err()).as("faults of the program").isEmpty();
    }

    /** Opens a text without the bar in it, and asks what may be written where the bar was. */
    private List<CompletionItem> completion(String marked) {
        String text = marked.replace("|", "");
        client.open(served.uri("box.plug"), text);
        Position at = Served.at(marked, "|");
        return Client.get(client.server().getTextDocumentService().completion(new CompletionParams(served.document("box.plug"), at))).getLeft();
    }

    private List<String> labels(String marked) {
        return completion(marked).stream().map(CompletionItem::getLabel).toList();
    }

    private static String box(String old, String marked) {
        if (!Served.BOX.contains(old)) {
            throw new IllegalArgumentException(old);
        }
        return Served.BOX.replace(old, marked);
    }

    @Test void namesOfTheKindAskedForAreOffered() {
        assertThat(labels(box("fill Pour36 solid", "fill | solid"))).containsExactly("Pour36");
        assertThat(labels(box("like A", "like |"))).containsExactly("A", "B");
        assertThat(labels(box("knuckle edge", "knuckle |"))).contains("edge").doesNotContain("A", "Pour36");
    }

    @Test void aNameHalfTypedIsReplacedWhole() {
        CompletionItem item = completion(box("fill Pour36 solid", "fill Po| solid")).getFirst();
        Range range = item.getTextEdit().getLeft().getRange();
        assertThat(item.getTextEdit().getLeft().getNewText()).isEqualTo("Pour36");
        assertThat(range.getEnd().getCharacter() - range.getStart().getCharacter()).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({ "lap 50, lap 50 |, length", "skin Skin {, skin Skin { gel for 25 |, time", "skin Skin {, skin Skin { on foam 350 |, mass per area", "units mm, shop 20 |, temperature" })
    void onlyUnitsThatFitTheDimensionAreOffered(String old, String marked, String dimension) { // by the table of the JSR 385 libraries
        List<String> units = completion(box(old, marked)).stream().filter(item -> item.getKind() == CompletionItemKind.Unit).map(CompletionItem::getLabel).toList();
        assertThat(units).isNotEmpty().allSatisfy(unit -> assertThat(Units.find(unit).map(Unit::dimension).orElseThrow().word()).isEqualTo(dimension));
    }

    @Test void defaultsAndSizesThatCanBeBoughtAreOffered() {
        assertThat(labels(box("lap 50", "lap |"))).contains("50 mm");
        assertThat(labels(box("skin Skin {", "frame { sheet BirchPly12 measured | }\nskin Skin {"))).contains("12.0 mm");
        assertThat(labels("sheet P { thickness | }")).contains("9 mm", "12 mm", "18 mm");
        assertThat(labels(box("skin Skin {", "finish { sand 80 | }\nskin Skin {"))).contains("120", "1000"); // grits of ISO 6344
        assertThat(labels(box("units mm", "units |"))).containsExactly("mm", "cm", "m", "in", "ft");
    }

    @Test void wordsOfABlockAreThoseThatMayStandThere() {
        assertThat(labels(box("overfill 15", "|"))).contains("overfill", "bay").doesNotContain("lap", "rim", "station");
        assertThat(labels(box("overfill 15", "ov|"))).containsExactly("overfill");
        assertThat(labels(box("skin Skin {", "|\nskin Skin {"))).contains("frame", "mould", "station", "frame ...").doesNotContain("overfill", "expansion");
    }

    @Test void nothingIsOfferedInCommentsAndTexts() {
        assertThat(labels(box("overfill 15", "// ov|\n"))).isEmpty();
        assertThat(labels(box("overfill 15", "/* ov|\n*/"))).isEmpty();
        assertThat(labels(box("\"A box\"", "\"A |box\""))).isEmpty();
    }

    @Test void aMistakeOnAnotherLineDoesNotSpoilTheOffer() {
        assertThat(labels(box("overfill 15", "overfill fifteen\n        b|").replace("units mm", "unit mm"))).contains("bay");
    }

    @Test void librariesOfTheProjectAreOfferedToBeUsed() {
        assertThat(labels("use |\nplug P { }")).containsExactly("stock.small");
        assertThat(labels("use stock.small version |\nplug P { }")).contains("\"1.0\"");
    }

    @ParameterizedTest
    @ValueSource(strings = { "plug", "hardener", "resin", "mat", "foam", "filler", "coating", "sheet", "rates", "schedule", "consumable" })
    void aWholeBlockIsAPieceOfTheLanguage(String block) { // filled with its first words it has no mistake of spelling or order
        CompletionItem item = completion(Served.STOCK + "hardener Mekp0 { }\n|").stream().filter(one -> one.getLabel().equals(block + " ...")).findFirst().orElseThrow();
        assertThat(item.getInsertTextFormat()).isEqualTo(InsertTextFormat.Snippet);
        holds(Served.STOCK + "hardener Mekp0 { }\n" + filled(item), "MW901");
    }

    @ParameterizedTest
    @ValueSource(strings = { "station", "stations", "frame", "carve", "finish", "mould", "air" })
    void aWholeBlockOfAPlugIsAPieceOfTheLanguage(String block) {
        String text = box("skin Skin {", "|\nskin Skin {");
        CompletionItem item = completion(text).stream().filter(one -> one.getLabel().equals(block + " ...")).findFirst().orElseThrow();
        holds(text.replace("|", filled(item)), "MW901", "MW903", "MW905");
    }

    private static String filled(CompletionItem item) {
        return item.getTextEdit().getLeft().getNewText().replaceAll("\\$\\{\\d+:([^}]*)}", "$1").replace("$0", "");
    }

    private void holds(String text, String... codes) {
        client.change(served.uri("box.plug"), new TextDocumentContentChangeEvent(text));
        assertThat(client.settled(served.uri("box.plug"))).extracting(one -> one.getCode().getLeft()).doesNotContain(codes);
    }

    private String hover(String word) {
        client.open(served.uri("box.plug"), Served.BOX);
        client.settled(served.uri("box.plug"));
        Hover hover = Client.get(client.server().getTextDocumentService().hover(new HoverParams(served.document("box.plug"), Served.at(Served.BOX, word))));
        return hover.getContents().getRight().getValue();
    }

    @Test void aHoverSaysWhatAPropertyIsAndWhatStandsInForIt() {
        assertThat(hover("overfill")).contains("poured past", "length", "15 mm", "common practice");
    }

    @Test void aHoverOfANameShowsItsCommentAndItsFigures() { // the section is 200 mm by 50 mm: 0.01 m2 and 500 mm round
        assertThat(hover("A at 0")).contains("station A", "100 cm2", "500 mm");
        assertThat(hover("Pour36")).contains("The only foam.", "Pour foam");
    }

    @Test void aHoverOfABlockShowsFiguresHowTheyCameAboutAndWhatIsAssumed() {
        assertThat(hover("fill Pour36")).contains("fill.mass", "sum over the bays");
        assertThat(hover("skin Skin")).contains("Assumed", "gel: 25 min");
    }

    @Test void aHoverOfANumberGivesItInTheOtherUnits() { // 1 in is 25.4 mm exactly
        String text = box("lap 50", "lap 2 in");
        client.open(served.uri("box.plug"), text);
        Hover hover = Client.get(client.server().getTextDocumentService().hover(new HoverParams(served.document("box.plug"), Served.at(text, "2 in"))));
        assertThat(hover.getContents().getRight().getValue()).contains("50.8 mm");
    }

    @Test void aSectionFormSaysWhichFigureComesNext() {
        String marked = box("like A", "superellipse 100 by 200 exponent |");
        client.open(served.uri("box.plug"), marked.replace("|", ""));
        SignatureHelp help = Client.get(client.server().getTextDocumentService().signatureHelp(new SignatureHelpParams(served.document("box.plug"), Served.at(marked, "|"))));
        ParameterInformation active = help.getSignatures().getFirst().getParameters().get(help.getActiveParameter());
        var label = active.getLabel().getRight();
        assertThat(help.getSignatures().getFirst().getLabel().substring(label.getFirst(), label.getSecond())).isEqualTo("exponent");
        assertThat(active.getDocumentation().getLeft()).contains("ellipse");
    }

    @Test void aDefinitionLiesInTheLibrary() {
        client.open(served.uri("box.plug"), Served.BOX);
        List<? extends Location> found = Client.get(client.server().getTextDocumentService().definition(new DefinitionParams(served.document("box.plug"), Served.at(Served.BOX, "Pour36")))).getLeft();
        assertThat(found).singleElement().satisfies(place -> {
            assertThat(place.getUri()).isEqualTo(served.uri("stock/small.plug"));
            assertThat(place.getRange().getStart()).isEqualTo(Served.at(Served.STOCK, "Pour36 \""));
        });
    }

    @Test void usesAreFoundInEveryFileOfTheProject() {
        served.write("other.plug", Served.BOX);
        client.open(served.uri("box.plug"), Served.BOX);
        List<? extends Location> uses = Client.get(client.server().getTextDocumentService().references(new ReferenceParams(served.document("box.plug"),
                Served.at(Served.BOX, "Pour36"), new ReferenceContext(true))));
        assertThat(uses).extracting(Location::getUri).containsExactlyInAnyOrder(served.uri("stock/small.plug"), served.uri("box.plug"), served.uri("other.plug"));
    }

    @Test void theOutlineHasThePartsOfThePlug() {
        client.open(served.uri("box.plug"), Served.BOX);
        List<DocumentSymbol> parts = Client.get(client.server().getTextDocumentService().documentSymbol(new DocumentSymbolParams(served.document("box.plug")))).stream().map(one -> one.getRight()).toList();
        assertThat(parts).extracting(DocumentSymbol::getName).containsExactly("Box");
        assertThat(parts.getFirst().getChildren()).extracting(DocumentSymbol::getName).containsExactly("edge", "A", "B", "fill", "skin");
    }

    @Test void namesAreFoundThroughoutTheFolder() {
        client.open(served.uri("empty.plug"), "");
        var found = Client.get(client.server().getWorkspaceService().symbol(new WorkspaceSymbolParams("pour"))).getRight();
        assertThat(found).extracting(WorkspaceSymbol::getName).containsExactly("Pour36");
    }

    @Test void blocksAndCommentsFoldAndTheClosingBraceStays() {
        String text = "/*\n * two lines\n */\n" + Served.BOX;
        client.open(served.uri("box.plug"), text);
        List<FoldingRange> folds = Client.get(client.server().getTextDocumentService().foldingRange(new FoldingRangeRequestParams(served.document("box.plug"))));
        assertThat(folds).anySatisfy(fold -> {
            assertThat(fold.getStartLine()).isEqualTo(Served.at(text, "station A").getLine());
            assertThat(fold.getEndLine()).isEqualTo(Served.at(text, "0 50\n").getLine());
        }).anySatisfy(fold -> assertThat(fold.getKind()).isEqualTo(FoldingRangeKind.Comment));
    }

    @Test void everyWordIsColouredAsWhatItIs() {
        client.open(served.uri("box.plug"), Served.BOX);
        List<Integer> numbers = Client.get(client.server().getTextDocumentService().semanticTokensFull(new SemanticTokensParams(served.document("box.plug")))).getData();
        List<String> types = TokenColours.legend().getTokenTypes();
        String[] lines = Served.BOX.split("\n");
        List<String> words = new ArrayList<>();
        int line = 0;
        int column = 0;
        for (int i = 0; i < numbers.size(); i += 5) {
            line += numbers.get(i);
            column = numbers.get(i) > 0 ? numbers.get(i + 1) : column + numbers.get(i + 1);
            words.add(lines[line].substring(column, column + numbers.get(i + 2)) + " " + types.get(numbers.get(i + 3)));
        }
        assertThat(words).contains("use keyword", "stock namespace", "\"1.0\" string", "Box class", "A variable", "edge variable", "Pour36 class", "15 number", "solid keyword");
    }

    @Test void figuresOfThePlanStandAboveTheirBlocks() {
        client.open(served.uri("box.plug"), Served.BOX);
        client.settled(served.uri("box.plug"));
        List<? extends CodeLens> lenses = Client.get(client.server().getTextDocumentService().codeLens(new CodeLensParams(served.document("box.plug"))));
        assertThat(lenses).extracting(one -> one.getCommand().getTitle()).anyMatch(title -> title.contains("Volume 4 l")).anyMatch(title -> title.contains("Foam, mass"));
    }

    @Test void aDerivationIsToldOnRequest() {
        client.open(served.uri("box.plug"), Served.BOX);
        Object told = Client.get(client.server().getWorkspaceService().executeCommand(new ExecuteCommandParams("mouldwright.explain", List.of(served.uri("box.plug"), "Box", "fill.mass"))));
        assertThat(String.valueOf(told)).contains("Foam, mass", "density", "assumed");
    }
}
