package mouldwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import mouldwright.check.CheckPage;
import mouldwright.plan.BuildPlan;
import mouldwright.report.Explanation;
import mouldwright.services.Checked;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import mouldwright.units.UnitSystem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Prints how one quantity came about. */
final class ExplainCommand implements Subcommand {

    @Override
    public String name() {
        return "explain";
    }

    @Override
    public String summary() {
        return "print how a quantity came about, down to spec lines, library entries and defaults; or what a finding means";
    }

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Options.text("--plug", "NAME", "which plug, where the file has several"));
        spec.addPositional(Options.parameter(0, "FILE", "a spec; or the code of a finding, such as MW412, alone"));
        spec.addPositional(Options.optional(1, "ID", "the quantity, such as fill.mass; estimate prints them all"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        String first = parsed.matchedPositionalValue(0, "");
        if (!parsed.hasMatchedPositional(1)) {
            io.out().print(page(first).words());
            return ExitCode.FINE;
        }
        Path file = Paths.of(first, io);
        String id = parsed.matchedPositionalValue(1, "");
        Checked checked = SpecSession.start().check(file, () -> false);
        return switch (PlugChoice.of(checked, Options.value(parsed, "--plug"), io)) {
            case PlugChoice.None(int code) -> code;
            case PlugChoice.Chosen(BuildPlan plan) -> {
                Optional<String> tree = new Explanation(UnitSystem.METRIC).print(plan, id);
                io.out().print(tree.orElseThrow(() -> unknown(plan, id)));
                yield ExitCode.FINE;
            }
        };
    }

    private static CheckPage page(String code) {
        if (!code.matches("MW[0-9]+")) {
            throw new WrongUsage("missing required parameter: 'ID', the quantity to explain");
        }
        return CheckPage.of(code).orElseThrow(() -> new WrongUsage("no finding has the code " + code));
    }

    private static WrongUsage unknown(BuildPlan plan, String id) {
        List<String> nearest = Explanation.nearest(plan, id);
        return new WrongUsage("no quantity `" + id + "` in this plan" + (nearest.isEmpty() ? "" : "; nearest: " + String.join(", ", nearest)));
    }
}
