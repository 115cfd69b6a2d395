package mouldwright.services.serve;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import mouldwright.language.ide.Names;
import mouldwright.language.ide.Renames;
import mouldwright.language.ide.SpecView;
import mouldwright.model.Named;
import mouldwright.services.ProjectTexts;
import org.eclipse.lsp4j.*;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.xtext.resource.XtextResource;

/** Requests about names, which may go beyond one text. */
final class NameRequests {

    private final Desk desk;

    NameRequests(Desk desk) {
        this.desk = desk;
    }

    CompletableFuture<List<? extends Location>> definition(DefinitionParams params) {
        return desk.ask(params.getTextDocument(), List.of(), (about, file) -> {
            Names names = about.spec().part(Names.class);
            return names.at(about.view(), about.offset(params.getPosition())).flatMap(names::declared).map(this::location).map(List::of).orElse(List.of());
        });
    }

    CompletableFuture<List<? extends Location>> references(ReferenceParams params) {
        return desk.ask(params.getTextDocument(), List.of(), (about, file) -> {
            Names names = about.spec().part(Names.class);
            Optional<Named> named = names.at(about.view(), about.offset(params.getPosition()));
            List<Location> locations = new ArrayList<>();
            if (named.isPresent()) {
                if (params.getContext() != null && params.getContext().isIncludeDeclaration()) {
                    names.declared(named.get()).map(this::location).ifPresent(locations::add);
                }
                models(about, named.get().getName()).forEach(text -> names.uses(named.get(), text).forEach(use -> locations.add(location(use))));
            }
            return locations;
        });
    }

    CompletableFuture<List<? extends DocumentHighlight>> highlights(DocumentHighlightParams params) {
        return desk.ask(params.getTextDocument(), List.of(), (about, file) -> {
            Names names = about.spec().part(Names.class);
            List<DocumentHighlight> highlights = new ArrayList<>();
            names.at(about.view(), about.offset(params.getPosition())).ifPresent(named -> {
                names.declared(named).filter(use -> use.resource() == about.view().resource())
                        .ifPresent(use -> highlights.add(new DocumentHighlight(about.positions().range(use.offset(), use.length()), DocumentHighlightKind.Write)));
                names.uses(named, about.view().resource())
                        .forEach(use -> highlights.add(new DocumentHighlight(about.positions().range(use.offset(), use.length()), DocumentHighlightKind.Read)));
            });
            return highlights;
        });
    }

    CompletableFuture<Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>> prepareRename(PrepareRenameParams params) {
        return desk.ask(params.getTextDocument(), null, (about, file) -> about.spec().part(Renames.class).target(about.view(), about.offset(params.getPosition()))
                .map(use -> Either3.<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>forFirst(about.positions().range(use.offset(), use.length()))).orElse(null));
    }

    CompletableFuture<WorkspaceEdit> rename(RenameParams params) {
        return desk.ask(params.getTextDocument(), null, (about, file) -> {
            int offset = about.offset(params.getPosition());
            String old = about.spec().part(Names.class).at(about.view(), offset).map(Named::getName).orElse("");
            ProjectTexts texts = about.spec().projectTexts();
            // All texts are read once more, side by side, so that a name is the same one in each.
            List<XtextResource> models = texts.models(text -> text.contains(old));
            SpecView view = texts.model(file).map(model -> new SpecView(model, Map.of(), java.util.Set.of(), List::of)).orElseThrow();
            return switch (about.spec().part(Renames.class).rename(view, offset, models, params.getNewName())) {
                case Renames.Result.Refused(String message) -> throw new ResponseErrorException(new ResponseError(ResponseErrorCode.RequestFailed, message, null));
                case Renames.Result.Changes(var edits) -> {
                    Map<String, List<TextEdit>> changes = new LinkedHashMap<>();
                    edits.forEach((text, changed) -> {
                        Path place = place(text);
                        if (!isInProject(place, texts)) {
                            throw new ResponseErrorException(new ResponseError(ResponseErrorCode.RequestFailed,
                                    "`" + old + "` is declared in " + place.getFileName() + ", outside this project", null));
                        }
                        changes.put(desk.publisher().uri(place), new Positions(text(text)).edits(changed));
                    });
                    yield new WorkspaceEdit(changes);
                }
            };
        });
    }

    private static boolean isInProject(Path file, ProjectTexts texts) {
        return file.startsWith(texts.project().root());
    }

    private static List<XtextResource> models(Desk.About about, String name) {
        return about.spec().projectTexts().models(text -> text.contains(name));
    }

    private Location location(Names.Use use) {
        return new Location(desk.publisher().uri(place(use.resource())), new Positions(text(use.resource())).range(use.offset(), use.length()));
    }

    private static String text(XtextResource resource) {
        return resource.getParseResult().getRootNode().getText();
    }

    private static Path place(XtextResource resource) {
        return Path.of(resource.getURI().toFileString());
    }
}
