package mouldwright.plan.read;

import java.util.List;
import java.util.Optional;
import mouldwright.model.Amount;
import mouldwright.model.Measure;
import mouldwright.model.Range;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;
import mouldwright.units.Units;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

/** Whether the amounts a part of a spec states measure what the model says of its properties, and lie within reason. */
public final class StatedAmounts {

    private final Problems problems = new Problems();
    private final Formulas formulas = new Formulas(problems);

    private StatedAmounts() { }

    /** What is wrong with the amounts of one part; its parts in turn are not looked at.
     *  @param part  any part of a model */
    public static List<ReadProblem> problems(EObject part) {
        StatedAmounts stated = new StatedAmounts();
        for (EReference feature : part.eClass().getEAllContainments())
            Expected.of(feature).ifPresent(expected -> {
                switch (part.eGet(feature)) {
                    case Amount amount -> stated.check(amount, expected);
                    case Range range -> stated.range(range, expected);
                    case null, default -> { }
                }
            });
        return stated.problems.all();
    }

    /** An amount in SI, without a word about what is wrong with it.
     *  @return empty where there is none, or it cannot be understood */
    public static Optional<Double> si(Dimension dimension, Amount amount) {
        Problems unheard = new Problems();
        return new FigureReader(new Formulas(unheard), TextPlaces.NOWHERE, unheard).si(dimension, amount);
    }

    private void range(Range range, Expected expected) {
        Optional<Double> likely = check(range.getLikely(), expected);
        if (range.getLow() == null || range.getHigh() == null)
            return;
        Optional<Double> low = check(range.getLow(), expected);
        Optional<Double> high = check(range.getHigh(), expected);
        if (likely.isPresent() && low.isPresent() && high.isPresent() && (low.get() > likely.get() || likely.get() > high.get()))
            problems.add(ReadProblem.Kind.RANGE, range, null, "the likely value must lie between the low and the high one");
    }

    /** The value in SI; empty, and reported, where it makes no sense. */
    private Optional<Double> check(Amount amount, Expected expected) {
        if (amount == null)
            return Optional.empty();
        Optional<Worked> worked = formulas.work(amount);
        if (worked.isEmpty() || expected.dimensions().isEmpty())
            return Optional.empty();
        return worked.flatMap(w -> as(amount, w, expected)).filter(si -> isWithinReason(amount, si, worked.get() instanceof Worked.Bare, expected));
    }

    private Optional<Double> as(Amount amount, Worked worked, Expected expected) {
        FigureReader reader = new FigureReader(formulas, TextPlaces.NOWHERE, problems);
        Dimension dimension = expected.dimensions().getFirst();
        if (worked instanceof Worked.Of(var of) && expected.dimensions().contains(of.dimension()))
            dimension = of.dimension();
        return reader.as(dimension, amount, worked);
    }

    private boolean isWithinReason(Amount amount, double si, boolean bare, Expected expected) {
        Optional<String> message = outOfBounds(Written.of(amount), si, bare, expected);
        message.ifPresent(m -> problems.add(ReadProblem.Kind.BOUNDS, amount, null, m, fix(amount, si, bare, expected)));
        if (message.isEmpty())
            expected.usual().filter(usual -> si < usual.least() || si > usual.most()).ifPresent(usual -> problems.add(ReadProblem.Kind.MAGNITUDE, amount, null,
                    Written.of(amount) + " is far from what is met: " + shown(usual.least(), expected) + " to " + shown(usual.most(), expected), "is the unit right?"));
        return message.isEmpty();
    }

    /** The same number in the unit the trade writes, where that lies within reason; a share above one was meant as per cent. */
    private static String fix(Amount amount, double si, boolean bare, Expected expected) {
        if (expected.share())
            return bare && si > 1 && si <= 100 ? LikelyUnit.percent(amount) : "";
        if (expected.dimensions().isEmpty() || !(amount instanceof Measure measure) || measure.getUnit() == null)
            return "";
        Dimension dimension = expected.dimensions().getFirst();
        Optional<Double> meant = LikelyUnit.of(amount, dimension).filter(unit -> !unit.equals(measure.getUnit())).flatMap(Units::find)
                .filter(unit -> unit.dimension().equals(dimension)).flatMap(unit -> Units.find(measure.getUnit()).map(old -> si / old.toSi(1) * unit.toSi(1)));
        return meant.filter(value -> value > expected.least() && value <= expected.most()).map(value -> LikelyUnit.fix(amount, dimension)).orElse("");
    }

    private static Optional<String> outOfBounds(String written, double si, boolean bare, Expected expected) {
        if (expected.share() && (si > 1 || si < 0))
            return Optional.of(written + " is no share of a whole: 0 to 100 % expected" + (bare && si > 1 && si <= 100 ? "; " + written + " %?" : ""));
        if (si < expected.least())
            return Optional.of(written + " is too low: "
                    + (expected.least() == 0 ? expected.zero() ? "nothing below 0" : "more than 0" : "at least " + shown(expected.least(), expected)) + " expected");
        if (si == 0 && !expected.zero())
            return Optional.of(written + " is nothing: more than 0 expected");
        if (si > expected.most())
            return Optional.of(written + " is too high: at most " + shown(expected.most(), expected) + " expected");
        return Optional.empty();
    }

    private static String shown(double si, Expected expected) {
        return Display.of(UnitSystem.METRIC).format(si, expected.dimensions().getFirst());
    }
}
