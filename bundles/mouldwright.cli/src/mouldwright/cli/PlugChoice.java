package mouldwright.cli;

import java.util.Comparator;
import java.util.Optional;
import java.util.Set;
import mouldwright.plan.BuildPlan;
import mouldwright.check.Severity;
import mouldwright.services.Checked;
import mouldwright.services.ProcessIo;
import mouldwright.units.SpellingDistance;

/** The plan a command is about: of the one plug of a spec, or of the one that is named. */
final class PlugChoice {

    /** What came of looking for it. */
    sealed interface Choice { }

    /** The plan. */
    record Chosen(BuildPlan plan) implements Choice { }

    /** No plan, and what the shell is told; the reason is printed already. */
    record None(int exitCode) implements Choice { }

    private PlugChoice() { }

    /**
     * Chooses. Findings of a spec with errors go to standard error.
     *
     * @param name of the plug, where one is given
     * @throws WrongUsage if there is no plug, or not that one, or more than one and none is named
     */
    static Choice of(Checked checked, Optional<String> name, ProcessIo io) {
        if (!checked.read() || checked.hasErrors()) {
            FindingsOutput.toError(checked.findings(), checked.texts(), io);
            return new None(checked.read() ? ExitCode.ERRORS : ExitCode.FILE);
        }
        Set<String> plugs = checked.plans().keySet();
        if (plugs.isEmpty()) {
            throw new WrongUsage("no plug in " + checked.file().getFileName() + (isEmpty(checked) ? ": the file is empty" : ""));
        }
        if (name.isPresent()) {
            return Optional.ofNullable(checked.plans().get(name.get())).map(Chosen::new)
                    .orElseThrow(() -> new WrongUsage("no plug is called `" + name.get() + "`; `" + nearest(name.get(), plugs) + "`?"));
        }
        if (plugs.size() > 1) {
            throw new WrongUsage("several plugs in " + checked.file().getFileName() + ": say which with --plug " + String.join("|", plugs));
        }
        return new Chosen(checked.plans().values().iterator().next());
    }

    private static boolean isEmpty(Checked checked) {
        return checked.texts().getOrDefault(checked.file(), "").isBlank()
                && checked.findings().stream().anyMatch(finding -> finding.severity() == Severity.WARNING);
    }

    private static String nearest(String name, Set<String> plugs) {
        return plugs.stream().min(Comparator.comparingInt(plug -> SpellingDistance.between(name, plug))).orElseThrow();
    }
}
