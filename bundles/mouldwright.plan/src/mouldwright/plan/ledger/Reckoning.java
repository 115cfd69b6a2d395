package mouldwright.plan.ledger;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.plan.spec.Given;

/** A closed ledger, reckoned. Low, likely and high of every figure hold {@code low <= likely <= high}.
 *
 *  <p>Low and high come about like this: each uncertain figure is swung from its low to its high end with all others
 *  likely, which shows the direction in which it moves a result; then the result is reckoned twice more, with every
 *  uncertain figure at its lowering and at its raising end. That is exact where a result rises or falls with each input,
 *  as sums, products and quotients of positive figures do. Where a swing itself reaches further, it counts. */
public final class Reckoning {

    private final Network network;
    private final Bounds bounds;
    private final Map<String, Node> byId = new HashMap<>();
    private final Derivations derivations;

    private Reckoning(Network network, Bounds bounds) {
        this.network = network;
        this.bounds = bounds;
        for (Node node : network.nodes())
            if (!node.id().isEmpty())
                byId.put(node.id(), node);
        this.derivations = new Derivations(this);
    }

    static Reckoning of(List<Node> nodes, BooleanSupplier cancelled) {
        Network network = new Network(nodes);
        Bounds bounds = new Swings(network, cancelled).bounds();
        for (Node node : nodes)
            if (!Double.isFinite(bounds.likely()[node.index()]))
                throw new ArithmeticException("no figure for " + node);
        return new Reckoning(network, bounds);
    }

    /** @return the listed figures, in the order they were written */
    public List<Node> quantities() {
        return network.nodes().stream().filter(node -> !node.id().isEmpty()).toList();
    }

    /** @return a listed figure */
    public Optional<Node> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** @return likely value, SI */
    public double likely(Node node) {
        return bounds.likely()[node.index()];
    }

    /** @return low value, SI */
    public double low(Node node) {
        return bounds.low()[node.index()];
    }

    /** @return high value, SI */
    public double high(Node node) {
        return bounds.high()[node.index()];
    }

    /** @return the uncertain figures, in the order a draw gives them */
    public List<Given> uncertain() {
        return network.uncertain();
    }

    /** The direction in which an uncertain figure moves a result.
     *  @return 1 raises, -1 lowers, 0 neither */
    public int direction(Node node, Given input) {
        int at = network.uncertain().indexOf(input);
        return at < 0 ? 0 : bounds.sign(node.index(), at);
    }

    /** Something to draw with, for one thread. Reuses its memory, so thousands of draws cost little. */
    public Draw draw() {
        return new Draw(network);
    }

    /** @return how a figure came about, down to its inputs; the same tree each time it is asked for */
    public Derivation derivation(Node node) {
        return derivations.of(node);
    }

    Network network() {
        return network;
    }

    Bounds bounds() {
        return bounds;
    }

    /** Reckons the whole ledger for given values of its uncertain figures. */
    public static final class Draw {
        private final Network.Evaluator evaluator;

        private Draw(Network network) {
            this.evaluator = network.evaluator();
        }

        /** Reckons once.
         *  @param inputs values of {@link Reckoning#uncertain()}, SI, in that order
         *  @return this, holding the results until the next draw */
        public Draw with(double[] inputs) {
            evaluator.evaluate(inputs, true);
            return this;
        }

        /** @return a figure of the last draw, SI */
        public double value(Node node) {
            return evaluator.values()[node.index()];
        }
    }
}
