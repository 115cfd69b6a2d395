package mouldwright.language.validation;

import org.eclipse.xtext.validation.ComposedChecks;

/** All checks of a text that need no plan: amounts, names, properties, points, libraries. One class a concern. */
@ComposedChecks(validators = { AmountChecks.class, PropertyChecks.class, NameChecks.class, LibraryChecks.class, PointChecks.class, WordChecks.class, UseChecks.class, SenseChecks.class })
public class SpecValidator extends PlugValidator {
}
