package mouldwright.plan.stage;

import java.util.Optional;
import mouldwright.plan.spec.FairDefaults;
import mouldwright.plan.spec.Filler;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Schedule;
import mouldwright.plan.spec.Spec;

/** What gouges, voids and low spots are mended with: the filler of the carve block, or a paste of resin and glass bubbles, and the plies of
 *  the skin.
 *  @param filler     stated, or empty for a paste
 *  @param layer      greatest layer, m
 *  @param total      greatest total, m
 *  @param hard       time until it may be sanded, s
 *  @param ply        cured thickness of one ply laid over, m; 0 where no skin is stated
 *  @param extraPlies that may be laid over a low spot */
record FillerFacts(Optional<Filler> filler, Given layer, Given total, Given hard, double ply, Given extraPlies) {

    static FillerFacts of(Spec spec) {
        Optional<Filler> filler = ShapeStage.carve(spec).filler();
        return new FillerFacts(filler, filler.flatMap(Filler::layer).orElseGet(FairDefaults::fillerLayer),
                filler.flatMap(Filler::total).orElseGet(FairDefaults::fillerTotal), filler.flatMap(Filler::hard).orElseGet(FairDefaults::fillerHard),
                spec.skin().map(skin -> firstPly(skin.schedule())).orElse(0.0), FairDefaults.extraPlies());
    }

    private static double firstPly(Schedule schedule) {
        return schedule.plies().isEmpty() ? 0 : BuildUps.ply(schedule.plies().getFirst().mat(), schedule.resin());
    }

    /** Refuses figures that cannot be. */
    boolean makeSense(Guard guard) {
        guard.size(layer).size(total).notNegative(hard);
        filler.flatMap(Filler::density).ifPresent(guard::positive);
        return guard.clear();
    }

    /** What it is called. */
    String name() {
        return filler.map(Filler::name).orElse("paste of resin and glass bubbles");
    }
}
