package mouldwright.language.parser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Of the repairs offered, the one with which the parser gets furthest; of equals the cheapest. */
final class Choice {

	/** From this cost on a repair leaves words of the writer's out. */
	private static final double LEAVES_OUT = 4;

	private final List<Repair> equals = new ArrayList<>();
	private int furthest;

	/**
	 * @param mistake offset of the mistake in the text: a repair must get past it
	 */
	Choice(int mistake) {
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

	/** Whether nothing better was found than leaving words out. */
	boolean isPoor() {
		return equals.isEmpty() || equals.get(0).cost() >= LEAVES_OUT;
	}

	/** The repair; where several words would do alike, the first of them with a message that names two. */
	Optional<Repair> best() {
		if (equals.isEmpty())
			return Optional.empty();
		Repair first = equals.get(0);
		if (equals.size() == 1 || isPoor())
			return Optional.of(first);
		String other = equals.get(1).message();
		String word = other.startsWith("`") ? other.substring(0, other.indexOf('`', 1) + 1) : "";
		boolean missing = !word.isEmpty() && first.message().startsWith("`") && first.message().contains("` is missing ");
		return Optional.of(missing ? new Repair(first.change(), first.cost(), first.message().replaceFirst("` is missing", "` or " + word.replace("$", "") + " is missing"),
				first.from(), first.to(), "") : first);
	}
}
