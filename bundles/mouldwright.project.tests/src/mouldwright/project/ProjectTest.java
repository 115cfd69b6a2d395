package mouldwright.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Leans on the rule for project roots: the nearest folder upward with a project file, else the file's own. */
class ProjectTest {

    @TempDir
    Path temporary;

    private Path top;

    @BeforeEach
    void followTheTemporaryFolder() throws IOException {
        top = temporary.toRealPath();
    }

    private Path write(String relative, String text) throws IOException {
        Path file = top.resolve(relative);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    @Test
    void theNearestFolderUpwardWithAProjectFileIsTheRoot() throws IOException {
        write("mouldwright.project", "name = Outer");
        write("job/mouldwright.project", "name = Inner");
        Path spec = write("job/plugs/canopy.plug", "");

        Project project = Project.of(spec);

        assertThat(project.root()).isEqualTo(top.resolve("job"));
        assertThat(project.settings().name()).hasValue("Inner");
    }

    @Test
    void withoutAProjectFileTheFilesOwnFolderIsTheRoot() throws IOException {
        Path spec = write("job/canopy.plug", "");

        assertThat(Project.of(spec)).isEqualTo(
                new Project(top.resolve("job"), List.of(), ProjectSettings.NONE, List.of()));
    }

    @Test
    void aFolderNamedLikeAProjectFileMarksNoRoot() throws IOException {
        Path spec = write("job/canopy.plug", "");
        Files.createDirectories(top.resolve("mouldwright.project"));

        assertThat(Project.of(spec).root()).isEqualTo(top.resolve("job"));
    }

    @Test
    void aSpecNotYetSavedHasAProjectToo() throws IOException {
        write("mouldwright.project", "");

        assertThat(Project.of(top.resolve("new/one.plug")).root()).isEqualTo(top);
    }

    @Test
    void aLibraryFolderMayLieOutsideTheRootBecauseItIsNamed() throws IOException {
        Files.createDirectories(top.resolve("shared"));
        write("job/mouldwright.project", "library = ../shared");

        Project project = Project.of(top.resolve("job/canopy.plug"));

        assertThat(project.libraries()).containsExactly(top.resolve("shared"));
        assertThat(project.faults()).isEmpty();
    }

    @Test
    void aLibraryFolderThatIsNotThereIsAFaultWhereItIsNamed() throws IOException {
        Path file = write("mouldwright.project", "name = A\nlibrary = ../nowhere");

        Project project = Project.of(top.resolve("canopy.plug"));

        assertThat(project.libraries()).isEmpty();
        assertThat(project.faults())
                .containsExactly(new ProjectFault(file, 2, 11, "there is no library folder \"../nowhere\""));
    }

    @Test
    void aProjectFileInAnotherEncodingStillMarksTheRoot() throws IOException {
        Files.write(top.resolve("mouldwright.project"), "name = M\u00fcller".getBytes(StandardCharsets.ISO_8859_1));
        Path spec = write("job/canopy.plug", "");

        Project project = Project.of(spec);

        assertThat(project.root()).isEqualTo(top);
        assertThat(project.faults()).singleElement().matches(fault -> fault.message().contains("not UTF-8"));
    }

    @Test
    void aProjectFileThatMayNotBeReadStillMarksTheRoot() {
        Path job = top.resolve("job");
        ContentSource source = (file, within, limit) -> file.startsWith(job)
                ? new ContentSource.NotFound(ReadResult.Reason.UNREADABLE, "it may not be read")
                : new ContentSource.Found("name = Wider".getBytes(StandardCharsets.UTF_8), file);

        Project project = Project.of(job.resolve("canopy.plug"), source);

        assertThat(project.root()).isEqualTo(job);
        assertThat(project.faults()).singleElement().matches(fault -> fault.message().contains("may not be read"));
    }

    @Test
    void aProjectIsReadFromATreeThatIsNotOnTheDisk() {
        Path root = Path.of("/tree").toAbsolutePath();
        Map<Path, String> tree = Map.of(root.resolve("mouldwright.project"), "units = us");
        ContentSource source = (file, within, limit) -> tree.containsKey(file)
                ? new ContentSource.Found(tree.get(file).getBytes(StandardCharsets.UTF_8), file)
                : new ContentSource.NotFound(ReadResult.Reason.MISSING, "there is no such file");

        assertThat(Project.of(root.resolve("a/b.plug"), source).settings().units()).hasValue(OutputUnits.US);
    }
}
