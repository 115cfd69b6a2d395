package mouldwright.plan.read;

import java.util.Optional;
import mouldwright.model.Amount;
import mouldwright.model.Measure;
import mouldwright.units.Dimension;
import mouldwright.units.Units;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The unit somebody most likely meant, by what a property measures and by what the trade writes there. */
final class LikelyUnit {

    private LikelyUnit() { }

    /** The unit of a property; empty for a plain number. */
    static Optional<String> of(Amount amount, Dimension dimension) {
        if (dimension.equals(Dimension.TIME))
            return Optional.of(time(property(amount)));
        if (dimension.equals(Dimension.AREAL_MASS))
            return Optional.of("g/m2");
        if (dimension.equals(Dimension.LENGTH))
            return Optional.of(film(property(amount)) ? "um" : "mm");
        return Units.unitsOf(dimension).stream().findFirst();
    }

    /** What to write: its number with that unit, where the amount is a plain number. */
    static String fix(Amount amount, Dimension dimension) {
        if (!(amount instanceof Measure measure) || measure.getNumber() == null)
            return "";
        return of(amount, dimension).map(unit -> "write `" + (measure.isNegative() ? "-" : "") + measure.getNumber() + " " + unit + "`").orElse("");
    }

    /** What to write where a share was stated without its per cent. */
    static String percent(Amount amount) {
        return amount instanceof Measure measure && measure.getNumber() != null ? "write `" + measure.getNumber() + " %`" : "";
    }

    private static String property(Amount amount) {
        EStructuralFeature feature = amount.eContainingFeature();
        if (feature != null && (feature.getName().equals("likely") || feature.getName().equals("low") || feature.getName().equals("high")) && amount.eContainer() != null
                && amount.eContainer().eContainingFeature() != null)
            return amount.eContainer().eContainingFeature().getName();
        return feature == null ? "" : feature.getName();
    }

    private static boolean film(String property) {
        return property.equals("wet") || property.equals("dry");
    }

    private static String time(String property) {
        return switch (property) {
            case "cream", "rise" -> "s";
            case "gel", "firm", "plate", "pot" -> "min";
            case "hold" -> "d";
            default -> "h";
        };
    }
}
