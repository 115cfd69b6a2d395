package mouldwright.cli;

import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.draw.Draws;
import picocli.CommandLine.ParseResult;

/**
 * How often the uncertain figures are to be drawn, as asked for on the command line.
 *
 * @param count of draws
 * @param seed  of the random numbers
 */
record DrawOrder(int count, long seed) {

    /**
     * What was asked for; empty without {@code --draws}.
     *
     * @throws WrongUsage if it is no number, too few or too many draws, or a seed for no draws
     */
    static Optional<DrawOrder> of(ParseResult parsed) {
        Optional<String> seed = Options.value(parsed, "--seed");
        Optional<String> draws = Options.value(parsed, "--draws");
        if (draws.isEmpty() && seed.isPresent()) {
            throw new WrongUsage("--seed is for --draws, as in --draws " + Draws.COMMON + " --seed " + seed.get());
        }
        return draws.map(count -> new DrawOrder(count(count), seed.map(DrawOrder::seed).orElse(Draws.COMMON_SEED)));
    }

    private static int count(String written) {
        long count = whole(written, "--draws");
        if (count < Draws.FEWEST || count > Draws.MOST) {
            throw new WrongUsage("--draws takes " + Draws.FEWEST + " to " + Draws.MOST + ", not " + written);
        }
        return (int) count;
    }

    private static long seed(String written) {
        return whole(written, "--seed");
    }

    private static long whole(String written, String option) {
        try {
            return Long.parseLong(written);
        } catch (NumberFormatException e) {
            throw new WrongUsage(option + " takes a whole number, not `" + written + "`");
        }
    }

    /** Draws. */
    Draws of(BuildPlan plan) {
        return Draws.of(plan.reckoning(), count, seed, () -> false);
    }
}
