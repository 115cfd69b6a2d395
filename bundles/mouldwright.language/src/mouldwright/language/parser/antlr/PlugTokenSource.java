package mouldwright.language.parser.antlr;

import java.util.ArrayList;
import java.util.List;
import mouldwright.language.parser.antlr.internal.InternalPlugParser;
import mouldwright.language.parser.antlr.lexer.InternalPlugLexer;
import mouldwright.units.Units;
import org.antlr.runtime.ANTLRStringStream;
import org.antlr.runtime.CommonToken;
import org.antlr.runtime.Token;
import org.antlr.runtime.TokenSource;

/**
 * Tells units from words, which the lexer cannot: a word after a number or a closing parenthesis is a unit where
 * it spells one ({@code in}, {@code h}, {@code g/m2}, {@code %}), and stays a name or keyword anywhere else. So no unit is a
 * keyword, and a misspelt property after a number is not taken for its unit. Inside parentheses a comma separates the
 * amounts of {@code min} and {@code max}; outside it is a decimal comma.
 */
public final class PlugTokenSource implements TokenSource {

	private static final int COMMA = typeOf(",");
	private static final int CLOSE = typeOf(")");
	private static final int OPEN = typeOf("(");
	private static final int OVER = typeOf("/");

	private final TokenSource lexer;
	private List<CommonToken> tokens;
	private int next;

	/**
	 * @param lexer gives the tokens as spelt
	 */
	public PlugTokenSource(TokenSource lexer) {
		this.lexer = lexer;
	}

	/** The token type of a keyword. */
	static int typeOf(String keyword) {
		return new InternalPlugLexer(new ANTLRStringStream(keyword)).nextToken().getType();
	}

	@Override
	public Token nextToken() {
		if (tokens == null)
			tokens = read();
		return next < tokens.size() ? tokens.get(next++) : Token.EOF_TOKEN;
	}

	@Override
	public String getSourceName() {
		return lexer.getSourceName();
	}

	/** All tokens up to the end of the text, hidden ones too, units told from words. */
	List<CommonToken> read() {
		List<CommonToken> spelt = new ArrayList<>();
		for (Token token = lexer.nextToken(); token.getType() != Token.EOF; token = lexer.nextToken())
			addSpelt((CommonToken) token, spelt);
		return retype(spelt);
	}

	/** A text or comment that is never closed, or half a date, comes as one token; its beginning is taken alone and the rest read as words. */
	private static void addSpelt(CommonToken token, List<CommonToken> spelt) {
		if (token.getType() != Token.INVALID_TOKEN_TYPE) {
			if (!joins(token, spelt))
				spelt.add(token);
			return;
		}
		int start = token.getStartIndex();
		String text = token.getText();
		int first = 1;
		while (Character.isDigit(text.charAt(0)) && first < text.length() && Character.isDigit(text.charAt(first)))
			first++;
		int type = Character.isDigit(text.charAt(0)) ? InternalPlugParser.RULE_NUMBER : InternalPlugParser.RULE_ANY_OTHER;
		spelt.add(part(token, type, start, start + first - 1));
		if (first == text.length())
			return;
		InternalPlugLexer rest = new InternalPlugLexer(new ANTLRStringStream(text.substring(first)));
		for (Token inner = rest.nextToken(); inner.getType() != Token.EOF; inner = rest.nextToken()) {
			CommonToken word = (CommonToken) inner;
			CommonToken moved = part(token, word.getType(), start + first + word.getStartIndex(), start + first + word.getStopIndex());
			moved.setLine(token.getLine() + word.getLine() - 1);
			addSpelt(moved, spelt);
		}
	}

