package mouldwright.language.parser;

/**
 * What was wrong with the text at one place, and what the parser took it for so that it could read on.
 *
 * @param offset  where the finding stands, characters from the start of the text
 * @param length  how many characters it covers
 * @param message what is wrong and what would be right, in the words of the language
 * @param replace what to write instead of the covered characters; empty if nothing can be said for sure
 */
public record Mend(int offset, int length, String message, String replace) {
}
