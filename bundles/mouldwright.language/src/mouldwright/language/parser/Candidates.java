package mouldwright.language.parser;

import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_ANY_OTHER;
import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_DATE;
import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_ID;
import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_NUMBER;
import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_STRING;
import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_UNIT;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import mouldwright.units.Units;

/** The ways to read on after a mistake, each a single slip of the writer: a word misspelt, left out or put in. */
final class Candidates {

	private static final List<String> CONNECTORS = List.of("at", "to", "by", "of", "from", "for", "and", "most", "least", "after", "within",
			"above", "sections", "shrink", "out", "height", "girth", "pull", "piece", "ply", "coats", "on", "layer", "column", "side", "down",
			"depth", "over", "rise", "now", "off", "grit", "per", "every", "lofted", "using", "(", ")", "=", ",", "add");

	private static final List<List<String>> PAIRS = List.of(List.of("at", "most"), List.of("at", "least"), List.of("of", "ply"));

	private final Tokens tokens;
	private final Words words;
	private final int at;
	private final int expected;
	private final List<Repair> found = new ArrayList<>();

	Candidates(Tokens tokens, Words words, int at, int expected) {
		this.tokens = tokens;
		this.words = words;
		this.at = at;
		this.expected = expected;
	}

	List<Repair> all() {
		Set<Integer> places = new TreeSet<>();
		for (int v = Math.max(0, at - 3); v <= Math.min(tokens.size() - 1, at + 1); v++)
			places.add(v);
		new OddLines(tokens, words, at).find().ifPresent(odd -> {
			found.add(odd.repair());
			for (int v = odd.first(); v <= odd.last(); v++)
				places.add(v);
		});
		places.forEach(this::respell);
		found.addAll(new Habits(tokens, words, at).all());
		unclosedTexts();
		dates();
		otherKind();
		insertions();
		removals();
		return found;
	}

	/** Any word put in or taken instead, where no slip of one or two letters explains the mistake. */
	List<Repair> anyWord() {
		for (String keyword : words.all()) {
			insert(at, words.type(keyword), 3.6);
			if (at < tokens.size() && tokens.type(at) == RULE_ID) {
				String word = tokens.text(at);
				found.add(new Repair(t -> t.retyped(at, words.type(keyword)), 3.5, "no `" + word + "` here; `" + keyword + "`?", at, at, keyword));
			}
		}
		return found;
	}

	/** The cheapest way that always reads on: leave out what is left of the line. */
	Repair leaveOutLine() {
		return removal(Math.min(at, tokens.size() - 1), lastOfLine(at), 9);
	}

	private void respell(int v) {
		String word = tokens.text(v);
		int type = tokens.type(v);
		if (type == RULE_ID || words.isKeyword(type)) {
			words.near(word).forEach((keyword, slips) -> {
				if (words.type(keyword) != type)
					found.add(new Repair(t -> t.retyped(v, words.type(keyword)), 1 + slips + distance(v), "no `" + word + "` here; `" + keyword + "`?", v, v, keyword));
			});
			joined(v, word);
		}
		if (words.isKeyword(type))
			found.add(new Repair(t -> t.retyped(v, RULE_ID), 2.5 + distance(v), "`" + word + "` is a word of the language; choose another name", v, v, ""));
		if (type == RULE_UNIT && v > 0)
			found.add(new Repair(t -> t.retyped(v, RULE_ID), 2.6 + distance(v), "`" + word + "` is a unit; choose another name", v, v, ""));
		if (type != RULE_ID && !words.isKeyword(type) && type != RULE_NUMBER && type != RULE_STRING)
			for (String brace : List.of("{", "}"))
				if (words.type(brace) != type)
					found.add(new Repair(t -> t.retyped(v, words.type(brace)), 2 + distance(v), "no `" + word + "` here; `" + brace + "`?", v, v, brace));
	}

	/** A word run into the number after it, or into the next word: {@code at1350}. */
	private void joined(int v, String word) {
		for (int cut = 1; cut < word.length(); cut++) {
			String head = word.substring(0, cut);
			String tail = word.substring(cut);
			boolean number = tail.chars().allMatch(Character::isDigit);
			Integer keyword = words.typeOrNull(head);
			if (keyword == null || !Character.isLetter(head.charAt(0)) || !(number || words.typeOrNull(tail) != null))
				continue;
			int length = cut;
			int second = number ? RULE_NUMBER : words.type(tail);
			found.add(new Repair(t -> t.cut(v, length, keyword, second), 2 + distance(v), "a space is missing in `" + word + "`", v, v, head + " " + tail));
		}
	}

