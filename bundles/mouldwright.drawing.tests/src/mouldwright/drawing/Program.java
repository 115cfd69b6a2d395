package mouldwright.drawing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Runs a program of others over our files; that it is missing or fails is a failure of the test. */
final class Program {

    private Program() { }

    /** What it prints. */
    static String run(String... command) throws IOException, InterruptedException {
        Path errors = Files.createTempFile("program", ".err");
        Process process = new ProcessBuilder(command).redirectError(errors.toFile()).start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int code = process.waitFor();
        String said = Files.readString(errors);
        Files.delete(errors);
        if (code != 0)
            throw new AssertionError(String.join(" ", command) + " ended with " + code + ": " + said + printed);
        return printed;
    }

    /** What a Python script prints when it is given a file. The Python is the system's, which has the readers. */
    static String python(String script, Path file) throws IOException, InterruptedException {
        return run("/usr/bin/python3", "-c", script, file.toString());
    }
}
