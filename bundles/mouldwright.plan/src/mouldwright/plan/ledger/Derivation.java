package mouldwright.plan.ledger;

import java.util.List;
import mouldwright.plan.spec.Given;
import mouldwright.units.Dimension;

/** How a figure came about: a tree down to figures somebody stated, defaults, and measures of the geometry.
 *  Branches that rest on the same figure share it. All values in SI. */
public sealed interface Derivation {

    /** @return the figure's name in words */
    String label();

    /** @return its dimension */
    Dimension dimension();

    /** @return likely value, SI */
    double value();

    /** A figure reckoned from others.
     *  @param id       of a listed figure; empty for a step between
     *  @param formula  in words
     *  @param bounds   in words, how low and high came about
     *  @param inputs   what it rests on
     *  @param source   of the formula */
    record Reckoned(String id, String label, Dimension dimension, double value, double low, double high,
            String formula, String bounds, List<Derivation> inputs, String source) implements Derivation {
        /** Copies its list. */
        public Reckoned {
            inputs = List.copyOf(inputs);
        }
    }

    /** A figure somebody stated, or a default; its origin says which. */
    record Stated(Given given) implements Derivation {
        @Override public String label() {
            return given.name();
        }

        @Override public Dimension dimension() {
            return given.dimension();
        }

        @Override public double value() {
            return given.likely();
        }
    }

    /** A measure of the geometry.
     *  @param id of a listed figure; empty for a step between */
    record Measured(String id, String label, Dimension dimension, Measurement measurement) implements Derivation {
        @Override public double value() {
            return measurement.value();
        }
    }
}
