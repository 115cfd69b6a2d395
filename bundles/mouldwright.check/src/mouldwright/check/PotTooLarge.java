package mouldwright.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.Quantity;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Resin;
import mouldwright.plan.spec.Schedule;
import mouldwright.units.Dimension;

/** MW605: a pot far larger than one person lays before it stiffens gels in the bucket, hot. The plan mixes smaller ones; who goes by the resin's pot alone does not. */
final class PotTooLarge implements Check {

    /** Somewhat more than is laid in time does no harm: it is never mixed. */
    private static final double TIMES = 3;
    /** More plies in no laminate are looked at. */
    private static final int MOST = 1000;

    @Override public void examine(BuildPlan plan, Findings out) {
        plan.spec().skin().ifPresent(skin -> examine("skin", skin.schedule(), plan, out));
        plan.spec().mould().filter(mould -> plan.spec().skin().filter(skin -> skin.schedule().resin().equals(mould.schedule().resin())).isEmpty())
                .ifPresent(mould -> examine("mould", mould.schedule(), plan, out));
    }

    private static void examine(String laminate, Schedule schedule, BuildPlan plan, Findings out) {
        Resin resin = schedule.resin();
        OptionalDouble largest = IntStream.range(1, MOST).mapToObj(i -> plan.quantity(laminate + ".laying." + i + ".pot")).takeWhile(pot -> pot.isPresent())
                .mapToDouble(pot -> pot.map(Quantity::value).orElseThrow()).filter(pot -> pot > 0).max();
        resin.pot().map(Given::likely).filter(pot -> largest.isPresent() && pot > TIMES * largest.getAsDouble()).ifPresent(pot -> {
            String words = "pot " + grams(largest.getAsDouble()) + " at most";
            out.warn("MW605", resin.pot().orElseThrow().origin(), "pots of " + Findings.figure(pot, Dimension.MASS) + " of " + resin.name() + ", a person lays "
                    + Findings.figure(largest.getAsDouble(), Dimension.MASS) + " before it stiffens: such a pot gels in the bucket and gets hot", "mix smaller pots: `" + words + "`",
                    Fix.of("state `" + words + "`", new Remedy.State(resin.stock().origin(), "pot", words)));
        });
    }

    /** Down to ten grams, so that it is laid in time; a scale shows no less. */
    private static String grams(double kilograms) {
        return BigDecimal.valueOf(kilograms).setScale(2, kilograms < 0.01 ? RoundingMode.UP : RoundingMode.DOWN).stripTrailingZeros().toPlainString() + " kg";
    }
}
