package mouldwright.services;

import com.google.inject.Injector;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mouldwright.language.Trade;
import mouldwright.language.ide.Names;
import mouldwright.model.Declaration;
import mouldwright.model.Document;
import mouldwright.project.ContentSource;
import mouldwright.project.Project;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.LineAndColumn;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** Looks through all specs of a project, and of its library folders, for what a file declares. */
final class UseSearch {

    private final ProjectTexts texts;
    private final Names names;

    UseSearch(Injector injector, Project project, ContentSource source) {
        this.texts = new ProjectTexts(injector, project, source, Set.of());
        this.names = injector.getInstance(Names.class);
    }

    /** The declarations of a file with their uses; empty where it is neither in the project nor in a library folder of it. */
    Optional<List<WhereUsed.Declared>> of(Path file) {
        return texts.model(file).or(() -> texts.models(text -> text.contains("library")).stream().filter(model -> model.getURI().toFileString().equals(file.toString())).findFirst())
                .map(this::declared);
    }

    private List<WhereUsed.Declared> declared(XtextResource model) {
        if (model.getContents().isEmpty()) {
            return List.of();
        }
        return ((Document) model.getContents().getFirst()).getDeclarations().stream().filter(declaration -> declaration.getName() != null).map(this::declared).toList();
    }

    private WhereUsed.Declared declared(Declaration declaration) {
        List<WhereUsed.Place> places = new ArrayList<>();
        for (XtextResource model : texts.models(text -> text.contains(declaration.getName()))) {
            names.uses(declaration, model).forEach(use -> places.add(place(use)));
        }
        int line = names.given(declaration).map(use -> place(use).line()).orElse(1);
        return new WhereUsed.Declared(Trade.kind(declaration.eClass()), declaration.getName(), line, places);
    }

    private static WhereUsed.Place place(Names.Use use) {
        var root = use.resource().getParseResult().getRootNode();
        LineAndColumn at = NodeModelUtils.getLineAndColumn(root, use.offset());
        String text = root.getText();
        int from = text.lastIndexOf('\n', use.offset() - 1) + 1;
        int to = text.indexOf('\n', use.offset());
        return new WhereUsed.Place(Path.of(use.resource().getURI().toFileString()), at.getLine(), at.getColumn(), text.substring(from, to < 0 ? text.length() : to).strip());
    }
}
