package mouldwright.plan.ledger;

import java.util.ArrayList;
import java.util.List;
import mouldwright.plan.spec.Given;

/** The nodes of a ledger laid out for reckoning many times: arrays in the order of writing. */
final class Network {

    private final List<Node> nodes;
    private final List<Given> uncertain = new ArrayList<>();
    private final int[] uncertainNode;
    private final int[][] inputs;
    private final Formula[] formulas;
    private final boolean[] up;
    private final double[] leaves;
    private final boolean[] moves;
    private final int arity;
    private final boolean rounds;

    Network(List<Node> nodes) {
        this.nodes = nodes;
        int n = nodes.size();
        inputs = new int[n][];
        formulas = new Formula[n];
        up = new boolean[n];
        leaves = new double[n];
        moves = new boolean[n];
        List<Integer> ranged = new ArrayList<>();
        int most = 0;
        boolean any = false;
        for (int i = 0; i < n; i++) {
            switch (nodes.get(i).kind()) {
                case Node.Kind.Stated(Given given) -> {
                    leaves[i] = given.likely();
                    if (given.ranged()) {
                        ranged.add(i);
                        uncertain.add(given);
                        moves[i] = true;
                    }
                }
                case Node.Kind.Measured(Measurement measurement) -> leaves[i] = measurement.value();
                case Node.Kind.Reckoned reckoned -> {
                    inputs[i] = reckoned.inputs().stream().mapToInt(Node::index).toArray();
                    formulas[i] = reckoned.formula();
                    up[i] = reckoned.up();
                    for (int from : inputs[i])
                        moves[i] |= moves[from];
                    any |= up[i];
                    most = Math.max(most, inputs[i].length);
                }
            }
        }
        arity = most;
        rounds = any;
        uncertainNode = ranged.stream().mapToInt(Integer::intValue).toArray();
    }

    List<Node> nodes() {
        return nodes;
    }

    List<Given> uncertain() {
        return uncertain;
    }

    /** @return whether any figure is rounded to a whole number */
    boolean rounds() {
        return rounds;
    }

    /** @return for each uncertain figure, whether each node rests on it */
    boolean[][] dependence() {
        boolean[][] rests = new boolean[uncertain.size()][nodes.size()];
        for (int k = 0; k < rests.length; k++) {
            boolean[] own = rests[k];
            own[uncertainNode[k]] = true;
            for (int i = 0; i < own.length; i++)
                if (inputs[i] != null)
                    for (int from : inputs[i])
                        own[i] |= own[from];
        }
        return rests;
    }

    Evaluator evaluator() {
        return new Evaluator();
    }

    /** Reckons again and again in its own memory. What rests on no uncertain figure is reckoned once. */
    final class Evaluator {
        private final double[][] values = {leaves.clone(), leaves.clone()};
        private final boolean[] begun = new boolean[2];
        private final double[][] scratch = new double[arity + 1][];

        /** @return the values of the last reckoning with counts rounded up */
        double[] values() {
            return values[1];
        }

        /** Reckons all nodes.
         *  @param draw   of the uncertain figures
         *  @param round  whether counts are rounded up
         *  @return the values, in this evaluator's own memory, until it reckons alike again */
        double[] evaluate(double[] draw, boolean round) {
            if (draw.length != uncertainNode.length)
                throw new IllegalArgumentException(uncertainNode.length + " figures, not " + draw.length);
            int kind = round ? 1 : 0;
            double[] own = values[kind];
            for (int k = 0; k < draw.length; k++)
                own[uncertainNode[k]] = draw[k];
            for (int i = 0; i < own.length; i++)
                if (formulas[i] != null && (moves[i] || !begun[kind]))
                    own[i] = one(own, i, round);
            begun[kind] = true;
            return own;
        }

        private double one(double[] own, int i, boolean round) {
            int[] from = inputs[i];
            double[] v = scratch[from.length];
            if (v == null)
                v = scratch[from.length] = new double[from.length];
            for (int j = 0; j < from.length; j++)
                v[j] = own[from[j]];
            double figure = formulas[i].of(v);
            return round && up[i] ? WholeNumber.up(figure) : figure;
        }
    }
}
