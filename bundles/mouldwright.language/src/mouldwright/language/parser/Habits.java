package mouldwright.language.parser;

import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_ID;
import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_NUMBER;
import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_STRING;
import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_UNIT;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What people write who are used to other notations: feet and inches side by side, fractions, commas between values, colons after words, other marks for comments. Each is read
 * as it was meant, and told with what to write. */
final class Habits {

	/** A habit explains a mistake better than any slip of the keyboard. */
	private static final double COST = 0.9;

	/** Only where nothing else explains it. */
	private static final double LONG_SHOT = 3.4;

	/** Words for a limit, and how this language says them. */
	private static final Map<String, String> LIMITS = Map.of("max", "most", "maximum", "most", "min", "least", "minimum", "least");

	private final Tokens tokens;
	private final Words words;
	private final int at;
	private final List<Repair> found = new ArrayList<>();

	Habits(Tokens tokens, Words words, int at) {
		this.tokens = tokens;
		this.words = words;
		this.at = at;
	}

	List<Repair> all() {
		if (at >= tokens.size())
			return tooManyBraces();
		feetAndInches();
		marks();
		fractions();
		separators();
		grouped();
		colons();
		comments();
		limits();
		countsBehind();
		quotedNames();
		libraryPaths();
		radii();
		degrees();
		gritsOfPaper();
		spacedNames();
		return tooManyBraces();
	}

	private void add(UnaryOperator<Tokens> change, String message, int from, int to, String write) {
		found.add(new Repair(change, COST, message, from, to, write));
	}

	private boolean is(int v, String text) {
		return v >= 0 && v < tokens.size() && tokens.text(v).equals(text);
	}

	private boolean number(int v) {
		return tokens.type(v) == RULE_NUMBER;
	}

	private boolean sameLine(int from, int to) {
		return from >= 0 && to < tokens.size() && tokens.line(from) == tokens.line(to);
	}

	/** {@code 4 ft 3 in}: two lengths where one is asked for. */
	private void feetAndInches() {
		for (int v = at - 1; v <= at; v++)
			if (sameLine(v - 2, v + 1) && number(v - 2) && tokens.type(v - 1) == RULE_UNIT && number(v) && tokens.type(v + 1) == RULE_UNIT) {
				int second = v;
				add(t -> t.without(second, 2), "two lengths stand side by side", v - 2, v + 1,
						"(" + tokens.text(v - 2) + " " + tokens.text(v - 1) + " + " + tokens.text(v) + " " + tokens.text(v + 1) + ")");
			}
	}

	/** Marks for feet and inches: {@code 1' 3"}. */
	private void marks() {
		for (int v = Math.max(1, at - 1); v <= at; v++) {
			boolean feet = is(v, "'"), inches = is(v, "\"");
			if (!feet && !inches || !number(v - 1) || !sameLine(v - 1, v))
				continue;
			int mark = v;
			boolean both = feet && sameLine(v, v + 2) && number(v + 1) && is(v + 2, "\"");
			String first = tokens.text(v - 1) + (feet ? " ft" : " in");
			add(t -> t.without(mark, both ? 3 : 1), "`" + tokens.text(v) + "` is no unit", v - 1, both ? v + 2 : v, both ? "(" + first + " + " + tokens.text(v + 1) + " in)" : first);
		}
	}

	/** {@code 11 13/16 in} and {@code 1/2 in}: quotients stand in parentheses, with the unit behind. */
	private void fractions() {
		for (int v = Math.max(1, at - 1); v <= at + 1; v++) {
			if (!is(v, "/") || !number(v - 1) || !number(v + 1) || !sameLine(v - 1, v + 1))
				continue;
			boolean mixed = sameLine(v - 2, v) && number(v - 2);
			boolean unit = sameLine(v, v + 2) && tokens.type(v + 2) == RULE_UNIT;
			int slash = v;
			add(t -> mixed ? t.without(slash - 1, 3) : t.without(slash, 2), "a fraction stands in parentheses, and its unit behind them", mixed ? v - 2 : v - 1, unit ? v + 2 : v + 1,
					"(" + (mixed ? tokens.text(v - 2) + " + " : "") + tokens.text(v - 1) + " / " + tokens.text(v + 1) + ")" + (unit ? " " + tokens.text(v + 2) : ""));
		}
	}

