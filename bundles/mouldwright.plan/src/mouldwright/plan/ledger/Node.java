package mouldwright.plan.ledger;

import java.util.List;
import java.util.Objects;
import mouldwright.plan.spec.Given;
import mouldwright.units.Dimension;

/** One figure of a ledger: stated, measured or reckoned from others. Nodes are made by a {@link Ledger}. */
public final class Node {

    /** What kind of figure a node is. */
    sealed interface Kind {
        /** Stated, or a default. */
        record Stated(Given given) implements Kind { }

        /** Measured on the geometry. */
        record Measured(Measurement measurement) implements Kind { }

        /** Reckoned.
         *  @param up whether the formula's figure is rounded up to a whole number */
        record Reckoned(String words, List<Node> inputs, Formula formula, boolean up, String source) implements Kind { }
    }

    private final int index;
    private final String id;
    private final String stage;
    private final String label;
    private final Dimension dimension;
    private final Kind kind;
    private final String currency;

    Node(int index, String id, String stage, String label, Dimension dimension, Kind kind, String currency) {
        this.currency = currency;
        this.index = index;
        this.id = id;
        this.stage = stage;
        this.label = Objects.requireNonNull(label, "label");
        this.dimension = Objects.requireNonNull(dimension, "dimension");
        this.kind = kind;
    }

    int index() {
        return index;
    }

    Kind kind() {
        return kind;
    }

    /** @return the quantity's id; empty for a figure that is not listed by itself */
    public String id() {
        return id;
    }

    /** @return the stage that reckoned it */
    public String stage() {
        return stage;
    }

    /** @return its name in words */
    public String label() {
        return label;
    }

    /** @return its dimension */
    public Dimension dimension() {
        return dimension;
    }

    /** @return the currency of an amount of money, such as EUR; empty for any other figure */
    public String currency() {
        return currency;
    }

    @Override public String toString() {
        return id.isEmpty() ? label : id;
    }
}
