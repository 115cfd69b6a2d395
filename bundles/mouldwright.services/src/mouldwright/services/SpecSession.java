package mouldwright.services;

import com.google.inject.Injector;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.project.ContentSource;
import mouldwright.project.DiskSource;
import mouldwright.project.Project;
import mouldwright.project.ProjectFiles;
import mouldwright.project.ReadResult;
import mouldwright.report.TextFinding;
import mouldwright.check.Severity;

/**
 * The one session every front works with: the language set up once, and what is done with it. Not for use by several threads at once.
 */
public final class SpecSession {

    private final Injector injector;
    private final ContentSource source;

    private SpecSession(Injector injector, ContentSource source) {
        this.injector = injector;
        this.source = source;
    }

    /** A session for files on the disk; the first one sets the language up. */
    public static SpecSession start() {
        return new SpecSession(LanguageSetup.onDisk(), new DiskSource());
    }

    /** A session for files from another source, such as an earlier revision. */
    public static SpecSession over(ContentSource source) {
        return new SpecSession(LanguageSetup.over(source), source);
    }

    /**
     * Checks a spec: reads it through its project, checks the text, and where no error is found plans its plugs.
     *
     * @param file      the spec
     * @param cancelled asked often
     * @return what was found; a file that cannot be read is a finding too
     * @throws java.util.concurrent.CancellationException when cancelled
     */
    public Checked check(Path file, BooleanSupplier cancelled) {
        Path whole = file.toAbsolutePath().normalize();
        Project project = Project.of(whole, source);
        return switch (SpecFile.read(project, whole, source)) {
            case ReadResult.Refused(var reason, String message) -> {
                TextFinding finding = TextFinding.ofFile(Codes.UNREAD, Severity.ERROR, message, whole);
                yield new Checked(whole, project, false, List.of(finding), Map.of(), Map.of(), "");
            }
            case ReadResult.Text text -> check(project, whole, text.text(), cancelled);
        };
    }

    /**
     * Checks a text as if it stood in a file. The libraries it uses are those beside the file.
     *
     * @param file      whose text it would be
     * @param text      to be checked
     * @param cancelled asked often
     */
    public Checked checkText(Path file, String text, BooleanSupplier cancelled) {
        Path whole = file.toAbsolutePath().normalize();
        return check(Project.of(whole, source), whole, text, cancelled);
    }

    /**
     * Does to a spec what may be done to it unasked, as often as it brings something new to mend. Nothing is written.
     *
     * @param file the spec
     */
    public Mended mend(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        Project project = Project.of(whole, source);
        return switch (SpecFile.read(project, whole, source)) {
            case ReadResult.Refused refused -> new Mended("", "", List.of());
            case ReadResult.Text text -> new Mender(whole, changed -> check(project, whole, changed, () -> false)).mend(text.text());
        };
    }

    /**
     * Lays a spec out anew.
     *
     * @param file the spec
     */
    public Layout layOut(Path file) {
        Path whole = file.toAbsolutePath().normalize();
        return switch (SpecFile.read(Project.of(whole, source), whole, source)) {
            case ReadResult.Refused(var reason, String message) ->
                    new Layout.Unread(TextFinding.ofFile(Codes.UNREAD, Severity.ERROR, message, whole));
            case ReadResult.Text text -> new LayoutWriter(injector).layOut(whole, text.text());
        };
    }

    /**
     * Makes a spec of the offsets in a table or drawing, lays it out and checks it. Nothing is written.
     *
     * @param file   the table or drawing
     * @param target where the spec is to go, from where it will find its project; empty if nowhere
     * @param order  how
     */
    public Imported importOffsets(Path file, Optional<Path> target, ImportOrder order) {
        Path whole = file.toAbsolutePath().normalize();
        return switch (new ProjectFiles(Project.of(whole, source), source, ProjectFiles.DEFAULT_LIMIT).beside(whole, whole.getFileName().toString())) {
            case ReadResult.Refused(var reason, String message) -> new Imported.Unread(TextFinding.ofFile(Codes.UNREAD, Severity.ERROR, message, whole));
            case ReadResult.Text text -> switch (new OffsetsImport(injector).of(whole, text.text(), order)) {
                case Imported.Spec(String spec, var none) -> {
                    Path place = target.map(path -> path.toAbsolutePath().normalize()).orElse(whole.resolveSibling("import.plug"));
                    yield new Imported.Spec(spec, check(Project.of(place, source), place, spec, () -> false).findings());
                }
                case Imported refused -> refused;
            };
        };
    }

    private Checked check(Project project, Path file, String text, BooleanSupplier cancelled) {
        Examination examination = new Examination(injector, project, file, text, cancelled);
        examination.examineText(LanguageSetup.resources(injector), new LibraryFindings());
        examination.examinePlans();
        return examination.checked();
    }
}
