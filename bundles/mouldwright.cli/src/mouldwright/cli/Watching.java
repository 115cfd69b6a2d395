package mouldwright.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mouldwright.plan.BuildPlan;
import mouldwright.report.PlanChanges;
import mouldwright.report.TextFinding;
import mouldwright.services.Checked;
import mouldwright.services.FileChanges;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;

/** Checks again whenever a spec or a library it uses changes, and says what the edit did to the figures. Ends when its changes do. */
final class Watching {

    private final SpecSession session;
    private final List<Path> paths;
    private final FileChanges changes;
    private final ProcessIo io;
    private final Map<String, BuildPlan> plans = new HashMap<>();

    Watching(SpecSession session, List<Path> paths, FileChanges changes, ProcessIo io) {
        this.session = session;
        this.paths = paths.stream().map(path -> path.toAbsolutePath().normalize()).toList();
        this.changes = changes;
        this.io = io;
    }

    int run() {
        Set<Path> files = look(true);
        while (changes.await(files)) {
            files = look(false);
        }
        return ExitCode.FINE;
    }

    /** What is found now.
     *  @return the files it rests on */
    private Set<Path> look(boolean first) {
        Set<TextFinding> findings = new LinkedHashSet<>();
        Map<Path, String> texts = new LinkedHashMap<>();
        List<String> figures = new ArrayList<>();
        for (Path path : paths) {
            Checked checked = session.check(path, () -> false);
            findings.addAll(checked.findings());
            texts.putAll(checked.texts());
            checked.plans().forEach((name, plan) -> figures(path, name, plan, figures));
        }
        FindingsOutput.toResult(new ArrayList<>(findings), texts, io);
        if (!first) {
            figures.forEach(line -> io.out().print(line + "\n"));
            io.out().print("\n");
        }
        io.out().flush();
        Set<Path> files = new LinkedHashSet<>(paths);
        files.addAll(texts.keySet());
        return files;
    }

    /** Against the last plan there was: one without errors in between is not lost. */
    private void figures(Path path, String name, BuildPlan plan, List<String> lines) {
        BuildPlan before = plans.put(path + " " + name, plan);
        if (before != null) {
            String changed = PlanChanges.words(before, plan);
            lines.add(name + ": " + (changed.isEmpty() ? "the same figures" : changed));
        }
    }
}
