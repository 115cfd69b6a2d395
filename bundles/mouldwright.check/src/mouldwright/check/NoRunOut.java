package mouldwright.check;

import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.MouldMeasures;

/** MW715: a part is never sound to its very edge: it is laid past it and cut back to a line scribed in the mould. */
final class NoRunOut implements Check {

    /** Edges shorter than this are corners, m. */
    private static final double CORNER = 0.01;

    @Override public void examine(BuildPlan plan, Findings out) {
        boolean stated = plan.spec().body().runOut().isPresent() && plan.spec().body().trim().isPresent();
        plan.spec().mould().filter(mould -> !stated).ifPresent(mould -> plan.measurements().find(MouldMeasures.class)
                .filter(measured -> measured.open() > CORNER).ifPresent(measured -> out.add(new Finding("MW715", Severity.INFO, mould.origin(),
                        Findings.length(measured.open()) + " of open edge without run-out and trim line: the part is cut back to a sound edge", "state `run out 50 mm trim 10 mm`",
                        List.of(Fix.of("state `run out 50 mm trim 10 mm`", new Remedy.State(plan.spec().origin(), "run", "run out 50 mm trim 10 mm")))))));
    }
}
