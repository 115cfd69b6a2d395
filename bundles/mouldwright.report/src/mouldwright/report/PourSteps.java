package mouldwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import mouldwright.plan.Quantity;
import mouldwright.plan.spec.Fill;
import mouldwright.plan.stage.FillMeasures;
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
        var fill = estimate.plan().measurements().find(FillMeasures.class);
        return order.isEmpty() || fill.isEmpty() ? List.of() : lines(estimate, order.get(), fill.get());
    }

    private static List<Line> lines(Estimate estimate, PourOrder order, FillMeasures fill) {
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
                case PourOrder.Wait wait -> new Line(number, "wait", names(wait, fill), 0, 0, lies, wait.firm() ? "until firm" : "until cool",
                        OptionalDouble.of(time(estimate, wait, fill)));
            });
        }
        return lines;
    }

    private static String names(PourOrder.Wait wait, FillMeasures fill) {
        return wait.bays().stream().map(i -> fill.bays().get(i).bay().name()).collect(Collectors.joining(" "));
    }

    private static double time(Estimate estimate, PourOrder.Wait wait, FillMeasures fill) {
        return wait.firm() ? PourOrder.firm(estimate.plan().spec()) : wait.bays().stream()
                .flatMap(i -> estimate.plan().quantity(fill.bays().get(i).bay().id("wait")).stream()).mapToDouble(Quantity::value).max().orElse(0);
    }
}
