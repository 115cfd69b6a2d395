package mouldwright.plan.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import mouldwright.plan.spec.Given;

/** Finds low and high of every node by swinging each uncertain figure and then reckoning the corners.
 *  Nodes moved the same way by the same figures share their corners, so a ledger of thousands of nodes needs but a few
 *  reckonings. */
final class Swings {

    private final Network network;
    private final BooleanSupplier cancelled;
    private final Network.Evaluator evaluator;
    private final List<Given> inputs;
    private final int count;
    private final double[] low;
    private final double[] likely;
    private final double[] high;
    private final byte[][] signs;

    Swings(Network network, BooleanSupplier cancelled) {
        this.cancelled = cancelled;
        this.network = network;
        this.evaluator = network.evaluator();
        this.inputs = network.uncertain();
        this.count = network.nodes().size();
        this.likely = evaluator.evaluate(draw(Given::likely), true).clone();
        this.low = likely.clone();
        this.high = likely.clone();
        this.signs = new byte[inputs.size()][count];
    }

    Bounds bounds() {
        if (!inputs.isEmpty()) {
            findDirections();
            for (byte[] corner : corners()) {
                poll();
                widen(evaluator.evaluate(at(corner, -1), true));
                widen(evaluator.evaluate(at(corner, 1), true));
            }
        }
        return new Bounds(low, likely, high, signs);
    }

    /** Swings about the likely values; and where that moves nothing though the node rests on the figure, as with the
     *  smaller side of a maximum, about all-low and all-high too. */
    private void findDirections() {
        swingAbout(draw(Given::likely), true);
        if (!settled()) {
            swingAbout(draw(Given::low), false);
            swingAbout(draw(Given::high), false);
        }
    }

    private void swingAbout(double[] background, boolean extend) {
        double[] down = new double[count];
        for (int k = 0; k < inputs.size(); k++) {
            poll();
            double kept = background[k];
            background[k] = inputs.get(k).low();
            System.arraycopy(evaluator.evaluate(background, false), 0, down, 0, count);
            if (extend)
                widen(network.rounds() ? evaluator.evaluate(background, true) : down);
            background[k] = inputs.get(k).high();
            double[] raised = evaluator.evaluate(background, false);
            for (int i = 0; i < count; i++)
                if (signs[k][i] == 0)
                    signs[k][i] = (byte) Math.signum(raised[i] - down[i]);
            if (extend)
                widen(network.rounds() ? evaluator.evaluate(background, true) : raised);
            background[k] = kept;
        }
    }

    private void poll() {
        if (cancelled.getAsBoolean())
            throw new CancellationException();
    }

    private boolean settled() {
        boolean[][] rests = network.dependence();
        for (int k = 0; k < rests.length; k++)
            for (int i = 0; i < count; i++)
                if (rests[k][i] && signs[k][i] == 0)
                    return false;
        return true;
    }

    /** The distinct ways in which nodes are moved; a figure that does not move a node leaves it free to share. */
    private List<byte[]> corners() {
        List<byte[]> corners = new ArrayList<>();
        byte[] own = new byte[inputs.size()];
        for (int i = 0; i < count; i++) {
            boolean moved = false;
            for (int k = 0; k < own.length; k++) {
                own[k] = signs[k][i];
                moved |= own[k] != 0;
            }
            if (moved)
                share(corners, own);
        }
        return corners;
    }

    private static void share(List<byte[]> corners, byte[] own) {
        for (byte[] corner : corners) {
            if (agree(corner, own)) {
                for (int k = 0; k < own.length; k++)
                    corner[k] = own[k] == 0 ? corner[k] : own[k];
                return;
            }
        }
        corners.add(own.clone());
    }

    private static boolean agree(byte[] a, byte[] b) {
        for (int k = 0; k < a.length; k++)
            if (a[k] * b[k] < 0)
                return false;
        return true;
    }

    /** Any corner bounds any node from inside, so every reckoning may widen every node. */
    private void widen(double[] values) {
        for (int i = 0; i < count; i++) {
            if (values[i] < low[i])
                low[i] = values[i];
            if (values[i] > high[i])
                high[i] = values[i];
        }
    }

    private double[] at(byte[] corner, int direction) {
        double[] draw = new double[inputs.size()];
        for (int k = 0; k < draw.length; k++) {
            Given given = inputs.get(k);
            int sign = corner[k] * direction;
            draw[k] = sign < 0 ? given.low() : sign > 0 ? given.high() : given.likely();
        }
        return draw;
    }

    private double[] draw(java.util.function.ToDoubleFunction<Given> end) {
        return inputs.stream().mapToDouble(end).toArray();
    }
}
