package mouldwright.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import mouldwright.plan.Assumption;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Nothing is taken silently: whatever a spec leaves out is in the plan's list of what it assumes, and what it states is not. */
class AssumedTest {

    /** States everything the stages there are ask for. */
    private static final String FULL = """
            foam Pour {
                density 36 kg/m3
                ratio 100 to 100 by volume
                parts 1.12 kg/l and 1.22 kg/l
                cream 36 s
                lift 200 mm at most
                pot 1 kg at most
                yield { 15 degC 80 % 20 degC 90 % 25 degC 95 % }
            }
            hardener Mekp { density 1.16 kg/l }
            resin Ortho {
                density 1.13 kg/l
                cured 1.2 kg/l
                catalyst Mekp 1 % to 2.5 %
                gel { 15 degC 1 % 55 min 15 degC 2 % 30 min 25 degC 1 % 24 min 25 degC 2 % 12 min }
                pot 2 kg at most
            }
            mat Csm450 {
                areal 450 g/m2
                glass 28.6 %
                roll 1.25 m by 50 m
                lay 4 m2/h
            }
            sheet Ply12 {
                size 1220 mm by 2440 mm
                thickness 12 mm
                density 695 kg/m3
            }
            coating Surfacer { dry 150 um }
            schedule OnePly using Ortho { ply Csm450 }
            plug P {
                units mm
                half sections
                shop 20 degC
                allow 0.3 % shrink
                end forward bare
                end aft bare
                station A at 0 superellipse 200 by 400 exponent 2 above 100
                station B at 300 like A
                station C at 600 like A scaled 0.9 by 0.9 about 0 100
                frame {
                    sheet Ply12 measured 11.7 clearance 0.2
                    edges square
                    rim 60
                    backbone 58.5 by 90 above 250
                    holes 8
                    base Ply12 margin 100
                }
                fill Pour shell 80 {
                    overfill 15
                    bay A to C shell 80 pour upright
                }
                carve {
                    board 1200
                    crown 1.5 at most
                }
                skin OnePly {
                    lap 50
                    gel for 25 min
                    on foam 350 g/m2
                }
                finish { 3 coats Surfacer sanded 30 % }
            }
            """;

    /** What no spec can state, and what the one above leaves open: the figures of the shop, of finish and of waits. */
    private static final List<String> LEFT_OPEN = List.of(
            "working week", "first day", "wage", "glass density", "backbone density", "share of a sheet used", "share of a sheet used for the base",
            "share of the yield reached in practice", "time to mix a pot of foam", "pouring rate", "firm time",
            "thermal diffusivity of foam", "trial cup", "rise time", "laps and folds of release film", "pitch of stand-offs",
            "carve rate", "carve after", "glass bubbles to one of resin", "particle density of glass bubbles",
            "filler hard after", "fair rate", "spoilt mat", "wet film", "transfer", "labour of a bulkhead",
            "shuttering rate", "labour of a pot", "hard after", "styrene", "coating rate", "lift per person", "crew",
            "working day", "waste of resin", "styrene limit in the air", "mixing factor of the air");

    private static SpecSession session;

    @TempDir
    private Path folder;

    @BeforeAll
    static void setUp() {
        session = SpecSession.start();
    }

    private List<String> assumed(String text) throws IOException {
        Checked checked = session.check(Files.writeString(folder.resolve("tried.plug"), text), () -> false);
        assertThat(checked.hasErrors()).as("%s", checked.findings()).isFalse();
        return checked.plans().get("P").assumed().stream().map(Assumption::name).toList();
    }

    @Test void nothingThatIsStatedIsListed() throws IOException {
        assertThat(assumed(FULL)).containsExactlyInAnyOrderElementsOf(LEFT_OPEN);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "units mm                                   |                         | units",
        "half sections                              |                         | sections",
        "shop 20 degC                               |                         | shop temperature",
        "allow 0.3 % shrink                         |                         | shrink",
        "end forward bare                           |                         | forward end",
        "end aft bare                               |                         | aft end",
        "exponent 2                                 |                         | superellipse exponent",
        "above 100                                  |                         | superellipse above base",
        "about 0 100                                |                         | scaled about",
        "measured 11.7                              |                         | sheet thickness",
        "clearance 0.2                              |                         | slot clearance",
        "edges square                               |                         | edges",
        "rim 60                                     |                         | rim",
        "holes 8                                    |                         | holes",
        "margin 100                                 |                         | base margin",
        "overfill 15                                |                         | overfill",
        "shell 80 pour upright                      | shell 80                | pour",
        "board 1200                                 |                         | board",
        "crown 1.5 at most                          |                         | crown limit",
        "lap 50                                     |                         | lap",
        "gel for 25 min                             |                         | gel time",
        "on foam 350 g/m2                           |                         | extra resin on foam",
        "sanded 30 %                                |                         | sanded share",
        "cream 36 s                                 |                         | cream time",
        "lift 200 mm at most                        |                         | lift",
        "pot 1 kg at most                           |                         | foam pot",
        "parts 1.12 kg/l and 1.22 kg/l              |                         | expansion",
        "pot 2 kg at most                           |                         | resin pot",
        "cured 1.2 kg/l                             |                         | cured resin density",
        "{ density 1.16 kg/l }                      | { }                     | catalyst density",
        "glass 28.6 %                               |                         | glass share",
        "roll 1.25 m by 50 m                        |                         | roll width",
        "lay 4 m2/h                                 |                         | lay rate",
        "size 1220 mm by 2440 mm                    |                         | sheet width",
        "density 695 kg/m3                          |                         | sheet density"})
    void whatIsLeftOutIsListed(String stated, String instead, String name) throws IOException {
        String text = FULL.replace(stated, instead == null ? "" : instead);
        assertThat(text).isNotEqualTo(FULL);
        assertThat(assumed(text)).contains(name);
    }

    @Test void aFillThatStatesNeitherSolidNorShellIsPouredSolid() throws IOException {
        String text = FULL.replace("fill Pour shell 80 {", "fill Pour {").replace("bay A to C shell 80 pour upright", "").replace("rim 60", "");
        assertThat(assumed(text)).contains("fill", "pour");
    }

    @Test void aFillWhoseBaysAllStateTheirCoreAssumesNone() throws IOException {
        assertThat(assumed(FULL.replace("fill Pour shell 80 {", "fill Pour {"))).doesNotContain("fill");
    }

    @Test void unitsAreNotAssumedWhereEveryLengthHasItsOwn() throws IOException {
        assertThat(assumed("plug P { full sections station A at 0 mm superellipse 200 mm by 400 mm exponent 2 above 0 mm station B at 1 ft like A }"))
                .doesNotContain("units");
    }

    @Test void unitsAreAssumedWhereABareNumberStandsInASumWithALength() throws IOException {
        assertThat(assumed("plug P { half sections station A at 0 mm superellipse 200 mm by 400 mm station B at (300 + 2 cm) like A }")).contains("units");
    }

    @Test void aBlockThatIsAbsentAssumesNothing() throws IOException {
        assertThat(assumed("plug P { units mm half sections station A at 0 superellipse 200 by 400 station B at 300 like A }"))
                .doesNotContain("edges", "rim", "overfill", "pour", "lap", "slot clearance", "pouring rate");
    }
}
