package mouldwright.plan.stage;

import java.util.List;
import mouldwright.plan.PotEntry;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Resin;

/** Lists the pots of a skin or any other laminate, ply by ply. */
final class SkinPots {

    private SkinPots() { }

    /** Adds them.
     *  @param laminate  the ids of its figures begin with this
     *  @param wetting   its resin */
    static void list(String laminate, Resin wetting, List<SkinMeasures.Laying> layings, Reckoning reckoning, Lists lists) {
        double resin = likely(reckoning, laminate + ".resin.mass");
        double catalyst = resin > 0 ? likely(reckoning, laminate + ".catalyst.mass") / resin : 0;
        double density = MatFacts.hardenerDensity(wetting).likely();
        int ply = 0;
        for (int i = 0; i < layings.size(); i++) {
            SkinMeasures.Laying laying = layings.get(i);
            String id = laminate + ".laying." + (i + 1);
            double most = likely(reckoning, id + ".pot");
            double ofPly = likely(reckoning, id + ".resin");
            int pots = (int) likely(reckoning, id + ".pots");
            double first = Math.min(laying.first() ? most / 2 : most, ofPly / pots);
            double further = pots > 1 ? (ofPly - first) / (pots - 1) : 0;
            for (int n = 0; n < laying.count(); n++)
                lists.pots(new PotEntry(laminate, ++ply, laying.mat().name(), ofPly, pots, pot(first, catalyst, density), pot(further, catalyst, density), most,
                        likely(reckoning, laminate + ".gel"), likely(reckoning, laminate + ".working")));
        }
    }

    private static PotEntry.Pot pot(double resin, double catalyst, double density) {
        return new PotEntry.Pot(resin, resin * catalyst, resin * catalyst / density);
    }

    private static double likely(Reckoning reckoning, String id) {
        return reckoning.likely(reckoning.find(id).orElseThrow());
    }
}