	/** Letters of other alphabets come one by one; those that touch are one word, with the Latin ones among them. */
	private static boolean joins(CommonToken token, List<CommonToken> spelt) {
		if (spelt.isEmpty() || !isLetters(token) || !isLetters(spelt.getLast()) || spelt.getLast().getStopIndex() + 1 != token.getStartIndex()
				|| token.getType() != InternalPlugParser.RULE_ANY_OTHER && spelt.getLast().getType() != InternalPlugParser.RULE_ANY_OTHER)
			return false;
		spelt.getLast().setStopIndex(token.getStopIndex());
		spelt.getLast().setText(null); // a token remembers the text it was first asked for
		spelt.getLast().setType(InternalPlugParser.RULE_ANY_OTHER);
		return true;
	}

	private static boolean isLetters(CommonToken token) {
		return token.getType() == InternalPlugParser.RULE_ID || token.getType() == InternalPlugParser.RULE_ANY_OTHER
				&& token.getText().chars().allMatch(c -> Character.isLetterOrDigit(c) || Character.isSurrogate((char) c));
	}

	private static List<CommonToken> retype(List<CommonToken> spelt) {
		List<CommonToken> result = new ArrayList<>(spelt.size());
		int before = Token.INVALID_TOKEN_TYPE;
		int depth = 0;
		for (int i = 0; i < spelt.size(); i++) {
			CommonToken token = spelt.get(i);
			if (isHidden(token)) {
				result.add(token);
				continue;
			}
			int type = token.getType();
			if (type == OPEN)
				depth++;
			else if (type == CLOSE)
				depth = Math.max(0, depth - 1);
			if (type == InternalPlugParser.RULE_NUMBER && depth > 0 && token.getText().indexOf(',') > 0) {
				splitAtComma(token, result);
			} else if (mayBeUnit(before) && isWord(token)) {
				int last = lastOfUnit(spelt, i, depth);
				if (last >= i) {
					token.setType(InternalPlugParser.RULE_UNIT);
					token.setStopIndex(spelt.get(last).getStopIndex());
					i = last;
				}
				result.add(token);
			} else {
				result.add(token);
			}
			before = token.getType();
		}
		return result;
	}

	static boolean isHidden(Token token) {
		int type = token.getType();
		return type == InternalPlugParser.RULE_WS || type == InternalPlugParser.RULE_SL_COMMENT || type == InternalPlugParser.RULE_ML_COMMENT;
	}

	private static boolean mayBeUnit(int before) {
		return before == InternalPlugParser.RULE_NUMBER || before == CLOSE;
	}

	/** Whether a token is a name, a keyword spelt like a name, or a percent sign. */
	static boolean isWord(CommonToken token) {
		String text = token.getText();
		char first = text.charAt(0);
		return Character.isLetter(first) || first == '_' || first == '\u00B0' || text.equals("%");
	}

	/**
	 * Index of the last token of the unit that begins at {@code first}, or less than {@code first} if none does. A quotient must be written
	 * without spaces; an unknown one is still taken for a unit, so that it is reported whole.
	 */
	private static int lastOfUnit(List<CommonToken> spelt, int first, int depth) {
		String text = spelt.get(first).getText();
		boolean quotient = first + 2 < spelt.size() && spelt.get(first + 1).getType() == OVER && isWord(spelt.get(first + 2));
		if (quotient && (Units.isUnit(text + "/" + spelt.get(first + 2).getText()) || depth == 0 && Units.isUnit(text)))
			return first + 2;
		return Units.isUnit(text) ? first : first - 1;
	}

	private static void splitAtComma(CommonToken number, List<CommonToken> result) {
		int comma = number.getStartIndex() + number.getText().indexOf(',');
		result.add(part(number, InternalPlugParser.RULE_NUMBER, number.getStartIndex(), comma - 1));
		result.add(part(number, COMMA, comma, comma));
		result.add(part(number, InternalPlugParser.RULE_NUMBER, comma + 1, number.getStopIndex()));
	}

	private static CommonToken part(CommonToken whole, int type, int start, int stop) {
		CommonToken part = new CommonToken(whole.getInputStream(), type, whole.getChannel(), start, stop);
		part.setLine(whole.getLine());
		part.setCharPositionInLine(whole.getCharPositionInLine() + start - whole.getStartIndex());
		return part;
	}
}
