package mouldwright.plan.read;

import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Something in a spec's text that makes no sense, for a finding at its place.
 *  @param code     the finding's code, such as {@code MW903}
 *  @param message  what is wrong, with the figure and what was expected
 *  @param where    the part of the spec it is about
 *  @param feature  the property of that part it is about; empty for the whole part
 *  @param fix      what would mend it, in a few words */
public record Slip(String code, String message, EObject where, Optional<EStructuralFeature> feature, Optional<String> fix) {

    /** A slip about a whole part of the spec. */
    public static Slip at(EObject where, String code, String message) {
        return new Slip(code, message, where, Optional.empty(), Optional.empty());
    }

    /** A slip about one property. */
    public static Slip at(EObject where, EStructuralFeature feature, String code, String message) {
        return new Slip(code, message, where, Optional.of(feature), Optional.empty());
    }

    /** The same slip with what would mend it. */
    public Slip mendedBy(String what) {
        return new Slip(code, message, where, feature, Optional.of(what));
    }
}
