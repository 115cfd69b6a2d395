package mouldwright.language.ide;

import com.google.inject.Inject;
import com.google.inject.Singleton;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.model.Named;
import mouldwright.model.PlugPackage.Literals;
import mouldwright.model.Station;
import mouldwright.model.StationRow;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.nodemodel.ILeafNode;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.EObjectAtOffsetHelper;
import org.eclipse.xtext.resource.XtextResource;

/** Where names are given and where they are used. */
@Singleton
public final class Names {

    @Inject
    private EObjectAtOffsetHelper helper;

    /**
     * A place of a name.
     *
     * @param resource the text it stands in
     * @param offset   where the name begins, without an alias before it
     * @param length   of the name
     */
    public record Use(XtextResource resource, int offset, int length) { }

    /** What the name at a place means, whether it is given or used there. */
    public Optional<Named> at(SpecView view, int offset) {
        Optional<ILeafNode> word = view.word(offset);
        if (word.isEmpty()) {
            return Optional.empty();
        }
        EObject crossed = helper.resolveCrossReferencedElementAt(view.resource(), word.get().getOffset());
        if (crossed instanceof Named named && !named.eIsProxy()) {
            return Optional.of(named);
        }
        return SpecView.owner(word.get()).filter(Named.class::isInstance).map(Named.class::cast).filter(named -> isIn(name(named), word.get()));
    }

    private static boolean isIn(Optional<INode> name, INode word) {
        return name.isPresent() && name.get().getOffset() <= word.getOffset() && word.getEndOffset() <= name.get().getEndOffset();
    }

    /** Where a name is given; empty for a station of a row, which is named by the row. */
    public Optional<Use> given(Named named) {
        return name(named).map(node -> new Use((XtextResource) named.eResource(), node.getOffset(), node.getLength()));
    }

    /** Where something is declared: its name, or the row that makes it. */
    public Optional<Use> declared(Named named) {
        if (named instanceof Station && named.eContainer() instanceof StationRow row) {
            return NodeModelUtils.findNodesForFeature(row, Literals.STATION_ROW__FIRST).stream().findFirst()
                    .map(node -> new Use((XtextResource) row.eResource(), node.getOffset(), node.getLength()));
        }
        return given(named);
    }

    private static Optional<INode> name(Named named) {
        return NodeModelUtils.findNodesForFeature(named, Literals.NAMED__NAME).stream().findFirst();
    }

    /** Where a name is used in a text, in its order. A name after an alias and a dot counts from behind the dot. */
    public List<Use> uses(Named named, XtextResource in) {
        List<Use> uses = new ArrayList<>();
        String wanted = EcoreUtil.getURI(named).toString();
        TreeIterator<EObject> parts = EcoreUtil.getAllContents(in, false);
        while (parts.hasNext()) {
            EObject part = parts.next();
            for (EReference reference : part.eClass().getEAllReferences()) {
                if (!reference.isContainment() && !reference.isContainer() && !reference.isDerived() && part.eIsSet(reference)) {
                    collect(part, reference, wanted, in, uses);
                }
            }
        }
        uses.sort(java.util.Comparator.comparingInt(Use::offset));
        return uses;
    }

    private static void collect(EObject part, EReference reference, String wanted, XtextResource in, List<Use> uses) {
        List<INode> nodes = NodeModelUtils.findNodesForFeature(part, (EStructuralFeature) reference);
        List<?> targets = reference.isMany() ? (List<?>) part.eGet(reference) : List.of(part.eGet(reference));
        for (int i = 0; i < Math.min(nodes.size(), targets.size()); i++) {
            if (targets.get(i) instanceof EObject target && EcoreUtil.getURI(target).toString().equals(wanted)) {
                INode node = nodes.get(i);
                String text = NodeModelUtils.getTokenText(node);
                int name = text.length() - (text.lastIndexOf('.') + 1);
                uses.add(new Use(in, node.getEndOffset() - name, name));
            }
        }
    }
}
