package mouldwright.language.parser;

import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_ID;
import static mouldwright.language.parser.antlr.internal.InternalPlugParser.RULE_NUMBER;

import java.util.Optional;

/**
 * Finds the line of a list of points, gel times or yields that holds a value too few or too many. The parser stumbles only at the end of
 * such a list, since values pair up across lines.
 */
final class OddLines {

	/** A line with the wrong count of values, as visible tokens, and how to read on. */
	record Odd(int first, int last, Repair repair) {
	}

	private final Tokens tokens;
	private final Words words;
	private final int at;

	OddLines(Tokens tokens, Words words, int at) {
		this.tokens = tokens;
		this.words = words;
		this.at = at;
	}

	Optional<Odd> find() {
		int open = openBefore();
		if (open < 1 || open + 1 >= tokens.size() || !isValue(open + 1))
			return Optional.empty();
		String head = tokens.text(open - 1);
		int each = head.equals("gel") ? 3 : 2;
		String what = head.equals("gel") ? "a gel time is three values: temperature, hardener, time"
				: head.equals("yield") ? "a yield is two values: temperature and share" : "a point is two values: half-breadth and height";
		for (int v = open + 1; v < tokens.size() && v <= at;) {
			int end = v;
			while (end + 1 < tokens.size() && end + 1 <= at && tokens.line(end + 1) == tokens.line(v))
				end++;
			int last = tokens.type(end) == words.type("}") ? end - 1 : end;
			int count = values(v, last);
			if (count % each != 0 && isValue(v))
				return Optional.of(new Odd(v, last, repair(v, last, count, each, what)));
			v = end + 1;
		}
		return Optional.empty();
	}

	private Repair repair(int first, int last, int count, int each, String what) {
		int end = first;
		int depth = 0;
		while (end <= last && (depth > 0 || tokens.type(end) != RULE_ID && !words.isKeyword(tokens.type(end)))) {
			depth += tokens.type(end) == words.type("(") ? 1 : tokens.type(end) == words.type(")") ? -1 : 0;
			end++;
		}
		int insertAt = end;
		String message = what + "; this line has " + count;
		return new Repair(t -> {
			Tokens result = t;
			for (int missing = count % each; missing < each; missing++)
				result = result.inserted(insertAt, RULE_NUMBER, "0");
			return result;
		}, 2.2, message, first, Math.max(first, end - 1), "");
	}

	private int openBefore() {
		int depth = 0;
		for (int v = Math.min(at, tokens.size()) - 1; v >= 0; v--) {
			if (tokens.type(v) == words.type("}"))
				depth++;
			else if (tokens.type(v) == words.type("{") && depth-- == 0)
				return v;
		}
		return -1;
	}

	private boolean isValue(int v) {
		return tokens.type(v) == RULE_NUMBER || tokens.type(v) == words.type("(") || tokens.type(v) == words.type("-");
	}

	/** Values before the first word of a line; a formula in parentheses is one. */
	private int values(int first, int last) {
		int count = 0;
		int depth = 0;
		for (int v = first; v <= last; v++) {
			int type = tokens.type(v);
			if (type == words.type("(")) {
				if (depth++ == 0)
					count++;
			} else if (type == words.type(")")) {
				depth--;
			} else if (depth == 0 && type == RULE_NUMBER) {
				if (!afterWord(v))
					count++;
			}
		}
		return count;
	}

	/** Whether a number belongs to the word before it ({@code radius 6}) and not to a point. */
	private boolean afterWord(int v) {
		String before = tokens.text(v - 1);
		return before.equals("radius") || before.equals("height") || before.equals("girth");
	}
}
