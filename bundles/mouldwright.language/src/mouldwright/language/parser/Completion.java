package mouldwright.language.parser;

import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_ID;
import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_NUMBER;
import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_UNIT;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import mouldwright.units.Units;

/** Completes a property that breaks off: as long as the parser stands at the same word and asks for one thing, that thing is put in before it. */
final class Completion {

	/** A property lacks no more words than this. */
	private static final int MOST = 4;

	private final Tokens tokens;
	private final Words words;
	private final int at;
	private final Function<Tokens, Optional<Failure>> attempt;

	/**
	 * @param attempt runs the parser up to its first mistake
	 */
	Completion(Tokens tokens, Words words, int at, Function<Tokens, Optional<Failure>> attempt) {
		this.tokens = tokens;
		this.words = words;
		this.at = at;
		this.attempt = attempt;
	}

	/** The repair, if putting in two words or more lets the parser past the place. */
	Optional<Repair> find(int firstExpected) {
		for (int first : firstExpected > 0 ? new int[] { firstExpected } : new int[] { RULE_NUMBER, RULE_ID }) {
			Optional<Repair> repair = complete(first);
			if (repair.isPresent())
				return repair;
		}
		return Optional.empty();
	}

	private Optional<Repair> complete(int first) {
		List<Integer> put = new ArrayList<>(List.of(first));
		while (put.size() <= MOST) {
			Tokens tried = with(tokens, put);
			Optional<Failure> failure = attempt.apply(tried);
			if (failure.isEmpty() || tried.visibleAt(failure.get().index()) > at + put.size())
				return Optional.of(repair(put));
			if (tried.visibleAt(failure.get().index()) < at + put.size())
				return Optional.empty();
			int expected = failure.get().expected();
			put.add(expected > 0 ? expected : put.getLast() == RULE_NUMBER ? RULE_ID : RULE_NUMBER);
		}
		return Optional.empty();
	}

	private Repair repair(List<Integer> put) {
		List<Integer> types = List.copyOf(put);
		int mark = Math.max(0, at - 1);
		return new Repair(t -> with(t, types), types.size() > 1 ? 2.4 : 2.6, new Candidates(tokens, words, at, 0).missing(at, types.get(0)), mark, mark, "");
	}

	private Tokens with(Tokens run, List<Integer> types) {
		Tokens result = run;
		for (int i = types.size() - 1; i >= 0; i--)
			result = result.inserted(at, types.get(i), Candidates.standIn(types.get(i), words));
		int next = at + types.size();
		boolean unit = types.getLast() == RULE_NUMBER && next < result.size() && result.type(next) == RULE_ID && Units.isUnit(result.text(next));
		return unit ? result.retyped(next, RULE_UNIT) : result;
	}
}
