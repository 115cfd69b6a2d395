package mouldwright.plan.read;

import mouldwright.plan.spec.Origin;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Knows where the parts of a model stand in the text. The language gives one; a model without text can do with
 *  {@link #NOWHERE}. */
@FunctionalInterface
public interface TextPlaces {

    /** Where a part of the model stands.
     *  @param object  the part
     *  @param feature one of its features; null for the whole of it */
    Origin.Text of(EObject object, EStructuralFeature feature);

    /** For models without text. */
    TextPlaces NOWHERE = (object, feature) -> new Origin.Text("", 1, 1, object.eClass().getName());
}
