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

	/** Words of which a property asks for one or the other. */
	private static final List<String> CHOICES = List.of("volume", "weight", "up", "down", "port", "starboard", "forward", "aft", "bare", "moulded", "solid", "shell", "square",
			"bevelled", "upright", "above", "below", "ply", "at", "to", "by");

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

	/**
	 * The repair, if putting in some words lets the parser past the place.
	 *
	 * @param firstExpected the token type the parser asked for, or 0 if several would do
	 * @param anyWord       whether to try every keyword where several would do, and not only a number and a name
	 */
	Optional<Repair> find(int firstExpected, boolean anyWord) {
		return complete(List.of(), firstExpected, anyWord ? words.all() : List.of());
	}

	private Optional<Repair> complete(List<Integer> put, int expected, List<String> keywords) {
		if (put.size() == MOST)
			return Optional.empty();
		for (int type : expected > 0 ? List.of(expected) : several(keywords)) {
			List<Integer> more = new ArrayList<>(put);
			more.add(type);
			Tokens tried = with(tokens, more);
			Optional<Failure> failure = attempt.apply(tried);
			int reached = failure.map(f -> tried.visibleAt(f.index())).orElse(Integer.MAX_VALUE);
			if (reached > at + more.size() && (more.size() > 1 || type == RULE_NUMBER))
				return Optional.of(repair(more));
			if (reached == at + more.size() && (put.isEmpty() || !type(put).equals(type))) {
				Optional<Repair> longer = complete(more, failure.get().expected(), CHOICES);
				if (longer.isPresent())
					return longer;
			}
		}
		return Optional.empty();
	}

	private static Integer type(List<Integer> put) {
		return put.getLast();
	}

	private List<Integer> several(List<String> keywords) {
		List<Integer> types = new ArrayList<>(List.of(RULE_NUMBER, RULE_ID));
		keywords.forEach(word -> types.add(words.type(word)));
		return types;
	}

	private Repair repair(List<Integer> put) {
		List<Integer> types = List.copyOf(put);
		int mark = Math.max(0, at - 1);
		return new Repair(t -> with(t, types), types.size() > 1 ? 2.4 : 2.6, missing(types), mark, mark, "");
	}

	/** Names the words that are sure: {@code at most}, but only {@code by} where volume or weight may follow. */
	private String missing(List<Integer> types) {
		StringBuilder sure = new StringBuilder(words.spelling(types.get(0)));
		for (int i = 1; i < types.size() && words.isKeyword(types.get(0)) && words.isKeyword(types.get(i)) && !CHOICES.contains(words.spelling(types.get(i))); i++)
			sure.append(' ').append(words.spelling(types.get(i)));
		String first = new Candidates(tokens, words, at, 0).missing(at, types.get(0));
		return words.isKeyword(types.get(0)) ? first.replaceFirst("`[a-z]+`", "`" + sure + "`") : first;
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
