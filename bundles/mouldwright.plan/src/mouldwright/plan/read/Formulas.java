package mouldwright.plan.read;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mouldwright.model.Amount;
import mouldwright.model.Binary;
import mouldwright.model.Bracket;
import mouldwright.model.Call;
import mouldwright.model.Let;
import mouldwright.model.LetReference;
import mouldwright.model.Measure;
import mouldwright.model.Negative;
import mouldwright.model.PlugPackage;
import mouldwright.units.NotANumber;
import mouldwright.units.Refusal;
import mouldwright.units.Unit;
import mouldwright.units.Units;
import mouldwright.units.WrittenNumber;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Works out amounts and the small formulas in parentheses, with their dimensions. */
final class Formulas {

    private final Unit bareUnit;
    private final Problems problems;
    private final Set<Let> open = new HashSet<>();

    /** @param bareUnit unit of bare lengths */
    Formulas(Unit bareUnit, Problems problems) {
        this.bareUnit = bareUnit;
        this.problems = problems;
    }

    Unit bareUnit() {
        return bareUnit;
    }

    /** What an amount comes to; empty, and reported, where it comes to nothing. */
    Optional<Worked> work(Amount amount) {
        return switch (amount) {
            case Measure measure -> measure(measure);
            case Bracket bracket -> bracket(bracket);
            case Binary binary -> binary(binary);
            case Negative negative -> work(negative.getOf()).flatMap(of -> guarded(negative, () -> switch (of) {
                case Worked.Bare(double value) -> new Worked.Bare(-value);
                case Worked.Of(var value) -> new Worked.Of(value.negate());
            }));
            case Call call -> call(call);
            case LetReference reference -> let(reference);
            case null, default -> Optional.empty(); // the parser has said already that something is missing here
        };
    }

    private Optional<Worked> measure(Measure measure) {
        if (measure.getNumber() == null)
            return Optional.empty();
        EStructuralFeature at = PlugPackage.Literals.MEASURE__NUMBER;
        return switch (WrittenNumber.parse((measure.isNegative() ? "-" : "") + measure.getNumber())) {
            case WrittenNumber.Rejected(String message) -> nothing(ReadProblem.Kind.NUMBER, measure, at, message);
            case WrittenNumber.Value value -> {
                if (value.decimalComma())
                    problems.add(ReadProblem.Kind.DECIMAL_COMMA, measure, at, "a decimal comma; write " + value.withPoint());
                yield withUnit(measure, value.value(), measure.getUnit(), PlugPackage.Literals.MEASURE__UNIT);
            }
        };
    }

    private Optional<Worked> withUnit(EObject object, double value, String spelling, EStructuralFeature feature) {
        if (spelling == null)
            return Optional.of(new Worked.Bare(value));
        Optional<Unit> unit = Units.find(spelling);
        if (unit.isEmpty())
            return nothing(ReadProblem.Kind.UNIT_UNKNOWN, object, feature, "no unit is spelt " + spelling + nearest(spelling));
        return guarded(object, () -> new Worked.Of(mouldwright.units.Amount.of(value, unit.get())));
    }

    private static String nearest(String spelling) {
        List<String> near = Units.suggest(spelling);
        return near.isEmpty() ? "" : "; " + near.getFirst() + "?";
    }

    private Optional<Worked> bracket(Bracket bracket) {
        Optional<Worked> inside = work(bracket.getFormula());
        if (bracket.getUnit() == null || inside.isEmpty())
            return inside;
        if (inside.get() instanceof Worked.Bare(double value))
            return withUnit(bracket, value, bracket.getUnit(), PlugPackage.Literals.BRACKET__UNIT);
        return nothing(ReadProblem.Kind.DIMENSION, bracket, PlugPackage.Literals.BRACKET__UNIT,
                "the formula has a unit already; " + bracket.getUnit() + " is one too many");
    }

    private Optional<Worked> binary(Binary binary) {
        Optional<Worked> left = work(binary.getLeft());
        Optional<Worked> right = work(binary.getRight());
        if (left.isEmpty() || right.isEmpty())
            return Optional.empty();
        Worked a = left.get();
        Worked b = right.get();
        return guarded(binary, () -> sameKind(a, b, switch (binary.getOperator()) {
            case PLUS -> a.beside(b, bareUnit).plus(b.beside(a, bareUnit));
            case MINUS -> a.beside(b, bareUnit).minus(b.beside(a, bareUnit));
            case TIMES -> a.factor().times(b.factor());
            case OVER -> a.factor().over(b.factor());
        }));
    }

    private Optional<Worked> call(Call call) {
        boolean least = "min".equals(call.getFunction());
        if (!least && !"max".equals(call.getFunction()))
            return nothing(ReadProblem.Kind.FORMULA, call, PlugPackage.Literals.CALL__FUNCTION,
                    "no function is called " + call.getFunction() + "; min or max?");
        Optional<Worked> result = Optional.empty();
        for (Amount argument : call.getArguments()) {
            Optional<Worked> next = work(argument);
            if (next.isEmpty())
                return Optional.empty();
            if (result.isEmpty()) {
                result = next;
                continue;
            }
            Worked a = result.get();
            Worked b = next.get();
            result = guarded(call, () -> sameKind(a, b, least ? a.beside(b, bareUnit).min(b.beside(a, bareUnit))
                    : a.beside(b, bareUnit).max(b.beside(a, bareUnit))));
            if (result.isEmpty())
                return result;
        }
        return result;
    }

    private Optional<Worked> let(LetReference reference) {
        Let let = reference.getLet();
        if (let == null || let.eIsProxy())
            return nothing(ReadProblem.Kind.UNRESOLVED, reference, PlugPackage.Literals.LET_REFERENCE__LET, "no amount of that name");
        if (!open.add(let))
            return nothing(ReadProblem.Kind.CIRCLE, reference, PlugPackage.Literals.LET_REFERENCE__LET,
                    let.getName() + " in the end rests on itself");
        try {
            return work(let.getValue());
        } finally {
            open.remove(let);
        }
    }

    private static Worked sameKind(Worked a, Worked b, mouldwright.units.Amount amount) {
        return Worked.bothBare(a, b) ? new Worked.Bare(amount.si()) : new Worked.Of(amount);
    }

    private Optional<Worked> guarded(EObject object, java.util.function.Supplier<Worked> work) {
        try {
            return Optional.of(work.get());
        } catch (NotANumber refusal) {
            return nothing(ReadProblem.Kind.FORMULA, object, null, refusal.getMessage());
        } catch (Refusal refusal) {
            return nothing(ReadProblem.Kind.DIMENSION, object, null, refusal.getMessage());
        }
    }

    private <T> Optional<T> nothing(ReadProblem.Kind kind, EObject object, EStructuralFeature feature, String message) {
        problems.add(kind, object, feature, message);
        return Optional.empty();
    }
}
