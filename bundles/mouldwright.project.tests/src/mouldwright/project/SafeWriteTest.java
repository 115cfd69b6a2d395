package mouldwright.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import mouldwright.project.WriteResult.NotWritten;
import mouldwright.project.WriteResult.Written;

/** Leans on the rule that a crash leaves the old file whole: written beside, moved into place. */
class SafeWriteTest {

    @TempDir
    Path folder;

    private long filesInFolder() throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.count();
        }
    }

    @Test
    void aNewFileIsWrittenWhole() throws IOException {
        Path file = folder.resolve("plan.json");

        assertThat(SafeWrite.text(file, "{ \"\u00b5m\" }\r\n")).isEqualTo(new Written(file));
        assertThat(Files.readString(file)).isEqualTo("{ \"\u00b5m\" }\r\n");
    }

    @Test
    void anOldFileIsReplacedAndNothingIsLeftBeside() throws IOException {
        Path file = Files.writeString(folder.resolve("plan.json"), "a much longer old text");

        SafeWrite.text(file, "new");

        assertThat(Files.readString(file)).isEqualTo("new");
        assertThat(filesInFolder()).isEqualTo(1);
    }

    @Test
    void aReplacedFileKeepsItsPermissions() throws IOException {
        Path file = Files.writeString(folder.resolve("plan.json"), "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));

        SafeWrite.text(file, "new");

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file))).isEqualTo("rw-r-----");
    }

    @Test
    void aNewFileHasThePermissionsNewFilesHaveHere() throws IOException {
        Path usual = Files.createFile(folder.resolve("usual"));
        Path file = folder.resolve("plan.json");

        SafeWrite.text(file, "new");

        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(usual));
    }

    @Test
    void throughALinkTheFileItLeadsToIsWritten() throws IOException {
        Path real = Files.writeString(folder.resolve("real.json"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), real);

        assertThat(SafeWrite.text(link, "new")).isEqualTo(new Written(link));
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(Files.readString(real)).isEqualTo("new");
    }

    @Test
    void aFolderIsNotWrittenOver() {
        assertThat(SafeWrite.text(folder, "new")).isEqualTo(new NotWritten(folder, "it is a folder"));
    }

    @Test
    void aFileInNoFolderIsNotWritten() {
        Path file = folder.resolve("none/plan.json");

        assertThat(SafeWrite.text(file, "new"))
                .isEqualTo(new NotWritten(file, "there is no folder " + file.getParent()));
    }

    @Test
    void aWriteThatFailsAtTheLastStepLeavesNothingBeside() throws IOException {
        Path file = folder.resolve("x".repeat(300));

        assertThat(SafeWrite.text(file, "new")).isInstanceOf(NotWritten.class);
        assertThat(filesInFolder()).isZero();
    }

    @Test
    void bytesAreWrittenAsTheyAre() throws IOException {
        byte[] bytes = { 0, (byte) 0xFF, 10, 13 };
        Path file = folder.resolve("cards.pdf");

        SafeWrite.bytes(file, bytes);

        assertThat(file).hasBinaryContent(bytes);
    }
}
