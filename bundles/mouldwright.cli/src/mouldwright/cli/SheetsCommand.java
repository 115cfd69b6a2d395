package mouldwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import mouldwright.drawing.Drawing;
import mouldwright.drawing.FileFormat;
import mouldwright.drawing.subject.NestedSheet;
import mouldwright.geometry.nest.NestProgress;
import mouldwright.geometry.nest.Turns;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.sheets.SheetChoice;
import mouldwright.plan.sheets.SheetLaying;
import mouldwright.plan.sheets.SheetLayout;
import mouldwright.project.OutputUnits;
import mouldwright.project.SafeWrite;
import mouldwright.project.WriteResult;
import mouldwright.report.PathNames;
import mouldwright.report.SheetsJson;
import mouldwright.report.SheetsText;
import mouldwright.services.Checked;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import mouldwright.units.Dimension;
import mouldwright.units.Display;
import mouldwright.units.UnitSystem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Lays the parts of a plug's frame on sheets. */
final class SheetsCommand implements Subcommand {

    /** A day: longer searches are a slip of the pen. */
    private static final long MOST_SECONDS = 86_400;

    @Override
    public String name() {
        return "sheets";
    }

    @Override
    public String summary() {
        return "lay the parts of the frame on sheets";
    }

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Options.choice("--format", "text|json|dxf|svg|pdf", "how: text, a JSON object with every outline as it lies, or drawings at full size",
                List.of("text", "json", "dxf", "svg", "pdf")));
        spec.addOption(Options.text("--out", "PATH", "file for text and JSON, folder for drawings; a crash leaves an old file whole"));
        spec.addOption(Options.choice("--paper", "a4|a3|letter|roll", "paper of the PDF; what is larger is cut up with marks to join it by; else a4", List.of("a4", "a3", "letter", "roll")));
        spec.addOption(Options.text("--measured", "MM", "what the 100 mm square of an earlier print measured, to make up for the printer"));
        spec.addOption(Options.choice("--turn", "none|quarter|free", "how parts may lie: as drawn, square to the sheet (else this), or every 15 degrees",
                List.of("none", "quarter", "free")));
        spec.addOption(Options.text("--trials", "N", "layouts to try of each material; more take longer and may save a sheet; Ctrl-C keeps the best so far"));
        spec.addOption(Options.text("--seconds", "N", "stop the search after so long and keep the best so far; how far it comes then depends on the machine"));
        spec.addOption(Options.text("--seed", "S", "whole number the search begins with; the same gives the same layout; else 1"));
        spec.addOption(Options.choice("--units", "metric|us", "units of the text; else as the project says, else metric", List.of("metric", "us")));
        spec.addOption(Options.text("--plug", "NAME", "which plug, where the file has several"));
        spec.addPositional(Options.parameter(0, "FILE", "a spec"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        Path file = Paths.of(parsed.matchedPositionalValue(0, ""), io);
        Optional<Path> target = Options.value(parsed, "--out").map(written -> Paths.of(written, io));
        if (target.isPresent() && (target.get().equals(file) || target.get().toString().endsWith(".plug"))) {
            throw new WrongUsage("--out would write over a spec: " + target.get().getFileName());
        }
        Optional<DrawingOutput> drawings = drawings(parsed);
        SheetChoice choice = choice(parsed);
        OptionalLong seconds = Options.value(parsed, "--seconds").map(words -> OptionalLong.of(whole("--seconds", words, 1, MOST_SECONDS))).orElse(OptionalLong.empty());
        Checked checked = SpecSession.start().check(file, () -> false);
        return switch (PlugChoice.of(checked, Options.value(parsed, "--plug"), io)) {
            case PlugChoice.None(int code) -> code;
            case PlugChoice.Chosen(var plan) -> {
                UnitSystem units = units(parsed, checked);
                List<SheetLayout> layouts = lay(plan, choice, seconds, units, io);
                if (drawings.isPresent()) {
                    yield draw(drawings.get(), layouts, plan, checked, units, io);
                }
                boolean json = Options.value(parsed, "--format").filter("json"::equals).isPresent();
                yield deliver(json ? SheetsJson.print(plan.plug(), checked.revision(), layouts) : new SheetsText(units).print(plan.plug(), layouts), target, io);
            }
        };
    }

    private static Optional<DrawingOutput> drawings(ParseResult parsed) {
        if (List.of("dxf", "svg", "pdf").contains(Options.value(parsed, "--format").orElse("text"))) {
            return Optional.of(DrawingOutput.of(parsed));
        }
        if (Options.value(parsed, "--paper").isPresent() || Options.value(parsed, "--measured").isPresent()) {
            throw new WrongUsage("--paper and --measured are for --format pdf");
        }
        return Optional.empty();
    }

    /** Drawings in a folder; what lies on them is printed beside, so that a part too large for any sheet is not overlooked. */
    private static int draw(DrawingOutput output, List<SheetLayout> layouts, BuildPlan plan, Checked checked, UnitSystem units, ProcessIo io) {
        List<FileFormat.NamedDrawing> drawings = new ArrayList<>();
        String code = plan.plug() + " " + checked.revision();
        for (Drawing drawing : NestedSheet.of(layouts, code)) {
            drawings.add(new FileFormat.NamedDrawing(plan.plug() + "-" + drawing.title(), drawing));
        }
        io.out().print(new SheetsText(units).print(plan.plug(), layouts) + "\n");
        return drawings.isEmpty() ? ExitCode.ERRORS : output.write(plan.plug() + "-sheets", drawings, code, io);
    }

    private static SheetChoice choice(ParseResult parsed) {
        Turns turns = switch (Options.value(parsed, "--turn").orElse("quarter")) {
            case "none" -> Turns.NONE;
            case "free" -> Turns.FREE;
            default -> Turns.QUARTERS;
        };
        OptionalInt trials = Options.value(parsed, "--trials").map(words -> OptionalInt.of((int) whole("--trials", words, 1, 1_000_000))).orElse(OptionalInt.empty());
        return new SheetChoice(turns, trials, Options.value(parsed, "--seed").map(words -> whole("--seed", words, Long.MIN_VALUE, Long.MAX_VALUE)).orElse(1L));
    }

    private static long whole(String option, String words, long least, long most) {
        try {
            long number = Long.parseLong(words);
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException e) {
            throw new WrongUsage(option + " takes a whole number, not `" + words + "`");
        }
        throw new WrongUsage(option + " takes " + least + " to " + most + ", not " + words);
    }

    private static List<SheetLayout> lay(BuildPlan plan, SheetChoice choice, OptionalLong seconds, UnitSystem units, ProcessIo io) {
        long begun = System.nanoTime();
        BooleanSupplier late = () -> seconds.isPresent() && System.nanoTime() - begun >= TimeUnit.SECONDS.toNanos(seconds.getAsLong());
        try (Interruption interruption = Interruption.awaited()) {
            List<SheetLayout> layouts = SheetLaying.lay(plan, choice, progress -> tell(progress, units, io), () -> interruption.happened() || late.getAsBoolean());
            if (io.terminal()) {
                io.err().print("\r\033[K");
                io.err().flush();
            }
            return layouts;
        }
    }

    private static void tell(NestProgress progress, UnitSystem units, ProcessIo io) {
        if (io.terminal()) {
            io.err().print("\r\033[K" + progress.tried() + " of " + progress.of() + " layouts, best: " + progress.sheets() + (progress.sheets() == 1 ? " sheet, " : " sheets, ")
                    + Display.of(units).format(progress.usedLength(), Dimension.LENGTH) + " of the last; Ctrl-C keeps it");
            io.err().flush();
        }
    }

    private static UnitSystem units(ParseResult parsed, Checked checked) {
        boolean us = Options.value(parsed, "--units").map("us"::equals)
                .orElseGet(() -> checked.project().settings().units().filter(units -> units == OutputUnits.US).isPresent());
        return us ? UnitSystem.US : UnitSystem.METRIC;
    }

    private static int deliver(String text, Optional<Path> target, ProcessIo io) {
        if (target.isEmpty()) {
            io.out().print(text);
            return ExitCode.FINE;
        }
        return switch (SafeWrite.text(target.get(), text)) {
            case WriteResult.Written written -> ExitCode.FINE;
            case WriteResult.NotWritten(Path path, String message) -> {
                io.err().print("mouldwright: " + new PathNames(io.directory()).of(path) + " is not written: " + message + "\n");
                yield ExitCode.FILE;
            }
        };
    }
}
