package mouldwright.language;

import com.google.inject.Singleton;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import mouldwright.model.PlugPackage;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EModelElement;
import org.eclipse.emf.ecore.ENamedElement;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.eclipse.xtext.documentation.impl.MultiLineCommentDocumentationProvider;

/**
 * What a hover says: the comment before a declaration, then what its kind is. The model's own documentation is read from the model file when first asked
 * for, so that starting does not pay for it.
 */
@Singleton
public class PlugDocumentation extends MultiLineCommentDocumentationProvider {

	private Map<String, String> model;

	@Override
	public String getDocumentation(EObject object) {
		if (object instanceof ENamedElement element && element.eResource() == PlugPackage.eINSTANCE.eResource())
			return ofModel(key(element));
		String own = super.getDocumentation(object);
		String kind = ofModel(object.eClass().getName());
		return own == null || own.isBlank() ? kind : own.strip() + "\n\n" + kind;
	}

	private static String key(ENamedElement element) {
		return element instanceof EStructuralFeature feature ? feature.getEContainingClass().getName() + "." + feature.getName() : element.getName();
	}

	private synchronized String ofModel(String key) {
		if (model == null)
			model = read();
		return model.getOrDefault(key, "");
	}

	private static Map<String, String> read() {
		Resource resource = new XMIResourceImpl(URI.createURI("Plug.ecore"));
		try (InputStream in = PlugPackage.class.getResourceAsStream("/model/Plug.ecore")) {
			resource.load(in, Map.of());
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
		Map<String, String> result = new HashMap<>();
		resource.getAllContents().forEachRemaining(part -> {
			if (part instanceof EClassifier || part instanceof EStructuralFeature)
				result.put(key((ENamedElement) part), String.valueOf(EcoreUtil.getDocumentation((EModelElement) part)));
		});
		return result;
	}
}
