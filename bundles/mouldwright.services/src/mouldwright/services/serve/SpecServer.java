package mouldwright.services.serve;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import mouldwright.services.LiveSession;
import org.eclipse.lsp4j.*;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageClientAware;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;

/** The server as the protocol knows it: what it can do, and how it begins and ends. */
final class SpecServer implements LanguageServer, LanguageClientAware {

    private volatile LanguageClient client;
    private final LiveSession session;
    private final Publisher publisher;
    private final TextRequests texts;
    private final FolderRequests folders;
    private final Ending ending;
    private volatile boolean canWatch;

    SpecServer(Log log, Ending ending) {
        this.ending = ending;
        publisher = new Publisher();
        session = new LiveSession(new LiveSession.Listener() {
            @Override
            public void found(mouldwright.services.Checked checked, int version, boolean complete) {
                publisher.found(checked, version);
            }

            @Override
            public void closed(java.nio.file.Path file) {
                publisher.closed(file);
            }
        }, log::fault);
        Desk desk = new Desk(session, publisher);
        texts = new TextRequests(desk);
        folders = new FolderRequests(desk);
    }

    @Override
    public void connect(LanguageClient connected) {
        client = connected;
        publisher.connect(connected);
    }

    @Override
    public CompletableFuture<InitializeResult> initialize(InitializeParams params) {
        ending.watch(Optional.ofNullable(params.getProcessId()));
        Optional<ClientCapabilities> can = Optional.ofNullable(params.getCapabilities());
        texts.snippets(can.map(ClientCapabilities::getTextDocument).map(TextDocumentClientCapabilities::getCompletion).map(CompletionCapabilities::getCompletionItem)
                .map(CompletionItemCapabilities::getSnippetSupport).orElse(false));
        canWatch = can.map(ClientCapabilities::getWorkspace).map(WorkspaceClientCapabilities::getDidChangeWatchedFiles)
                .map(DidChangeWatchedFilesCapabilities::getDynamicRegistration).orElse(false);
        folders.add(roots(params));
        return CompletableFuture.completedFuture(new InitializeResult(capabilities(), new ServerInfo("mouldwright")));
    }

    @SuppressWarnings("deprecation") // older clients name one root alone
    private static List<WorkspaceFolder> roots(InitializeParams params) {
        if (params.getWorkspaceFolders() != null) {
            return params.getWorkspaceFolders();
        }
        return params.getRootUri() == null ? List.of() : List.of(new WorkspaceFolder(params.getRootUri(), "root"));
    }

    private static ServerCapabilities capabilities() {
        ServerCapabilities can = new ServerCapabilities();
        TextDocumentSyncOptions sync = new TextDocumentSyncOptions();
        sync.setOpenClose(true);
        sync.setChange(TextDocumentSyncKind.Incremental);
        can.setTextDocumentSync(sync);
        can.setPositionEncoding(PositionEncodingKind.UTF16);
        can.setCompletionProvider(new CompletionOptions(false, List.of(".", " ")));
        can.setHoverProvider(true);
        can.setSignatureHelpProvider(new SignatureHelpOptions(List.of(" ")));
        can.setDefinitionProvider(true);
        can.setReferencesProvider(true);
        can.setDocumentHighlightProvider(true);
        can.setDocumentSymbolProvider(true);
        can.setWorkspaceSymbolProvider(true);
        can.setRenameProvider(new RenameOptions(true));
        can.setCodeActionProvider(new CodeActionOptions(List.of(CodeActionKind.QuickFix, CodeActionKind.SourceOrganizeImports, CodeActionKind.RefactorRewrite)));
        can.setCodeLensProvider(new CodeLensOptions(false));
        can.setFoldingRangeProvider(true);
        can.setDocumentFormattingProvider(true);
        can.setDocumentRangeFormattingProvider(true);
        can.setSemanticTokensProvider(new SemanticTokensWithRegistrationOptions(TokenColours.legend(), true));
        can.setExecuteCommandProvider(new ExecuteCommandOptions(Commands.ALL));
        WorkspaceFoldersOptions folders = new WorkspaceFoldersOptions();
        folders.setSupported(true);
        folders.setChangeNotifications(true);
        can.setWorkspace(new WorkspaceServerCapabilities(folders));
        return can;
    }

    @Override
    public void initialized(InitializedParams params) {
        if (canWatch) {
            List<FileSystemWatcher> watched = List.of("**/*.plug", "**/*.csv", "**/*.dxf", "**/mouldwright.project").stream()
                    .map(pattern -> new FileSystemWatcher(Either.forLeft(pattern))).toList();
            client.registerCapability(new RegistrationParams(List.of(new Registration("mouldwright-files", "workspace/didChangeWatchedFiles",
                    new DidChangeWatchedFilesRegistrationOptions(watched)))));
        }
    }

    @Override
    public CompletableFuture<Object> shutdown() {
        ending.shutDown();
        close();
        return CompletableFuture.completedFuture(null);
    }

    /** Ends the work; what waits for an answer is cancelled. */
    void close() {
        session.close();
    }

    @Override
    public void exit() {
        ending.exit();
    }

    @Override
    public void setTrace(SetTraceParams params) {
        // Nothing is traced.
    }

    @Override
    public void cancelProgress(WorkDoneProgressCancelParams params) {
        // No progress is reported.
    }

    @Override
    public TextDocumentService getTextDocumentService() {
        return texts;
    }

    @Override
    public WorkspaceService getWorkspaceService() {
        return folders;
    }
}
