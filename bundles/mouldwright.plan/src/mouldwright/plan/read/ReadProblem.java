package mouldwright.plan.read;

import java.util.Objects;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Something in the text that cannot be understood as a figure or a part of a plug.
 *  @param kind    what is wrong
 *  @param object  the part of the model it stands at
 *  @param feature the feature of it, where one is to blame
 *  @param message in words, with the figure and what was expected */
public record ReadProblem(Kind kind, EObject object, Optional<EStructuralFeature> feature, String message) {

    /** What can be wrong. */
    public enum Kind {
        /** A figure of the wrong dimension. */ DIMENSION,
        /** A number without a unit where none is implied. */ UNIT_MISSING,
        /** A unit nobody knows. */ UNIT_UNKNOWN,
        /** Something that is no number. */ NUMBER,
        /** A formula without an answer. */ FORMULA,
        /** Low, likely and high out of order. */ RANGE,
        /** Something that must be stated and is not. */ MISSING,
        /** Two statements that cannot both hold. */ CONTRADICTION,
        /** A name that leads nowhere; the linker reports it too. */ UNRESOLVED,
        /** Something that in the end rests on itself. */ CIRCLE,
        /** No such day. */ DATE,
        /** A decimal comma; read, but wants a point. */ DECIMAL_COMMA,
        /** Understood by the language, not yet by the engine. */ UNSUPPORTED
    }

    /** Refuses missing parts. */
    public ReadProblem {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(object, "object");
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(message, "message");
    }

    /** @return whether no spec can be made while this stands */
    public boolean blocking() {
        return kind != Kind.DECIMAL_COMMA;
    }
}
