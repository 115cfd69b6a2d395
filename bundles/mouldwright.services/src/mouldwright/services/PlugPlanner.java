package mouldwright.services;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import mouldwright.model.Declaration;
import mouldwright.model.Document;
import mouldwright.model.Plug;
import mouldwright.model.Survey;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.read.Reading;
import mouldwright.plan.read.SpecReader;
import mouldwright.plan.stage.Planner;
import mouldwright.report.Finding;

/** Plans the plugs of a spec whose text is without error. */
final class PlugPlanner {

    private final LoadedSpec loaded;
    private final SpecPlaces places;
    private final BooleanSupplier cancelled;
    private final List<Finding> findings = new ArrayList<>();

    PlugPlanner(LoadedSpec loaded, SpecPlaces places, BooleanSupplier cancelled) {
        this.loaded = loaded;
        this.places = places;
        this.cancelled = cancelled;
    }

    /** The plans by the names of the plugs; a plug that cannot be read has none. */
    Map<String, BuildPlan> plan() {
        Map<String, BuildPlan> plans = new LinkedHashMap<>();
        loaded.document().ifPresent(document -> {
            for (Declaration declaration : document.getDeclarations()) {
                if (declaration instanceof Plug plug) {
                    plan(document, plug, plans);
                }
            }
        });
        return plans;
    }

    /** What was found on the way. */
    List<Finding> findings() {
        return findings;
    }

    private void plan(Document document, Plug plug, Map<String, BuildPlan> plans) {
        Reading reading = new SpecReader(places).read(plug, surveys(document, plug));
        reading.problems().forEach(problem -> findings.add(FindingMaker.of(problem, loaded.file())));
        reading.spec().ifPresent(spec -> {
            BuildPlan plan = new Planner().plan(spec, cancelled);
            plan.faults().forEach(fault -> findings.add(FindingMaker.of(fault, places, spec.origin(), loaded.file())));
            plans.put(spec.name(), plan);
        });
    }

    private static List<Survey> surveys(Document document, Plug plug) {
        return document.getDeclarations().stream().filter(Survey.class::isInstance).map(Survey.class::cast)
                .filter(survey -> survey.getPlug() == plug).toList();
    }
}
