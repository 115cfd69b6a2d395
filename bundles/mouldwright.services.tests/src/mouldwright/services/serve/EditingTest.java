package mouldwright.services.serve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.google.gson.Gson;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.*;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A spec being typed, with the server told of every change. The protocol is LSP 3.17; the client is LSP4J's own. */
class EditingTest {

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

    private String open(String text) {
        client.open(served.uri("box.plug"), text);
        return served.uri("box.plug");
    }

    private List<String> codes(String uri) {
        return client.settled(uri).stream().map(one -> one.getCode().getLeft()).toList();
    }

    @Test void findingsOfTheTextComeAtOnceAndThoseOfThePlanAfterForTheSameVersion() {
        String uri = open(Served.BOX);
        PublishDiagnosticsParams first = client.next(uri);
        PublishDiagnosticsParams second = client.next(uri);
        assertThat(first.getVersion()).isEqualTo(second.getVersion()).isEqualTo(1);
        assertThat(second.getDiagnostics()).extracting(one -> one.getCode().getLeft()).containsAll(first.getDiagnostics().stream().map(one -> one.getCode().getLeft()).toList())
                .contains("MW105"); // the mould end has no run-out: known of the plan alone
    }

    @Test void aFindingStandsWhereTheClientCountsIt() { // LSP 3.17: UTF-16 units; a comment with a clef of two units stands before it
        String text = Served.BOX.replace("station B at 400", "/* \uD834\uDD1E */ station B at 400 kg");
        Diagnostic wrong = client.next(open(text)).getDiagnostics().getFirst();
        assertThat(wrong.getRange().getStart()).isEqualTo(Served.at(text, "400 kg"));
    }

    @Test void linesMayEndInReturnAndFeed() {
        String text = Served.BOX.replace("400", "400 kg").replace("\n", "\r\n");
        Diagnostic wrong = client.next(open(text)).getDiagnostics().getFirst();
        assertThat(wrong.getRange().getStart()).isEqualTo(Served.at(text, "400 kg"));
    }

    @Test void changesAreCountedInTheTextTheOneBeforeLeaves() {
        String uri = open(Served.BOX);
        Position at = Served.at(Served.BOX, "400 like");
        client.change(uri, new TextDocumentContentChangeEvent(new Range(at, new Position(at.getLine(), at.getCharacter() + 3)), "4"),
                new TextDocumentContentChangeEvent(new Range(new Position(at.getLine(), at.getCharacter() + 1), new Position(at.getLine(), at.getCharacter() + 1)), "00 kg"));
        assertThat(client.settled(uri)).extracting(one -> one.getMessage().getLeft()).anyMatch(message -> message.contains("400 kg is a mass"));
    }

    @Test void aLibraryIsReadAsItIsTypedNotAsItIsSaved() {
        String uri = open(Served.BOX);
        assertThat(codes(uri)).doesNotContain("MW902");
        client.open(served.uri("stock/small.plug"), Served.STOCK.replace("Pour36", "Pour64"));
        assertThat(codes(uri)).contains("MW902"); // the foam has another name in the editor
        client.close(served.uri("stock/small.plug"));
        assertThat(codes(uri)).doesNotContain("MW902");
    }

    @Test void anErrorInALibraryThatIsNotOpenIsToldInTheLibrary() {
        served.write("stock/small.plug", Served.STOCK.replace("expansion 32", "expansion 32 kg"));
        open(Served.BOX);
        assertThat(client.next(served.uri("stock/small.plug")).getDiagnostics()).extracting(one -> one.getCode().getLeft()).containsExactly("MW903");
    }

    @Test void whatIsClosedHasNoFindings() {
        String uri = open(Served.BOX.replace("400", "400 kg"));
        assertThat(client.next(uri).getDiagnostics()).isNotEmpty();
        client.close(uri);
        assertThat(client.next(uri).getDiagnostics()).isEmpty();
    }

