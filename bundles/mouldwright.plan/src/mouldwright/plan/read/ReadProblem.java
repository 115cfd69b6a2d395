package mouldwright.plan.read;

import java.util.Objects;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Something in the text that cannot be understood as a figure or a part of a plug.
 *  @param kind    what is wrong
 *  @param object  the part of the model it stands at
 *  @param feature the feature of it, where one is to blame
 *  @param message in words, with the figure and what was expected
 *  @param fix     what would mend it, in a few words; empty if nothing can be said for sure */
public record ReadProblem(Kind kind, EObject object, Optional<EStructuralFeature> feature, String message, String fix) {

    /** What can be wrong. */
    public enum Kind {
        /** A figure of the wrong dimension. */ DIMENSION("MW903"),
        /** A number without a unit where none is implied. */ UNIT_MISSING("MW905"),
        /** A unit nobody knows. */ UNIT_UNKNOWN("MW904"),
        /** Something that is no number. */ NUMBER("MW906"),
        /** A formula without an answer. */ FORMULA("MW907"),
        /** Low, likely and high out of order. */ RANGE("MW906"),
        /** Something that must be stated and is not. */ MISSING("MW919"),
        /** Two statements that cannot both hold. */ CONTRADICTION("MW920"),
        /** A name that leads nowhere; the linker reports it too. */ UNRESOLVED("MW902"),
        /** Something that in the end rests on itself. */ CIRCLE("MW913"),
        /** No such day. */ DATE("MW916"),
        /** A decimal comma; read, but wants a point. */ DECIMAL_COMMA("MW908"),
        /** Understood by the language, not yet by the engine. */ UNSUPPORTED("MW921"),
        /** A table that cannot be read, or has not what is asked for. */ TABLE("MW150"),
        /** A drawing that cannot be read, or has not what is asked for. */ DRAWING("MW151"),
        /** A figure outside all reason. */ BOUNDS("MW906"),
        /** A figure that no workshop meets, though it could be. */ MAGNITUDE("MW930");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        /** Code of the finding. */
        public String code() {
            return code;
        }
    }

    /** Refuses missing parts. */
    public ReadProblem {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(object, "object");
        Objects.requireNonNull(feature, "feature");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(fix, "fix");
    }

    /** @return whether no spec can be made while this stands */
    public boolean blocking() {
        return kind != Kind.DECIMAL_COMMA && kind != Kind.MAGNITUDE;
    }
}
