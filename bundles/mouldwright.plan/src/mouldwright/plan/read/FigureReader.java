package mouldwright.plan.read;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import mouldwright.model.Amount;
import mouldwright.model.Declaration;
import mouldwright.model.Document;
import mouldwright.model.Range;
import mouldwright.plan.spec.Defaults;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Origin;
import mouldwright.plan.spec.Tacit;
import mouldwright.units.Dimension;
import mouldwright.units.Unit;
import mouldwright.units.NotANumber;
import mouldwright.units.Units;
import mouldwright.units.WrittenNumber;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Reads stated figures with their origin, and says what is wrong with those that cannot be. */
final class FigureReader {

    private final Formulas formulas;
    private final TextPlaces places;
    private final Problems problems;
    private final Set<Tacit> tacit = new LinkedHashSet<>();

    FigureReader(Formulas formulas, TextPlaces places, Problems problems) {
        this.formulas = formulas;
        this.places = places;
        this.problems = problems;
    }

    /** Notes that the text is silent on something it is read with. */
    void silent(Tacit taken) {
        tacit.add(taken);
    }

    /** A figure the text is silent on, noted; its value in SI. */
    double silent(Given taken) {
        silent(new Tacit.Figure(taken));
        return taken.likely();
    }

    /** @return what the text was silent on so far */
    List<Tacit> tacit() {
        List<Tacit> all = new ArrayList<>();
        if (formulas.unitsTaken())
            all.add(Defaults.units());
        all.addAll(tacit);
        return all;
    }

    /** Where a part of the model stands: in the plug's text, or in a library's entry. */
    Origin origin(EObject object, EStructuralFeature feature) {
        Origin.Text text = places.of(object, feature);
        EObject top = object;
        while (top.eContainer() != null && !(top.eContainer() instanceof Document))
            top = top.eContainer();
        if (top instanceof Declaration entry && top.eContainer() instanceof Document document
                && !document.getHeaders().isEmpty() && document.getHeaders().getFirst().getName() != null
                && entry.getName() != null)
            return new Origin.Library(document.getHeaders().getFirst().getName(), entry.getName(), text);
        return text;
    }

    /** Where a whole part of the model stands. */
    Origin origin(EObject object) {
        return origin(object, null);
    }

    /** A figure without a range; empty where none is stated, or, reported, where it cannot be understood. */
    Optional<Given> given(String name, Dimension dimension, Amount amount) {
        return si(dimension, amount).map(si -> Given.of(name, dimension, si, origin(amount)));
    }

    /** A figure that may have a range. */
    Optional<Given> given(String name, Dimension dimension, Range range) {
        if (range == null)
            return Optional.empty();
        Optional<Double> likely = si(dimension, range.getLikely());
        Optional<Double> low = range.getLow() == null ? likely : si(dimension, range.getLow());
        Optional<Double> high = range.getHigh() == null ? likely : si(dimension, range.getHigh());
        if (likely.isEmpty() || low.isEmpty() || high.isEmpty())
            return Optional.empty();
        if (low.get() > likely.get() || likely.get() > high.get()) {
            problems.add(ReadProblem.Kind.RANGE, range, null,
                    "the likely " + name + " must lie between its low and its high");
            return Optional.empty();
        }
        return Optional.of(new Given(name, dimension, low.get(), likely.get(), high.get(), origin(range)));
    }

    /** An amount in SI; empty where none is stated, or, reported, where it cannot be understood. */
    Optional<Double> si(Dimension dimension, Amount amount) {
        if (amount == null)
            return Optional.empty();
        return formulas.work(amount).flatMap(worked -> as(dimension, amount, worked));
    }

    /** What a formula came to, as a figure of a dimension in SI; empty, and reported, where it is none. */
    Optional<Double> as(Dimension dimension, Amount amount, Worked worked) {
        return switch (worked) {
            case Worked.Bare(double value) -> bare(dimension, amount, value);
            case Worked.Of(var of) -> {
                if (of.dimension().equals(dimension))
                    yield Optional.of(of.si());
                problems.add(ReadProblem.Kind.DIMENSION, amount, null, dimension.expectedBut(Written.of(amount), of.dimension()), LikelyUnit.fix(amount, dimension));
                yield Optional.empty();
            }
        };
    }