	/** A text without its closing quote: it may end anywhere on its line. */
	private void unclosedTexts() {
		for (int v = Math.max(0, at - 1); v <= Math.min(at + 1, tokens.size() - 1); v++) {
			if (!tokens.text(v).equals("\""))
				continue;
			int first = v;
			for (int end = v; end < tokens.size() && tokens.line(end) == tokens.line(v); end++) {
				int last = end;
				found.add(new Repair(t -> t.joined(first, last, RULE_STRING), 2 - 0.001 * (last - first), "the closing quote is missing", first, last, ""));
			}
		}
	}

	/** A date not written as YYYY-MM-DD: a run of numbers and separators without spaces. */
	private void dates() {
		for (int v = Math.max(0, at - 2); v <= at && v < tokens.size(); v++) {
			int first = v;
			int last = v;
			while (tokens.touches(last, last + 1) && (tokens.type(last + 1) == RULE_NUMBER || isSeparator(last + 1)))
				last++;
			int end = last;
			if (tokens.type(v) == RULE_NUMBER && last >= v + 2 && last <= v + 4)
				found.add(new Repair(t -> t.joined(first, end, RULE_DATE), 1.5,
						"a date is written as year-month-day with two digits for month and day, as 2027-03-09", first, end, date(first, end)));
		}
	}

	/** A date with its year first as this language writes it; with its year last nobody can tell day and month apart unless one of them is over 12. */
	private String date(int first, int last) {
		String[] parts = IntStream.rangeClosed(first, last).mapToObj(tokens::text).collect(Collectors.joining()).split("[-/.]");
		if (parts.length != 3 || !Stream.of(parts).allMatch(part -> part.matches("[0-9]{1,4}")))
			return "";
		int a = Integer.parseInt(parts[0]), b = Integer.parseInt(parts[1]), c = Integer.parseInt(parts[2]);
		if (parts[0].length() == 4)
			return String.format(Locale.ROOT, "%04d-%02d-%02d", a, b, c);
		boolean told = parts[2].length() == 4 && (a > 12) != (b > 12);
		return told ? String.format(Locale.ROOT, "%04d-%02d-%02d", c, Math.min(a, b), Math.max(a, b)) : "";
	}

	private boolean isSeparator(int v) {
		String text = tokens.text(v);
		return text.equals("-") || text.equals("/") || text.equals(".");
	}

	/** A number, name or text written as something else: a name in quotes, a version without them, a named amount without its parentheses. */
	private void otherKind() {
		if (at >= tokens.size())
			return;
		int type = tokens.type(at);
		String word = tokens.text(at);
		if (type == RULE_NUMBER || type == RULE_ID)
			otherKind(RULE_STRING, 2.3, "a text in \"quotes\" is expected, not `" + word + "`");
		if (type == RULE_ID && !Units.isUnit(word))
			otherKind(RULE_NUMBER, 2.4, "a number is expected, not `" + word + "`; a named amount stands in parentheses, as (" + word + ")");
		if (type == RULE_STRING)
			otherKind(RULE_ID, 2.3, "a name is written without quotes");
		if (type == RULE_NUMBER)
			otherKind(RULE_ID, 2.5, "`" + word + "` is no name: a name begins with a letter");
		if (type == RULE_ANY_OTHER)
			otherKind(RULE_ID, 2.3, "`" + word + "` is no name: letters of the Latin alphabet, digits and _ make one");
	}

	private void otherKind(int type, double cost, String message) {
		found.add(new Repair(t -> t.retyped(at, type), cost, message, at, at, ""));
	}

	private void insertions() {
		if (expected > 0)
			insert(at, expected, 2);
		insert(at, RULE_NUMBER, 2.7);
		insert(at, RULE_ID, 1.95);
		for (List<String> pair : PAIRS)
			found.add(new Repair(t -> t.inserted(at, words.type(pair.get(1)), pair.get(1)).inserted(at, words.type(pair.get(0)), pair.get(0)), 3,
					together(at, pair), Math.max(0, at - 1), Math.max(0, at - 1), ""));
		insert(at, RULE_STRING, 3.2);
		insert(at, words.type("{"), 2.8);
		insert(at, words.type("}"), 2.8);
		for (String connector : CONNECTORS) {
			insert(at, words.type(connector), 3);
			insert(at + 1, words.type(connector), 3.1);
		}
	}

	/** What stands for a token that was left out. */
	static String standIn(int type, Words words) {
		String spelling = words.spelling(type);
		return switch (type) {
			case RULE_NUMBER -> "0";
			case RULE_STRING -> "\"\"";
			default -> spelling.isEmpty() ? "_" : spelling;
		};
	}

	private void insert(int v, int type, double cost) {
		if (v > tokens.size() || tokens.size() == 0)
			return;
		String spelling = words.spelling(type);
		String text = standIn(type, words);
		String message = missing(v, type);
		int mark = spelling.equals("}") ? Math.min(v, tokens.size() - 1) : Math.max(0, v - 1);
		found.add(new Repair(t -> t.inserted(v, type, text), cost, message, mark, mark, ""));
	}

