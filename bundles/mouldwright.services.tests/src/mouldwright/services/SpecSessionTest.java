package mouldwright.services;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import mouldwright.report.TextFinding;
import mouldwright.check.Severity;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Specs read through their project, checked and planned. The texts are our own. */
class SpecSessionTest {

    private static final String BOX = """
            plug Box {
                units mm
                half sections
                station A at 0 {
                    0 0
                    100 0 knuckle
                    100 50 knuckle
                    0 50
                }
                station B at 400 like A
            }
            """;

    private static SpecSession session;

    @TempDir
    private Path folder;

    @BeforeAll
    static void setUp() {
        session = SpecSession.start();
    }

    private Path write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private Checked check(String text) throws IOException {
        return session.check(write("tried.plug", text), () -> false);
    }

    @Test void aBoxOfTwoHundredByFiftyByFourHundredHoldsFourLitres() throws IOException { // closed form
        Checked checked = check(BOX);
        assertThat(checked.findings()).isEmpty();
        assertThat(checked.plans().get("Box").quantity("shape.volume").orElseThrow().value()).isCloseTo(0.004, within(1e-12));
    }

    @Test void withAnErrorThereIsNoPlan() throws IOException { // no figures beside findings
        Checked checked = check(BOX.replace("like A", "like Q"));
        assertThat(checked.hasErrors()).isTrue();
        assertThat(checked.plans()).isEmpty();
    }

    @Test void findingsStandInTheOrderOfTheText() throws IOException {
        Checked checked = check(BOX.replace("at 0 ", "at 0 kg ").replace("at 400", "at 400 m2"));
        assertThat(checked.findings()).extracting(TextFinding::line).containsExactly(4, 10);
        assertThat(checked.findings()).allSatisfy(finding -> assertThat(finding.code()).matches("MW\\d{3}"));
    }

    @Test void anErrorInALibraryIsToldInTheLibrary() throws IOException {
        write("stock/foam.plug", "library stock.foam\nfoam Pour { density 36 mm }\n");
        Checked checked = check("use stock.foam\n" + BOX.replace("like A", "like A\n    fill Pour solid { }"));
        assertThat(checked.findings()).as("%s", checked.findings()).extracting(TextFinding::file).containsExactly(folder.resolve("stock/foam.plug"));
        assertThat(checked.texts()).containsKeys(folder.resolve("stock/foam.plug"), folder.resolve("tried.plug"));
    }

    /** A box that is skinned with a resin whose pot a library states. */
    private Checked skinned(String pot, String more) throws IOException {
        write("stock/resin.plug", "library stock.resin\nhardener Mekp { }\nresin Ortho { catalyst Mekp 1 %% to 2 %% pot %s at most }\nmat Csm { areal 450 g/m2 }\nschedule Skin using Ortho { ply Csm }\n".formatted(pot));
        return check("use stock.resin\n" + BOX.replace("like A", "like A\n    skin Skin { }\n    " + more));
    }

    @Test void aFigureNoWorkshopMeetsIsToldWithEverySpecThatUsesItsLibrary() throws IOException { // 50 g to 50 kg are met
        assertThat(skinned("1 kg", "").findings()).noneMatch(finding -> finding.code().equals("MW930"));
        assertThat(skinned("10 g", "").findings()).filteredOn(finding -> finding.code().equals("MW930")).singleElement()
                .satisfies(finding -> assertThat(finding.file()).isEqualTo(folder.resolve("stock/resin.plug")));
        assertThat(skinned("10 g", "accept MW930 \"syringes\"").findings()).noneMatch(finding -> finding.code().matches("MW9(30|23)"));
    }

    @Test void aSlipThatMakesATaskEndlessIsOneErrorAtTheSlip() throws IOException { // a pot of a microgram takes five minutes like any other
        Checked checked = skinned("1e-6 g", "");
        assertThat(checked.findings()).filteredOn(finding -> finding.severity() == Severity.ERROR).singleElement().satisfies(finding -> {
            assertThat(finding.code()).isEqualTo("MW930");
            assertThat(finding.file()).isEqualTo(folder.resolve("stock/resin.plug"));
        });
        assertThat(checked.plans()).isEmpty();
        assertThat(skinned("1e-6 g", "accept MW930 \"really\"").findings()).filteredOn(finding -> finding.severity() == Severity.ERROR)
                .extracting(TextFinding::code).containsExactly("MW802");
    }

    @Test void aProjectMayMakeAWarningAnErrorButNotAnErrorAWarning() throws IOException { // project settings
        String comma = BOX.replace("at 400", "at 400,5");
        assertThat(check(comma).findings()).extracting(TextFinding::severity).containsExactly(Severity.WARNING);
        write("mouldwright.project", "severity.MW908 = error\nseverity.MW902 = info\n");
        assertThat(check(comma).findings()).extracting(TextFinding::severity).containsExactly(Severity.ERROR);
        assertThat(check(BOX.replace("like A", "like Q")).findings()).extracting(TextFinding::severity).containsExactly(Severity.ERROR);
        write("mouldwright.project", "severity.MW908 = off\n");
        assertThat(check(comma).findings()).isEmpty();
    }

    @Test void aLineOfTheProjectFileThatIsNotUnderstoodIsToldThere() throws IOException {
        write("mouldwright.project", "name = Boxes\ncolour = red\n");
        TextFinding finding = check(BOX).findings().getFirst();
        assertThat(finding.file().getFileName()).hasToString("mouldwright.project");
        assertThat(finding.line()).isEqualTo(2);
    }

    @Test void theRevisionIsThatOfTheTextsWhereverTheyLieAndWhateverTheirLineEnds() throws IOException {
        String revision = check(BOX).revision();
        assertThat(revision).hasSize(12);
        write("elsewhere/mouldwright.project", "");
        assertThat(session.check(write("elsewhere/tried.plug", BOX.replace("\n", "\r\n")), () -> false).revision()).isEqualTo(revision);
        assertThat(check(BOX + "// changed\n").revision()).isNotEqualTo(revision);
    }

    @Test void aFigureKnowsItsLineAsTheProjectNamesTheFile() throws IOException {
        write("mouldwright.project", "");
        Checked checked = session.check(write("boats/box.plug", BOX), () -> false);
        String tree = new mouldwright.report.Explanation(mouldwright.units.UnitSystem.METRIC).print(checked.plans().get("Box"), "shape.length").orElseThrow();
        assertThat(tree).contains("boats/box.plug:4").contains("| station A at 0 {").contains("boats/box.plug:10");
    }

    @Test void theSameTextGivesTheSameFindingsEachTime() throws IOException { // an edited document's findings equal a fresh parse's
        String wrong = BOX.replace("knuckle", "knukle");
        assertThat(check(wrong).findings()).isEqualTo(check(wrong).findings()).isNotEmpty();
    }

    @Test void nestingWithoutEndIsAFindingAndNoCrash() throws IOException {
        Checked checked = check(BOX.replace("at 400", "at " + "(".repeat(200_000) + "1" + ")".repeat(200_000)));
        assertThat(checked.hasErrors()).isTrue();
    }

    @Test void aFileOutsideIsNotReachedByALink() throws IOException {
        Path outside = Files.createTempFile("outside", ".plug");
        Path link = folder.resolve("link.plug");
        Files.createSymbolicLink(link, outside);
        Checked checked = session.check(link, () -> false);
        assertThat(checked.read()).isFalse();
        assertThat(checked.findings()).hasSize(1);
        Files.delete(outside);
    }
}
