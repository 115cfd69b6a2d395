package mouldwright.workbench.editor;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.IFileBuffer;
import org.eclipse.core.filebuffers.IFileBufferListener;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filesystem.IFileStore;
import org.eclipse.core.runtime.IPath;
import org.eclipse.jface.text.DocumentEvent;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentListener;

/** Follows the texts of open specs, keystroke by keystroke, for the session. */
public final class DocumentTracker implements IFileBufferListener {

    private static final String SUFFIX = ".plug";
    private static final AtomicInteger VERSIONS = new AtomicInteger();

    private final Map<IFileBuffer, Follower> followers = new HashMap<>();

    /** Follows what is open and what will be. */
    public void start() {
        FileBuffers.getTextFileBufferManager().addFileBufferListener(this);
        for (IFileBuffer buffer : FileBuffers.getTextFileBufferManager().getFileBuffers())
            bufferCreated(buffer);
    }

    /** The file of a buffer; empty if it is none of ours. */
    static Optional<Path> file(IFileBuffer buffer) {
        IFileStore store = buffer.getFileStore();
        if (store == null || !store.getName().endsWith(SUFFIX) || !"file".equals(store.toURI().getScheme()))
            return Optional.empty();
        return Optional.of(Path.of(store.toURI()).toAbsolutePath().normalize());
    }

    @Override
    public synchronized void bufferCreated(IFileBuffer buffer) {
        if (buffer instanceof ITextFileBuffer text && !followers.containsKey(buffer))
            file(buffer).ifPresent(path -> followers.put(buffer, new Follower(path, text.getDocument())));
    }

    @Override
    public synchronized void bufferDisposed(IFileBuffer buffer) {
        Follower follower = followers.remove(buffer);
        if (follower != null)
            follower.stop();
    }

    @Override
    public void bufferContentAboutToBeReplaced(IFileBuffer buffer) { }

    @Override
    public void bufferContentReplaced(IFileBuffer buffer) { }

    @Override
    public void stateChanging(IFileBuffer buffer) { }

    @Override
    public void dirtyStateChanged(IFileBuffer buffer, boolean isDirty) { }

    @Override
    public void stateValidationChanged(IFileBuffer buffer, boolean isStateValidated) { }

    @Override
    public synchronized void underlyingFileMoved(IFileBuffer buffer, IPath path) {
        bufferDisposed(buffer);
    }

    @Override
    public void underlyingFileDeleted(IFileBuffer buffer) { }

    @Override
    public void stateChangeFailed(IFileBuffer buffer) { }

    /** One open text. */
    private static final class Follower implements IDocumentListener {

        private final Path file;
        private final IDocument document;

        Follower(Path file, IDocument document) {
            this.file = file;
            this.document = document;
            LiveSpecs.all().opened(file, VERSIONS.incrementAndGet(), document.get());
            document.addDocumentListener(this);
        }

        void stop() {
            document.removeDocumentListener(this);
            LiveSpecs.all().closed(file);
        }

        @Override
        public void documentAboutToBeChanged(DocumentEvent event) { }

        @Override
        public void documentChanged(DocumentEvent event) {
            LiveSpecs.all().changed(file, VERSIONS.incrementAndGet(), document.get());
        }
    }
}
