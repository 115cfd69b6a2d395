package mouldwright.language.parser;

import java.util.function.UnaryOperator;

/**
 * One way to read on after a mistake.
 *
 * @param change  what is done to the tokens
 * @param cost    how far-fetched it is; of repairs that get equally far the cheapest is taken
 * @param message what was wrong
 * @param from    first visible token the finding covers
 * @param to      last visible token the finding covers
 * @param replace what to write instead; empty if nothing can be said for sure
 */
record Repair(UnaryOperator<Tokens> change, double cost, String message, int from, int to, String replace) {

	Tokens applied(Tokens tokens) {
		return change.apply(tokens);
	}
}