    @Test void aChangeOnTheDiskIsSeenOnceItIsTold() {
        String uri = open(Served.BOX);
        assertThat(codes(uri)).doesNotContain("MW902");
        served.write("stock/small.plug", Served.STOCK.replace("Pour36", "Pour64"));
        client.server().getWorkspaceService().didChangeWatchedFiles(new DidChangeWatchedFilesParams(List.of(new FileEvent(served.uri("stock/small.plug"), FileChangeType.Changed))));
        assertThat(codes(uri)).contains("MW902");
    }

    @Test void layingOutChangesSpaceAlone() {
        String uri = open(Served.BOX.replace("    lap 50", "  lap    50").replace("station B at", "station   B at"));
        List<? extends TextEdit> edits = Client.get(client.server().getTextDocumentService().formatting(new DocumentFormattingParams(new TextDocumentIdentifier(uri), new FormattingOptions(4, true))));
        assertThat(edits).allSatisfy(edit -> assertThat(edit.getNewText()).isBlank());
        String text = Served.BOX.replace("    lap 50", "  lap    50").replace("station B at", "station   B at");
        assertThat(Served.applied(text, edits)).isEqualTo(Served.BOX);
    }

    @Test void layingOutARangeLeavesTheRestAlone() {
        String text = Served.BOX.replace("lap 50", "lap    50").replace("station B at", "station   B at");
        String uri = open(text);
        Position line = Served.at(text, "lap    50");
        List<? extends TextEdit> edits = Client.get(client.server().getTextDocumentService().rangeFormatting(new DocumentRangeFormattingParams(new TextDocumentIdentifier(uri),
                new FormattingOptions(4, true), new Range(new Position(line.getLine(), 0), new Position(line.getLine() + 1, 0)))));
        assertThat(Served.applied(text, edits)).isEqualTo(Served.BOX.replace("station B at", "station   B at"));
    }

    @Test void aMisspeltWordIsMendedByItsFix() {
        String text = Served.BOX.replace("overfill 15", "overfil 15");
        String uri = open(text);
        List<CodeAction> actions = actions(uri, Served.at(text, "overfil"));
        CodeAction fix = actions.stream().filter(one -> one.getKind().equals(CodeActionKind.QuickFix)).findFirst().orElseThrow();
        assertThat(Served.applied(text, fix.getEdit().getChanges().get(uri))).isEqualTo(Served.BOX);
    }

    @Test void whatThePlanFindsIsMendedInTheText() { // an overfill less than what carving takes is found in the plan alone
        String text = Served.BOX.replace("overfill 15", "overfill 1");
        String uri = open(text);
        List<String> before = codes(uri);
        CodeAction fix = actions(uri, Served.at(text, "station B")).stream().filter(one -> one.getKind().equals(CodeActionKind.QuickFix)).findFirst().orElseThrow();
        String code = fix.getDiagnostics().getFirst().getCode().getLeft();
        assertThat(before).contains(code);
        client.change(uri, new TextDocumentContentChangeEvent(Served.applied(text, fix.getEdit().getChanges().get(uri))));
        assertThat(codes(uri)).doesNotContain(code);
    }

    private List<CodeAction> actions(String uri, Position at) {
        return Client.get(client.server().getTextDocumentService().codeAction(new CodeActionParams(new TextDocumentIdentifier(uri), new Range(at, at), new CodeActionContext(List.of()))))
                .stream().map(either -> either.getRight()).toList();
    }

    @Test void librariesAreSortedAndThoseNotUsedLeftOut() {
        served.write("stock/other.plug", "library stock.other version \"1.0\"\nfoam Unused { density 36 kg/m3 }\n");
        served.write("a/first.plug", "library a.first\nmat Other { areal 300 g/m2 }\n");
        String text = "use stock.other\n" + Served.BOX.replace("plug Box", "use a.first\nplug Box").replace("lap 50", "lap 50\n        bay A to B add ply Other");
        String uri = open(text);
        CodeAction order = actions(uri, new Position(0, 0)).stream().filter(one -> one.getKind().equals(CodeActionKind.SourceOrganizeImports)).findFirst().orElseThrow();
        assertThat(Served.applied(text, order.getEdit().getChanges().get(uri))).startsWith("use a.first\nuse stock.small version \"1.0\"\nplug Box");
    }

