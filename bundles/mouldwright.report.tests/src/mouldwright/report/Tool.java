package mouldwright.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** A program of the system that reads what we write. One that is missing fails the test. */
final class Tool {

    private Tool() { }

    /** Runs it and returns what it prints. */
    static String run(Path folder, String... command) {
        try {
            Process process = new ProcessBuilder(List.of(command)).directory(folder.toFile()).redirectErrorStream(true).start();
            process.getOutputStream().close();
            String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            int code = process.waitFor();
            if (code != 0) {
                throw new AssertionError(String.join(" ", command) + " ended with " + code + ":\n" + output);
            }
            return output;
        } catch (IOException e) {
            throw new UncheckedIOException("install what the tests lean on, see ./verify: " + command[0], e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }
}
