package mouldwright.plan.stage;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Material;

/** The order list while figures are written.
 *  @param lines    material by material, in the order of first use
 *  @param currency of the job; empty where neither plug nor library states one */
record OrderLines(List<Line> lines, String currency) {

    /** A material over the whole job.
     *  @param key     what its figures are called by: its name, and a number where two libraries share it
     *  @param name    of the material
     *  @param stages  what each stage needs, kg, m3 or pieces, as the need's dimension says
     *  @param need    sum over the stages
     *  @param bought  whole packs; empty where no pack is stated */
    record Line(String key, String name, Optional<Material> material, Map<String, Node> stages, Node need, Optional<Bought> bought) { }

    /** Whole packs.
     *  @param packs  how many
     *  @param left   over
     *  @param priced whether the price is in the job's currency */
    record Bought(Material.Pack pack, Node packs, Node left, boolean priced) { }

    /** Copies its list. */
    OrderLines {
        lines = List.copyOf(lines);
    }
}
