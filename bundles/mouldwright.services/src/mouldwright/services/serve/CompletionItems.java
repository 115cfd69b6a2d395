package mouldwright.services.serve;

import java.util.ArrayList;
import java.util.List;
import mouldwright.language.ide.Completions;
import mouldwright.language.ide.Proposal;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.InsertTextMode;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** Proposals as the protocol lists them. */
final class CompletionItems {

    private CompletionItems() { }

    /** @param range    of the word that is replaced
     *  @param snippets whether gaps can be shown */
    static List<CompletionItem> of(Completions.Offer offer, Range range, boolean snippets) {
        List<CompletionItem> items = new ArrayList<>();
        for (Proposal proposal : offer.proposals()) {
            boolean snippet = snippets && proposal.kind() == Proposal.Kind.TEMPLATE;
            CompletionItem item = new CompletionItem(proposal.label());
            item.setKind(kind(proposal.kind()));
            item.setDetail(proposal.detail().isEmpty() ? null : proposal.detail());
            if (!proposal.about().isEmpty()) {
                item.setDocumentation(new MarkupContent(MarkupKind.MARKDOWN, proposal.about()));
            }
            item.setSortText(String.format(java.util.Locale.ROOT, "%d%04d", proposal.kind().ordinal(), items.size()));
            item.setFilterText(proposal.kind() == Proposal.Kind.TEMPLATE ? proposal.label().replace(" ...", "") : proposal.label());
            item.setInsertTextFormat(snippet ? InsertTextFormat.Snippet : InsertTextFormat.PlainText);
            item.setInsertTextMode(InsertTextMode.AdjustIndentation);
            item.setTextEdit(Either.forLeft(new TextEdit(range, snippet ? proposal.insert() : proposal.plainInsert())));
            items.add(item);
        }
        return items;
    }

    private static CompletionItemKind kind(Proposal.Kind kind) {
        return switch (kind) {
            case VALUE -> CompletionItemKind.Value;
            case NAME -> CompletionItemKind.Reference;
            case UNIT -> CompletionItemKind.Unit;
            case KEYWORD -> CompletionItemKind.Keyword;
            case TEMPLATE -> CompletionItemKind.Snippet;
        };
    }
}
