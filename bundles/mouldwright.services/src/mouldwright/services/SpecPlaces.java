package mouldwright.services;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.plan.read.TextPlaces;
import mouldwright.plan.spec.Origin;
import mouldwright.report.SourceLines;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.util.LineAndColumn;

/** Where the parts of a model stand in the texts they were read from. */
final class SpecPlaces implements TextPlaces {

    private final ProjectNames names;
    private final SourceLines lines;
    private final Map<String, Path> files = new HashMap<>();

    SpecPlaces(ProjectNames names, Map<Path, String> texts) {
        this.names = names;
        this.lines = new SourceLines(texts);
        texts.keySet().forEach(file -> files.put(names.of(file), file));
    }

    @Override
    public Origin.Text of(EObject object, EStructuralFeature feature) {
        Optional<INode> node = node(object, feature);
        if (node.isEmpty() || object.eResource() == null) {
            return TextPlaces.NOWHERE.of(object, feature);
        }
        Path file = file(object.eResource().getURI());
        LineAndColumn place = NodeModelUtils.getLineAndColumn(node.get(), node.get().getOffset());
        return new Origin.Text(names.of(file), place.getLine(), place.getColumn(), lines.line(file, place.getLine()));
    }

    /** The file an origin names; empty for a text without a file. */
    Optional<Path> file(Origin.Text place) {
        return Optional.ofNullable(files.get(place.file()));
    }

    /** Where a resource lies. */
    static Path file(URI uri) {
        return Path.of(uri.toFileString());
    }

    /** The text of a feature, of the object if the feature is not written, of what holds it if it is not written itself. */
    static Optional<INode> node(EObject object, EStructuralFeature feature) {
        if (feature != null) {
            List<INode> nodes = NodeModelUtils.findNodesForFeature(object, feature);
            if (!nodes.isEmpty()) {
                return Optional.of(nodes.getFirst());
            }
        }
        for (EObject part = object; part != null; part = part.eContainer()) {
            INode node = NodeModelUtils.findActualNodeFor(part);
            if (node != null) {
                return Optional.of(node);
            }
        }
        return Optional.empty();
    }
}
