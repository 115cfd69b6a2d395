package mouldwright.plan.read;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import mouldwright.model.Amount;
import mouldwright.model.Binary;
import mouldwright.model.Bracket;
import mouldwright.model.Call;
import mouldwright.model.Let;
import mouldwright.model.LetReference;
import mouldwright.model.Measure;
import mouldwright.model.Negative;
import mouldwright.model.PlugPackage;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.Refusal;
import mouldwright.units.Unit;
import mouldwright.units.Units;
import mouldwright.units.WrittenNumber;
import org.eclipse.emf.ecore.EObject;

/** Works out the amounts of one plug or library: numbers with units, and formulas of them with their dimensions checked.
 *  A bare number is a length in the plug's units where a length is expected, or where it is added to or compared with one; elsewhere it is a plain
 *  number. */
public final class Amounts {

    /** What came of working out an amount. */
    public sealed interface Outcome {

        /** A value.
         *  @param si         in SI
         *  @param dimension  what it measures
         *  @param bare       whether it is a plain number that may yet become a length */
        record Value(double si, Dimension dimension, boolean bare) implements Outcome { }

        /** No value, and why. */
        record Wrong(Slip slip) implements Outcome { }
    }

    private final Unit bareLength;
    private final Deque<Let> reading = new ArrayDeque<>();

    /** @param bareLength  unit of lengths written without one */
    public Amounts(Unit bareLength) {
        this.bareLength = bareLength;
    }

    /** Works out an amount and checks it against what is expected.
     *  @param expected  what it should measure */
    public Outcome value(Amount amount, Expected expected) {
        Outcome outcome = evaluate(amount);
        if (!(outcome instanceof Outcome.Value value))
            return outcome;
        if (value.bare() && expected.isLength())
            value = length(value);
        String written = Written.of(amount);
        Dimension dimension = value.dimension();
        if (!expected.dimensions().isEmpty() && !expected.dimensions().contains(dimension))
            return wrong(amount, value.bare() ? unitMissing(written, expected.dimensions()) : expected.dimensions().get(0).expectedBut(written, dimension),
                    value.bare() ? "MW905" : "MW903");
        return outOfBounds(value, expected, written).<Outcome>map(message -> wrong(amount, message, "MW906")).orElse(value);
    }

    private static String unitMissing(String written, List<Dimension> dimensions) {
        List<String> units = Units.unitsOf(dimensions.get(0));
        return written + " has no unit: " + dimensions.get(0).word() + " expected" + (units.isEmpty() ? "" : ", such as " + written + " " + units.get(0));
    }

    private static Optional<String> outOfBounds(Outcome.Value value, Expected expected, String written) {
        if (expected.share() && (value.si() > 1 || value.si() < 0))
            return Optional.of(written + " is no share of a whole: 0 to 100 % expected" + (value.si() > 1 && value.si() <= 100 && value.bare() ? "; " + written + " %?" : ""));
        if (value.si() < expected.least())
            return Optional.of(written + " is too low: " + (expected.least() == 0 ? (expected.zero() ? "nothing below 0" : "more than 0") : "at least " + shown(expected.least(), value)) + " expected");
        if (value.si() == 0 && !expected.zero())
            return Optional.of(written + " is nothing: more than 0 expected");
        if (value.si() > expected.most())
            return Optional.of(written + " is too high: at most " + shown(expected.most(), value) + " expected");
        return Optional.empty();
    }

    private static String shown(double si, Outcome.Value value) {
        return Display.of(mouldwright.units.UnitSystem.METRIC).format(si, value.dimension());
    }

    /** Works out an amount, whatever it measures. */
    public Outcome evaluate(Amount amount) {
        return switch (amount) {
            case null -> new Outcome.Value(0, Dimension.RATIO, true);
            case Measure measure -> measure(measure);
            case Bracket bracket -> bracket(bracket);
            case Binary binary -> binary(binary);
            case Negative negative -> negative(negative);
            case Call call -> call(call);
            case LetReference reference -> let(reference);
            default -> throw new IllegalStateException("an amount of an unknown kind: " + amount.eClass().getName());
        };
    }

    private Outcome measure(Measure measure) {
        String digits = (measure.isNegative() ? "-" : "") + measure.getNumber();
        return switch (WrittenNumber.parse(digits)) {
            case WrittenNumber.Rejected rejected -> wrong(measure, rejected.message(), "MW906");
            case WrittenNumber.Value number -> withUnit(measure, number.value(), measure.getUnit());
        };
    }

