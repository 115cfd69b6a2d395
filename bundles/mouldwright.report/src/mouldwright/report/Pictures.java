package mouldwright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.subject.Subjects;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.ShapeMeasures;

/** What papers show of an estimate: the plug as a whole, its stoutest section, what its plates are set up by, the parting boards and the programme, as far as the plan comes. */
final class Pictures {

    private Pictures() { }

    static List<Drawing> of(Estimate estimate) {
        BuildPlan plan = estimate.plan();
        String code = plan.plug() + " " + estimate.revision();
        List<Drawing> drawings = new ArrayList<>();
        Subjects.LINES.draw(plan, code).forEach(one -> drawings.add(one.drawing()));
        stoutest(plan).flatMap(station -> Subjects.section(plan, station, code)).ifPresent(drawings::add);
        estimate.alignment().ifPresent(sheet -> Subjects.ALIGNMENT.draw(plan, code).stream().limit(1).forEach(one -> drawings.add(one.drawing())));
        Subjects.BOARDS.draw(plan, code).forEach(one -> drawings.add(one.drawing()));
        Subjects.PROGRAMME.draw(plan, code).forEach(one -> drawings.add(one.drawing()));
        return drawings;
    }

    private static Optional<String> stoutest(BuildPlan plan) {
        return plan.measurements().find(ShapeMeasures.class)
                .flatMap(shape -> shape.stations().stream().max(Comparator.comparingDouble(ShapeMeasures.AtStation::area)).map(at -> at.station().name()));
    }
}
