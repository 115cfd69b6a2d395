package mouldwright.workbench.views;

import java.util.Optional;
import mouldwright.drawing.subject.Subjects;
import mouldwright.plan.BuildPlan;
import mouldwright.workbench.editor.Shown;

/** The station the cursor stands in, at scale; where it stands in none, the last one it stood in. */
public final class SectionView extends DrawingView {

    private String station = "";

    @Override
    protected Object choice(Shown shown) {
        station = shown.station().filter(name -> !name.isEmpty()).orElse(station);
        boolean known = shown.plan().stream().flatMap(plan -> plan.spec().body().stations().stream()).anyMatch(one -> one.name().equals(station));
        if (!known)
            station = shown.plan().map(plan -> plan.spec().body().stations().getFirst().name()).orElse("");
        return station;
    }

    @Override
    protected Optional<Named> draw(BuildPlan plan, String code, Object choice) {
        return Subjects.section(plan, choice.toString(), code).map(drawing -> new Named("section-" + choice, drawing));
    }

    @Override
    protected String lit(Shown shown) {
        return "";
    }

    @Override
    protected String missing() {
        return "The body has no section at " + station + ": it runs out to a point or a ridge there.";
    }
}
