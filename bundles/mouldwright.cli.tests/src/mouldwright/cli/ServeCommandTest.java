package mouldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The language server as a process of its own: what the shell sees of it, and a real editor at the other end. */
class ServeCommandTest {

    private static final long PATIENCE = 300;
    private static final String INITIALIZE = "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"initialize\",\"params\":{\"processId\":null,\"rootUri\":null,\"capabilities\":{}}}";

    @TempDir
    private Path folder;

    private static List<String> command() {
        return List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Dguice_bytecode_gen_option=DISABLED", "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")), "mouldwright.cli.Main", "serve", "--stdio");
    }

    private Process start() throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command()).directory(folder.toFile()).redirectError(folder.resolve("err.txt").toFile());
        builder.environment().remove("JAVA_TOOL_OPTIONS");
        return builder.start();
    }

    private static void send(Process process, String message) throws IOException {
        byte[] body = message.getBytes(StandardCharsets.UTF_8);
        process.getOutputStream().write(("Content-Length: " + body.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
        process.getOutputStream().write(body);
        process.getOutputStream().flush();
    }

    /** Reads one message; anything else on standard output fails the test. */
    private static String read(Process process) throws IOException {
        InputStream out = process.getInputStream();
        StringBuilder header = new StringBuilder();
        while (header.indexOf("\r\n\r\n") < 0) {
            int c = out.read();
            assertThat(c).as("after " + header).isNotNegative();
            header.append((char) c);
        }
        assertThat(header.toString()).matches("Content-Length: \\d+\r\n\r\n");
        return new String(out.readNBytes(Integer.parseInt(header.toString().replaceAll("\\D", ""))), StandardCharsets.UTF_8);
    }

    private static int code(Process process) throws InterruptedException {
        assertThat(process.waitFor(PATIENCE, TimeUnit.SECONDS)).isTrue();
        return process.exitValue();
    }

    @Test void theServerSpeaksTheProtocolAndNothingElse() throws Exception {
        Process process = start();
        send(process, INITIALIZE);
        assertThat(read(process)).contains("\"id\":1", "\"capabilities\"", "\"positionEncoding\":\"utf-16\"");
        send(process, "{\"jsonrpc\":\"2.0\",\"id\":2,\"method\":\"shutdown\"}");
        assertThat(read(process)).contains("\"id\":2");
        send(process, "{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");
        assertThat(code(process)).isZero();
        assertThat(process.getInputStream().readAllBytes()).isEmpty();
        assertThat(folder.resolve("err.txt")).content().doesNotContain("\tat ", "mouldwright");
    }

    @Test void withoutShutdownItEndsWithOne() throws Exception {
        Process told = start();
        send(told, INITIALIZE);
        read(told);
        send(told, "{\"jsonrpc\":\"2.0\",\"method\":\"exit\"}");
        assertThat(code(told)).isEqualTo(1);
        Process hungUp = start();
        hungUp.getOutputStream().close();
        assertThat(code(hungUp)).isEqualTo(1);
    }

    /** Neovim of the distribution, an editor that knows nothing of us, with its own client of the protocol. */
    @Test void anEditorOpensCompletesMendsTypesHoversRenamesAndLaysOut() throws Exception {
        Specs.write(folder, "mouldwright.project", "");
        Specs.write(folder, "stock/small.plug", """
                library stock.small version "1.0" currency EUR

                /** The only foam. */
                foam Pour36 "Pour foam" {
                    expansion 32
                    density 36 kg/m3
                }
                resin Laminating { density 1.13 kg/l }
                mat Csm450 { areal 450 g/m2 glass 28.6 % }
                schedule Skin using Laminating { ply Csm450 }
                """);
        Specs.write(folder, "box.plug", """
                use stock.small version "1.0"

                plug Box "A box" {
                    units mm
                    half sections
                    station A at 0 {
                        0 0
                        100 0 knuckle
                        100 50 knuckle
                        0 50
                    }
                    station B at 400 like A
                    fill Pour36 solid {
                        overfil 15
                    }
                    skin Skin {
                        lap 50
                    }
                }
                """);
        Path script = Path.of(ServeCommandTest.class.getResource("/neovim/session.lua").toURI());
        Path log = Files.createDirectories(Path.of("target")).resolve("neovim.log").toAbsolutePath();
        List<String> neovim = new ArrayList<>(List.of("nvim", "--headless", "-u", "NONE", "-i", "NONE", "-n", "-c", "luafile " + script));
        ProcessBuilder builder = new ProcessBuilder(neovim).directory(folder.toFile()).redirectErrorStream(true).redirectOutput(folder.resolve("neovim.txt").toFile());
        builder.environment().put("MOULDWRIGHT_SERVER", String.join("\n", command()));
        builder.environment().put("MOULDWRIGHT_FOLDER", folder.toRealPath().toString());
        builder.environment().put("MOULDWRIGHT_LOG", log.toString());
        builder.environment().put("XDG_STATE_HOME", folder.resolve("state").toString());
        builder.environment().put("XDG_DATA_HOME", folder.resolve("data").toString());
        builder.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
        Process process = builder.start();
        boolean ended = process.waitFor(PATIENCE, TimeUnit.SECONDS);
        if (!ended) {
            process.destroyForcibly();
        }
        String told = Files.exists(log) ? Files.readString(log) : "no log";
        assertThat(ended).as(told + Files.readString(folder.resolve("neovim.txt"))).isTrue();
        assertThat(process.exitValue()).as(told + Files.readString(folder.resolve("neovim.txt"))).isZero();
        assertThat(told).contains("seen: completion", "seen: hover", "seen: rename across files", "seen: layout", "all is well");
    }
}
