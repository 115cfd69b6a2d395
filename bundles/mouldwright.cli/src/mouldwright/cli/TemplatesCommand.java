package mouldwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import mouldwright.drawing.FileFormat;
import mouldwright.drawing.subject.PartTemplate;
import mouldwright.geometry.frame.PlatePart;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.stage.Gauges;
import mouldwright.services.Checked;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Writes templates at full size of all that is cut out of sheet. */
final class TemplatesCommand implements Subcommand {

    @Override
    public String name() {
        return "templates";
    }

    @Override
    public String summary() {
        return "write bulkheads and the parts under them at full size";
    }

    @Override
    public void describe(CommandSpec spec) {
        DrawingOutput.describe(spec);
        spec.addOption(Options.flag("--gauges", "check profiles for the finished surface too, at the middle of each bay"));
        spec.addOption(Options.text("--plug", "NAME", "which plug, where the file has several"));
        spec.addPositional(Options.parameter(0, "FILE", "a spec"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        Path file = Paths.of(parsed.matchedPositionalValue(0, ""), io);
        DrawingOutput output = DrawingOutput.of(parsed);
        Checked checked = SpecSession.start().check(file, () -> false);
        return switch (PlugChoice.of(checked, Options.value(parsed, "--plug"), io)) {
            case PlugChoice.None(int code) -> code;
            case PlugChoice.Chosen(var plan) -> {
                List<PlatePart> parts = parts(plan, Options.given(parsed, "--gauges"));
                if (parts.isEmpty()) {
                    io.err().print("mouldwright: " + plan.plug() + " has nothing to cut out of sheet: add `frame { sheet NAME }`\n");
                    yield ExitCode.ERRORS;
                }
                String code = plan.plug() + " " + checked.revision();
                parts.forEach(part -> io.out().print(line(part)));
                yield output.write(plan.plug() + "-templates",
                        parts.stream().map(part -> new FileFormat.NamedDrawing(plan.plug() + "-" + part.key(), PartTemplate.of(part, code))).toList(), code, io);
            }
        };
    }

    private static List<PlatePart> parts(BuildPlan plan, boolean gauges) {
        return gauges ? Stream.concat(plan.parts().stream(), Gauges.midBays(plan).stream()).toList() : plan.parts();
    }

    private static String line(PlatePart part) {
        return String.format(Locale.ROOT, "%-28s %5.0f by %4.0f mm   %d off   %s%n", part.key(), 1000 * (part.outer().maxY() - part.outer().minY()),
                1000 * (part.outer().maxZ() - part.outer().minZ()), part.quantity(), part.sheet()).replace(System.lineSeparator(), "\n");
    }
}