	/** Commas and semicolons between values. All of a line are told at once. */
	private void separators() {
		int first = IntStream.rangeClosed(Math.max(1, at - 1), at + 1).filter(v -> separates(v) && sameLine(at, v)).findFirst().orElse(-1);
		if (first < 0 || tokens.touches(first, first + 1) && number(first + 1))
			return;
		List<Integer> all = IntStream.range(first, tokens.size()).takeWhile(v -> sameLine(first, v)).filter(this::separates).boxed().toList();
		int last = Math.min(all.getLast() + 1, tokens.size() - 1);
		int to = sameLine(first, last) ? last : all.getLast();
		String written = IntStream.rangeClosed(first - 1, to).filter(v -> !all.contains(v)).mapToObj(tokens::text).collect(Collectors.joining(" "));
		add(t -> all.reversed().stream().reduce(t, (run, v) -> run.without(v, 1), (a, b) -> b), "no `" + tokens.text(first) + "` stands between values", first - 1, to, written);
	}

	private boolean separates(int v) {
		return v > 0 && (is(v, ",") || is(v, ";")) && tokens.type(v - 1) != words.type("{") && !is(v - 1, "(");
	}

	/** {@code 6.000,0}: digits in groups. */
	private void grouped() {
		for (int v = Math.max(1, at - 1); v <= at; v++) {
			if (!is(v, ",") && !is(v, ".") || !number(v - 1) || !tokens.touches(v - 1, v) || !number(v + 1) || !tokens.touches(v, v + 1))
				continue;
			int mark = v;
			String whole = tokens.text(v - 1).replaceAll("[.,]", "");
			add(t -> t.without(mark, 2), "`" + tokens.text(v - 1) + tokens.text(v) + tokens.text(v + 1) + "` is no number: digits are not grouped, and decimals follow a point", v - 1, v + 1,
					whole + "." + tokens.text(v + 1));
		}
	}

	/** {@code rim: 60} and {@code rim = 60}. */
	private void colons() {
		for (int v = Math.max(1, at - 1); v <= at; v++)
			if ((is(v, ":") || is(v, "=")) && words.isKeyword(tokens.type(v - 1)) && sameLine(v - 1, v)) {
				int mark = v;
				add(t -> t.without(mark, 1), "no `" + tokens.text(v) + "` stands between a property and its value", v - 1, v, tokens.text(v - 1));
			}
	}

	/** Comments as other languages begin them. */
	private void comments() {
		boolean mark = is(at, "#") || is(at, "%") || is(at, "-") && is(at + 1, "-");
		if (!mark || !tokens.startsLine(at) && !is(at, "#"))
			return;
		int end = at;
		while (sameLine(at, end + 1))
			end++;
		int count = end - at + 1;
		add(t -> t.without(at, count), "a comment begins with `//`", at, is(at, "-") ? at + 1 : at, "//");
	}

	/** {@code crown 1.5 max} and {@code crown at most 1.5}. */
	private void limits() {
		String limit = LIMITS.getOrDefault(tokens.text(at), "");
		if (!limit.isEmpty() && at > 0)
			add(t -> t.without(at, 1).inserted(at, words.type(limit), limit).inserted(at, words.type("at"), "at"), "no `" + tokens.text(at) + "` here", at, at, "at " + limit);
		if (!is(at, "at") || !is(at + 1, "most") && !is(at + 1, "least") || !number(at + 2))
			return;
		boolean unit = tokens.type(at + 3) == RULE_UNIT;
		String word = tokens.text(at + 1);
		int behind = unit ? at + 2 : at + 1;
		add(t -> t.without(at, 2).inserted(behind, words.type(word), word).inserted(behind, words.type("at"), "at"), "`at " + word + "` stands behind its figure", at, behind + 1,
				tokens.text(at + 2) + (unit ? " " + tokens.text(at + 3) : "") + " at " + word);
	}

