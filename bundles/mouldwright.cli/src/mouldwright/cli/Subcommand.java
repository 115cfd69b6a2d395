package mouldwright.cli;

import mouldwright.services.ProcessIo;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** One subcommand. A new one is one class and one line in {@link Cli#ALL}. */
interface Subcommand {

    /** The word it is called by. */
    String name();

    /** What it does, in a line. */
    String summary();

    /** Adds its options and parameters. They are built by hand, since reading annotations would slow every start. */
    void describe(CommandSpec spec);

    /**
     * Does it.
     *
     * @return what the shell is told
     * @throws WrongUsage if what was parsed makes no sense together
     */
    int run(ParseResult parsed, ProcessIo io);
}
