package mouldwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mouldwright.drawing.FileFormat;
import mouldwright.drawing.Paper;
import mouldwright.drawing.PdfWriter;
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
 * @param paper   a printer has; empty for pages as large as the drawings
 * @param measured what the check square of an earlier print measured, mm
 * @param folder  as written; empty for one named for what is drawn
 */
record DrawingOutput(FileFormat format, Optional<Paper> paper, double measured, String folder) {

    private static final double SQUARE = 100;

    /** The options of what is printed at full size. */
    static void describe(CommandSpec spec) {
        options(spec, "else pdf", "else a4");
    }

    /** The options of what is drawn to scale. */
    static void describeToScale(CommandSpec spec) {
        options(spec, "else svg", "else each page is as large as its drawing");
    }

    private static void options(CommandSpec spec, String format, String paper) {
        spec.addOption(Options.choice("--format", "dxf|svg|pdf", "files for machines, for browsers, or one for a printer; " + format, List.of("dxf", "svg", "pdf")));
        spec.addOption(Options.choice("--paper", "a4|a3|letter|roll", "paper of the PDF; what is larger is cut up with marks to join it by; " + paper, List.of("a4", "a3", "letter", "roll")));
        spec.addOption(Options.text("--measured", "MM", "what the 100 mm square of an earlier print measured, to make up for the printer"));
        spec.addOption(Options.text("--out", "DIR", "folder for the files, made if it is not there"));
    }

    static DrawingOutput of(ParseResult parsed) {
        return of(parsed, FileFormat.PDF, Optional.of(Paper.A4));
    }

    static DrawingOutput toScale(ParseResult parsed) {
        return of(parsed, FileFormat.SVG, Optional.empty());
    }

    private static DrawingOutput of(ParseResult parsed, FileFormat common, Optional<Paper> paper) {
        FileFormat format = Options.value(parsed, "--format").map(FileFormat::named).orElse(common);
        Optional<Paper> asked = Options.value(parsed, "--paper").map(name -> Paper.valueOf(name.toUpperCase(Locale.ROOT)));
        Optional<Double> measured = Options.value(parsed, "--measured").map(DrawingOutput::measured);
        if (format != FileFormat.PDF && (asked.isPresent() || measured.isPresent())) {
            throw new WrongUsage("--paper and --measured are for --format pdf");
        }
        if (measured.isPresent() && asked.or(() -> paper).isEmpty()) {
            throw new WrongUsage("--measured needs --paper: a square to measure is printed on paper of a size");
        }
        return new DrawingOutput(format, asked.or(() -> paper), measured.orElse(SQUARE), Options.value(parsed, "--out").orElse(""));
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
        FileFormat.Print print = new FileFormat.Print(paper, SQUARE / measured, code);
        Optional<PdfWriter.TooLarge> tooLarge = format.refused(drawings, print);
        if (tooLarge.isPresent()) {
            return refuse(tooLarge.get(), io);
        }
        PathNames names = new PathNames(io.directory());
        Path target = Paths.of(folder.isEmpty() ? title : folder, io);
        try {
            Files.createDirectories(target);
        } catch (IOException | SecurityException e) {
            io.err().print("mouldwright: the folder " + names.of(target) + " cannot be made\n");
            return ExitCode.FILE;
        }
        List<FileFormat.NamedFile> files = format.write(title, drawings, print);
        int written = 0;
        for (FileFormat.NamedFile file : files) {
            if (SafeWrite.bytes(target.resolve(file.name()), file.bytes()) instanceof WriteResult.NotWritten(Path path, String message)) {
                io.err().print("mouldwright: " + names.of(path) + " is not written: " + message + "; " + written + " of " + files.size() + " files were written before it\n");
                return ExitCode.FILE;
            }
            written++;
        }
        io.out().print(count(drawings.size(), "drawing") + " in " + count(written, "file") + " in " + names.of(target) + "\n");
        return ExitCode.FINE;
    }

    private int refuse(PdfWriter.TooLarge drawing, ProcessIo io) {
        String name = paper.map(Enum::name).orElse("").toLowerCase(Locale.ROOT);
        io.err().print("mouldwright: " + drawing.title() + " takes " + drawing.pages() + " pages of " + name + ", " + drawing.most() + " at most: "
                + (paper.equals(Optional.of(Paper.ROLL)) ? "look at the unit of its figures" : "print on a roll (--paper roll), or look at the unit of its figures") + "\n");
        return ExitCode.ERRORS;
    }

    private static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