	/** {@code coats 3 Surfacer}: the count comes first. */
	private void countsBehind() {
		for (int v = Math.max(0, at - 1); v <= at; v++)
			if (is(v, "coats") && number(v + 1)) {
				int word = v;
				add(t -> t.without(word, 1).inserted(word + 1, words.type("coats"), "coats"), "the count stands before `coats`", v, v + 1, tokens.text(v + 1) + " coats");
			}
	}

	/** A name in quotes where a name is asked for. */
	private void quotedNames() {
		String name = tokens.type(at) == RULE_STRING && tokens.text(at).length() > 1 ? tokens.text(at).substring(1, tokens.text(at).length() - 1) : "";
		if (name.matches("[A-Za-z_]\\w*"))
			add(t -> t.retyped(at, RULE_ID), "a name is written without quotes", at, at, name);
	}

	/** {@code use stock/foam.plug}. */
	private void libraryPaths() {
		if (!is(at, "/") || at < 2 || !is(at - 2, "use"))
			return;
		int end = at;
		while (tokens.touches(end, end + 1))
			end++;
		String path = IntStream.rangeClosed(at - 1, end).mapToObj(tokens::text).collect(Collectors.joining());
		int count = end - at + 1;
		add(t -> t.without(at, count), "a library is named with points and without `.plug`", at - 1, end, path.replaceFirst("\\.plug$", "").replace('/', '.'));
	}

	/** {@code knuckle r 12}: a radius, and no line called r. */
	private void radii() {
		for (int v = Math.max(1, at - 30); v <= at && v + 1 < tokens.size(); v++)
			if (is(v - 1, "knuckle") && tokens.type(v) == RULE_ID && tokens.text(v).matches("[rR](ad)?\\.?") && number(v + 1) && sameLine(v - 1, v + 1)) {
				int word = v;
				add(t -> t.retyped(word, words.type("radius")), "no `" + tokens.text(v) + "` here; `radius`?", v, v, "radius");
				return;
			}
	}

	/** {@code 20°}: degrees of a scale. */
	private void degrees() {
		for (int v = Math.max(1, at - 1); v <= at; v++)
			if (is(v, "\u00B0") && number(v - 1) && sameLine(v - 1, v)) {
				int sign = v;
				add(t -> t.without(sign, 1), "`\u00B0` is no unit; `degC` or `deg`?", v - 1, v, tokens.text(v - 1) + " degC");
			}
	}

	/** {@code sand P80 P120}: the number of a grit is all that is written. All of a line are told at once. */
	private void gritsOfPaper() {
		if (!is(at - 1, "sand") || !tokens.text(at).matches("[pP][0-9]+"))
			return;
		int end = at;
		while (sameLine(at, end + 1) && tokens.text(end + 1).matches("[pP]?[0-9]+"))
			end++;
		int last = end;
		String grits = IntStream.rangeClosed(at, last).mapToObj(v -> tokens.text(v).substring(number(v) ? 0 : 1)).collect(Collectors.joining(" "));
		add(t -> IntStream.rangeClosed(at, last).boxed().reduce(t, (run, v) -> run.retyped(v, RULE_NUMBER), (a, b) -> b), "a grit is its number alone", at, last, grits);
	}

	/** {@code sheet Birch Ply 12}: a name in several words. */
	private void spacedNames() {
		if (at < 2 || tokens.type(at - 1) != RULE_ID || !words.isKeyword(tokens.type(at - 2)) || tokens.type(at) != RULE_ID || !sameLine(at - 2, at))
			return;
		int end = at;
		while (sameLine(at, end + 1) && (tokens.type(end + 1) == RULE_ID || number(end + 1)))
			end++;
		int count = end - at + 1;
		String name = IntStream.rangeClosed(at - 1, end).mapToObj(tokens::text).collect(Collectors.joining());
		found.add(new Repair(t -> t.without(at, count), LONG_SHOT, "a name is one word: `" + name + "`?", at - 1, end, name));
	}

	/** What follows at the top of a file was meant to stand in a block that a brace too many has closed. */
	private List<Repair> tooManyBraces() {
		if (at > 0 && at < tokens.size() && is(at - 1, "}"))
			found.add(new Repair(t -> t.without(at - 1, 1), COST, "a `}` too many", at - 1, at - 1, ""));
		return found;
	}
}
