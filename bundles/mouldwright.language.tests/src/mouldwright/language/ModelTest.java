package mouldwright.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import mouldwright.model.PlugPackage;
import mouldwright.plan.read.Expected;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.documentation.IEObjectDocumentationProvider;
import org.junit.jupiter.api.Test;

/** The model of a spec says what its parts are and what its amounts measure. */
class ModelTest {

	@Test
	void everyPartAndPropertyIsDocumented() {
		IEObjectDocumentationProvider documentation = Specs.INJECTOR.getInstance(IEObjectDocumentationProvider.class);
		for (EClassifier part : PlugPackage.eINSTANCE.getEClassifiers()) {
			assertThat(documentation.getDocumentation(part)).as(part.getName()).isNotBlank().endsWith(".");
			if (part instanceof EClass type)
				for (EStructuralFeature feature : type.getEStructuralFeatures())
					assertThat(documentation.getDocumentation(feature)).as(type.getName() + "." + feature.getName()).isNotBlank().endsWith(".");
		}
	}

	@Test
	void whatIsDeclaredIsDocumentedByItsOwnCommentAndByItsKind() {
		IEObjectDocumentationProvider documentation = Specs.INJECTOR.getInstance(IEObjectDocumentationProvider.class);
		var document = Specs.document(Specs.parse("/** Ours, from the blue drum. */\nresin Blue { }"));
		assertThat(documentation.getDocumentation(document.getDeclarations().get(0))).startsWith("Ours, from the blue drum.").contains("A laminating resin.");
	}

	@Test
	void everyAmountOfASpecSaysWhatItMeasures() {
		for (EClassifier part : PlugPackage.eINSTANCE.getEClassifiers())
			if (part instanceof EClass type && !PlugPackage.Literals.AMOUNT.isSuperTypeOf(type) && type != PlugPackage.Literals.RANGE)
				for (EReference feature : type.getEReferences())
					if (feature.getEReferenceType() == PlugPackage.Literals.AMOUNT || feature.getEReferenceType() == PlugPackage.Literals.RANGE)
						assertThat(Expected.of(feature)).as(type.getName() + "." + feature.getName()).isPresent();
	}

	@Test
	void theGeneratorModelListsEveryPartAndProperty() {
		String generator = Specs.read(Path.of("../mouldwright.model/model/Plug.genmodel"));
		for (EClassifier part : PlugPackage.eINSTANCE.getEClassifiers()) {
			assertThat(generator).contains("Plug.ecore#//" + part.getName() + "\"");
			if (part instanceof EClass type)
				for (EStructuralFeature feature : type.getEStructuralFeatures())
					assertThat(generator).contains("Plug.ecore#//" + type.getName() + "/" + feature.getName() + "\"");
		}
	}
}