    /** A bare number is a plain number, or a length in the plug's units; anything else must say its unit. */
    private Optional<Double> bare(Dimension dimension, Amount amount, double value) {
        if (dimension.equals(Dimension.RATIO))
            return Optional.of(value);
        if (dimension.equals(Dimension.LENGTH))
            try {
                return Optional.of(formulas.lengthUnit(amount).toSi(value));
            } catch (NotANumber refusal) {
                problems.add(ReadProblem.Kind.FORMULA, amount, null, refusal.getMessage());
                return Optional.empty();
            }
        String example = LikelyUnit.of(amount, dimension).map(unit -> Written.of(amount) + " " + unit).orElse("");
        problems.add(ReadProblem.Kind.UNIT_MISSING, amount, null,
                dimension.word() + " expected, " + Written.of(amount) + " has no unit" + (example.isEmpty() ? "" : "; " + example + "?"), LikelyUnit.fix(amount, dimension));
        return Optional.empty();
    }

    /** The unit of a bare length at a part of the model. */
    Unit lengthUnit(EObject part) {
        return formulas.lengthUnit(part);
    }

    /** A length in metres, required; 0 where it cannot be understood, which is reported. */
    double length(Amount amount, EObject owner, EStructuralFeature feature) {
        return required(Dimension.LENGTH, amount, owner, feature);
    }

    /** A figure in SI, required; 0 where it cannot be understood, which is reported. */
    double required(Dimension dimension, Amount amount, EObject owner, EStructuralFeature feature) {
        if (amount == null)
            missing(owner, feature);
        return si(dimension, amount).orElse(0.0);
    }

    /** Reports that something must be stated. */
    void missing(EObject owner, EStructuralFeature feature) {
        problems.add(ReadProblem.Kind.MISSING, owner, feature, feature.getName() + " is missing");
    }

    /** A whole number of something, 1 where none is written. */
    int count(String written, EObject owner, EStructuralFeature feature) {
        return whole(written, owner, feature).orElse(1);
    }

    /** A whole number, 1 at least; empty where none is written, or, reported, where it is none. */
    OptionalInt whole(String written, EObject owner, EStructuralFeature feature) {
        if (written == null)
            return OptionalInt.empty();
        if (WrittenNumber.parse(written) instanceof WrittenNumber.Value value && value.value() == Math.rint(value.value())
                && value.value() >= 1 && value.value() <= MOST)
            return OptionalInt.of((int) value.value());
        problems.add(ReadProblem.Kind.NUMBER, owner, feature, "a whole number of 1 or more expected, not " + written);
        return OptionalInt.empty();
    }

    /** More plies, coats or persons than any plug sees. */
    private static final int MOST = 100_000;

    /** A plain number, such as a price; empty where none is written, or, reported, where it is none. */
    Optional<Double> number(String written, EObject owner, EStructuralFeature feature) {
        if (written == null)
            return Optional.empty();
        return switch (WrittenNumber.parse(written)) {
            case WrittenNumber.Value value -> Optional.of(value.value());
            case WrittenNumber.Rejected(String message) -> {
                problems.add(ReadProblem.Kind.NUMBER, owner, feature, message);
                yield Optional.empty();
            }
        };
    }

    /** A day; empty where none is written, or, reported, where there is no such day. */
    Optional<LocalDate> date(String written, EObject owner, EStructuralFeature feature) {
        if (written == null)
            return Optional.empty();
        try {
            return Optional.of(LocalDate.parse(written));
        } catch (DateTimeParseException e) {
            problems.add(ReadProblem.Kind.DATE, owner, feature, "there is no day " + written);
            return Optional.empty();
        }
    }

    /** Reports, with what would mend it. */
    void report(ReadProblem.Kind kind, EObject owner, EStructuralFeature feature, String message, String fix) {
        problems.add(kind, owner, feature, message, fix);
    }

    /** Reports. */
    void report(ReadProblem.Kind kind, EObject owner, EStructuralFeature feature, String message) {
        problems.add(kind, owner, feature, message);
    }

    /** Whether a reference leads somewhere; where it leads nowhere that is reported.
     *  @param target null where none is written */
    boolean resolved(EObject target, EObject owner, EStructuralFeature feature) {
        if (target != null && !target.eIsProxy())
            return true;
        problems.add(ReadProblem.Kind.UNRESOLVED, owner, feature, feature.getName() + " names nothing that is known");
        return false;
    }
}
