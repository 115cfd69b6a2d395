package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lofted surface as a file of triangles. */
class MeshCommandTest {

    @TempDir
    private Path folder;

    @BeforeEach void write() {
        Specs.write(folder, "box.plug", Specs.BOX.replace("half sections", "half sections\n    allow 1 % shrink"));
    }

    /** Six faces of straight edges: the count and the bytes follow, 200 by 50 by 400 mm and a hundredth more each. */
    @Test void anStlOfTheFinishedBoxIsAsLargeAsTheShrinkMakesIt() throws Exception {
        Run run = Run.in(folder, "mesh", "box.plug", "--out", "box.stl");
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).matches("box.stl: \\d+ triangles, closed, in mm; 404 by 202 by 51 mm, 0.0041 m3\n");
        int triangles = Integer.parseInt(run.out().split(" ")[1]);
        assertThat(Files.size(folder.resolve("box.stl"))).isEqualTo(84 + 50L * triangles);
    }

    @Test void theSameSpecGivesTheSameBytes() throws Exception {
        Run.in(folder, "mesh", "box.plug", "--out", "a.stl");
        Run.in(folder, "mesh", "box.plug", "--out", "b.stl");
        assertThat(Files.readAllBytes(folder.resolve("a.stl"))).isEqualTo(Files.readAllBytes(folder.resolve("b.stl")));
    }

    @Test void anObjOfThePartIsInTheUnitAskedFor() {
        assertThat(Run.in(folder, "mesh", "box.plug", "--surface", "part", "--units", "m", "--out", "box.obj").code()).isZero();
        assertThat(Specs.read(folder.resolve("box.obj")).lines()).contains("# in m; x aft, y to starboard, z up", "v 0.4 0.1 0.05", "v 0.4 -0.1 0.05");
    }

    @Test void wrongUsageIsToldAndASpecIsNeverWrittenOver() {
        assertThat(Run.in(folder, "mesh", "box.plug").err()).contains("--out FILE says where the mesh goes");
        assertThat(Run.in(folder, "mesh", "box.plug", "--out", "box.plug").err()).contains("would write over a spec");
        assertThat(Run.in(folder, "mesh", "box.plug", "--out", "box").err()).contains("--format stl or obj");
        assertThat(Run.in(folder, "mesh", "box.plug", "--out", "box.stl", "--tolerance", "1um").err()).contains("0.01mm at least");
        assertThat(Run.in(folder, "mesh", "box.plug", "--out", "box.stl", "--tolerance", "fine").code()).isEqualTo(2);
        assertThat(Run.in(folder, "mesh", "box.plug", "--out", "no/folder/box.stl").code()).isEqualTo(3);
        assertThat(Files.exists(folder.resolve("box.stl"))).isFalse();
        Specs.write(folder, "bad.plug", Specs.BOX.replace("like A", "like Q"));
        assertThat(Run.in(folder, "mesh", "bad.plug", "--out", "bad.stl").code()).isEqualTo(1);
    }
}
