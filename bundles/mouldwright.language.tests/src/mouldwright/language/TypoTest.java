package mouldwright.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.xtext.nodemodel.ICompositeNode;
import org.eclipse.xtext.nodemodel.util.NodeModelUtils;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.validation.Issue;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * One slip of the writer gives one finding, at its place, and costs nothing of what follows. The slips are in {@code typos.txt}: file, what is written, what is
 * written instead, how many lines below the first changed one the finding stands, its code, and words of its message.
 */
class TypoTest {

	record Typo(String file, String right, String wrong, int down, String code, String message) {

		static Typo of(String row) {
			String[] cells = row.split("\\|", -1);
			return new Typo(cells[0], cells[1].replace("\\n", "\n"), cells[2].replace("\\n", "\n"), Integer.parseInt(cells[3]), cells[4], cells[5]);
		}

		@Override
		public String toString() {
			return file + ": " + right.replace("\n", "\\n") + " -> " + wrong.replace("\n", "\\n");
		}
	}

	static Stream<Typo> typos() {
		return Specs.read(Path.of("resources/typos.txt")).lines().filter(row -> !row.isBlank() && !row.startsWith("#")).map(Typo::of);
	}

	@ParameterizedTest(name = "{0}")
	@MethodSource("typos")
	void oneSlipGivesOneFindingAndLosesNothing(Typo typo) {
		Path file = Specs.EXAMPLES.resolve(typo.file());
		String right = Specs.read(file);
		int at = right.indexOf(typo.right());
		assertThat(at).as("the text of the row stands in the example").isNotNegative();
		String wrong = right.substring(0, at) + typo.wrong() + right.substring(at + typo.right().length());
		int line = lines(right.substring(0, at)) + 1;
		XtextResource before = Specs.parse(file, right);
		XtextResource after = Specs.parse(file, wrong);

		List<String> found = new ArrayList<>();
		for (Issue issue : Specs.findings(after))
			found.add(issue.getLineNumber() + " " + issue.getCode() + " " + issue.getMessage());
		if (typo.code().isEmpty()) {
			assertThat(found).isEmpty();
		} else {
			assertThat(found).hasSize(1);
			assertThat(found.get(0)).startsWith((line + typo.down()) + " " + typo.code() + " ").contains(typo.message());
		}
		int changed = lines(typo.right());
		assertThat(partsFrom(after, line + 1 + lines(typo.wrong()))).isEqualTo(partsFrom(before, line + 1 + changed));
	}

	private static int lines(String text) {
		return (int) text.chars().filter(c -> c == '\n').count();
	}

	/** How many parts of each kind begin at a line or below. */
	private static Map<String, Integer> partsFrom(XtextResource resource, int line) {
		Map<String, Integer> result = new TreeMap<>();
		resource.getAllContents().forEachRemaining((EObject part) -> {
			ICompositeNode node = NodeModelUtils.getNode(part);
			if (node != null && node.getStartLine() >= line)
				result.merge(part.eClass().getName(), 1, Integer::sum);
		});
		return result;
	}
}
