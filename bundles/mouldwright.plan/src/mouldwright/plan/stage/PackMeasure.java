package mouldwright.plan.stage;

import static mouldwright.units.Dimension.AREA;
import static mouldwright.units.Dimension.DENSITY;
import static mouldwright.units.Dimension.LENGTH;
import static mouldwright.units.Dimension.MASS;
import static mouldwright.units.Dimension.VOLUME;

import java.util.List;
import java.util.Optional;
import mouldwright.plan.ledger.Ledger;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.spec.Coating;
import mouldwright.plan.spec.Filler;
import mouldwright.plan.spec.Given;
import mouldwright.plan.spec.Hardener;
import mouldwright.plan.spec.Mat;
import mouldwright.plan.spec.Material;
import mouldwright.plan.spec.Resin;
import mouldwright.units.Dimension;

/** Turns what a stage needs of a material into the measure its packs are sold by. */
final class PackMeasure {

    private static final String CLOSED = "closed form";

    private PackMeasure() { }

    /** The measure a material is ordered by: that of its pack, else mass where its need can be weighed. */
    static Dimension of(Optional<Material> material, Node first) {
        Optional<Dimension> pack = material.flatMap(m -> m.stock().pack()).map(p -> p.size().dimension());
        if (pack.isPresent())
            return pack.get();
        boolean mat = material.isPresent() && material.get() instanceof Mat;
        return mat ? MASS : first.dimension();
    }

    /** A need in a measure; empty where nothing turns one into the other. */
    static Optional<Node> in(Ledger ledger, Dimension wanted, Optional<Material> material, Node need) {
        if (need.dimension().equals(wanted))
            return Optional.of(need);
        if (material.isEmpty())
            return Optional.empty();
        if (material.get() instanceof Mat mat && wanted.equals(MASS))
            return mat(ledger, mat, need);
        Optional<Node> density = density(material.get()).map(ledger::given);
        if (density.isEmpty())
            return Optional.empty();
        if (need.dimension().equals(VOLUME) && wanted.equals(MASS))
            return Optional.of(ledger.step(need.label() + ", by mass", MASS).from("volume x density", List.of(need, density.get()),
                    v -> v[0] * v[1]).source(CLOSED));
        if (need.dimension().equals(MASS) && wanted.equals(VOLUME))
            return Optional.of(ledger.step(need.label() + ", by volume", VOLUME).from("mass / density", List.of(need, density.get()),
                    v -> v[0] / v[1]).source(CLOSED));
        return Optional.empty();
    }

    private static Optional<Node> mat(Ledger ledger, Mat mat, Node need) {
        Node areal = ledger.given(mat.areal());
        if (need.dimension().equals(AREA))
            return Optional.of(ledger.step(need.label() + ", by mass", MASS).from("area x areal mass", List.of(need, areal),
                    v -> v[0] * v[1]).source(CLOSED));
        if (need.dimension().equals(LENGTH))
            return Optional.of(ledger.step(need.label() + ", by mass", MASS).from("length off the roll x roll width x areal mass",
                    List.of(need, ledger.given(MatFacts.rollWidth(mat)), areal), v -> v[0] * v[1] * v[2]).source(CLOSED));
        return Optional.empty();
    }

    private static Optional<Given> density(Material material) {
        Optional<Given> stated = switch (material) {
            case Resin resin -> Optional.of(resin.density());
            case Hardener hardener -> Optional.of(hardener.density());
            case Coating coating -> coating.density();
            case Filler filler -> filler.density();
            default -> Optional.empty();
        };
        return stated.filter(given -> given.dimension().equals(DENSITY) && given.low() > 0);
    }
}
