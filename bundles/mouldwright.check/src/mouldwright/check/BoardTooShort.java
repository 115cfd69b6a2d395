package mouldwright.check;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Carve;
import mouldwright.plan.stage.Bay;
import mouldwright.plan.stage.ShapeMeasures;

/** MW431: a board must lie on two plates at once, with a hand's breadth over. */
final class BoardTooShort implements Check {

    private static final double OVER = 0.1;
    /** Into more parts no bay is divided: the board is too short for the plug. */
    private static final int MOST = 10;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().carve().ifPresent(carve -> plan.measurements().find(ShapeMeasures.class).ifPresent(shape -> shape.bays().forEach(bay -> examine(bay, shape, carve, plan, out))));
    }

    private static void examine(Bay bay, ShapeMeasures shape, Carve carve, BuildPlan plan, Findings out) {
        double length = length(bay);
        if (length + OVER > carve.board().likely())
            out.warn("MW431", bay.aft().station().origin(), bay.words() + " is " + Findings.length(length) + " long, the board " + Findings.length(carve.board().likely())
                    + ": it does not reach over both plates", "use a longer board, or insert a plate", fixes(bay, shape, carve, plan));
    }

    private static double length(Bay bay) {
        return bay.aft().station().x() - bay.fore().station().x();
    }

    private static Fix[] fixes(Bay bay, ShapeMeasures shape, Carve carve, BuildPlan plan) {
        double longest = shape.bays().stream().mapToDouble(BoardTooShort::length).max().orElse(0);
        Fix longer = Fix.stating(carve.board(), carve.origin(), "board", Findings.written(longest + OVER), "");
        double reach = carve.board().likely() - OVER;
        int parts = reach > 0 ? (int) Math.ceil(length(bay) / reach) : 0;
        if (parts < 2 || parts > MOST)
            return new Fix[] {longer};
        List<Double> at = IntStream.range(1, parts).mapToObj(i -> bay.fore().station().x() + length(bay) * i / parts).toList();
        return Stream.concat(Stream.of(longer), Stream.of(StationInsert.of(plan.spec().body(), bay.fore().station(), bay.aft().station(), at))).toArray(Fix[]::new);
    }
}
