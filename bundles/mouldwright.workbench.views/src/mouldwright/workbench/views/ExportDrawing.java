package mouldwright.workbench.views;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import mouldwright.drawing.FileFormat;
import mouldwright.project.SafeWrite;
import mouldwright.project.WriteResult;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;

/** Writes what a view shows to a file, true to size: the same drawing the command line writes. */
final class ExportDrawing extends Action {

    private static final List<FileFormat> FORMATS = List.of(FileFormat.PDF, FileFormat.SVG, FileFormat.DXF);

    private final Shell shell;
    private final Supplier<Optional<DrawingView.Named>> shown;

    ExportDrawing(Shell shell, Supplier<Optional<DrawingView.Named>> shown) {
        super("Write to a file\u2026");
        this.shell = shell;
        this.shown = shown;
    }

    @Override
    public void run() {
        shown.get().ifPresent(named -> {
            FileDialog dialog = new FileDialog(shell, SWT.SAVE);
            dialog.setOverwrite(true);
            dialog.setFilterExtensions(FORMATS.stream().map(format -> "*." + ending(format)).toArray(String[]::new));
            dialog.setFilterNames(FORMATS.stream().map(format -> format.name() + ", true to size").toArray(String[]::new));
            dialog.setFileName(named.name() + "." + ending(FORMATS.getFirst()));
            String chosen = dialog.open();
            if (chosen != null)
                write(named, Path.of(chosen), FORMATS.get(Math.max(0, dialog.getFilterIndex())));
        });
    }

    private static String ending(FileFormat format) {
        return format.name().toLowerCase(Locale.ROOT);
    }

    /** An ending that names a format decides; else the kind picked in the dialog. */
    private void write(DrawingView.Named named, Path file, FileFormat picked) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        Optional<FileFormat> stated = Arrays.stream(FileFormat.values()).filter(format -> name.endsWith("." + ending(format))).findFirst();
        Path target = stated.isPresent() ? file : file.resolveSibling(file.getFileName() + "." + ending(picked));
        Job job = new Job("Writing " + target.getFileName()) {
            @Override
            protected IStatus run(IProgressMonitor monitor) {
                byte[] bytes = stated.orElse(picked).write(named.name(), List.of(new FileFormat.NamedDrawing(named.name(), named.drawing())),
                        new FileFormat.Print(Optional.empty(), 1, "")).getFirst().bytes();
                if (SafeWrite.bytes(target, bytes) instanceof WriteResult.NotWritten(Path at, String why))
                    shell.getDisplay().asyncExec(() -> MessageDialog.openError(shell, "Not written", at + " was not written: " + why + "."));
                return Status.OK_STATUS;
            }
        };
        job.schedule();
    }
}
