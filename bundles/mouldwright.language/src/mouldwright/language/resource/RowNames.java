package mouldwright.language.resource;

import java.util.List;
import java.util.stream.IntStream;

/** The names of a row of stations: {@code R1} to {@code R3} is R1, R2, R3. */
public final class RowNames {

	/** The most stations a row may have. */
	public static final int MOST = 1000;

	private RowNames() {
	}

	/**
	 * The names from the first to the last.
	 *
	 * @param first a word that ends in a number
	 * @param last  the same word with a higher number
	 * @return all names; empty where these two make no row
	 */
	public static List<String> between(String first, String last) {
		if (first == null || last == null)
			return List.of();
		int cut = wordLength(first);
		if (cut != wordLength(last) || !first.substring(0, cut).equals(last.substring(0, cut)) || first.length() - cut > 6 || last.length() - cut > 6
				|| cut == first.length() || cut == last.length())
			return List.of();
		int from = Integer.parseInt(first.substring(cut));
		int to = Integer.parseInt(last.substring(cut));
		if (to < from || to - from >= MOST)
			return List.of();
		String word = first.substring(0, cut);
		return IntStream.rangeClosed(from, to).mapToObj(n -> word + n).toList();
	}

	private static int wordLength(String name) {
		int length = name.length();
		while (length > 0 && Character.isDigit(name.charAt(length - 1)))
			length--;
		return length;
	}
}
