package mouldwright.plan.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Material;

/** Where stages write what they use up. Needs are summed per material over the whole job before packs are counted. */
public final class OrderBook {

    /** A need of one stage.
     *  @param stage    whose
     *  @param name     of what is ordered
     *  @param material as a library describes it, with its pack and price; empty for what no library has
     *  @param amount   kg, m3, m2, m or pieces, as its dimension says */
    public record Need(String stage, String name, Optional<Material> material, Node amount) { }

    private final List<Need> needs = new ArrayList<>();
    private String stage = "";

    /** What is written from here on belongs to a stage. */
    public void turnTo(String name) {
        stage = name;
    }

    /** Writes a need of a material.
     *  @param amount mass or volume (turned one into the other by the material's density where its pack asks for it); pieces
     *                of sheet; area of mat off the roll */
    public void need(Material material, Node amount) {
        needs.add(new Need(stage, material.name(), Optional.of(material), amount));
    }

    /** Writes a need of something no library describes: it is listed without packs and without a price. */
    public void need(String name, Node amount) {
        needs.add(new Need(stage, name, Optional.empty(), amount));
    }

    /** @return all needs, in the order written */
    public List<Need> needs() {
        return List.copyOf(needs);
    }
}
