package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Ctrl-C at a real terminal: the program `script` of util-linux gives the process one, and `kill` of the system sends the signal. */
class InterruptionTest {

    private static final Path EXAMPLES = Path.of("../../examples").toAbsolutePath().normalize();

    @Timeout(value = 5, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    @Test void ctrlCKeepsTheBestLayoutSoFar() throws Exception {
        Process process = new ProcessBuilder("script", "-qfec", java() + " sheets rain-canopy/canopy.plug --trials 1000000", "/dev/null").directory(EXAMPLES.toFile())
                .redirectErrorStream(true).start();
        StringBuilder seen = new StringBuilder();
        read(process, seen, "layouts, best: ");
        ProcessHandle search = process.descendants().filter(child -> child.info().command().orElse("").endsWith("java")).findFirst().orElseThrow();
        assertThat(new ProcessBuilder("kill", "-INT", Long.toString(search.pid())).start().waitFor()).isZero();
        read(process, seen, "\u0004 until the end of all output");
        assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(seen.toString()).contains("RainCanopy, parts laid on sheets", "The search was stopped early", "local codes");
        assertThat(process.exitValue()).isZero();
    }

    /** With the signal as a terminal's shell leaves it: what runs in the background of a script begins with it ignored. */
    private static String java() {
        return "env --default-signal=INT '" + Path.of(System.getProperty("java.home"), "bin", "java") + "' -cp '" + System.getProperty("java.class.path") + "' mouldwright.cli.Main";
    }

    /** Reads until words have been seen, or to the end. */
    private static void read(Process process, StringBuilder seen, String words) throws IOException {
        InputStream in = process.getInputStream();
        byte[] some = new byte[4096];
        while (seen.indexOf(words) < 0) {
            int count = in.read(some);
            if (count < 0)
                return;
            seen.append(new String(some, 0, count, StandardCharsets.UTF_8));
        }
    }
}
