package mouldwright.language;

import org.eclipse.emf.ecore.EClass;

/** The words a message uses for the parts of a spec. */
public final class Trade {

	private Trade() {
	}

	/** What people call a kind of declaration: {@code Coating} is a coating, {@code Let} a named amount. */
	public static String kind(EClass type) {
		return switch (type.getName()) {
			case "Let" -> "named amount";
			case "Rates" -> "set of rates";
			default -> type.getName().toLowerCase(java.util.Locale.ROOT);
		};
	}
}
