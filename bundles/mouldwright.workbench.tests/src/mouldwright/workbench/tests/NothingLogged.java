package mouldwright.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.core.runtime.Platform;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Fails a test after which the log of the platform holds an error, whoever made it and on whatever thread, start included. */
final class NothingLogged implements AfterEachCallback {

    @Override
    public void afterEach(ExtensionContext context) throws Exception {
        Path log = Platform.getLogFileLocation().toPath();
        if (Files.exists(log))
            assertEquals("", errors(Files.readAllLines(log)), "errors in the log of the workbench");
    }

    /** An entry begins with its plug-in and its severity; 4 is an error. */
    private static String errors(List<String> lines) {
        return IntStream.range(0, lines.size()).filter(i -> lines.get(i).matches("!ENTRY \\S+ 4 .*"))
                .mapToObj(i -> String.join("\n", lines.subList(i, Math.min(lines.size(), i + 25)))).collect(Collectors.joining("\n\n"));
    }
}