    private Outcome withUnit(EObject where, double number, String spelling) {
        if (spelling == null)
            return new Outcome.Value(number, Dimension.RATIO, true);
        Optional<Unit> unit = Units.find(spelling);
        if (unit.isEmpty()) {
            List<String> near = Units.suggest(spelling);
            Slip slip = Slip.at(where, "MW904", "`" + spelling + "` is no unit" + (near.isEmpty() ? "" : "; `" + near.get(0) + "`?"));
            return new Outcome.Wrong(near.isEmpty() ? slip : slip.mendedBy("write `" + near.get(0) + "`"));
        }
        try {
            return new Outcome.Value(unit.get().toSi(number), unit.get().dimension(), false);
        } catch (Refusal refusal) {
            return wrong(where, refusal.getMessage(), "MW906");
        }
    }

    private Outcome bracket(Bracket bracket) {
        Outcome inner = evaluate(bracket.getFormula());
        if (bracket.getUnit() == null || !(inner instanceof Outcome.Value value))
            return inner;
        if (!value.bare())
            return wrong(bracket, "the formula is " + value.dimension().withArticle() + " already; leave out `" + bracket.getUnit() + "`", "MW903");
        return withUnit(bracket, value.si(), bracket.getUnit());
    }

    private Outcome binary(Binary binary) {
        Outcome left = evaluate(binary.getLeft());
        Outcome right = evaluate(binary.getRight());
        if (left instanceof Outcome.Wrong)
            return left;
        if (right instanceof Outcome.Wrong)
            return right;
        Outcome.Value a = (Outcome.Value) left;
        Outcome.Value b = (Outcome.Value) right;
        return switch (binary.getOperator()) {
            case PLUS -> combine(binary, like(a, b), like(b, a), mouldwright.units.Amount::plus);
            case MINUS -> combine(binary, like(a, b), like(b, a), mouldwright.units.Amount::minus);
            case TIMES -> combine(binary, a, b, mouldwright.units.Amount::times);
            case OVER -> combine(binary, a, b, mouldwright.units.Amount::over);
        };
    }

    /** A bare number beside a length is a length. */
    private Outcome.Value like(Outcome.Value value, Outcome.Value other) {
        return value.bare() && !other.bare() && other.dimension().equals(Dimension.LENGTH) ? length(value) : value;
    }

    private Outcome.Value length(Outcome.Value bare) {
        return new Outcome.Value(bareLength.toSi(bare.si()), Dimension.LENGTH, false);
    }

    private interface Operation {
        mouldwright.units.Amount of(mouldwright.units.Amount a, mouldwright.units.Amount b);
    }

    private static Outcome combine(EObject where, Outcome.Value a, Outcome.Value b, Operation operation) {
        try {
            mouldwright.units.Amount result = operation.of(new mouldwright.units.Amount(a.si(), a.dimension()), new mouldwright.units.Amount(b.si(), b.dimension()));
            return new Outcome.Value(result.si(), result.dimension(), a.bare() && b.bare());
        } catch (Refusal refusal) {
            return wrong(where, refusal.getMessage(), "MW907");
        }
    }

    private Outcome negative(Negative negative) {
        Outcome of = evaluate(negative.getOf());
        return of instanceof Outcome.Value value ? new Outcome.Value(-value.si(), value.dimension(), value.bare()) : of;
    }

    private Outcome call(Call call) {
        boolean least = "min".equals(call.getFunction());
        if (!least && !"max".equals(call.getFunction()))
            return new Outcome.Wrong(Slip.at(call, PlugPackage.Literals.CALL__FUNCTION, "MW907", "no formula is called `" + call.getFunction() + "`; min and max are"));
        Outcome result = evaluate(call.getArguments().get(0));
        for (int i = 1; i < call.getArguments().size() && result instanceof Outcome.Value a; i++) {
            Outcome next = evaluate(call.getArguments().get(i));
            result = next instanceof Outcome.Value b ? combine(call, like(a, b), like(b, a), least ? mouldwright.units.Amount::min : mouldwright.units.Amount::max) : next;
        }
        return result;
    }

    private Outcome let(LetReference reference) {
        Let let = reference.getLet();
        if (let == null || let.eIsProxy())
            return wrong(reference, "the named amount is not known", "MW902");
        if (reading.contains(let))
            return new Outcome.Wrong(Slip.at(let, PlugPackage.Literals.NAMED__NAME, "MW907", "`" + let.getName() + "` is worked out from itself"));
        reading.push(let);
        try {
            return evaluate(let.getValue());
        } finally {
            reading.pop();
        }
    }

    private static Outcome wrong(EObject where, String message, String code) {
        return new Outcome.Wrong(Slip.at(where, code, message));
    }
}