	/** What to say of tokens left out before {@code v}: words that belong together are named together, as in `at most`. */
	String missing(int v, List<Integer> types) {
		List<String> spelt = types.stream().map(words::spelling).toList();
		return PAIRS.contains(spelt) ? together(v, spelt) : missing(v, types.getFirst());
	}

	private String together(int v, List<String> spelt) {
		return "`" + String.join(" ", spelt) + "` is missing " + before(v);
	}

	/** What to say of a token left out before {@code v}. */
	String missing(int v, int type) {
		String spelling = words.spelling(type);
		String next = v < tokens.size() ? "before `" + tokens.text(v) + "`" : "at the end of the file";
		String before = before(v);
		return switch (type) {
			case RULE_NUMBER -> "a number is missing " + before;
			case RULE_ID -> "a name is missing " + before;
			case RULE_STRING -> "a text in \"quotes\" is missing " + before;
			case RULE_UNIT -> "a unit is missing " + before;
			default -> spelling.equals("}") ? "`}` is missing " + next + opening(v) : spelling.isEmpty() ? "something is missing " + before : "`" + spelling + "` is missing " + before;
		};
	}

	private String before(int v) {
		return v == 0 ? "at the start" : "after `" + tokens.text(v - 1) + "`";
	}

	private String opening(int v) {
		int depth = 0;
		for (int i = Math.min(v, tokens.size()) - 1; i >= 0; i--) {
			if (tokens.type(i) == words.type("}"))
				depth++;
			else if (tokens.type(i) == words.type("{") && depth-- == 0)
				return ": the `{` of line " + tokens.line(i) + " is not closed";
		}
		return "";
	}

	private void removals() {
		if (tokens.size() == 0)
			return;
		for (int v = Math.max(0, at - 2); v <= Math.min(at + 3, tokens.size() - 1); v++)
			found.add(removal(v, v, (isMistakenUnit(v) ? 3.4 : 4) + distance(v)));
		if (at >= tokens.size())
			return;
		int end = lastOfLine(at);
		if (end > at)
			found.add(removal(at, end, 5));
		int start = at;
		while (!tokens.startsLine(start))
			start--;
		int from = start;
		if (start < at)
			found.add(new Repair(t -> t.without(from, end - from + 1), 5.5, stray(at, at), at, at, ""));
		for (int last = at + 1; last < end; last++)
			found.add(removal(at, last, 4.8 + 0.01 * (last - at)));
	}

	/** A word after a number on its line is more likely a unit misspelt than a property. */
	private boolean isMistakenUnit(int v) {
		return v > 0 && tokens.type(v) == RULE_ID && tokens.type(v - 1) == RULE_NUMBER && tokens.line(v) == tokens.line(v - 1);
	}

	private Repair removal(int from, int to, double cost) {
		return new Repair(t -> t.without(from, to - from + 1), cost, stray(from, to), from, to, from == to ? unit(from) : "");
	}

	/** The unit that was meant by a word after a number that is none; empty where nothing can be said for sure. */
	private String unit(int v) {
		boolean after = v > 0 && tokens.type(v - 1) == RULE_NUMBER && tokens.type(v) == RULE_ID && !tokens.touches(v - 1, v);
		return after ? Units.suggest(tokens.text(v)).stream().findFirst().orElse("") : "";
	}

	/** What to say of words that have no place where they stand. */
	private String stray(int from, int to) {
		String word = tokens.text(from);
		if (tokens.type(from) == words.type("}"))
			return "a `}` too many";
		if (from > 0 && tokens.type(from - 1) == RULE_NUMBER && tokens.type(from) == RULE_ID) {
			String number = tokens.text(from - 1);
			List<String> units = Units.suggest(word);
			if (tokens.touches(from - 1, from) && (units.isEmpty() || word.length() == 1 && !units.get(0).equalsIgnoreCase(word)))
				return "`" + number + word + "` is no number";
			return "`" + word + "` is no unit" + (units.isEmpty() ? "" : "; `" + units.get(0) + "`?");
		}
		if (word.equals("/") && from < to && tokens.text(from + 1).equals("*"))
			return "the comment is never closed";
		if (from == to || tokens.type(from) == RULE_ID || words.isKeyword(tokens.type(from)))
			return "no `" + word + "` here";
		return "no `" + word + " ... " + tokens.text(to) + "` here";
	}

	/** The last token of a line, or the one that closes a brace opened on it. */
	private int lastOfLine(int v) {
		int depth = 0;
		int i = Math.min(v, tokens.size() - 1);
		int line = tokens.line(i);
		int last = i;
		for (; i < tokens.size() && (depth > 0 || tokens.line(i) == line); i++) {
			if (tokens.type(i) == words.type("{"))
				depth++;
			else if (tokens.type(i) == words.type("}") && depth-- == 0)
				break;
			last = i;
		}
		return last;
	}

	private double distance(int v) {
		return 0.1 * Math.abs(v - at);
	}
}
