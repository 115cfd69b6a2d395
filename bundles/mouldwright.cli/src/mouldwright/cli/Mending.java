package mouldwright.cli;

import java.nio.file.Path;
import java.util.List;
import mouldwright.project.SafeWrite;
import mouldwright.project.WriteResult;
import mouldwright.report.PathNames;
import mouldwright.services.Mended;
import mouldwright.services.ProcessIo;
import mouldwright.services.SpecSession;

/** Writes what may be mended unasked into its files, and says what on standard error. */
final class Mending {

    private Mending() { }

    static int all(SpecSession session, List<Path> paths, ProcessIo io) {
        int worst = ExitCode.FINE;
        for (Path path : paths) {
            try {
                worst = Math.max(worst, one(session.mend(path), path, io));
            } catch (RuntimeException fault) { // one file that the program fails on must not cost the others
                worst = Math.max(worst, FaultReport.write(fault, new String[] {"check", "--fix", path.toString()}, io));
            }
        }
        return worst;
    }

    private static int one(Mended mended, Path path, ProcessIo io) {
        String name = new PathNames(io.directory()).of(path);
        if (!mended.changed()) {
            return ExitCode.FINE;
        }
        return switch (SafeWrite.text(path, mended.after())) {
            case WriteResult.Written written -> {
                mended.done().forEach(done -> io.err().print("mended " + name + ":" + done + "\n"));
                yield ExitCode.FINE;
            }
            case WriteResult.NotWritten(Path file, String message) -> {
                io.err().print("mouldwright: " + name + " is not written: " + message + "\n");
                yield ExitCode.FILE;
            }
        };
    }
}
