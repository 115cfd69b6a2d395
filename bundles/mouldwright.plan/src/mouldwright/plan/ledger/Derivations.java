package mouldwright.plan.ledger;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.spec.Given;

/** Makes derivations when they are asked for, each once. */
final class Derivations {

    private final Reckoning reckoning;
    private final Derivation[] made;

    Derivations(Reckoning reckoning) {
        this.reckoning = reckoning;
        this.made = new Derivation[reckoning.network().nodes().size()];
    }

    /** Inputs are written before what rests on them, so making them in order needs no deep recursion. */
    synchronized Derivation of(Node node) {
        boolean[] wanted = new boolean[node.index() + 1];
        wanted[node.index()] = true;
        for (int i = node.index(); i >= 0; i--)
            if (wanted[i] && made[i] == null && reckoning.network().nodes().get(i).kind() instanceof Node.Kind.Reckoned r)
                r.inputs().forEach(input -> wanted[input.index()] = true);
        for (int i = 0; i <= node.index(); i++)
            if (wanted[i] && made[i] == null)
                made[i] = make(reckoning.network().nodes().get(i));
        return made[node.index()];
    }

    private Derivation make(Node node) {
        return switch (node.kind()) {
            case Node.Kind.Stated(Given given) -> new Derivation.Stated(given);
            case Node.Kind.Measured(Measurement measurement) ->
                new Derivation.Measured(node.id(), node.label(), node.dimension(), measurement);
            case Node.Kind.Reckoned r -> new Derivation.Reckoned(node.id(), node.label(), node.dimension(),
                    reckoning.likely(node), reckoning.low(node), reckoning.high(node), r.words(), boundsInWords(node),
                    r.inputs().stream().map(input -> made[input.index()]).toList(), r.source());
        };
    }

    private String boundsInWords(Node node) {
        List<String> lowering = new ArrayList<>();
        List<String> raising = new ArrayList<>();
        List<Given> uncertain = reckoning.uncertain();
        for (int k = 0; k < uncertain.size(); k++) {
            int sign = reckoning.bounds().sign(node.index(), k);
            if (sign == 0)
                continue;
            Given given = uncertain.get(k);
            lowering.add(given.name() + " at " + Figures.words(sign > 0 ? given.low() : given.high(), given.dimension()));
            raising.add(given.name() + " at " + Figures.words(sign > 0 ? given.high() : given.low(), given.dimension()));
        }
        if (lowering.isEmpty())
            return "no low and high: nothing it rests on has a range";
        return "low with " + String.join(", ", lowering) + "; high with " + String.join(", ", raising);
    }
}
