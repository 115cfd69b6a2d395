package mouldwright.language.validation;

import mouldwright.plan.read.ReadProblem;
import mouldwright.plan.read.StatedAmounts;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.validation.Check;

/** Every amount measures what its property asks for, lies within reason, and is written with a decimal point. */
public class AmountChecks extends Concern {

	@Check
	public void measuresWhatIsExpected(EObject owner) {
		for (ReadProblem problem : StatedAmounts.problems(owner))
			if (problem.kind() != ReadProblem.Kind.UNRESOLVED)
				problem(problem);
	}
}
