package mouldwright.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import mouldwright.check.TextFix;
import mouldwright.language.remedy.Fixes;
import org.eclipse.xtext.diagnostics.Severity;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.CancelIndicator;
import org.eclipse.xtext.validation.CheckMode;
import org.eclipse.xtext.validation.Issue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a fix writes into the text of a spec: the words that mend it, laid out as those beside them, and nothing else. */
class FixesTest {

	private static final String STOCK = """
			hardener Mekp { density 1.16 kg/l }
			resin Ortho { density 1.13 kg/l catalyst Mekp 1 % to 2.5 % }
			mat Csm450 { areal 450 g/m2 glass 28.6 % }
			schedule OnePly using Ortho { ply Csm450 }
			schedule NoPly using Ortho { }
			sheet Ply12 { size 1220 mm by 2440 mm thickness 12 mm density 695 kg/m3 }
			""";

	private static XtextResource parse(String text) {
		return Specs.parse(Path.of("/nowhere/tried.plug"), text);
	}

	private static List<Issue> found(XtextResource resource) {
		return resource.getResourceServiceProvider().getResourceValidator().validate(resource, CheckMode.ALL, CancelIndicator.NullImpl);
	}

	/** The text after the first fix of the first finding of a code. */
	private static String mended(String code, String text) {
		XtextResource resource = parse(text);
		Issue issue = found(resource).stream().filter(i -> code.equals(i.getCode())).findFirst().orElseThrow(() -> new AssertionError(code + " is not found, but " + found(resource)));
		List<TextFix> fixes = Specs.INJECTOR.getInstance(Fixes.class).of(resource, issue);
		assertThat(fixes).as("fixes of " + issue.getMessage()).isNotEmpty();
		String after = fixes.getFirst().applyTo(text);
		XtextResource again = parse(after);
		assertThat(count(code, found(again))).as("findings left in " + after).isLessThan(count(code, found(resource)));
		assertThat(errors(found(again)).size()).as("errors of " + after).isLessThanOrEqualTo(errors(found(resource)).size());
		return after;
	}

	private static long count(String code, List<Issue> issues) {
		return issues.stream().filter(i -> code.equals(i.getCode())).count();
	}

	private static List<Issue> errors(List<Issue> issues) {
		return issues.stream().filter(i -> i.getSeverity() == Severity.ERROR).toList();
	}

	private static String cylinder(String more) {
		return STOCK + """
				plug P {
				    half sections
				    station A at 0 superellipse 200 by 400 exponent 2
				    station B at 600 like A
				    station C at 1200 like A
				%s
				}
				""".formatted(more.indent(4).stripTrailing());
	}

	@Test
	void aLapThatIsStatedTakesTheLeastAndNothingElse() {
		assertThat(mended("MW505", cylinder("skin OnePly {\n    lap 30 // narrow\n    gel for 25 min\n}"))).isEqualTo(cylinder("skin OnePly {\n    lap 50 // narrow\n    gel for 25 min\n}"));
	}

	@Test
	void aPropertyThatIsNotStatedBecomesTheLastOfItsBlock() {
		assertThat(mended("MW431", cylinder("carve {\n    crown 1.5 at most\n    board 600\n}"))).isEqualTo(cylinder("carve {\n    crown 1.5 at most\n    board 700\n}"));
	}

	@Test
	void aBlockOnOneLineStaysThere() {
		assertThat(mended("MW710", cylinder("skin OnePly { }\nfinish { sand 80 240 }"))).isEqualTo(cylinder("skin OnePly { }\nfinish { sand 80 150 240 }"));
	}

	@Test
	void squareEdgesBecomeBevelledWhereTheyAreStated() {
		String cone = STOCK + """
				plug P {
				    half sections
				    station A at 0 superellipse 200 by 400 exponent 2
				    station B at 300 superellipse 100 by 200 exponent 2
				    frame {
				        sheet Ply12
				        edges square
				        rim 40
				    }
				}
				""";
		assertThat(mended("MW211", cone)).isEqualTo(cone.replace("edges square", "edges bevelled"));
		assertThat(mended("MW211", cone.replace("        edges square\n", ""))).isEqualTo(cone.replace("        edges square\n", "").replace("rim 40\n", "rim 40\n        edges bevelled\n"));
	}

	@Test
	void stationsOutOfOrderAreSortedWithTheirSections() {
		String text = """
				plug P {
				    half sections
				    station A at 600 superellipse 200 by 400 exponent 2
				    station B at 0 like A
				    station C at 900 like A
				}
				""";
		assertThat(mended("MW103", text)).isEqualTo("""
				plug P {
				    half sections
				    station B at 0 like A
				    station A at 600 superellipse 200 by 400 exponent 2
				    station C at 900 like A
				}
				""");
	}

	@Test
	void aCrownTooHighGetsLoftedStationsWhereTheSurfaceAsksForThem() {
		String barrel = STOCK + """
				plug P {
				    half sections
				    station A at 0 superellipse 200 by 400 exponent 2 above -200
				    station B at 600 superellipse 240 by 480 exponent 2 above -240
				    station C at 1200 superellipse 200 by 400 exponent 2 above -200
				    carve { board 2000 }
				}
				""";
		String after = mended("MW412", barrel);
		assertThat(after).containsPattern("exponent 2 above -200\n    station Aa at [0-9.]+ lofted\n    station");
	}

	@Test
	void aFaceWithoutPliesGetsThemOverExactlyTheStretchThatLacksThem() {
		String text = cylinder("line low\nskin NoPly {\n    bay A to B add ply Csm450\n}").replace("    line low\n", "");
		assertThat(mended("MW501", text)).isEqualTo(text.replace("    bay A to B add ply Csm450\n", "    bay A to B add ply Csm450\n        bay B to C add ply Csm450\n"));
	}

	@Test
	void anAcceptanceThatAcceptsNothingIsTakenOutWithItsLine() {
		assertThat(mended("MW923", cylinder("accept MW431 \"our board is longer\" // since spring"))).isEqualTo(cylinder("").replace("\n\n}", "\n}"));
	}

	@Test
	void aDecimalCommaBecomesAPoint() {
		assertThat(mended("MW908", "plug P { frame { rim 60,5 } }")).isEqualTo("plug P { frame { rim 60.5 } }");
	}

	@Test
	void anUnknownNameBecomesTheNearestOne() {
		assertThat(mended("MW902", "mat Csm450 { areal 450 g/m2 } resin R { } schedule S using R { ply Csm45 }")).contains("{ ply Csm450 }");
	}

	static List<ChecksOfTextTest.Row> rows() {
		return ChecksOfTextTest.rows().stream().filter(row -> !row.code().isEmpty()).toList();
	}

	/** Every fix of a finding of the text leaves fewer findings of its code, and no new error. */
	@ParameterizedTest
	@MethodSource("rows")
	void aFixOfTheTextMendsItsFinding(ChecksOfTextTest.Row row) {
		XtextResource resource = Specs.parse(row.spec());
		List<Issue> before = Specs.findings(resource);
		List<String> left = new ArrayList<>();
		for (Issue issue : before)
			for (TextFix fix : Specs.INJECTOR.getInstance(Fixes.class).of(resource, issue)) {
				String after = fix.applyTo(row.spec());
				List<Issue> found = Specs.findings(after);
				if (found.stream().anyMatch(i -> i.getCode().equals(issue.getCode())) || errors(found).size() > errors(before).size())
					left.add(fix.title() + ": " + after + " " + found);
			}
		assertThat(left).isEmpty();
	}
}
