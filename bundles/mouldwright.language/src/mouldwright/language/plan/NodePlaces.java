package mouldwright.language.plan;

import java.nio.file.Path;
import java.util.List;
import mouldwright.plan.read.TextPlaces;
import mouldwright.plan.spec.Origin;
import mouldwright.project.Project;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.util.LineAndColumn;

/** Where the parts of a model stand in the texts they were read from. Files are named from the project's root. */
public final class NodePlaces implements TextPlaces {

	private final java.util.Map<URI, String> names = new java.util.HashMap<>();
	private final java.util.Map<INode, String[]> lines = new java.util.IdentityHashMap<>();

	@Override
	public Origin.Text of(EObject object, EStructuralFeature feature) {
		INode node = node(object, feature);
		if (node == null)
			return TextPlaces.NOWHERE.of(object, feature);
		LineAndColumn place = NodeModelUtils.getLineAndColumn(node, node.getOffset());
		String[] text = lines.computeIfAbsent(node.getRootNode(), root -> root.getText().split("\n", -1));
		String line = place.getLine() <= text.length ? text[place.getLine() - 1].stripTrailing() : "";
		return new Origin.Text(names.computeIfAbsent(object.eResource().getURI(), uri -> name(object.eResource())), place.getLine(), place.getColumn(), line);
	}

	/** The words of a part, or of one of its properties; those of the part around it where it was worked out and not written. */
	public static INode node(EObject object, EStructuralFeature feature) {
		if (feature != null) {
			List<INode> nodes = NodeModelUtils.findNodesForFeature(object, feature);
			if (!nodes.isEmpty())
				return nodes.get(0);
		}
		for (EObject part = object; part != null; part = part.eContainer()) {
			INode node = NodeModelUtils.findActualNodeFor(part);
			if (node != null)
				return node;
		}
		return null;
	}

	private static String name(Resource resource) {
		if (resource == null || !resource.getURI().isFile())
			return "";
		Path file = Path.of(resource.getURI().toFileString()).toAbsolutePath().normalize();
		Path root = Project.of(file).root().toAbsolutePath().normalize();
		return (file.startsWith(root) ? root.relativize(file) : file.getFileName()).toString().replace('\\', '/');
	}
}
