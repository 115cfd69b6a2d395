package mouldwright.language.ide;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mouldwright.language.linking.Libraries;
import mouldwright.model.Document;
import mouldwright.model.Use;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;

/** Puts the libraries a file uses in order: sorted by name, each once, those of which nothing is used left out. */
public final class Uses {

    @Inject
    private Libraries libraries;

    /** The changes; none where they are in order, where a comment stands among them that would lose its place, or where the text has mistakes. */
    public List<Edit> organised(SpecView view) {
        Optional<Document> document = view.document();
        if (document.isEmpty() || document.get().getUses().isEmpty() || view.resource().getParseResult().hasSyntaxErrors()) {
            return List.of();
        }
        List<ICompositeNode> nodes = document.get().getUses().stream().map(NodeModelUtils::findActualNodeFor).toList();
        int from = nodes.getFirst().getOffset();
        int to = nodes.getLast().getEndOffset();
        String text = view.text();
        List<String> words = nodes.stream().map(node -> node.getText().strip()).toList();
        String between = text.substring(from, to);
        for (String word : words) {
            between = between.replaceFirst(java.util.regex.Pattern.quote(word), "");
        }
        if (!between.isBlank()) {
            return List.of();
        }
        List<String> kept = kept(view, document.get());
        String lineEnd = text.contains("\r\n") ? "\r\n" : "\n";
        String organised = String.join(lineEnd, kept);
        return organised.equals(text.substring(from, to)) ? List.of() : List.of(new Edit(from, to - from, organised));
    }

    private List<String> kept(SpecView view, Document document) {
        Set<EObject> used = used(view);
        Set<String> seen = new HashSet<>();
        List<Use> kept = new ArrayList<>();
        for (Use use : document.getUses()) {
            boolean isUsed = use.getLibrary() == null || !(libraries.find(view.resource(), use.getLibrary()) instanceof Libraries.Found.Loaded(Document library)) || used.contains(library);
            if (isUsed && seen.add(use.getLibrary() + " as " + use.getAlias())) {
                kept.add(use);
            }
        }
        kept.sort(Comparator.comparing(use -> String.valueOf(use.getLibrary())));
        return kept.stream().map(use -> NodeModelUtils.findActualNodeFor(use).getText().strip()).toList();
    }

    /** Libraries of which something is named here. */
    private static Set<EObject> used(SpecView view) {
        Set<EObject> used = new HashSet<>();
        TreeIterator<EObject> parts = EcoreUtil.getAllContents(view.resource(), false);
        while (parts.hasNext()) {
            for (EObject target : parts.next().eCrossReferences()) {
                used.add(EcoreUtil.getRootContainer(target));
            }
        }
        return used;
    }
}
