package mouldwright.plan.draw;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import mouldwright.plan.ledger.Node;
import mouldwright.plan.ledger.Reckoning;
import mouldwright.plan.spec.Given;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/** A plan's quantities over many draws of its uncertain figures. Each figure with a stated or assumed range is drawn by itself from a
 *  triangle of its low, likely and high, since no more is known of it; the geometry is measured once and not drawn. The same plan, count
 *  and seed give the same figures to the last bit.
 *
 *  <p>Source: Monte Carlo by inverse transform, a textbook method.
 *  @param count   how many draws
 *  @param seed    of the random numbers
 *  @param figures how many uncertain figures were drawn
 *  @param spreads by the quantity's id; a quantity some draw gave no finite figure for is left out */
public record Draws(int count, long seed, int figures, Map<String, Spread> spreads) {

    /** Fewer draws than this say nothing of a tenth. */
    public static final int FEWEST = 10;
    /** More draws than this take memory and tell no more. */
    public static final int MOST = 100_000;
    /** Draws enough for two sure digits. */
    public static final int COMMON = 1000;
    /** The seed where none is asked for. */
    public static final long COMMON_SEED = 1;

    /** Copies its map, in its order. */
    public Draws {
        spreads = Collections.unmodifiableMap(new LinkedHashMap<>(spreads));
    }

    /** Draws.
     *  @param count     {@link #FEWEST} to {@link #MOST}
     *  @param cancelled asked before each draw
     *  @throws IllegalArgumentException if there are fewer or more
     *  @throws CancellationException    when cancelled */
    public static Draws of(Reckoning reckoning, int count, long seed, BooleanSupplier cancelled) {
        if (count < FEWEST || count > MOST)
            throw new IllegalArgumentException("draws are " + FEWEST + " to " + MOST + ", not " + count);
        List<Node> quantities = reckoning.quantities();
        double[][] drawn = drawn(reckoning, quantities, count, seed, cancelled);
        Map<String, Spread> spreads = new LinkedHashMap<>();
        for (int q = 0; q < drawn.length; q++) {
            Arrays.sort(drawn[q]);
            if (Double.isFinite(drawn[q][0]) && Double.isFinite(drawn[q][count - 1]))
                spreads.put(quantities.get(q).id(), Spread.of(drawn[q]));
        }
        return new Draws(count, seed, reckoning.uncertain().size(), spreads);
    }

    private static double[][] drawn(Reckoning reckoning, List<Node> quantities, int count, long seed, BooleanSupplier cancelled) {
        RandomGenerator random = new Well19937c(seed);
        List<RealDistribution> triangles = reckoning.uncertain().stream().map(Draws::triangle).toList();
        double[] inputs = new double[triangles.size()];
        double[][] drawn = new double[quantities.size()][count];
        Reckoning.Draw draw = reckoning.draw();
        for (int n = 0; n < count; n++) {
            if (cancelled.getAsBoolean())
                throw new CancellationException();
            for (int k = 0; k < inputs.length; k++)
                inputs[k] = triangles.get(k).inverseCumulativeProbability(random.nextDouble());
            draw.with(inputs);
            for (int q = 0; q < drawn.length; q++)
                drawn[q][n] = draw.value(quantities.get(q));
        }
        return drawn;
    }

    private static RealDistribution triangle(Given given) {
        return new TriangularDistribution(given.low(), given.likely(), given.high());
    }

    /** What a quantity came to; empty if there is none by that id. */
    public Optional<Spread> spread(String id) {
        return Optional.ofNullable(spreads.get(id));
    }
}
