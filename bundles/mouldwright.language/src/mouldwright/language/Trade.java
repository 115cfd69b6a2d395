package mouldwright.language;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The words a message uses for the parts of a spec. */
public final class Trade {

	private Trade() {
	}

	/** What a property is called: {@code runOut} is run out. */
	public static String property(EStructuralFeature feature) {
		return apart(feature.getName());
	}

	private static String apart(String name) {
		StringBuilder words = new StringBuilder();
		for (char c : name.toCharArray())
			words.append(Character.isUpperCase(c) ? " " + Character.toLowerCase(c) : String.valueOf(c));
		return words.toString().strip();
	}

	/** What people call a kind of declaration: {@code Coating} is a coating, {@code Let} a named amount. */
	public static String kind(EClass type) {
		return switch (type.getName()) {
			case "Let" -> "named amount";
			case "Rates" -> "set of rates";
			default -> apart(type.getName());
		};
	}
}
