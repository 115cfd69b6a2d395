package mouldwright.language.remedy;

import com.google.inject.Inject;
import com.google.inject.Provider;
import java.util.Optional;
import mouldwright.language.formatting.ItemStarts;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.formatting2.regionaccess.ISemanticRegion;
import org.eclipse.xtext.formatting2.regionaccess.ITextRegionAccess;
import org.eclipse.xtext.formatting2.regionaccess.TextRegionAccessBuilder;
import org.eclipse.xtext.nodemodel.INode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.ITextRegion;
import org.eclipse.xtext.util.TextRegion;

/** Finds where a block states a property: from its first word to where the next one begins. */
final class Properties {

	@Inject
	private ItemStarts starts;
	@Inject
	private Provider<TextRegionAccessBuilder> builder;

	Optional<ITextRegion> find(XtextResource resource, INode block, String property) {
		EObject owner = NodeModelUtils.findActualSemanticObjectFor(block);
		ITextRegionAccess access = builder.get().forNodeModel(resource).create();
		for (ISemanticRegion word : access.regionForEObject(owner).getSemanticRegions())
			if (word.getText().equals(property) && starts.contains(word))
				return Optional.of(new TextRegion(word.getOffset(), last(word).getEndOffset() - word.getOffset()));
		return Optional.empty();
	}

	private ISemanticRegion last(ISemanticRegion first) {
		ISemanticRegion word = first;
		int depth = 0;
		while (word.getNextSemanticRegion() != null) {
			ISemanticRegion next = word.getNextSemanticRegion();
			depth += next.getText().equals("{") ? 1 : next.getText().equals("}") ? -1 : 0;
			if (depth < 0 || depth == 0 && starts.contains(next))
				return word;
			word = next;
		}
		return word;
	}
}
