package mouldwright.plan.read;

import java.util.LinkedHashSet;
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
import mouldwright.model.Plug;
import mouldwright.model.PlugPackage;
import mouldwright.units.Dimension;
import mouldwright.units.NotANumber;
import mouldwright.units.Refusal;
import mouldwright.units.Unit;
import mouldwright.units.Units;
import mouldwright.units.WrittenNumber;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Works out amounts and the small formulas in parentheses, with their dimensions. */
final class Formulas {

    private static final Unit MILLIMETRE = Units.find("mm").orElseThrow();

    private final Problems problems;
    private final Set<Let> open = new LinkedHashSet<>();
    private boolean unitsTaken;

    Formulas(Problems problems) {
        this.problems = problems;
    }

    /** The unit of a bare length: the units of the plug it stands in; millimetres in a library, or, which is noted, where the plug
     *  names none. */
    Unit lengthUnit(EObject amount) {
        Optional<Plug> plug = plug(amount);
        unitsTaken |= plug.isPresent() && plug.get().getUnits() == null;
        return plug.map(Plug::getUnits).flatMap(Units::find).filter(unit -> unit.dimension().equals(Dimension.LENGTH)).orElse(MILLIMETRE);
    }

    /** @return whether a bare length was read in a plug that names no units */
    boolean unitsTaken() {
        return unitsTaken;
    }

    private static Optional<Plug> plug(EObject amount) {
        EObject top = amount;
        while (top != null && !(top instanceof Plug))
            top = top.eContainer();
        return Optional.ofNullable((Plug) top);
    }

    /** An amount beside another in a sum or comparison, where a bare number may be a length. */
    private mouldwright.units.Amount beside(Worked one, Worked other, EObject where) {
        boolean length = one instanceof Worked.Bare && other instanceof Worked.Of(var of) && of.dimension().equals(Dimension.LENGTH);
        return one.beside(other, length ? lengthUnit(where) : MILLIMETRE);
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
                    problems.add(ReadProblem.Kind.DECIMAL_COMMA, measure, at,
                            "a decimal comma in " + measure.getNumber() + "; it is read as " + value.withPoint().replace("-", ""), "write `" + value.withPoint().replace("-", "") + "`");
                yield withUnit(measure, value.value(), measure.getUnit(), PlugPackage.Literals.MEASURE__UNIT);
            }
        };
    }

    private Optional<Worked> withUnit(EObject object, double value, String spelling, EStructuralFeature feature) {
        if (spelling == null)
            return Optional.of(new Worked.Bare(value));
        Optional<Unit> unit = Units.find(spelling);
        if (unit.isEmpty())
            return unknownUnit(object, spelling, feature);
        return guarded(object, () -> new Worked.Of(mouldwright.units.Amount.of(value, unit.get())));
    }

    private Optional<Worked> unknownUnit(EObject object, String spelling, EStructuralFeature feature) {
        List<String> near = Units.suggest(spelling);
        problems.add(ReadProblem.Kind.UNIT_UNKNOWN, object, feature, "`" + spelling + "` is no unit" + (near.isEmpty() ? "" : "; `" + near.getFirst() + "`?"),
                near.isEmpty() ? "" : "write `" + near.getFirst() + "`");
        return Optional.empty();
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
            case PLUS -> beside(a, b, binary).plus(beside(b, a, binary));
            case MINUS -> beside(a, b, binary).minus(beside(b, a, binary));
            case TIMES -> a.factor().times(b.factor());
            case OVER -> a.factor().over(b.factor());
        }));
    }

    private Optional<Worked> call(Call call) {
        boolean least = "min".equals(call.getFunction());
        if (!least && !"max".equals(call.getFunction()))
            return nothing(ReadProblem.Kind.FORMULA, call, PlugPackage.Literals.CALL__FUNCTION,
                    "no formula is called `" + call.getFunction() + "`; min and max are");
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
            result = guarded(call, () -> sameKind(a, b, least ? beside(a, b, call).min(beside(b, a, call))
                    : beside(a, b, call).max(beside(b, a, call))));
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
            return isFirstOfItsCircle(let) ? nothing(ReadProblem.Kind.FORMULA, reference, PlugPackage.Literals.LET_REFERENCE__LET,
                    "`" + let.getName() + "` is worked out from itself") : Optional.empty();
        try {
            return work(let.getValue());
        } finally {
            open.remove(let);
        }
    }

    /** So that a circle of named amounts is told once, not once for each. */
    private boolean isFirstOfItsCircle(Let let) {
        List<?> siblings = let.eContainer() instanceof Plug plug ? plug.getLets() : List.of(let);
        return open.stream().dropWhile(other -> other != let).allMatch(other -> siblings.indexOf(other) >= siblings.indexOf(let));
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
            return nothing(ReadProblem.Kind.FORMULA, object, null, refusal.getMessage());
        }
    }

    private <T> Optional<T> nothing(ReadProblem.Kind kind, EObject object, EStructuralFeature feature, String message) {
        problems.add(kind, object, feature, message);
        return Optional.empty();
    }
}
