package mouldwright.services.serve;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import mouldwright.language.ide.Completions;
import mouldwright.language.ide.Edit;
import mouldwright.language.ide.FormHelp;
import mouldwright.language.ide.GapEdits;
import mouldwright.language.ide.Hovers;
import mouldwright.language.ide.Lenses;
import mouldwright.services.Layout;
import mouldwright.services.LiveSession;
import org.eclipse.lsp4j.*;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;
import org.eclipse.lsp4j.services.TextDocumentService;

/** Requests and notifications about one text. */
final class TextRequests implements TextDocumentService {

    private final Desk desk;
    private final LiveSession session;
    private final NameRequests names;
    private final CodeActions actions;
    private boolean snippets;

    TextRequests(Desk desk) {
        this.desk = desk;
        this.session = desk.session();
        this.names = new NameRequests(desk);
        this.actions = new CodeActions(desk);
    }

    /** Whether the client can show the gaps of a template. */
    void snippets(boolean can) {
        snippets = can;
    }

    @Override
    public void didOpen(DidOpenTextDocumentParams params) {
        Uris.path(params.getTextDocument().getUri()).ifPresent(file -> {
            desk.publisher().named(file, params.getTextDocument().getUri());
            session.open(file, params.getTextDocument().getVersion(), params.getTextDocument().getText());
        });
    }

    @Override
    public void didChange(DidChangeTextDocumentParams params) {
        Uris.path(params.getTextDocument().getUri()).ifPresent(file -> session.change(file, version(params.getTextDocument()), text -> changed(text, params.getContentChanges())));
    }

    private static int version(VersionedTextDocumentIdentifier document) {
        return document.getVersion() == null ? 0 : document.getVersion();
    }

    /** Each change is counted in the text that the one before it leaves. */
    private static String changed(String text, List<TextDocumentContentChangeEvent> changes) {
        String result = text;
        for (TextDocumentContentChangeEvent change : changes) {
            if (change.getRange() == null) {
                result = change.getText();
            } else {
                Positions positions = new Positions(result);
                int from = positions.offset(change.getRange().getStart());
                int to = Math.max(from, positions.offset(change.getRange().getEnd()));
                result = result.substring(0, from) + change.getText() + result.substring(to);
            }
        }
        return result;
    }

    @Override
    public void didClose(DidCloseTextDocumentParams params) {
        Uris.path(params.getTextDocument().getUri()).ifPresent(session::close);
    }

    @Override
    public void didSave(DidSaveTextDocumentParams params) {
        // The text is known already, as it was typed.
    }

    @Override
    public CompletableFuture<Either<List<CompletionItem>, CompletionList>> completion(CompletionParams params) {
        return desk.ask(params.getTextDocument(), List.<CompletionItem>of(), (about, file) -> {
            int offset = about.offset(params.getPosition());
            Completions.Offer offer = about.spec().part(Completions.class).at(about.view(), offset);
            return CompletionItems.of(offer, about.positions().range(offer.start(), offset - offer.start()), snippets);
        }).thenApply(Either::forLeft);
    }

    @Override
    public CompletableFuture<Hover> hover(HoverParams params) {
        return desk.ask(params.getTextDocument(), null, (about, file) -> about.spec().part(Hovers.class).at(about.view(), about.offset(params.getPosition()))
                .map(hover -> new Hover(new MarkupContent(MarkupKind.MARKDOWN, hover.words()), about.positions().range(hover.offset(), hover.length()))).orElse(null));
    }

    @Override
    public CompletableFuture<SignatureHelp> signatureHelp(SignatureHelpParams params) {
        return desk.ask(params.getTextDocument(), null, (about, file) -> about.spec().part(FormHelp.class).at(about.view(), about.offset(params.getPosition()))
                .map(FormHelps::of).orElse(null));
    }

    @Override
    public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>> definition(DefinitionParams params) {
        return names.definition(params).thenApply(Either::forLeft);
    }

    @Override
    public CompletableFuture<List<? extends Location>> references(ReferenceParams params) {
        return names.references(params);
    }

    @Override
    public CompletableFuture<List<? extends DocumentHighlight>> documentHighlight(DocumentHighlightParams params) {
        return names.highlights(params);
    }

    @Override
    public CompletableFuture<Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>> prepareRename(PrepareRenameParams params) {
        return names.prepareRename(params);
    }

    @Override
    public CompletableFuture<WorkspaceEdit> rename(RenameParams params) {
        return names.rename(params);
    }

    @Override
    public CompletableFuture<List<Either<SymbolInformation, DocumentSymbol>>> documentSymbol(DocumentSymbolParams params) {
        return desk.ask(params.getTextDocument(), List.of(), (about, file) -> new Symbols(about.positions()).tree(about.view()).stream()
                .map(Either::<SymbolInformation, DocumentSymbol>forRight).toList());
    }

    @Override
    public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams params) {
        return actions.of(params);
    }

    @Override
    public CompletableFuture<List<? extends CodeLens>> codeLens(CodeLensParams params) {
        return desk.ask(params.getTextDocument(), List.of(), (about, file) -> {
            List<CodeLens> lenses = new ArrayList<>();
            for (Lenses.Lens lens : about.spec().part(Lenses.class).of(about.view())) {
                lenses.add(new CodeLens(about.positions().range(lens.offset(), 0),
                        new Command(lens.words(), Commands.EXPLAIN, List.of(params.getTextDocument().getUri(), lens.plug(), lens.id())), null));
            }
            return lenses;
        });
    }

    @Override
    public CompletableFuture<List<FoldingRange>> foldingRange(FoldingRangeRequestParams params) {
        return desk.ask(params.getTextDocument(), List.of(), (about, file) -> FoldingRanges.of(about));
    }

    @Override
    public CompletableFuture<SemanticTokens> semanticTokensFull(SemanticTokensParams params) {
        return desk.ask(params.getTextDocument(), new SemanticTokens(List.of()), (about, file) -> new SemanticTokens(TokenColours.of(about)));
    }

    @Override
    public CompletableFuture<List<? extends TextEdit>> formatting(DocumentFormattingParams params) {
        return desk.ask(params.getTextDocument(), List.of(), (about, file) -> about.positions().edits(layout(about)));
    }

    @Override
    public CompletableFuture<List<? extends TextEdit>> rangeFormatting(DocumentRangeFormattingParams params) {
        return desk.ask(params.getTextDocument(), List.of(), (about, file) -> {
            int from = about.offset(params.getRange().getStart());
            int to = about.offset(params.getRange().getEnd());
            return about.positions().edits(layout(about).stream().filter(edit -> edit.offset() + edit.length() >= from && edit.offset() <= to
                    && edit.offset() >= from - 1).toList());
        });
    }

    /** Nothing where the text has mistakes: it is left as it is. */
    private static List<Edit> layout(Desk.About about) {
        return about.spec().laidOut() instanceof Layout.Laid(String laid, boolean changed) && changed
                ? about.spec().part(GapEdits.class).between(about.spec().text(), laid) : List.of();
    }
}
