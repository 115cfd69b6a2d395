package mouldwright.check;

import java.util.List;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.spec.Foam;
import mouldwright.plan.spec.Survey;
import mouldwright.plan.spec.Survey.Reading;
import mouldwright.units.Dimension;

/** MW313: bays were poured and no trial cup is on record. MW314: the cup creamed sooner than the foam's figures say, so that pots reckoned from them are
 *  too large to be poured out in time. */
final class TrialCup implements Check {

    @Override public void examine(BuildPlan plan, Findings out) {
        List<Reading> readings = plan.spec().surveys().stream().map(Survey::readings).flatMap(List::stream).toList();
        List<Reading.Trial> trials = readings.stream().filter(Reading.Trial.class::isInstance).map(Reading.Trial.class::cast).toList();
        plan.spec().fill().ifPresent(fill -> {
            if (trials.isEmpty())
                readings.stream().filter(Reading.Poured.class::isInstance).findFirst().ifPresent(poured -> out.add(new Finding("MW313", Severity.INFO, poured.origin(),
                        "foam was poured and no trial cup is on record: cream and rise of the day are not known", "pour a cup of 200 g first, and note it as `trial cream ... rise ...`")));
            else
                fill.foam().cream().ifPresent(cream -> examine(fill.foam(), cream.low(), trials.getLast(), out));
        });
    }

    private static void examine(Foam foam, double cream, Reading.Trial trial, Findings out) {
        if (trial.cream() < cream)
            out.warn("MW314", trial.origin(), "the trial cup creamed after " + Findings.figure(trial.cream(), Dimension.TIME) + ", " + foam.name() + " states "
                    + Findings.figure(cream, Dimension.TIME) + " at least: pots reckoned from that are too large to be poured in time",
                    "let foam and shop cool, or pour smaller pots");
    }
}
