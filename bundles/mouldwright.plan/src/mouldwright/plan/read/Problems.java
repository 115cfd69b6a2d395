package mouldwright.plan.read;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The problems of a reading while it goes on; the same one met twice is one. */
final class Problems {

    private final Set<ReadProblem> all = new LinkedHashSet<>();

    void add(ReadProblem.Kind kind, EObject object, EStructuralFeature feature, String message) {
        add(kind, object, feature, message, "");
    }

    void add(ReadProblem.Kind kind, EObject object, EStructuralFeature feature, String message, String fix) {
        all.add(new ReadProblem(kind, object, Optional.ofNullable(feature), message, fix));
    }

    List<ReadProblem> all() {
        return new ArrayList<>(all);
    }

    boolean blocking() {
        return all.stream().anyMatch(ReadProblem::blocking);
    }
}
