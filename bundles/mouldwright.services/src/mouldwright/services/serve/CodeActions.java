package mouldwright.services.serve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import mouldwright.check.TextFix;
import mouldwright.language.Trade;
import mouldwright.language.ide.Edit;
import mouldwright.language.ide.UnitChange;
import mouldwright.language.ide.Uses;
import mouldwright.report.TextFinding;
import mouldwright.units.UnitSystem;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** What can be done at a place: the remedies of findings, the order of libraries, the units of a block. */
final class CodeActions {

    private final Desk desk;

    CodeActions(Desk desk) {
        this.desk = desk;
    }

    CompletableFuture<List<Either<Command, CodeAction>>> of(CodeActionParams params) {
        return desk.ask(params.getTextDocument(), List.of(), (about, file) -> {
            List<CodeAction> actions = new ArrayList<>();
            String uri = params.getTextDocument().getUri();
            int from = about.offset(params.getRange().getStart());
            int to = about.offset(params.getRange().getEnd());
            for (TextFinding finding : about.spec().checked().findings()) {
                int at = about.positions().offset(finding.line(), finding.column());
                if (finding.file().equals(file) && at <= to && at + finding.length() >= from) {
                    actions.addAll(fixes(about, finding, uri));
                }
            }
            List<Edit> uses = about.spec().part(Uses.class).organised(about.view());
            if (!uses.isEmpty()) {
                actions.add(action("Put the libraries in order", CodeActionKind.SourceOrganizeImports, about, uses, uri));
            }
            units(about, from, uri, actions);
            return actions.stream().filter(action -> isWanted(action, params)).map(Either::<Command, CodeAction>forRight).toList();
        });
    }

    /** What mends a finding in the text, the best first. */
    private static List<CodeAction> fixes(Desk.About about, TextFinding finding, String uri) {
        List<CodeAction> actions = new ArrayList<>();
        for (TextFix fix : finding.fixes()) {
            List<Edit> edits = fix.edits().stream().map(edit -> new Edit(edit.offset(), edit.length(), edit.text())).toList();
            CodeAction action = action(Character.toUpperCase(fix.title().charAt(0)) + fix.title().substring(1), CodeActionKind.QuickFix, about, edits, uri);
            action.setDiagnostics(List.of(Publisher.diagnostic(finding, about.positions())));
            action.setIsPreferred(fix.safe() && actions.isEmpty());
            actions.add(action);
        }
        return actions;
    }

    private static void units(Desk.About about, int offset, String uri, List<CodeAction> actions) {
        UnitChange change = about.spec().part(UnitChange.class);
        Optional<EObject> block = change.block(about.view(), offset);
        if (block.isEmpty()) {
            return;
        }
        String what = Trade.kind(block.get().eClass());
        for (UnitSystem family : UnitSystem.values()) {
            List<Edit> edits = change.of(about.view(), block.get(), family);
            if (!edits.isEmpty()) {
                actions.add(action("Write the units of this " + what + " in " + (family == UnitSystem.US ? "US units" : "metric"), CodeActionKind.RefactorRewrite, about, edits, uri));
            }
        }
    }

    private static CodeAction action(String title, String kind, Desk.About about, List<Edit> edits, String uri) {
        CodeAction action = new CodeAction(title);
        action.setKind(kind);
        action.setEdit(new WorkspaceEdit(Map.of(uri, about.positions().edits(edits))));
        return action;
    }

    /** A kind asked for stands for all kinds below it. */
    private static boolean isWanted(CodeAction action, CodeActionParams params) {
        List<String> only = params.getContext() == null ? null : params.getContext().getOnly();
        return only == null || only.isEmpty() || only.stream().anyMatch(kind -> action.getKind().equals(kind) || action.getKind().startsWith(kind + ".") || kind.isEmpty());
    }
}
