package mouldwright.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.ServerSocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import mouldwright.project.ReadResult.Reason;
import mouldwright.project.ReadResult.Refused;
import mouldwright.project.ReadResult.Text;

/** Leans on the rule that nothing outside a project is read but the library folders it names. */
class ProjectFilesTest {

    @TempDir
    Path temporary;

    private Path top;
    private Path root;
    private Path shared;
    private Project project;
    private ProjectFiles files;

    @BeforeEach
    void aProjectWithASharedLibraryFolderBesideASecret() throws IOException {
        top = temporary.toRealPath();
        root = Files.createDirectories(top.resolve("job"));
        shared = Files.createDirectories(top.resolve("shared"));
        Files.writeString(top.resolve("secret.txt"), "secret");
        project = new Project(root, List.of(shared), ProjectSettings.NONE, List.of());
        files = new ProjectFiles(project);
    }

    private Path write(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private static Reason reason(ReadResult result) {
        assertThat(result).isInstanceOf(Refused.class);
        return ((Refused) result).reason();
    }

    @Test
    void aTableIsReadFromTheRoot() throws IOException {
        Path table = write(root.resolve("tables/canopy.csv"), "S3,0,60\n");

        assertThat(files.resolve("tables/canopy.csv")).isEqualTo(new Text("S3,0,60\n", table));
    }

    @Test
    void aTableIsReadBesideTheSpecThatNamesIt() throws IOException {
        Path table = write(root.resolve("tables/canopy.csv"), "1");

        assertThat(files.beside(root.resolve("plugs/canopy.plug"), "../tables/canopy.csv")).isEqualTo(new Text("1", table));
    }

    @Test
    void aLibraryMayNameFilesOfItsOwnFolder() throws IOException {
        Path table = write(shared.resolve("stock/gel.csv"), "1");

        assertThat(files.beside(shared.resolve("stock/polyester.plug"), "gel.csv")).isEqualTo(new Text("1", table));
    }

    @Test
    void aLibraryMayNotNameFilesBesideItsFolder() {
        assertThat(reason(files.beside(shared.resolve("polyester.plug"), "../secret.txt"))).isEqualTo(Reason.OUTSIDE);
    }

    @Test
    void aFileOutsideTheProjectNamesNothing() {
        assertThat(reason(files.beside(top.resolve("stray.plug"), "secret.txt"))).isEqualTo(Reason.OUTSIDE);
    }

    @ParameterizedTest
    @CsvSource({ "../secret.txt, OUTSIDE", "tables/../../secret.txt, OUTSIDE", "../job2/x, OUTSIDE", "/etc/passwd, ABSOLUTE",
            "C:/secret.txt, ABSOLUTE", "c:secret.txt, ABSOLUTE", "'..\\secret.txt', BAD_PATH", "'', BAD_PATH", "' ', BAD_PATH",
            "NUL, BAD_PATH", "tables/com1.csv, BAD_PATH", "nothing.csv, MISSING", "no/such/folder.csv, MISSING", "., FOLDER" })
    void aPathThatLeadsNowhereGoodIsRefused(String path, Reason reason) {
        assertThat(reason(files.resolve(path))).isEqualTo(reason);
    }

    @Test
    void aPathThatIsNoneIsRefused() {
        assertThat(reason(files.resolve("a\0b"))).isEqualTo(Reason.BAD_PATH);
    }

    @Test
    void aLinkOutOfTheProjectIsRefused() throws IOException {
        Files.createSymbolicLink(root.resolve("canopy.csv"), top.resolve("secret.txt"));

        assertThat(files.resolve("canopy.csv")).isEqualTo(
                new Refused(Reason.OUTSIDE, "\"canopy.csv\" is not read: its link leads out of the folder"));
    }

    @Test
    void aLinkedFolderOutOfTheProjectIsRefused() throws IOException {
        Files.createSymbolicLink(root.resolve("tables"), top);

        assertThat(reason(files.resolve("tables/secret.txt"))).isEqualTo(Reason.OUTSIDE);
    }

    @Test
    void aLinkToASiblingFolderWithALikeNameIsRefused() throws IOException {
        write(top.resolve("job-secret/x.csv"), "secret");
        Files.createSymbolicLink(root.resolve("x.csv"), top.resolve("job-secret/x.csv"));

        assertThat(reason(files.resolve("x.csv"))).isEqualTo(Reason.OUTSIDE);
    }

    @Test
    void aLinkInsideTheProjectIsFollowed() throws IOException {
        write(root.resolve("real.csv"), "1");
        Files.createSymbolicLink(root.resolve("linked.csv"), root.resolve("real.csv"));

        assertThat(files.resolve("linked.csv")).isEqualTo(new Text("1", root.resolve("linked.csv")));
    }

    @Test
    void aLibraryLinkedOutOfItsFolderIsRefused() throws IOException {
        Files.createSymbolicLink(shared.resolve("stock.plug"), top.resolve("secret.txt"));

        assertThat(reason(files.library("stock"))).isEqualTo(Reason.OUTSIDE);
    }

    @Test
    void linksInACircleAreRefused() throws IOException {
        Files.createSymbolicLink(root.resolve("a.csv"), root.resolve("b.csv"));
        Files.createSymbolicLink(root.resolve("b.csv"), root.resolve("a.csv"));

        assertThat(reason(files.resolve("a.csv"))).isEqualTo(Reason.UNREADABLE);
    }

    @Test
    void aProjectReachedOverALinkIsReadAsItLies() throws IOException {
        write(root.resolve("a.csv"), "1");
        Path link = Files.createSymbolicLink(top.resolve("link"), root);
        ProjectFiles linked = new ProjectFiles(new Project(link, List.of(), ProjectSettings.NONE, List.of()));

        assertThat(linked.resolve("a.csv")).isEqualTo(new Text("1", link.resolve("a.csv")));
    }

    @Test
    void aFolderIsNoFile() throws IOException {
        Files.createDirectories(root.resolve("tables"));

        assertThat(reason(files.resolve("tables"))).isEqualTo(Reason.FOLDER);
    }

    @Test
    void aPipeIsNoFile() throws IOException {
        try (ServerSocketChannel channel = ServerSocketChannel.open(StandardProtocolFamily.UNIX)) {
            channel.bind(UnixDomainSocketAddress.of(root.resolve("pipe.csv")));

            assertThat(reason(files.resolve("pipe.csv"))).isEqualTo(Reason.NOT_A_FILE);
        }
    }

    @Test
    void aPathThroughAFileIsMissing() throws IOException {
        write(root.resolve("stock"), "");
        write(shared.resolve("stock/polyester.plug"), "library");

        assertThat(reason(files.resolve("stock/x.csv"))).isEqualTo(Reason.MISSING);
        assertThat(files.library("stock.polyester")).isInstanceOf(Text.class);
    }

    @Test
    void aFileAtTheLimitIsReadAndOneOverItIsNot() throws IOException {
        write(root.resolve("a.csv"), "1234567890");
        write(root.resolve("b.csv"), "12345678901");
        ProjectFiles small = new ProjectFiles(project, new DiskSource(), 10);

        assertThat(small.resolve("a.csv")).isInstanceOf(Text.class);
        assertThat(reason(small.resolve("b.csv"))).isEqualTo(Reason.TOO_LARGE);
    }

    @Test
    void aLimitThatMakesNoSenseIsRefused() {
        assertThatThrownBy(() -> new ProjectFiles(project, new DiskSource(), -1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aFileThatMayNotBeReadSaysSo() {
        ContentSource closed = (file, within, limit) ->
                new ContentSource.NotFound(Reason.UNREADABLE, "it may not be read");

        assertThat(new ProjectFiles(project, closed, 100).resolve("a.csv"))
                .isEqualTo(new Refused(Reason.UNREADABLE, "\"a.csv\" is not read: it may not be read"));
    }

    @Test
    void anotherEncodingIsToldByByteAndLine() throws IOException {
        Files.write(root.resolve("a.csv"), "one\r\ntwo\nM\u00fcller".getBytes(StandardCharsets.ISO_8859_1));

        assertThat(files.resolve("a.csv")).isEqualTo(new Refused(Reason.NOT_UTF8,
                "\"a.csv\" is not UTF-8: byte 0xFC at offset 10, line 3; save it as UTF-8"));
    }

    @Test
    void aLetterCutOffAtTheEndIsNotUtf8() throws IOException {
        Files.write(root.resolve("a.csv"), new byte[] { 'a', (byte) 0xC3 });

        assertThat(reason(files.resolve("a.csv"))).isEqualTo(Reason.NOT_UTF8);
    }

    @Test
    void aWideEncodingIsCalledByItsName() throws IOException {
        Files.write(root.resolve("a.csv"), "\ufeffone".getBytes(StandardCharsets.UTF_16LE));

        assertThat(((Refused) files.resolve("a.csv")).message()).contains("UTF-16");
    }

    @Test
    void whatIsNoTextIsRefused() throws IOException {
        Files.write(root.resolve("a.dxf"), new byte[] { 'A', 'C', 0, 1 });

        assertThat(files.resolve("a.dxf"))
                .isEqualTo(new Refused(Reason.BINARY, "\"a.dxf\" is not text: a zero byte at offset 2; save it as text"));
    }

    @Test
    void aByteOrderMarkIsLeftOff() throws IOException {
        write(root.resolve("a.csv"), "\ufeffone \u00b5m");

        assertThat(files.resolve("a.csv")).isEqualTo(new Text("one \u00b5m", root.resolve("a.csv")));
    }

    @Test
    void anEmptyFileIsAnEmptyText() throws IOException {
        write(root.resolve("a.csv"), "");

        assertThat(files.resolve("a.csv")).isEqualTo(new Text("", root.resolve("a.csv")));
    }

    @Test
    void aLibraryInTheProjectComesBeforeASharedOne() throws IOException {
        write(shared.resolve("stock/polyester.plug"), "shared");
        assertThat(files.library("stock.polyester")).isEqualTo(new Text("shared", shared.resolve("stock/polyester.plug")));

        write(root.resolve("stock/polyester.plug"), "own");
        assertThat(files.library("stock.polyester")).isEqualTo(new Text("own", root.resolve("stock/polyester.plug")));
    }

    @Test
    void aLibraryThatCannotBeReadDoesNotGiveWayToAnother() throws IOException {
        write(shared.resolve("stock.plug"), "shared");
        Files.write(root.resolve("stock.plug"), new byte[] { (byte) 0xFF });

        assertThat(reason(files.library("stock"))).isEqualTo(Reason.NOT_UTF8);
    }

    @Test
    void upperAndLowerCaseCountInALibrarysName() throws IOException {
        write(shared.resolve("Stock/polyester.plug"), "shared");

        assertThat(reason(files.library("stock.polyester"))).isEqualTo(Reason.MISSING);
    }

    @ParameterizedTest
    @ValueSource(strings = { "", ".", "..secret", "stock..polyester", "stock/polyester", "stock.", "1stock", "a b" })
    void whatIsNoLibraryNameIsLookedForNowhere(String name) {
        assertThat(reason(files.library(name))).isEqualTo(Reason.BAD_PATH);
        assertThat(files.libraryPlaces(name)).isEmpty();
    }

    @Test
    void theMessageOfAMissingLibrarySaysWhatWasLookedFor() {
        assertThat(((Refused) files.library("stock.epoxy")).message())
                .isEqualTo("no library stock.epoxy: no stock/epoxy.plug in the project or its library folders");
    }

    @Test
    void aLibrarysPlacesAreTheRootAndThenTheLibraryFolders() {
        assertThat(files.libraryPlaces("stock.polyester"))
                .containsExactly(root.resolve("stock/polyester.plug"), shared.resolve("stock/polyester.plug"));
    }

    @Test
    void whatAnEditorHoldsCountsAsTheFile() throws IOException {
        Path table = write(root.resolve("a.csv"), "saved");
        write(root.resolve("b.csv"), "saved too");
        Map<Path, String> open = Map.of(table, "being typed", root.resolve("new.csv"), "not yet saved");
        ProjectFiles edited = new ProjectFiles(project,
                new OverlaySource(file -> Optional.ofNullable(open.get(file)), new DiskSource()), 100);

        assertThat(edited.resolve("a.csv")).isEqualTo(new Text("being typed", table));
        assertThat(edited.resolve("b.csv")).isEqualTo(new Text("saved too", root.resolve("b.csv")));
        assertThat(edited.resolve("new.csv")).isEqualTo(new Text("not yet saved", root.resolve("new.csv")));
    }

    @Test
    void whatAnEditorHoldsKeepsTheLimit() {
        ProjectFiles edited = new ProjectFiles(project,
                new OverlaySource(file -> Optional.of("\u00b5\u00b5\u00b5"), new DiskSource()), 5);

        assertThat(reason(edited.resolve("a.csv"))).isEqualTo(Reason.TOO_LARGE);
    }
}
