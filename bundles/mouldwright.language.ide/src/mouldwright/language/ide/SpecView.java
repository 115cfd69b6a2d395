package mouldwright.language.ide;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import mouldwright.model.Document;
import mouldwright.plan.BuildPlan;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;

/**
 * A spec as an editor has it.
 *
 * @param resource  its model
 * @param plans     the last plans that could be made, by plug
 * @param codes     of the findings in it
 * @param libraries names of the libraries it could use, asked for when wanted
 */
public record SpecView(XtextResource resource, Map<String, BuildPlan> plans, Set<String> codes, Supplier<List<String>> libraries) {

    /** Its words. */
    public ICompositeNode root() {
        return resource.getParseResult().getRootNode();
    }

    /** Its text. */
    public String text() {
        return root().getText();
    }

    /** Its model; empty where nothing could be read. */
    public Optional<Document> document() {
        return resource.getContents().isEmpty() || !(resource.getContents().getFirst() instanceof Document document) ? Optional.empty() : Optional.of(document);
    }

    /** The word at a place, or the one that ends there; none in space. */
    Optional<ILeafNode> word(int offset) {
        return visible(offset).or(() -> offset > 0 ? visible(offset - 1) : Optional.empty());
    }

    private Optional<ILeafNode> visible(int offset) {
        return Optional.ofNullable(NodeModelUtils.findLeafNodeAtOffset(root(), offset)).filter(leaf -> !leaf.isHidden());
    }

    /** The part of the model a word belongs to. */
    static Optional<EObject> owner(ILeafNode leaf) {
        return Optional.ofNullable(NodeModelUtils.findActualSemanticObjectFor(leaf));
    }
}
