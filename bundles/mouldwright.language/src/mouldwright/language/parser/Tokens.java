package mouldwright.language.parser;

import java.util.ArrayList;
import java.util.List;
import mouldwright.language.parser.antlr.internal.InternalPlugParser;
import org.antlr.runtime.CommonToken;

/** A run of tokens, hidden ones among them, with the visible ones counted apart. Immutable; changes make a new run. */
final class Tokens {

	private final List<CommonToken> all;
	private final int[] visible;

	Tokens(List<CommonToken> all) {
		this.all = all;
		int[] indices = new int[all.size()];
		int count = 0;
		for (int i = 0; i < all.size(); i++)
			if (!hidden(all.get(i)))
				indices[count++] = i;
		visible = java.util.Arrays.copyOf(indices, count);
	}

	static boolean hidden(CommonToken token) {
		int type = token.getType();
		return type == InternalPlugParser.RULE_WS || type == InternalPlugParser.RULE_SL_COMMENT || type == InternalPlugParser.RULE_ML_COMMENT;
	}

	/** Copies for one run of the parser, which writes into its tokens. */
	List<CommonToken> copies() {
		List<CommonToken> result = new ArrayList<>(all.size());
		for (CommonToken token : all)
			result.add(copy(token, token.getType()));
		return result;
	}

	int size() {
		return visible.length;
	}

	CommonToken get(int v) {
		return all.get(visible[v]);
	}

	String text(int v) {
		return get(v).getText();
	}

	int type(int v) {
		return v >= 0 && v < size() ? get(v).getType() : -1;
	}

	int line(int v) {
		return get(v).getLine();
	}

	/** Whether nothing visible stands before a token on its line. */
	boolean startsLine(int v) {
		return v == 0 || line(v - 1) < line(v);
	}

	/** Whether two tokens touch. */
	boolean touches(int v, int next) {
		return v >= 0 && next < size() && get(v).getStopIndex() + 1 == get(next).getStartIndex();
	}

	/** The visible token a position in the whole run belongs to; the count of visible ones at the end. */
	int visibleAt(int index) {
		int at = java.util.Arrays.binarySearch(visible, index);
		return at >= 0 ? at : -at - 1;
	}

	/** Offset of a visible token in the text; that of the end past the last. */
	int offset(int v) {
		if (v < size())
			return get(v).getStartIndex();
		return all.isEmpty() ? 0 : all.get(all.size() - 1).getStopIndex() + 1;
	}

	/** The visible token at an offset of the text; the count of visible ones past the last. */
	int indexOfOffset(int offset) {
		int v = 0;
		while (v < size() && get(v).getStartIndex() < offset)
			v++;
		return v;
	}

	/**
	 * The same run with a part of it changed. The part may leave out tokens in its middle; those stay as they are.
	 *
	 * @param part    tokens of this run
	 * @param changed the same tokens after a repair
	 */
	Tokens replaced(Tokens part, Tokens changed) {
		java.util.Set<CommonToken> taken = java.util.Collections.newSetFromMap(new java.util.IdentityHashMap<>());
		taken.addAll(part.all);
		java.util.Set<CommonToken> kept = java.util.Collections.newSetFromMap(new java.util.IdentityHashMap<>());
		kept.addAll(changed.all);
		List<CommonToken> result = new ArrayList<>();
		for (CommonToken token : all)
			if (!taken.contains(token) || kept.contains(token))
				result.add(token);
		for (CommonToken token : changed.all)
			if (!taken.contains(token))
				result.add(token);
		result.sort(java.util.Comparator.comparingInt(CommonToken::getStartIndex).thenComparingInt(CommonToken::getStopIndex));
		return new Tokens(result);
	}

	Tokens slice(int from, int to) {
		int start = from == 0 ? 0 : visible[from];
		int end = to >= size() ? all.size() : visible[to];
		return new Tokens(all.subList(start, end));
	}

	Tokens with(Tokens more) {
		List<CommonToken> result = new ArrayList<>(all);
		result.addAll(more.all);
		return new Tokens(result);
	}

	/** The same run with one token taken for another kind. */
	Tokens retyped(int v, int type) {
		List<CommonToken> result = new ArrayList<>(all);
		result.set(visible[v], copy(get(v), type));
		return new Tokens(result);
	}

	/** The same run without some visible tokens, which become comment. */
	Tokens without(int v, int count) {
		Tokens result = this;
		for (int i = v + count - 1; i >= v; i--)
			result = result.retyped(i, InternalPlugParser.RULE_ML_COMMENT);
		return result;
	}

	/** The same run with a token of no length after the visible one before {@code v}. */
	Tokens inserted(int v, int type, String text) {
		List<CommonToken> result = new ArrayList<>(all);
		int at = v == 0 ? 0 : visible[v - 1] + 1;
		int offset = v == 0 ? 0 : get(v - 1).getStopIndex() + 1;
		CommonToken token = new CommonToken(type, text);
		token.setInputStream(all.isEmpty() ? null : all.get(0).getInputStream());
		token.setStartIndex(offset);
		token.setStopIndex(offset - 1);
		token.setLine(v == 0 ? 1 : line(v - 1));
		result.add(at, token);
		return new Tokens(result);
	}

	/** The same run with one token cut in two. */
	Tokens cut(int v, int length, int firstType, int secondType) {
		List<CommonToken> result = new ArrayList<>(all);
		CommonToken whole = get(v);
		CommonToken first = copy(whole, firstType);
		first.setStopIndex(whole.getStartIndex() + length - 1);
		CommonToken second = copy(whole, secondType);
		second.setStartIndex(whole.getStartIndex() + length);
		result.set(visible[v], first);
		result.add(visible[v] + 1, second);
		return new Tokens(result);
	}

	/** The same run with some neighbours taken for one token. */
	Tokens joined(int first, int last, int type) {
		List<CommonToken> result = new ArrayList<>(all.subList(0, visible[first]));
		CommonToken whole = copy(get(first), type);
		whole.setStopIndex(get(last).getStopIndex());
		result.add(whole);
		result.addAll(all.subList(visible[last] + 1, all.size()));
		return new Tokens(result);
	}

	private static CommonToken copy(CommonToken token, int type) {
		CommonToken copy = new CommonToken(token.getInputStream(), type, token.getChannel(), token.getStartIndex(), token.getStopIndex());
		copy.setLine(token.getLine());
		copy.setCharPositionInLine(token.getCharPositionInLine());
		if (token.getStopIndex() < token.getStartIndex())
			copy.setText(token.getText());
		return copy;
	}
}
