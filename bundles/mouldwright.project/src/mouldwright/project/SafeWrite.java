package mouldwright.project;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.UUID;

import mouldwright.project.WriteResult.NotWritten;
import mouldwright.project.WriteResult.Written;

/**
 * Writes a file beside and moves it into place, so that a crash leaves the old file or the new one and never half of
 * either. The folder must be there. Through a link the
 * file it leads to is written and the link stays; a link that leads nowhere gives way to the file.
 */
public final class SafeWrite {

    private SafeWrite() { }

    /** Writes a text in UTF-8, its line ends as they are. */
    public static WriteResult text(Path file, String text) {
        return bytes(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes bytes. */
    public static WriteResult bytes(Path file, byte[] bytes) {
        try {
            Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath().normalize();
            if (Files.isDirectory(target)) {
                return new NotWritten(file, "it is a folder");
            }
            if (Files.exists(target) && !Files.isRegularFile(target)) {
                return new NotWritten(file, "it is a device or a pipe, not a plain file");
            }
            if (target.getParent() == null || !Files.isDirectory(target.getParent())) {
                return new NotWritten(file, "there is no folder " + target.getParent());
            }
            replace(target, bytes);
            return new Written(file);
        } catch (AtomicMoveNotSupportedException e) {
            return new NotWritten(file, "this file system cannot put a file in place in one step");
        } catch (AccessDeniedException e) {
            return new NotWritten(file, "its folder may not be written to");
        } catch (FileSystemException e) {
            return new NotWritten(file, e.getReason() == null ? "it cannot be written" : e.getReason());
        } catch (IOException | SecurityException e) {
            return new NotWritten(file, e.getMessage() == null ? "it cannot be written" : e.getMessage());
        }
    }

    private static void replace(Path target, byte[] bytes) throws IOException {
        Path beside = target.resolveSibling("." + UUID.randomUUID() + ".part");
        try {
            try (FileChannel out = FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer buffer = ByteBuffer.wrap(bytes);
                while (buffer.hasRemaining()) {
                    out.write(buffer);
                }
                out.force(true);
            }
            keepPermissions(target, beside);
            Files.move(beside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            syncFolder(target.getParent());
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** A new file has the permissions new files have here; a replaced one keeps its own. */
    private static void keepPermissions(Path old, Path fresh) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
        if (view != null && Files.exists(old)) {
            view.setPermissions(Files.getPosixFilePermissions(old));
        }
    }

    /** Puts the new name itself on the disk, where the system can; the file is whole either way. */
    private static void syncFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // A system that opens no folders (Windows) has no such step.
            return;
        }
    }
}
