package mouldwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import mouldwright.drawing.FileFormat;
import mouldwright.drawing.Paper;
import mouldwright.project.SafeWrite;
import mouldwright.project.WriteResult;
import mouldwright.report.PathNames;
import mouldwright.services.ProcessIo;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/**
 * Where drawings go, as several subcommands have it.
 *
 * @param format  of the files
 * @param paper   a printer has
 * @param measured what the check square of an earlier print measured, mm
 * @param folder  as written; empty for one named for what is drawn
 */
record DrawingOutput(FileFormat format, Paper paper, double measured, String folder) {

    private static final double SQUARE = 100;

    /** The options it is read from. */
    static void describe(CommandSpec spec) {
        spec.addOption(Options.choice("--format", "dxf|svg|pdf", "files for machines, for browsers, or one for a printer; else pdf", List.of("dxf", "svg", "pdf")));
        spec.addOption(Options.choice("--paper", "a4|a3|letter|roll", "paper of the PDF; what is larger is cut up with marks to join it by; else a4", List.of("a4", "a3", "letter", "roll")));
        spec.addOption(Options.text("--measured", "MM", "what the 100 mm square of an earlier print measured, to make up for the printer"));
        spec.addOption(Options.text("--out", "DIR", "folder for the files, made if it is not there"));
    }

    static DrawingOutput of(ParseResult parsed) {
        FileFormat format = FileFormat.named(Options.value(parsed, "--format").orElse("pdf"));
        if (format != FileFormat.PDF && (Options.value(parsed, "--paper").isPresent() || Options.value(parsed, "--measured").isPresent())) {
            throw new WrongUsage("--paper and --measured are for --format pdf");
        }
        return new DrawingOutput(format, Paper.valueOf(Options.value(parsed, "--paper").orElse("a4").toUpperCase(Locale.ROOT)),
                Options.value(parsed, "--measured").map(DrawingOutput::measured).orElse(SQUARE), Options.value(parsed, "--out").orElse(""));
    }

    private static double measured(String written) {
        try {
            double value = Double.parseDouble(written.replaceFirst("\\s*mm$", ""));
            if (value > SQUARE / 1.1 && value < SQUARE / 0.9) {
                return value;
            }
            throw new WrongUsage("a square of " + written + " is not a printer's error but another scale: print at 100 % and measure again");
        } catch (NumberFormatException e) {
            throw new WrongUsage("--measured takes millimetres, such as 99.6, and not `" + written + "`");
        }
    }

    /** Writes drawings and says where they are. */
    int write(String title, List<FileFormat.NamedDrawing> drawings, String code, ProcessIo io) {
        PathNames names = new PathNames(io.directory());
        Path target = Paths.of(folder.isEmpty() ? title : folder, io);
        try {
            Files.createDirectories(target);
        } catch (IOException | SecurityException e) {
            io.err().print("mouldwright: the folder " + names.of(target) + " cannot be made\n");
            return ExitCode.FILE;
        }
        int written = 0;
        for (FileFormat.NamedFile file : format.write(title, drawings, new FileFormat.Print(paper, SQUARE / measured, code))) {
            if (SafeWrite.bytes(target.resolve(file.name()), file.bytes()) instanceof WriteResult.NotWritten(Path path, String message)) {
                io.err().print("mouldwright: " + names.of(path) + " is not written: " + message + "\n");
                return ExitCode.FILE;
            }
            written++;
        }
        io.out().print(drawings.size() + (drawings.size() == 1 ? " drawing in " : " drawings in ") + written + (written == 1 ? " file in " : " files in ") + names.of(target) + "\n");
        return ExitCode.FINE;
    }
}
