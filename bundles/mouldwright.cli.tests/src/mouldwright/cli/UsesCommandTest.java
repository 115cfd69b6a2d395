package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which specs rest on a declaration of a library. */
class UsesCommandTest {

    @TempDir
    private Path folder;

    @BeforeEach void write() {
        Specs.write(folder, "shop/mouldwright.project", "");
        Specs.write(folder, "shop/stock/wet.plug", """
                library stock.wet version "1.0"
                resin Laminating { density 1.13 kg/l }
                mat Csm450 { areal 450 g/m2 glass 28.6 % }
                mat Csm300 { areal 300 g/m2 glass 30 % }
                schedule Skin using Laminating { ply Csm450 }
                """);
        String box = Specs.BOX.replace("at 400 like A", "at 400 like A\n    skin Skin { bay A to B add ply Csm450 }");
        Specs.write(folder, "shop/one.plug", "use stock.wet\n" + box);
        Specs.write(folder, "shop/jobs/two.plug", "use stock.wet as own\n" + box.replace("skin Skin", "skin own.Skin"));
        Specs.write(folder, "shop/other.plug", "// Skin and Csm450 are words here\n" + Specs.BOX + "mat Csm450 { areal 450 g/m2 glass 28.6 % }\n");
    }

    @Test void everySpecThatUsesItIsNamedWithItsPlace() {
        Run run = Run.in(folder.resolve("shop"), "uses", "stock/wet.plug", "Csm450");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).isEqualTo("""
                mat Csm450, line 3: 3 places in 3 files
                  jobs/two.plug:12:40  skin own.Skin { bay A to B add ply Csm450 }
                  one.plug:12:36  skin Skin { bay A to B add ply Csm450 }
                  stock/wet.plug:5:38  schedule Skin using Laminating { ply Csm450 }
                """);
    }

    @Test void withoutANameAllThatIsDeclaredIsListed() {
        Run run = Run.in(folder.resolve("shop"), "uses", "stock/wet.plug");
        assertThat(run.out()).contains("resin Laminating, line 2: 1 place in 1 file", "mat Csm300, line 4: not used", "schedule Skin, line 5: 2 places in 2 files");
    }

    @Test void aLibraryOutsideIsLookedForInTheProjectThatIsNamed() {
        Specs.write(folder, "common/lib/dry.plug", "library lib.dry\nsheet Ply { thickness 12 mm }\n");
        Specs.write(folder, "shop/mouldwright.project", "library = ../common\n");
        Specs.write(folder, "shop/three.plug", "use lib.dry\n" + Specs.BOX.replace("at 400 like A", "at 400 like A\n    frame { sheet Ply }"));
        assertThat(Run.in(folder, "uses", "common/lib/dry.plug", "Ply", "--in", "shop").out()).contains("shop/three.plug:12:19  frame { sheet Ply }");
    }

    @Test void aLibraryTheProjectDoesNotReachIsSaidSo() {
        Specs.write(folder, "far/lib/dry.plug", "library lib.dry\nsheet Ply { thickness 12 mm }\n");
        Run run = Run.in(folder, "uses", "far/lib/dry.plug", "--in", "shop");
        assertThat(run.code()).isEqualTo(ExitCode.FILE);
        assertThat(run.err()).isEqualTo("mouldwright: far/lib/dry.plug: it lies neither in the project shop nor in a library folder of it\n");
    }

    @Test void aNameThatIsNotDeclaredThereIsAnsweredWithThoseThatAre() {
        Run run = Run.in(folder.resolve("shop"), "uses", "stock/wet.plug", "Csm600");
        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("`Csm600` is not declared in wet.plug, which declares Laminating, Csm450, Csm300, Skin");
    }

    @Test void aFileThatIsNotThereIsSaidSo() {
        Run run = Run.in(folder, "uses", "none.plug");
        assertThat(run.code()).isEqualTo(ExitCode.FILE);
        assertThat(run.err()).startsWith("mouldwright: none.plug: ").hasLineCount(1);
    }
}
