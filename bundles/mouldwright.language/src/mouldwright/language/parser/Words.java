package mouldwright.language.parser;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import mouldwright.units.SpellingDistance;
import org.eclipse.xtext.parser.antlr.ITokenDefProvider;

/** The keywords of the language with their token types, and which of them a misspelt word is near to. */
final class Words {

	private final Map<String, Integer> types = new TreeMap<>();
	private final Map<Integer, String> spellings = new HashMap<>();

	Words(ITokenDefProvider tokens) {
		tokens.getTokenDefMap().forEach((type, name) -> {
			if (name.length() > 2 && name.charAt(0) == '\'') {
				String spelling = name.substring(1, name.length() - 1);
				types.put(spelling, type);
				spellings.put(type, spelling);
			}
		});
	}

	/** Token type of a keyword or a mark such as a brace. */
	int type(String spelling) {
		return types.get(spelling);
	}

	/** Token type of a keyword, or null. */
	Integer typeOrNull(String spelling) {
		return types.get(spelling);
	}

	/** All keywords spelt in letters. */
	java.util.List<String> all() {
		return types.keySet().stream().filter(word -> Character.isLetter(word.charAt(0))).toList();
	}

	/** Whether a token type is a keyword spelt in letters. */
	boolean isKeyword(int type) {
		String spelling = spellings.get(type);
		return spelling != null && Character.isLetter(spelling.charAt(0));
	}

	/** How a token type is spelt; empty for names, numbers and texts. */
	String spelling(int type) {
		return spellings.getOrDefault(type, "");
	}

	/** Keywords within one slip of a short word, two of a longer one, with the count of slips. */
	Map<String, Double> near(String word) {
		Map<String, Double> result = new TreeMap<>();
		double most = word.length() < 4 ? 1 : 2;
		for (String keyword : types.keySet()) {
			if (!Character.isLetter(keyword.charAt(0)) || Math.abs(keyword.length() - word.length()) > most)
				continue;
			double slips = SpellingDistance.between(word, keyword) / 2.0;
			if (slips <= most && slips < keyword.length())
				result.put(keyword, slips);
		}
		return result;
	}
}
