package mouldwright.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import mouldwright.drawing.FileFormat;
import mouldwright.drawing.subject.Subjects;
import mouldwright.plan.BuildPlan;
import mouldwright.services.Checked;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Writes drawings of a plan to scale. */
final class DrawCommand implements Subcommand {

    @Override
    public String name() {
        return "draw";
    }

    @Override
    public String summary() {
        return "write drawings of the plug and its plan, to scale";
    }

    @Override
    public void describe(CommandSpec spec) {
        List<String> subjects = Arrays.stream(Subjects.values()).map(Subjects::subject).toList();
        spec.addOption(Options.choice("--only", String.join("|", subjects), "these alone; else all", subjects));
        DrawingOutput.describeToScale(spec);
        spec.addOption(Options.text("--plug", "NAME", "which plug, where the file has several"));
        spec.addPositional(Options.parameter(0, "FILE", "a spec"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        Path file = Paths.of(parsed.matchedPositionalValue(0, ""), io);
        DrawingOutput output = DrawingOutput.toScale(parsed);
        Optional<String> only = Options.value(parsed, "--only");
        Checked checked = SpecSession.start().check(file, () -> false);
        return switch (PlugChoice.of(checked, Options.value(parsed, "--plug"), io)) {
            case PlugChoice.None(int code) -> code;
            case PlugChoice.Chosen(BuildPlan plan) -> {
                String code = plan.plug() + " " + checked.revision();
                List<FileFormat.NamedDrawing> drawings = Arrays.stream(Subjects.values()).filter(subject -> only.isEmpty() || only.get().equals(subject.subject()))
                        .flatMap(subject -> subject.draw(plan, code).stream()).map(one -> new FileFormat.NamedDrawing(plan.plug() + "-" + one.name(), one.drawing())).toList();
                if (drawings.isEmpty()) {
                    io.err().print("mouldwright: " + plan.plug() + " has no " + only.orElse("drawings") + ": the plan does not come that far\n");
                    yield ExitCode.ERRORS;
                }
                yield output.write(plan.plug() + "-drawings", drawings, code, io);
            }
        };
    }
}
