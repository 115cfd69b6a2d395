package mouldwright.language.parser;

/**
 * A word of a text as the lexer reads it, space and comments among them.
 *
 * @param kind   what the grammar calls it: a keyword or mark in single quotes, as {@code 'plug'}, or a terminal, as {@code NUMBER}
 * @param offset where it begins, characters from the start of the text
 * @param text   as written
 */
public record Word(String kind, int offset, String text) {

	/** Where it ends. */
	public int end() {
		return offset + text.length();
	}

	/** Whether it is space or a comment. */
	public boolean isHidden() {
		return kind.equals("WS") || isComment();
	}

	/** Whether it is a comment. */
	public boolean isComment() {
		return kind.equals("ML_COMMENT") || kind.equals("SL_COMMENT");
	}
}
