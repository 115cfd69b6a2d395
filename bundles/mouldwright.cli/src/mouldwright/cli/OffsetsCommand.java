package mouldwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.OffsetTable;
import mouldwright.plan.stage.Offsets;
import mouldwright.project.OutputUnits;
import mouldwright.report.OffsetPaper;
import mouldwright.report.OffsetReport;
import mouldwright.report.PdfPaper;
import mouldwright.services.Checked;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import mouldwright.units.Dimension;
import mouldwright.units.Unit;
import mouldwright.units.UnitSystem;
import mouldwright.units.Units;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Prints the table of offsets of a plug, as it is lofted. */
final class OffsetsCommand implements Subcommand {

    /** Distances between lines that are easily marked, m; the first that gives no more than a dozen waterlines is taken. */
    private static final List<Double> METRIC = List.of(0.005, 0.010, 0.020, 0.025, 0.050, 0.100, 0.200, 0.250, 0.500, 1.0, 2.0, 5.0, 10.0);
    private static final List<Double> US = List.of(0.00635, 0.0127, 0.0254, 0.0508, 0.0762, 0.1524, 0.3048, 0.6096, 0.9144, 1.8288, 3.048);
    private static final int LINES = 12;

    @Override
    public String name() {
        return "offsets";
    }

    @Override
    public String summary() {
        return "print the faired table of offsets of a plug, as CSV or PDF";
    }

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Options.choice("--format", "csv|pdf", "for a spreadsheet, or to print; else csv", List.of("csv", "pdf")));
        spec.addOption(Options.choice("--paper", "a4|letter", "of the PDF; else A4, or letter with US units", List.of("a4", "letter")));
        spec.addOption(Options.text("--out", "FILE", "write to a file instead; a crash leaves the old one whole"));
        spec.addOption(Options.choice("--surface", "finished|plate|both", "of the finished plug, of the cut lines of its plates, or both, as is usual",
                List.of("finished", "plate", "both")));
        spec.addOption(Options.text("--every", "LENGTH", "distance between waterlines and between buttocks, such as 50mm or 2in; else a round one"));
        spec.addOption(Options.choice("--units", "metric|us", "millimetres, or feet-inches-eighths; else as the project says, else metric", List.of("metric", "us")));
        spec.addOption(Options.text("--plug", "NAME", "which plug, where the file has several"));
        spec.addPositional(Options.parameter(0, "FILE", "a spec"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        Path file = Paths.of(parsed.matchedPositionalValue(0, ""), io);
        Optional<Path> target = Delivery.target(parsed, file, io);
        boolean pdf = Options.value(parsed, "--format").filter("pdf"::equals).isPresent();
        Optional<PdfPaper> paper = Options.value(parsed, "--paper").map(PdfPaper::named);
        if (pdf) {
            Delivery.refuseTerminal("offsets", "offsets.pdf", target, io);
        } else if (paper.isPresent()) {
            throw new WrongUsage("--paper is for --format pdf");
        }
        Optional<Double> stated = Options.value(parsed, "--every").map(OffsetsCommand::length);
        Checked checked = SpecSession.start().check(file, () -> false);
        return switch (PlugChoice.of(checked, Options.value(parsed, "--plug"), io)) {
            case PlugChoice.None(int code) -> code;
            case PlugChoice.Chosen(var plan) -> {
                UnitSystem system = units(parsed, checked);
                OffsetTable table = Offsets.of(plan, stated.orElseGet(() -> round(plan, system)))
                        .orElseThrow(() -> new WrongUsage("--every is too small: more than 200 lines would cross this plug"));
                List<OffsetTable.Surface> wanted = surfaces(parsed, table);
                yield pdf ? Delivery.of(new OffsetPaper(system, paper.orElse(PdfPaper.of(system))).print(table, wanted, plan.plug(), checked.revision()), target, io)
                        : Delivery.of(new OffsetReport(system).print(table, wanted), target, io);
            }
        };
    }

    private static List<OffsetTable.Surface> surfaces(ParseResult parsed, OffsetTable table) {
        List<OffsetTable.Surface> wanted = switch (Options.value(parsed, "--surface").orElse("both")) {
            case "finished" -> List.of(OffsetTable.Surface.FINISHED);
            case "plate" -> List.of(OffsetTable.Surface.PLATE);
            default -> List.of(OffsetTable.Surface.values());
        };
        if (table.rows().stream().noneMatch(row -> wanted.contains(row.surface()))) {
            throw new WrongUsage("no plates in this plan: it has no frame");
        }
        return wanted;
    }

    private static double round(BuildPlan plan, UnitSystem system) {
        List<Double> steps = system == UnitSystem.US ? US : METRIC;
        double extent = Offsets.extent(plan);
        return steps.stream().filter(step -> extent / step <= LINES).findFirst().orElse(steps.getLast());
    }

    /** A length with its unit, as {@code 50mm} or {@code 2 in}. */
    private static double length(String written) {
        int at = 0;
        while (at < written.length() && (Character.isDigit(written.charAt(at)) || written.charAt(at) == '.')) {
            at++;
        }
        Optional<Unit> unit = Units.find(written.substring(at).strip()).filter(found -> found.dimension().equals(Dimension.LENGTH));
        try {
            double length = unit.map(found -> found.toSi(1)).orElse(Double.NaN) * Double.parseDouble(written.substring(0, at));
            if (length > 0 && length < Double.POSITIVE_INFINITY) {
                return length;
            }
        } catch (NumberFormatException e) {
            // told below, as any other slip
        }
        throw new WrongUsage("--every takes a length such as 50mm or 2in, not `" + written + "`");
    }

    private static UnitSystem units(ParseResult parsed, Checked checked) {
        boolean us = Options.value(parsed, "--units").map("us"::equals)
                .orElseGet(() -> checked.project().settings().units().filter(units -> units == OutputUnits.US).isPresent());
        return us ? UnitSystem.US : UnitSystem.METRIC;
    }
}
