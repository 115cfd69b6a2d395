package mouldwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import mouldwright.report.CardBook;
import mouldwright.report.Estimate;
import mouldwright.report.PdfPaper;
import mouldwright.services.Checked;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;
import mouldwright.units.UnitSystem;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Prints the cards of a plan for the shop, as a PDF. With errors in the spec it prints the findings and no cards. */
final class CardsCommand implements Subcommand {

    @Override
    public String name() {
        return "cards";
    }

    @Override
    public String summary() {
        return "print the cards of a plan for the shop, as a PDF: pours, lay-up, alignment, programme, orders";
    }

    @Override
    public void describe(CommandSpec spec) {
        spec.addOption(Options.text("--out", "FILE", "write to this file; a crash leaves the old one whole"));
        spec.addOption(Options.choice("--only", String.join("|", CardBook.kinds()), "cards of one kind alone", CardBook.kinds()));
        spec.addOption(Options.choice("--paper", "a4|a5|letter", "the paper they are printed on; else A4, or letter with US units", List.of("a4", "a5", "letter")));
        spec.addOption(Options.choice("--units", "metric|us", "units of the cards; else as the project says, else metric", List.of("metric", "us")));
        spec.addOption(Options.text("--plug", "NAME", "which plug, where the file has several"));
        spec.addPositional(Options.parameter(0, "FILE", "a spec"));
    }

    @Override
    public int run(ParseResult parsed, ProcessIo io) {
        Path file = Paths.of(parsed.matchedPositionalValue(0, ""), io);
        Optional<Path> target = Delivery.target(parsed, file, io);
        Delivery.refuseTerminal("cards", "cards.pdf", target, io);
        Checked checked = SpecSession.start().check(file, () -> false);
        return switch (PlugChoice.of(checked, Options.value(parsed, "--plug"), io)) {
            case PlugChoice.None(int code) -> code;
            case PlugChoice.Chosen(var plan) -> {
                UnitSystem system = EstimateCommand.units(parsed, checked);
                PdfPaper paper = Options.value(parsed, "--paper").map(PdfPaper::named).orElse(PdfPaper.of(system));
                Optional<String> kind = Options.value(parsed, "--only");
                byte[] cards = new CardBook(system, paper).print(Estimate.of(plan, checked.revision(), checked.findings()), kind)
                        .orElseThrow(() -> new WrongUsage("nothing in this plan for cards" + kind.map(one -> " of " + one).orElse("")
                                + ": pours come with a `fill` block, lay-up with `skin` or `mould`, alignment with `frame`"));
                FindingsOutput.toError(checked.findings(), checked.texts(), io);
                yield Delivery.of(cards, target, io);
            }
        };
    }
}
