package mouldwright.language.parser.antlr;

import java.util.List;
import org.antlr.runtime.CommonToken;
import org.antlr.runtime.TokenSource;

/** The tokens of a text as a list. */
public final class PlugTokens {

	private PlugTokens() {
	}

	/**
	 * All tokens of a text, hidden ones too, units told from words.
	 *
	 * @param lexer gives the tokens as spelt
	 * @return tokens in the order of the text, without an end mark
	 */
	public static List<CommonToken> of(TokenSource lexer) {
		return new PlugTokenSource(lexer).read();
	}
}
