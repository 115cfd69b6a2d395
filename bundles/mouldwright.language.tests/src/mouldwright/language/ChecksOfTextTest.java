package mouldwright.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each row of {@code findings.txt}: a spec, the line its one finding stands in, the finding's code, and words of its message; no code where there is rightly none. */
class ChecksOfTextTest {

	record Row(String spec, int line, String code, String message) {

		static Row of(String row) {
			String[] cells = row.split("\\|", -1);
			return new Row(cells[0].strip().replace("\\n", "\n"), Integer.parseInt(cells[1].strip()), cells[2].strip(), cells[3].strip());
		}
	}

	static List<Row> rows() {
		return Specs.read(Path.of("resources/findings.txt")).lines().filter(row -> !row.isBlank() && !row.startsWith("#")).map(Row::of).toList();
	}

	@ParameterizedTest
	@MethodSource("rows")
	void isToldOnceWithItsPlaceAndFigure(Row row) {
		List<String> found = Specs.findings(row.spec()).stream().map(i -> i.getLineNumber() + " " + i.getCode() + " " + i.getMessage()).toList();
		if (row.code().isEmpty()) {
			assertThat(found).isEmpty();
		} else {
			assertThat(found).hasSize(1);
			assertThat(found.get(0)).startsWith(row.line() + " " + row.code() + " ").contains(row.message());
		}
	}
}
