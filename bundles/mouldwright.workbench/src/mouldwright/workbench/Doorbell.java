package mouldwright.workbench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.StandardProtocolFamily;
import java.net.UnixDomainSocketAddress;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.ServerSocketChannel;
import java.nio.channels.SocketChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.core.runtime.ILog;

/**
 * How a second process tells the running one which files to open: a socket in the file system, one path a line. The socket lies in the
 * folder of temporary files that only this user may enter, since its name must be short.
 */
final class Doorbell implements AutoCloseable {

    private final Path socket;
    private ServerSocketChannel door;

    /** @param area the data area it belongs to */
    Doorbell(Path area) {
        String runtime = System.getenv("XDG_RUNTIME_DIR");
        Path folder = runtime != null && Files.isWritable(Path.of(runtime)) ? Path.of(runtime) : area;
        this.socket = folder.resolve("mouldwright-" + Integer.toHexString(area.toString().hashCode()) + ".socket");
    }

    /**
     * Listens until closed.
     *
     * @param open called with each path that is asked for, on a thread of its own; with none where the window is only to come to the front
     */
    void listen(Consumer<List<Path>> open) {
        try {
            Files.createDirectories(socket.getParent());
            Files.deleteIfExists(socket);
            door = ServerSocketChannel.open(StandardProtocolFamily.UNIX);
            door.bind(UnixDomainSocketAddress.of(socket));
            Thread.ofPlatform().daemon().name("Files asked for by other processes").start(() -> answer(open));
        } catch (IOException | UnsupportedOperationException e) {
            ILog.get().warn("Files opened from outside will not come to this window: " + e.getMessage());
        }
    }

    private void answer(Consumer<List<Path>> open) {
        while (door.isOpen()) {
            try (SocketChannel caller = door.accept();
                    BufferedReader lines = new BufferedReader(new InputStreamReader(Channels.newInputStream(caller), StandardCharsets.UTF_8))) {
                open.accept(lines.lines().filter(line -> !line.isBlank()).map(Path::of).toList());
            } catch (IOException | RuntimeException e) {
                if (door.isOpen())
                    ILog.get().warn("A file asked for by another process was not opened: " + e.getMessage());
            }
        }
    }

    /** Asks the running process to open files. */
    void ring(List<Path> files) throws IOException {
        try (SocketChannel channel = SocketChannel.open(UnixDomainSocketAddress.of(socket))) {
            StringBuilder text = new StringBuilder();
            files.forEach(file -> text.append(file).append('\n'));
            ByteBuffer bytes = StandardCharsets.UTF_8.encode(text.toString());
            while (bytes.hasRemaining())
                channel.write(bytes);
        }
    }

    @Override
    public void close() throws IOException {
        if (door != null)
            door.close();
        Files.deleteIfExists(socket);
    }
}
