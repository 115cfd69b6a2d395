package mouldwright.services.serve;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.eclipse.lsp4j.*;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;

/** A client in the same process, which talks to a server over a pair of pipes. */
final class Client implements LanguageClient, AutoCloseable {

    /** Long enough for the slowest machine; nothing waits for it unless something is wrong. */
    private static final long PATIENCE = 300;

    private final BlockingQueue<PublishDiagnosticsParams> published = new LinkedBlockingQueue<>();
    private final Map<String, Integer> versions = new ConcurrentHashMap<>();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final CompletableFuture<Integer> code;
    private final LanguageServer server;
    private final PipedOutputStream toServer = new PipedOutputStream();

    Client(boolean snippets) {
        try {
            PipedInputStream serverIn = new PipedInputStream(toServer, 1 << 16);
            PipedOutputStream serverOut = new PipedOutputStream();
            PipedInputStream clientIn = new PipedInputStream(serverOut, 1 << 16);
            code = CompletableFuture.supplyAsync(() -> StdioServer.serve(serverIn, serverOut, new PrintStream(err, true, StandardCharsets.UTF_8), true));
            var launcher = LSPLauncher.createClientLauncher(this, clientIn, toServer);
            launcher.startListening();
            server = launcher.getRemoteProxy();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        InitializeParams params = new InitializeParams();
        CompletionItemCapabilities item = new CompletionItemCapabilities();
        item.setSnippetSupport(snippets);
        TextDocumentClientCapabilities texts = new TextDocumentClientCapabilities();
        texts.setCompletion(new CompletionCapabilities(item));
        params.setCapabilities(new ClientCapabilities(null, texts, null));
        get(server.initialize(params));
        server.initialized(new InitializedParams());
    }

    static <T> T get(CompletableFuture<T> answer) {
        try {
            return answer.get(PATIENCE, TimeUnit.SECONDS);
        } catch (java.util.concurrent.ExecutionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : new IllegalStateException(e.getCause());
        } catch (InterruptedException | java.util.concurrent.TimeoutException e) {
            throw new IllegalStateException("the server does not answer", e);
        }
    }

    LanguageServer server() {
        return server;
    }

    /** Standard error so far. */
    String err() {
        return err.toString(StandardCharsets.UTF_8);
    }

    void open(String uri, String text) {
        versions.put(uri, 1);
        server.getTextDocumentService().didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "plug", 1, text)));
    }

    void change(String uri, TextDocumentContentChangeEvent... changes) {
        int version = versions.merge(uri, 1, Integer::sum);
        server.getTextDocumentService().didChange(new DidChangeTextDocumentParams(new VersionedTextDocumentIdentifier(uri, version), List.of(changes)));
    }

    void closeAll() {
        List.copyOf(versions.keySet()).forEach(this::close);
    }

    void close(String uri) {
        versions.remove(uri);
        server.getTextDocumentService().didClose(new DidCloseTextDocumentParams(new TextDocumentIdentifier(uri)));
    }

    /** The next findings told of a file. */
    PublishDiagnosticsParams next(String uri) {
        while (true) {
            PublishDiagnosticsParams params = take();
            if (params.getUri().equals(uri)) {
                return params;
            }
        }
    }

    /** The findings of the latest version once everything about it is known: a command that needs the plan comes back after them. */
    List<Diagnostic> settled(String uri) {
        server.getWorkspaceService().executeCommand(new ExecuteCommandParams("mouldwright.plan", List.of(uri))).handle((done, refused) -> done).orTimeout(PATIENCE, TimeUnit.SECONDS).join();
        PublishDiagnosticsParams last = null;
        while (last == null || !published.isEmpty()) {
            PublishDiagnosticsParams params = take();
            last = params.getUri().equals(uri) ? params : last;
        }
        return last.getDiagnostics();
    }

    private PublishDiagnosticsParams take() {
        try {
            PublishDiagnosticsParams params = published.poll(PATIENCE, TimeUnit.SECONDS);
            if (params == null) {
                throw new IllegalStateException("no findings come");
            }
            return params;
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Ends the server. @return what it ends with */
    int end() {
        get(server.shutdown());
        server.exit();
        return get(code);
    }

    @Override
    public void close() {
        if (!code.isDone()) {
            server.exit();
            get(code);
        }
    }

    @Override
    public void publishDiagnostics(PublishDiagnosticsParams params) {
        published.add(params);
    }

    @Override
    public void telemetryEvent(Object object) {
        throw new IllegalStateException("nothing is reported to anybody");
    }

    @Override
    public void showMessage(MessageParams params) {
        // not looked at
    }

    @Override
    public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams params) {
        return CompletableFuture.completedFuture(null);
    }

    @Override
    public void logMessage(MessageParams params) {
        // not looked at
    }
}
