package mouldwright.plan.stage;

import mouldwright.plan.PotEntry;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Spec;

/** Lists the pots of a skin, ply by ply. */
final class SkinPots {

    private SkinPots() { }

    static void list(Spec spec, SkinMeasures measured, Reckoning reckoning, Lists lists) {
        double resin = likely(reckoning, "skin.resin.mass");
        double catalyst = resin > 0 ? likely(reckoning, "skin.catalyst.mass") / resin : 0;
        double density = MatFacts.hardenerDensity(spec.skin().orElseThrow().schedule().resin()).likely();
        int ply = 0;
        for (int i = 0; i < measured.layings().size(); i++) {
            SkinMeasures.Laying laying = measured.layings().get(i);
            String id = "skin.laying." + (i + 1);
            double most = likely(reckoning, id + ".pot");
            double ofPly = likely(reckoning, id + ".resin");
            int pots = (int) likely(reckoning, id + ".pots");
            double first = Math.min(laying.first() ? most / 2 : most, ofPly / pots);
            double further = pots > 1 ? (ofPly - first) / (pots - 1) : 0;
            for (int n = 0; n < laying.count(); n++)
                lists.pots(new PotEntry(++ply, laying.mat().name(), ofPly, pots, pot(first, catalyst, density), pot(further, catalyst, density), most,
                        likely(reckoning, "skin.gel"), likely(reckoning, "skin.working")));
        }
    }

    private static PotEntry.Pot pot(double resin, double catalyst, double density) {
        return new PotEntry.Pot(resin, resin * catalyst, resin * catalyst / density);
    }

    private static double likely(Reckoning reckoning, String id) {
        return reckoning.likely(reckoning.find(id).orElseThrow());
    }
}
