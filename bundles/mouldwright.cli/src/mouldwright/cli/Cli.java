package mouldwright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import mouldwright.services.ProcessIo;
import mouldwright.units.SpellingDistance;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** Finds the subcommand, parses its arguments, runs it, and turns whatever happens into an exit code and words. */
public final class Cli {

    private static final String PROGRAM = "mouldwright";
    private static final int WIDTH = 100;

    static final List<Subcommand> ALL = List.of(
            new CheckCommand(),
            new EstimateCommand(),
            new ExplainCommand(),
            new TemplatesCommand(),
            new DrawCommand(),
            new SheetsCommand(),
            new OffsetsCommand(),
            new CardsCommand(),
            new MeshCommand(),
            new ImportCommand(),
            new CompareCommand(),
            new FormatCommand(),
            new ServeCommand());

    private final List<Subcommand> commands;

    /** The command line with all its subcommands. */
    public Cli() {
        this(ALL);
    }

    Cli(List<Subcommand> commands) {
        this.commands = commands;
    }

    /**
     * Runs a command. Nothing that goes wrong leaves as an exception.
     *
     * @param io        what the command has of its process
     * @param arguments the subcommand and its arguments
     * @return the exit code, see {@link ExitCode}
     */
    public int run(ProcessIo io, String... arguments) {
        int code;
        try {
            code = dispatch(io, arguments);
        } catch (WrongUsage e) {
            code = wrongUsage(io, e.getMessage(), arguments);
        } catch (Throwable e) { // the outermost place there is: a fault becomes a report and a line, whatever it is
            code = FaultReport.write(e, arguments, io);
        }
        io.out().flush();
        io.err().flush();
        if (io.out().checkError() && code != ExitCode.FAULT) {
            io.err().println(PROGRAM + ": the results could not all be written");
            io.err().flush();
            return ExitCode.FILE;
        }
        return code;
    }

    private int dispatch(ProcessIo io, String[] arguments) {
        String word = arguments.length == 0 ? "" : arguments[0];
        return switch (word) {
            case "" -> {
                io.err().print(overview());
                yield ExitCode.USAGE;
            }
            case "-h", "--help" -> print(io, overview());
            case "help" -> print(io, arguments.length == 1 ? overview() : commandLine(find(arguments[1])).getUsageMessage(Ansi.OFF));
            case "-V", "--version" -> print(io, PROGRAM + " " + Version.words() + "\n");
            default -> {
                if (word.startsWith("-")) {
                    throw new WrongUsage("no option " + word + " before a command");
                }
                yield run(find(word), io, Arrays.copyOfRange(arguments, 1, arguments.length));
            }
        };
    }

    private static int run(Subcommand command, ProcessIo io, String[] arguments) {
        CommandLine line = commandLine(command);
        ParseResult parsed;
        try {
            parsed = line.parseArgs(arguments);
        } catch (ParameterException e) {
            throw new WrongUsage(e.getMessage());
        }
        return parsed.isUsageHelpRequested() ? print(io, line.getUsageMessage(Ansi.OFF)) : command.run(parsed, io);
    }

    private Subcommand find(String word) {
        Optional<Subcommand> found = commands.stream().filter(command -> command.name().equals(word)).findFirst();
        return found.orElseThrow(() -> new WrongUsage("no command `" + word + "`" + nearest(word).map(near -> "; `" + near + "`?").orElse("")));
    }

    private Optional<String> nearest(String word) {
        return commands.stream().map(Subcommand::name).filter(name -> SpellingDistance.between(word, name) <= Math.max(2, word.length()))
                .min((a, b) -> Integer.compare(SpellingDistance.between(word, a), SpellingDistance.between(word, b)));
    }

    private static CommandLine commandLine(Subcommand command) {
        CommandSpec spec = CommandSpec.create().name(PROGRAM + " " + command.name());
        spec.usageMessage().description(command.summary()).width(WIDTH).sortOptions(false).sortSynopsis(false);
        spec.addOption(OptionSpec.builder("-h", "--help").usageHelp(true).description("print this").build());
        command.describe(spec);
        CommandLine line = new CommandLine(spec);
        // A file whose name begins with @ is a file, and an option given twice is a slip.
        line.setExpandAtFiles(false);
        return line;
    }

    private String overview() {
        StringBuilder out = new StringBuilder("Usage: ").append(PROGRAM).append(" COMMAND [OPTIONS] FILE...\n\n");
        for (Subcommand command : commands) {
            out.append("  ").append(command.name()).append(" ".repeat(Math.max(1, 11 - command.name().length()))).append(command.summary()).append('\n');
        }
        return out.append("  help       print this, or what a command takes: help COMMAND\n  --version  print the version\n\n")
                .append("Exit codes: 0 fine, 1 errors in the spec, 2 wrong usage, 3 a file not read or written, 70 internal fault\n").toString();
    }

    private static int print(ProcessIo io, String text) {
        io.out().print(text);
        return ExitCode.FINE;
    }

    private int wrongUsage(ProcessIo io, String message, String[] arguments) {
        boolean known = arguments.length > 0 && commands.stream().anyMatch(command -> command.name().equals(arguments[0]));
        io.err().print(PROGRAM + ": " + message + "\n" + "see: " + PROGRAM + " help" + (known ? " " + arguments[0] : "") + "\n");
        return ExitCode.USAGE;
    }
}
