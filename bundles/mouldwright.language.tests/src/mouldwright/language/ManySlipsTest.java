package mouldwright.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import mouldwright.language.parser.Mend;
import mouldwright.language.parser.MendedParseResult;
import org.junit.jupiter.api.Test;

/** What a text full of mistakes costs whoever types on it, counted in repairs that are tried: time would say what else the machine does. */
class ManySlipsTest {

	/** Some four thousand, and what the last mistake before them takes. */
	private static final int MOST = 6_000;
	private static final Path CANOPY = Specs.EXAMPLES.resolve("rain-canopy/canopy.plug");

	private static MendedParseResult read(String text) {
		return (MendedParseResult) Specs.parse(CANOPY, text).getParseResult();
	}

	@Test
	void wordsThatNothingExplainsCostNoMoreTheMoreOfThemThereAre() {
		String text = Specs.read(CANOPY);
		String wrong = text.replaceAll("(?m)^( +)(station|skin|fill|frame|carve|finish|mould|lap|gel|overfill|rim|board|crown)\\b", "$1zzqx$2zz");
		MendedParseResult read = read(wrong);
		assertThat(read.tries()).isLessThan(MOST);
		assertThat(read.mends()).hasSizeGreaterThan(10);
		assertThat(read.getRootASTElement()).isNotNull();
	}

	@Test
	void oneSlipIsMendedInSomeHundredTries() {
		MendedParseResult read = read(Specs.read(CANOPY).replaceFirst("overfill", "overfil"));
		assertThat(read.mends()).hasSize(1);
		assertThat(read.tries()).isLessThan(500);
	}

	@Test
	void theSameMistakesAreMendedTheSameWayEachTime() {
		String wrong = Specs.read(CANOPY).replace("station", "stetoin").replace(" at ", " et ");
		assertThat(read(wrong).mends()).extracting(Mend::message).isEqualTo(read(wrong).mends().stream().map(Mend::message).toList());
	}
}