    @Test void aBlockWrittenInInchesIsTheSameBlock() { // 50 mm is 50/25.4 = 1.9685 in, NIST SP 811
        String uri = open(Served.BOX);
        CodeAction us = actions(uri, Served.at(Served.BOX, "lap 50")).stream().filter(one -> one.getTitle().contains("US units")).findFirst().orElseThrow();
        assertThat(Served.applied(Served.BOX, us.getEdit().getChanges().get(uri))).isEqualTo(Served.BOX.replace("lap 50", "lap 1.9685 in"));
    }

    @Test void aNameIsChangedInEveryFileOfTheProject() {
        served.write("other.plug", Served.BOX);
        String uri = open(Served.BOX);
        WorkspaceEdit edit = Client.get(client.server().getTextDocumentService().rename(new RenameParams(new TextDocumentIdentifier(uri), Served.at(Served.BOX, "Pour36"), "Pour40")));
        assertThat(edit.getChanges()).containsOnlyKeys(uri, served.uri("other.plug"), served.uri("stock/small.plug"));
        assertThat(Served.applied(Served.STOCK, edit.getChanges().get(served.uri("stock/small.plug")))).isEqualTo(Served.STOCK.replace("Pour36", "Pour40"));
        assertThat(Served.applied(Served.BOX, edit.getChanges().get(uri))).isEqualTo(Served.BOX.replace("Pour36", "Pour40"));
    }

    @Test void aNameThatIsTakenOrIsNoneIsRefusedInWords() {
        String uri = open(Served.BOX);
        for (Map.Entry<String, String> wrong : Map.of("B", "another station is called `B`", "2nd", "is no name", "mm", "is a unit", "most", "cannot stand").entrySet()) {
            assertThatThrownBy(() -> Client.get(client.server().getTextDocumentService().rename(new RenameParams(new TextDocumentIdentifier(uri), Served.at(Served.BOX, "A at"), wrong.getKey()))))
                    .isInstanceOf(ResponseErrorException.class).hasMessageContaining(wrong.getValue());
        }
    }

    @Test void anExportStaysInTheProject() throws Exception {
        String uri = open(Served.BOX);
        Object written = Client.get(client.server().getWorkspaceService().executeCommand(new ExecuteCommandParams("mouldwright.export", List.of(uri, "Box", "csv", "out.csv"))));
        assertThat(String.valueOf(written)).contains("out.csv");
        assertThat(folder.resolve("out.csv")).content().contains("shape.volume");
        for (String outside : List.of("../out.csv", "box.plug", folder.getParent().resolve("x.csv").toString())) {
            assertThatThrownBy(() -> Client.get(client.server().getWorkspaceService().executeCommand(new ExecuteCommandParams("mouldwright.export", List.of(uri, "Box", "csv", outside)))))
                    .isInstanceOf(ResponseErrorException.class);
        }
    }

    @Test void thePlanOfTheTypedTextIsTheClosedForm() { // a box of 200 by 50 by 500 mm holds 5 l
        String uri = open(Served.BOX);
        client.change(uri, new TextDocumentContentChangeEvent(Served.BOX.replace("400", "500")));
        Object plan = Client.get(client.server().getWorkspaceService().executeCommand(new ExecuteCommandParams("mouldwright.plan", List.of(uri, "Box"))));
        var quantities = new Gson().toJsonTree(plan).getAsJsonObject().getAsJsonArray("quantities");
        double volume = quantities.asList().stream().map(one -> one.getAsJsonObject()).filter(one -> one.get("id").getAsString().equals("shape.volume")).findFirst().orElseThrow()
                .get("value").getAsDouble();
        assertThat(volume).isCloseTo(0.005, within(1e-9));
    }
}
