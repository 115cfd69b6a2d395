package mouldwright.workbench.views;

import java.util.Optional;
import mouldwright.drawing.subject.Subjects;
import mouldwright.plan.BuildPlan;

/** The whole plug on one sheet: its profile, its plan and its stations. */
public final class LinesView extends DrawingView {

    @Override
    protected Optional<Named> draw(BuildPlan plan, String code, Object choice) {
        return Subjects.LINES.draw(plan, code).stream().findFirst().map(one -> new Named(one.name(), one.drawing()));
    }
}
