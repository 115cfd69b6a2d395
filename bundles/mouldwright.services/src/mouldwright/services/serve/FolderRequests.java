package mouldwright.services.serve;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import mouldwright.language.ide.SpecView;
import mouldwright.services.LiveSession;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.DidChangeWorkspaceFoldersParams;
import org.eclipse.lsp4j.ExecuteCommandParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.WorkspaceFolder;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.WorkspaceSymbolParams;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.services.WorkspaceService;

/** Requests and notifications about the folders a client has open. */
final class FolderRequests implements WorkspaceService {

    private final LiveSession session;
    private final Publisher publisher;
    private final Commands commands;
    private final Set<Path> folders = new TreeSet<>();

    FolderRequests(Desk desk) {
        this.session = desk.session();
        this.publisher = desk.publisher();
        this.commands = new Commands(session);
    }

    synchronized void add(List<WorkspaceFolder> added) {
        added.forEach(folder -> Uris.path(folder.getUri()).ifPresent(folders::add));
    }

    private synchronized List<Path> folders() {
        return List.copyOf(folders);
    }

    @Override
    public void didChangeConfiguration(DidChangeConfigurationParams params) {
        // There is nothing to configure: what a project wants stands in its project file.
    }

    @Override
    public void didChangeWatchedFiles(DidChangeWatchedFilesParams params) {
        params.getChanges().forEach(change -> Uris.path(change.getUri()).ifPresent(session::changedOnDisk));
    }

    @Override
    public synchronized void didChangeWorkspaceFolders(DidChangeWorkspaceFoldersParams params) {
        params.getEvent().getRemoved().forEach(folder -> Uris.path(folder.getUri()).ifPresent(folders::remove));
        add(params.getEvent().getAdded());
    }

    @Override
    public CompletableFuture<Either<List<? extends SymbolInformation>, List<? extends WorkspaceSymbol>>> symbol(WorkspaceSymbolParams params) {
        return session.atDesk(() -> {
            List<WorkspaceSymbol> found = new ArrayList<>();
            session.projects(folders()).forEach(project -> project.models(text -> true).forEach(model -> {
                Path file = Path.of(model.getURI().toFileString());
                SpecView view = new SpecView(model, Map.of(), Set.of(), List::of);
                found.addAll(new Symbols(new Positions(view.text())).matching(view, params.getQuery(), publisher.uri(file)));
            }));
            return found;
        }).thenApply(Either::forRight);
    }

    @Override
    public CompletableFuture<Object> executeCommand(ExecuteCommandParams params) {
        return commands.execute(params);
    }
}
