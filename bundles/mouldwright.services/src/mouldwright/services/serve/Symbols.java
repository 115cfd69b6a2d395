package mouldwright.services.serve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import mouldwright.language.ide.Outline;
import mouldwright.language.ide.SpecView;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.lsp4j.WorkspaceSymbol;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** The parts of a text as the protocol lists them. */
record Symbols(Positions positions) {

    List<DocumentSymbol> tree(SpecView view) {
        return new Outline().of(view).stream().map(this::symbol).toList();
    }

    private DocumentSymbol symbol(Outline.Part part) {
        return new DocumentSymbol(part.name(), kind(part.kind()), positions.range(part.offset(), part.length()), positions.range(part.nameOffset(), part.nameLength()),
                part.detail().isEmpty() ? part.kind() : part.kind() + ": " + part.detail(), part.parts().stream().map(this::symbol).toList());
    }

    /** Those whose name has the letters asked for. */
    List<WorkspaceSymbol> matching(SpecView view, String asked, String uri) {
        List<WorkspaceSymbol> found = new ArrayList<>();
        new Outline().of(view).forEach(part -> collect(part, asked.toLowerCase(Locale.ROOT), uri, "", found));
        return found;
    }

    private void collect(Outline.Part part, String asked, String uri, String within, List<WorkspaceSymbol> found) {
        if (part.name().toLowerCase(Locale.ROOT).contains(asked)) {
            found.add(new WorkspaceSymbol(part.name(), kind(part.kind()), Either.forLeft(new Location(uri, positions.range(part.nameOffset(), part.nameLength()))),
                    within.isEmpty() ? part.kind() : within));
        }
        part.parts().forEach(inner -> collect(inner, asked, uri, part.name(), found));
    }

    private static SymbolKind kind(String kind) {
        return switch (kind) {
            case "plug" -> SymbolKind.Class;
            case "station", "station row" -> SymbolKind.Field;
            case "line" -> SymbolKind.Property;
            case "named amount" -> SymbolKind.Constant;
            case "survey" -> SymbolKind.Event;
            case "schedule" -> SymbolKind.Function;
            case "library header" -> SymbolKind.Package;
            case "frame", "fill", "carve", "skin", "finish", "mould", "air", "release" -> SymbolKind.Namespace;
            default -> SymbolKind.Struct;
        };
    }
}
