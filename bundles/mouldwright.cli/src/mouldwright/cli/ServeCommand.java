package mouldwright.cli;

import mouldwright.services.ProcessIo;
import mouldwright.services.serve.StdioServer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Answers an editor in the Language Server Protocol. */
final class ServeCommand implements Subcommand {

    @Override
    public String name() {
        return "serve";
    }

    @Override
    public String summary() {
        return "answer an editor: a language server on standard input and output";
    }

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Options.flag("--stdio", "on standard input and output, which is the only way; editors like to say it"));
        spec.addOption(Options.flag("--log", "write faults of the program to standard error"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        return StdioServer.serve(io.in(), io.out(), io.err(), Options.given(parsed, "--log"));
    }
}
