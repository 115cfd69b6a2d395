package mouldwright.language.validation;

import java.util.List;
import mouldwright.model.PlugPackage;
import mouldwright.plan.read.ReadProblem;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.xtext.validation.AbstractDeclarativeValidator;
import org.eclipse.xtext.validation.EValidatorRegistrar;

/** The checks of one concern; part of the {@link SpecValidator}, not registered by itself. */
abstract class Concern extends AbstractDeclarativeValidator {

	@Override
	protected List<EPackage> getEPackages() {
		return List.of(PlugPackage.eINSTANCE);
	}

	@Override
	public void register(EValidatorRegistrar registrar) {
		// the composed validator is registered
	}

	void fault(String message, EObject where, EStructuralFeature feature, String code, String... fix) {
		error(message, where, feature, code, fix);
	}

	void problem(ReadProblem problem) {
		String[] fix = problem.fix().isEmpty() ? new String[0] : new String[] { problem.fix() };
		if (problem.blocking())
			error(problem.message(), problem.object(), problem.feature().orElse(null), problem.kind().code(), fix);
		else
			warning(problem.message(), problem.object(), problem.feature().orElse(null), problem.kind().code(), fix);
	}
}
