package mouldwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import mouldwright.report.PathNames;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import mouldwright.services.WhereUsed;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Prints which specs use what a library declares, before somebody changes it. */
final class UsesCommand implements Subcommand {

    @Override
    public String name() {
        return "uses";
    }

    @Override
    public String summary() {
        return "print where a material, schedule or other declaration is used, in all specs of its project";
    }

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Options.text("--in", "FOLDER", "the project whose specs are looked through; else the one FILE lies in"));
        spec.addPositional(Options.parameter(0, "FILE", "a library or spec"));
        spec.addPositional(Options.optional(1, "NAME", "one declaration of it; else all"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        Path file = Paths.of(parsed.matchedPositionalValue(0, ""), io);
        Optional<String> name = parsed.hasMatchedPositional(1) ? Optional.of(parsed.matchedPositionalValue(1, "")) : Optional.empty();
        Optional<Path> project = Options.value(parsed, "--in").map(folder -> Paths.of(folder, io));
        return switch (SpecSession.start().uses(file, project)) {
            case WhereUsed.Unread(var finding) -> {
                io.err().print("mouldwright: " + new PathNames(io.directory()).of(file) + ": " + finding.message() + "\n");
                yield ExitCode.FILE;
            }
            case WhereUsed.Found(List<WhereUsed.Declared> declarations) -> {
                List<WhereUsed.Declared> wanted = declarations.stream().filter(one -> name.isEmpty() || name.get().equals(one.name())).toList();
                if (wanted.isEmpty() && name.isPresent()) {
                    throw new WrongUsage("`" + name.get() + "` is not declared in " + file.getFileName() + ", which declares "
                            + (declarations.isEmpty() ? "nothing" : String.join(", ", declarations.stream().map(WhereUsed.Declared::name).toList())));
                }
                wanted.forEach(one -> io.out().print(words(one, new PathNames(io.directory()))));
                yield ExitCode.FINE;
            }
        };
    }

    private static String words(WhereUsed.Declared declared, PathNames names) {
        StringBuilder out = new StringBuilder(declared.kind() + " " + declared.name() + ", line " + declared.line() + ": ");
        long files = declared.places().stream().map(WhereUsed.Place::file).distinct().count();
        int places = declared.places().size();
        out.append(places == 0 ? "not used" : places + (places == 1 ? " place" : " places") + " in " + files + (files == 1 ? " file" : " files")).append('\n');
        for (WhereUsed.Place place : declared.places()) {
            out.append("  ").append(names.of(place.file())).append(':').append(place.line()).append(':').append(place.column()).append("  ").append(place.words()).append('\n');
        }
        return out.toString();
    }
}
