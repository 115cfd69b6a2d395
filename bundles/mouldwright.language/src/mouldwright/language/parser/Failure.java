package mouldwright.language.parser;

/**
 * Where the parser could not go on.
 *
 * @param index    place in the run of tokens, hidden ones counted; their count at the end
 * @param expected token type it asked for, or 0 if several would do
 */
record Failure(int index, int expected) {
}
