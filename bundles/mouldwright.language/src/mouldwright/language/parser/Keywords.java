package mouldwright.language.parser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words of the language, read from the parser's own table, so that they can be shown before the language has been set up. */
public final class Keywords {

	private static final String TABLE = "antlr/internal/InternalPlugParser.tokens";
	private static final Pattern WORD = Pattern.compile("^'(\\p{L}+)'=\\d+$", Pattern.MULTILINE);

	private Keywords() { }

	/** All keywords spelt in letters, in alphabetical order. */
	public static Set<String> all() {
		return Table.WORDS;
	}

	private static final class Table {
		private static final Set<String> WORDS = read();

		private static Set<String> read() {
			try (InputStream table = Keywords.class.getResourceAsStream(TABLE)) {
				Set<String> words = new TreeSet<>();
				Matcher line = WORD.matcher(new String(table.readAllBytes(), StandardCharsets.UTF_8));
				while (line.find())
					words.add(line.group(1));
				return Collections.unmodifiableSet(words);
			} catch (IOException e) {
				throw new UncheckedIOException("the table of words cannot be read", e);
			}
		}
	}
}
