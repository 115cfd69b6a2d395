package mouldwright.language.parser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Of the repairs offered, the one with which the parser gets furthest; of equals the cheapest. One that leaves words of the writer's out stands back
 * behind one that does not, where that gets the parser on by some words.
 */
final class Choice {

	/** From this cost on a repair leaves words of the writer's out. */
	private static final double LEAVES_OUT = 4;

	private final int enough;
	private final Best small;
	private final Best large;

	/**
	 * @param mistake offset of the mistake in the text: a repair must get past it
	 * @param enough  offset from which on a small repair is good
	 */
	Choice(int mistake, int enough) {
		this.enough = enough;
		this.small = new Best(mistake);
		this.large = new Best(mistake);
	}

	void offer(Repair repair, int reached) {
		(repair.cost() < LEAVES_OUT ? small : large).offer(repair, reached);
	}

	/** Whether nothing better was found than leaving words out. */
	boolean isPoor() {
		return small.equals.isEmpty() || small.furthest < enough && large.furthest > small.furthest;
	}

	/** The repair; where several words would do alike, the first of them with a message that names two. */
	Optional<Repair> best() {
		if (isPoor())
			return large.equals.isEmpty() ? Optional.empty() : Optional.of(large.equals.get(0));
		Repair first = small.equals.get(0);
		if (small.equals.size() == 1)
			return Optional.of(first);
		String other = small.equals.get(1).message();
		String word = other.startsWith("`") ? other.substring(0, other.indexOf('`', 1) + 1) : "";
		boolean missing = !word.isEmpty() && first.message().startsWith("`") && first.message().contains("` is missing ");
		return Optional.of(missing ? new Repair(first.change(), first.cost(), first.message().replaceFirst("` is missing", "` or " + word.replace("$", "") + " is missing"),
				first.from(), first.to(), "") : first);
	}

	/** The furthest-reaching repairs of one kind, all of the same cost. */
	private static final class Best {

		private final List<Repair> equals = new ArrayList<>();
		private int furthest;

		Best(int mistake) {
			furthest = mistake;
		}

		void offer(Repair repair, int reached) {
			if (reached < furthest || reached == furthest && equals.isEmpty())
				return;
			if (reached > furthest || repair.cost() < equals.get(0).cost())
				equals.clear();
			if (equals.isEmpty() || repair.cost() == equals.get(0).cost())
				equals.add(repair);
			furthest = reached;
		}
	}
}
