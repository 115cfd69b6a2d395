package mouldwright.language.parser;

import java.util.Set;

/**
 * The part of a text round a mistake on which repairs are tried, so that trying costs the same in a long file as in a short
 * one: the head of the declaration the mistake stands in, its last parts before the mistake, and some tokens after it.
 *
 * @param tokens    the part
 * @param truncated whether the text goes on after it, so that its end is no mistake
 */
record Window(Tokens tokens, boolean truncated) {

	private static final int AFTER = 100;
	private static final int NEAR = 150;
	private static final Set<String> DECLARATIONS = Set.of("use", "library", "plug", "survey", "schedule", "hardener", "resin", "mat", "foam",
			"filler", "coating", "sheet", "consumable", "rates");

	static Window around(Tokens all, int mistake, Words words) {
		int open = words.type("{");
		int close = words.type("}");
		int start = 0;
		int head = -1;
		int depth = 0;
		int lastPart = -1;
		int partBefore = -1;
		for (int v = 0; v <= mistake && v < all.size(); v++) {
			int type = all.type(v);
			if (depth == 0 && all.startsLine(v) && DECLARATIONS.contains(words.spelling(type))) {
				start = v;
				head = -1;
				lastPart = -1;
				partBefore = -1;
			} else if (depth == 1 && all.startsLine(v) && words.isKeyword(type)) {
				partBefore = lastPart;
				lastPart = v;
			}
			if (type == open) {
				if (depth == 0 && head < 0)
					head = v;
				depth++;
			} else if (type == close) {
				depth = Math.max(0, depth - 1);
			}
		}
		int end = Math.min(all.size(), mistake + AFTER);
		boolean truncated = end < all.size();
		if (head >= 0 && partBefore > head + NEAR)
			return new Window(all.slice(start, head + 1).with(all.slice(partBefore, end)), truncated);
		return new Window(all.slice(start, end), truncated);
	}
}
