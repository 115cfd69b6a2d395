package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import mouldwright.plan.Quantity;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.stage.PourOrder;

/** The order of the pours with its times, as texts and JSON print it. */
final class PourSteps {

    /**
     * A step.
     *
     * @param step  counted from 1
     * @param act   {@code trial}, {@code turn}, {@code pour} or {@code wait}
     * @param bays  poured or waited for
     * @param lift  counted from 1; 0 where nothing is poured
     * @param lifts how many the bay takes
     * @param lies  how the plug lies
     * @param note  in words
     * @param time  s, of a wait
     */
    record Line(int step, String act, String bays, int lift, int lifts, String lies, String note, OptionalDouble time) { }

    private PourSteps() { }

    /** The steps of what an estimate shows; none where it does not show the fill. */
    static List<Line> of(Estimate estimate) {
        if (!estimate.stages().contains("fill")) {
            return List.of();
        }
        var order = estimate.plan().measurements().find(PourOrder.class);
        return order.isEmpty() ? List.of() : lines(estimate, order.get());
    }

    private static List<Line> lines(Estimate estimate, PourOrder order) {
        List<Line> lines = new ArrayList<>();
        String lies = Fill.Attitude.UPRIGHT.words();
        for (PourOrder.Step step : order.steps()) {
            int number = lines.size() + 1;
            if (step instanceof PourOrder.Turn(Fill.Attitude to)) {
                lies = to.words();
            }
            lines.add(switch (step) {
                case PourOrder.Trial() -> new Line(number, "trial", "", 0, 0, lies, "", OptionalDouble.empty());
                case PourOrder.Turn(Fill.Attitude to) -> new Line(number, "turn", "", 0, 0, lies, "", OptionalDouble.empty());
                case PourOrder.Pour pour -> new Line(number, "pour", pour.name(), pour.lift(), pour.lifts(), lies, "", OptionalDouble.empty());
                case PourOrder.Wait wait -> new Line(number, "wait", String.join(" ", wait.bays()), 0, 0, lies, wait.firm() ? "until firm" : "until cool",
                        OptionalDouble.of(time(estimate, wait)));
            });
        }
        return lines;
    }

    private static double time(Estimate estimate, PourOrder.Wait wait) {
        return wait.firm() ? value(estimate, "fill.firm") : wait.bays().stream().mapToDouble(bay -> value(estimate, "bay." + bay + ".wait")).max().orElse(0);
    }

    private static double value(Estimate estimate, String id) {
        return estimate.plan().quantity(id).map(Quantity::value).orElse(0.0);
    }
}
