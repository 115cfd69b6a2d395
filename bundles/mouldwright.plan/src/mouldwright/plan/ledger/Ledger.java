package mouldwright.plan.ledger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import mouldwright.plan.spec.Given;
import mouldwright.units.Dimension;

/** Where stages write their figures down. Every figure is born with its derivation:
 *  <pre>{@code
 *  ledger.quantity("fill.liquid", "Foam, liquid", Dimension.VOLUME)
 *        .from("cavity / (expansion * yield)", List.of(cavity, expansion, yield), v -> v[0] / (v[1] * v[2]))
 *        .source("expansion as the supplier states it");
 *  }</pre>
 *  A figure can only rest on figures already written, so a ledger has no circles. Not for use by several threads;
 *  the {@link Reckoning} of a closed ledger is. */
public final class Ledger {

    private final List<Node> nodes = new ArrayList<>();
    private final Map<Given, Node> stated = new LinkedHashMap<>();
    private final Map<String, Node> byId = new HashMap<>();
    private final List<Ground> shape;
    private String stage = "";

    /** A ledger whose measures rest on nothing but what they name. */
    public Ledger() {
        this(List.of());
    }

    /** A ledger for a shape.
     *  @param shape what draws it; measures that name no grounds of their own rest on this */
    public Ledger(List<Ground> shape) {
        this.shape = List.copyOf(shape);
    }

    /** Begins a stage's page: what is written from here on belongs to it.
     *  @param name the stage's name, such as {@code fill} */
    public void turnTo(String name) {
        stage = Objects.requireNonNull(name, "stage");
    }

    /** A stated figure or default. The same figure written twice is one node, so that it moves everything resting on it
     *  together. */
    public Node given(Given given) {
        Node known = stated.get(given);
        if (known != null)
            return known;
        Node node = add("", given.name(), given.dimension(), new Node.Kind.Stated(given), "");
        stated.put(given, node);
        return node;
    }

    /** A figure measured on the geometry, not listed by itself. */
    public Node measured(String label, Dimension dimension, Measurement measurement) {
        return add("", label, dimension, grounded(measurement), "");
    }

    private Node.Kind grounded(Measurement measurement) {
        return new Node.Kind.Measured(measurement.grounds().isEmpty() ? measurement.on(shape) : measurement);
    }

    /** Begins a listed figure.
     *  @param id stable, one of a kind
     *  @throws IllegalArgumentException if the id is taken: two stages claim one figure */
    public Entry quantity(String id, String label, Dimension dimension) {
        if (id.isBlank() || byId.containsKey(id))
            throw new IllegalArgumentException("an id of its own, please: " + id);
        return new Entry(id, label, dimension, "");
    }

    /** Begins a listed amount of money.
     *  @param id       stable, one of a kind
     *  @param currency such as EUR; empty where none is stated
     *  @throws IllegalArgumentException if the id is taken */
    public Entry money(String id, String label, String currency) {
        if (id.isBlank() || byId.containsKey(id))
            throw new IllegalArgumentException("an id of its own, please: " + id);
        return new Entry(id, label, Dimension.RATIO, currency);
    }

    /** Begins a figure that is not listed by itself but shows in derivations. */
    public Entry step(String label, Dimension dimension) {
        return new Entry("", label, dimension, "");
    }

    /** @return a listed figure already written */
    public Optional<Node> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** @return listed figures already written, in that order */
    public List<Node> written() {
        return nodes.stream().filter(node -> !node.id().isEmpty()).toList();
    }

    /** @return stated figures used so far, in the order of first use */
    public List<Given> givens() {
        return List.copyOf(stated.keySet());
    }

    /** @return what the measures written so far rest on, each once, in the order of first use */
    public List<Ground> grounds() {
        Set<Ground> all = new LinkedHashSet<>();
        List<Ground> before = List.of();
        for (Node node : nodes)
            if (node.kind() instanceof Node.Kind.Measured(Measurement measurement) && measurement.grounds() != before) {
                before = measurement.grounds();
                all.addAll(before);
            }
        return List.copyOf(all);
    }

    /** Reckons everything: likely values, lows and highs.
     *  @throws ArithmeticException if a formula gives no finite figure for its inputs' likely values */
    public Reckoning close() {
        return close(() -> false);
    }

    /** Reckons everything: likely values, lows and highs.
     *  @param cancelled asked once for each uncertain figure and each corner
     *  @throws ArithmeticException if a formula gives no finite figure for its inputs' likely values
     *  @throws java.util.concurrent.CancellationException when cancelled */
    public Reckoning close(BooleanSupplier cancelled) {
        return Reckoning.of(List.copyOf(nodes), cancelled);
    }

    private Node add(String id, String label, Dimension dimension, Node.Kind kind, String currency) {
        Node node = new Node(nodes.size(), id, stage, label, dimension, kind, currency);
        nodes.add(node);
        if (!id.isEmpty())
            byId.put(id, node);
        return node;
    }

    private void requireOwn(List<Node> inputs) {
        for (Node input : inputs)
            if (input.index() >= nodes.size() || nodes.get(input.index()) != input)
                throw new IllegalArgumentException(input + " is written in another ledger");
    }

    /** A figure being written. */
    public final class Entry {
        private final String id;
        private final String label;
        private final Dimension dimension;

        private final String currency;

        private Entry(String id, String label, Dimension dimension, String currency) {
            this.currency = currency;
            this.id = id;
            this.label = label;
            this.dimension = dimension;
        }

        /** States how it is reckoned.
         *  @param words   the formula in words, naming its inputs as they are labelled where that reads well
         *  @param inputs  what it rests on
         *  @param formula figures in the order of the inputs, SI */
        public Sourced from(String words, List<Node> inputs, Formula formula) {
            requireOwn(inputs);
            return new Sourced(this, words, List.copyOf(inputs), formula, false);
        }

        /** States that it is the sum of others; of none, it is 0. */
        public Sourced sum(String words, List<Node> inputs) {
            return from(words, inputs, v -> Arrays.stream(v).sum());
        }

        /** States that it is another figure under its own name. */
        public Sourced same(Node node) {
            return from(node.label(), List.of(node), v -> v[0]);
        }

        /** Lists a measure of the geometry as it is. */
        public Node measured(Measurement measurement) {
            return add(id, label, dimension, grounded(measurement), currency);
        }
    }

    /** A figure that knows its formula and wants its source. */
    public final class Sourced {
        private final Entry entry;
        private final String words;
        private final List<Node> inputs;
        private final Formula formula;
        private final boolean up;

        private Sourced(Entry entry, String words, List<Node> inputs, Formula formula, boolean up) {
            this.entry = entry;
            this.words = words;
            this.inputs = inputs;
            this.formula = formula;
            this.up = up;
        }

        /** Rounds the formula's figure up to a whole number: lifts, pots, sheets. The directions in which uncertain
         *  figures move it are found on the unrounded figure, since a count stands still between its steps. */
        public Sourced roundedUp() {
            return new Sourced(entry, words + ", rounded up", inputs, formula, true);
        }

        /** Names the formula's source and writes the figure down. */
        public Node source(String source) {
            return add(entry.id, entry.label, entry.dimension,
                    new Node.Kind.Reckoned(words, inputs, formula, up, source), entry.currency);
        }
    }
}
