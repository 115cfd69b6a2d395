package mouldwright.plan.read;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mouldwright.model.Coats;
import mouldwright.model.Include;
import mouldwright.model.Ply;
import mouldwright.model.PlugPackage;
import mouldwright.model.Step;
import mouldwright.model.Wait;
import mouldwright.plan.spec.Finish;
import mouldwright.plan.spec.Schedule;
import mouldwright.units.Dimension;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Reads schedules: includes and counts are written out. */
final class LaminateReader {

    /** More layers than any laminate has; a spec that asks for more is a slip of the keyboard. */
    private static final int MOST_LAYERS = 10_000;

    private final FigureReader figures;
    private final MaterialReader materials;

    LaminateReader(FigureReader figures, MaterialReader materials) {
        this.figures = figures;
        this.materials = materials;
    }

    /** A schedule; empty, and reported, where it has no resin or its name leads nowhere.
     *  @param owner   what names it
     *  @param feature by which */
    Optional<Schedule> schedule(mouldwright.model.Schedule m, EObject owner, EStructuralFeature feature) {
        if (!figures.resolved(m, owner, feature))
            return Optional.empty();
        mouldwright.model.Resin resin = m.getResin();
        if (resin == null) {
            figures.report(ReadProblem.Kind.MISSING, m, PlugPackage.Literals.SCHEDULE__RESIN, "the schedule names no resin: using ...");
            return Optional.empty();
        }
        if (!figures.resolved(resin, m, PlugPackage.Literals.SCHEDULE__RESIN))
            return Optional.empty();
        List<Schedule.Layer> layers = new ArrayList<>();
        add(m, layers, new LinkedHashSet<>());
        return Optional.of(new Schedule(m.getName(), materials.resin(resin), layers, figures.origin(m)));
    }

    private void add(mouldwright.model.Schedule m, List<Schedule.Layer> layers, Set<EObject> open) {
        if (!open.add(m))
            return;
        for (Step step : m.getSteps()) {
            switch (step) {
                case Ply ply -> plies(ply, layers);
                case Coats coats -> coats(coats).ifPresent(read -> {
                    for (int i = 0; i < read.count() && room(layers, coats); i++)
                        layers.add(new Schedule.Layer.Coat(read.coating(), read.origin()));
                });
                case Wait wait -> figures.given("wait", Dimension.TIME, wait.getTime())
                        .ifPresent(time -> layers.add(new Schedule.Layer.Wait(time)));
                case Include include -> include(include, layers, open);
                case null, default -> { } // the parser has said already that something is wrong here
            }
        }
        open.remove(m);
    }

    private void include(Include include, List<Schedule.Layer> layers, Set<EObject> open) {
        mouldwright.model.Schedule included = include.getSchedule();
        if (!figures.resolved(included, include, PlugPackage.Literals.INCLUDE__SCHEDULE))
            return;
        if (open.contains(included))
            figures.report(ReadProblem.Kind.CIRCLE, include, PlugPackage.Literals.INCLUDE__SCHEDULE,
                    included.getName() + " in the end includes itself");
        else
            add(included, layers, open);
    }

    private void plies(Ply ply, List<Schedule.Layer> layers) {
        if (!figures.resolved(ply.getMat(), ply, PlugPackage.Literals.PLY__MAT))
            return;
        int count = count(ply);
        for (int i = 0; i < count && room(layers, ply); i++)
            layers.add(new Schedule.Layer.Ply(materials.mat(ply.getMat()), figures.origin(ply)));
    }

    /** Adds the mats of a line of plies; a name that leads nowhere is reported. */
    void mats(Ply ply, List<mouldwright.plan.spec.Mat> mats) {
        if (figures.resolved(ply.getMat(), ply, PlugPackage.Literals.PLY__MAT))
            mats.addAll(java.util.Collections.nCopies(Math.min(count(ply), MOST_LAYERS), materials.mat(ply.getMat())));
    }

    private boolean room(List<Schedule.Layer> layers, EObject step) {
        if (layers.size() < MOST_LAYERS)
            return true;
        figures.report(ReadProblem.Kind.NUMBER, step, null, "no laminate has more than " + MOST_LAYERS + " layers");
        return false;
    }

    /** How many plies a line states. */
    int count(Ply ply) {
        return figures.count(ply.getCount(), ply, PlugPackage.Literals.PLY__COUNT);
    }

    /** Several coats of one thing; empty, and reported, where its name leads nowhere. */
    Optional<Finish.Coats> coats(Coats m) {
        if (!figures.resolved(m.getCoating(), m, PlugPackage.Literals.COATS__COATING))
            return Optional.empty();
        return Optional.of(new Finish.Coats(figures.count(m.getCount(), m, PlugPackage.Literals.COATS__COUNT),
                materials.coating(m.getCoating()), figures.origin(m)));
    }
}
