package mouldwright.services;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/** Changes of files on the disk. The system's notices end the wait early; where it gives none, as on some shared drives, size and time of the files are
 *  looked at every half second all the same. */
public final class DiskChanges implements FileChanges, AutoCloseable {

    private static final long LOOK = 500;
    /** An editor writes in several steps; they are one change. */
    private static final long SETTLE = 50;

    private final Optional<WatchService> notices;
    private final Map<Path, WatchKey> folders = new HashMap<>();
    private Map<Path, String> known = new HashMap<>();

    /** Changes from now on. */
    public DiskChanges() {
        notices = open();
    }

    private static Optional<WatchService> open() {
        try {
            return Optional.of(FileSystems.getDefault().newWatchService());
        } catch (IOException | UnsupportedOperationException e) {
            return Optional.empty();
        }
    }

    /** Takes note of files as they are now, so that the next change of them counts. */
    public void note(Set<Path> files) {
        known = stamps(files);
    }

    @Override
    public boolean await(Set<Path> files) {
        files.forEach(file -> known.computeIfAbsent(file, DiskChanges::stamp));
        files.stream().map(Path::getParent).forEach(this::register);
        try {
            while (stamps(files).equals(only(files))) {
                pause();
            }
            Thread.sleep(SETTLE);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        } catch (ClosedWatchServiceException e) {
            return false;
        }
        note(files);
        return true;
    }

    private Map<Path, String> only(Set<Path> files) {
        Map<Path, String> result = new HashMap<>(known);
        result.keySet().retainAll(files);
        return result;
    }

    private void pause() throws InterruptedException {
        if (notices.isEmpty()) {
            Thread.sleep(LOOK);
            return;
        }
        WatchKey key = notices.get().poll(LOOK, TimeUnit.MILLISECONDS);
        if (key != null) {
            key.pollEvents();
            key.reset();
        }
    }

    private void register(Path folder) {
        if (notices.isPresent() && !folders.containsKey(folder)) {
            try {
                folders.put(folder, folder.register(notices.get(), StandardWatchEventKinds.ENTRY_CREATE, StandardWatchEventKinds.ENTRY_MODIFY,
                        StandardWatchEventKinds.ENTRY_DELETE));
            } catch (IOException | UnsupportedOperationException e) {
                folders.remove(folder); // looked at without notices, then
            }
        }
    }

    private static Map<Path, String> stamps(Set<Path> files) {
        Map<Path, String> result = new HashMap<>();
        files.forEach(file -> result.put(file, stamp(file)));
        return result;
    }

    private static String stamp(Path file) {
        try {
            return Files.getLastModifiedTime(file) + " " + Files.size(file);
        } catch (IOException e) {
            return "gone";
        }
    }

    @Override
    public void close() {
        notices.ifPresent(service -> {
            try {
                service.close();
            } catch (IOException e) {
                throw new java.io.UncheckedIOException("notices of changes could not be ended", e);
            }
        });
    }
}
