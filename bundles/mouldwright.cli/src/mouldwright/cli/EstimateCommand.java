package mouldwright.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import mouldwright.project.OutputUnits;
import mouldwright.report.Caution;
import mouldwright.report.CsvReport;
import mouldwright.report.Estimate;
import mouldwright.report.EstimateFormat;
import mouldwright.report.PathNames;
import mouldwright.services.Checked;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import mouldwright.units.UnitSystem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Prints the build plan of a plug. With errors in the spec it prints the findings and no figures. */
final class EstimateCommand implements Subcommand {

    @Override
    public String name() {
        return "estimate";
    }

    @Override
    public String summary() {
        return "print the build plan of a plug";
    }

    @Override
    public void describe(CommandSpec spec) {
        List<String> formats = EstimateFormat.ALL.stream().map(EstimateFormat::name).toList();
        spec.addOption(Options.choice("--format", String.join("|", formats), "how: text, a JSON object, the quantities as CSV, a page, papers to print, or a workbook", formats));
        spec.addOption(Options.text("--out", "FILE", "write to a file instead; a crash leaves the old one whole"));
        spec.addOption(Options.text("--stage", "NAME", "one stage alone: shape, frame, fill, skin"));
        spec.addOption(Options.choice("--units", "metric|us", "units of what is printed; else as the project says, else metric", List.of("metric", "us")));
        spec.addOption(Options.text("--draws", "N", "draw the uncertain figures N times: what is enough in 10, 50 and 90 of 100 cases"));
        spec.addOption(Options.text("--seed", "S", "whole number the draws begin with; the same gives the same figures; else 1"));
        spec.addOption(Options.choice("--table", "figures|pieces", "which table as CSV: the quantities, or the pieces of mat with their cut list",
                List.of("figures", "pieces")));
        spec.addOption(Options.text("--plug", "NAME", "which plug, where the file has several"));
        spec.addPositional(Options.parameter(0, "FILE", "a spec"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        Path file = Paths.of(parsed.matchedPositionalValue(0, ""), io);
        Optional<Path> target = Delivery.target(parsed, file, io);
        EstimateFormat format = Options.value(parsed, "--format").flatMap(EstimateFormat::find).orElse(EstimateFormat.ALL.getFirst());
        if (format.binary()) {
            Delivery.refuseTerminal(format.name(), "plan." + format.name(), target, io);
        }
        Optional<DrawOrder> order = DrawOrder.of(parsed);
        if (Options.value(parsed, "--table").isPresent() && !format.name().equals("csv")) {
            throw new WrongUsage("--table is for --format csv");
        }
        Checked checked = SpecSession.start().check(file, () -> false);
        return switch (PlugChoice.of(checked, Options.value(parsed, "--plug"), io)) {
            case PlugChoice.None(int code) -> code;
            case PlugChoice.Chosen(var plan) -> {
                Estimate likely = Estimate.of(plan, checked.revision(), checked.findings());
                Estimate whole = order.map(draws -> likely.with(draws.of(plan))).orElse(likely);
                Estimate estimate = Options.value(parsed, "--stage").map(stage -> one(whole, stage)).orElse(whole);
                yield Delivery.of(print(estimate, format, parsed, checked, io), target, io);
            }
        };
    }

    private static Estimate one(Estimate whole, String stage) {
        if (!whole.stages().contains(stage)) {
            throw new WrongUsage("no stage `" + stage + "` in this plan, which has " + String.join(", ", whole.stages()));
        }
        return whole.only(stage);
    }

    private static byte[] print(Estimate estimate, EstimateFormat format, ParseResult parsed, Checked checked, ProcessIo io) {
        if (!format.speaks()) {
            besidesFigures(estimate, checked, io);
        }
        if (Options.value(parsed, "--table").filter("pieces"::equals).isPresent()) {
            return new CsvReport().pieces(estimate).getBytes(StandardCharsets.UTF_8);
        }
        return format.writer().write(estimate, units(parsed, checked), new PathNames(io.directory()));
    }

    /** A table of figures has no room for words, but cautions and findings must not be lost. */
    private static void besidesFigures(Estimate estimate, Checked checked, ProcessIo io) {
        if (!checked.findings().isEmpty()) {
            FindingsOutput.toError(checked.findings(), checked.texts(), io);
        }
        if (!estimate.cautions().isEmpty()) {
            estimate.cautions().forEach(caution -> io.err().print("! " + caution.words() + "\n"));
            io.err().print("! " + Caution.DEFERENCE + "\n");
        }
    }

    static UnitSystem units(ParseResult parsed, Checked checked) {
        boolean us = Options.value(parsed, "--units").map("us"::equals)
                .orElseGet(() -> checked.project().settings().units().filter(units -> units == OutputUnits.US).isPresent());
        return us ? UnitSystem.US : UnitSystem.METRIC;
    }
}
