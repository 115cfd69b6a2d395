package mouldwright.plan.read;

import java.util.stream.Collectors;
import mouldwright.model.Amount;
import mouldwright.model.Binary;
import mouldwright.model.Bracket;
import mouldwright.model.Call;
import mouldwright.model.LetReference;
import mouldwright.model.Measure;
import mouldwright.model.Negative;

/** An amount as somebody would write it, for messages. */
final class Written {

    private Written() { }

    static String of(Amount amount) {
        return switch (amount) {
            case Measure measure -> (measure.isNegative() ? "-" : "") + measure.getNumber() + unit(measure.getUnit());
            case Bracket bracket -> "(" + of(bracket.getFormula()) + ")" + unit(bracket.getUnit());
            case Binary binary -> of(binary.getLeft()) + " " + binary.getOperator().getLiteral() + " " + of(binary.getRight());
            case Negative negative -> "-" + of(negative.getOf());
            case Call call -> call.getFunction() + "(" + call.getArguments().stream().map(Written::of).collect(Collectors.joining(", ")) + ")";
            case LetReference reference -> reference.getLet() == null || reference.getLet().getName() == null ? "?" : reference.getLet().getName();
            case null, default -> "?";
        };
    }

    private static String unit(String unit) {
        return unit == null ? "" : unit.equals("%") ? " %" : " " + unit;
    }
}
