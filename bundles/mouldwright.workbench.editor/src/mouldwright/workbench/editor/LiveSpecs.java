package mouldwright.workbench.editor;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import mouldwright.plan.BuildPlan;
import mouldwright.services.Checked;
import mouldwright.services.LiveSession;
import org.eclipse.core.runtime.ILog;

/**
 * The language at work for all open editors: one session, set up in the background when the first spec is opened. What it finds is told to
 * those who listen, on the session's own thread.
 */
public final class LiveSpecs {

    private static final LiveSpecs ALL = new LiveSpecs();

    /** What is known of an open spec.
     *  @param checked  what was found
     *  @param version  of the text that is about
     *  @param complete whether the plan was looked at too
     *  @param plans    the last that could be made, maybe of an older text */
    public record Known(Checked checked, int version, boolean complete, Map<String, BuildPlan> plans) {

        /** Whether the plans are of an older text, since this one has errors or is still being planned. */
        public boolean stale() {
            return !complete || checked.hasErrors();
        }
    }

    /** Who wants to know. */
    public interface Listener {
        /** Called on the session's thread, in the order of what was found. */
        void found(Path file, Known known);
    }

    private final Map<Path, Known> known = new ConcurrentHashMap<>();
    private final CopyOnWriteArrayList<Listener> listeners = new CopyOnWriteArrayList<>();
    private final CompletableFuture<LiveSession> session = new CompletableFuture<>();
    private boolean started;

    private LiveSpecs() { }

    /** Those of this workbench. */
    public static LiveSpecs all() {
        return ALL;
    }

    /** The session, once it is there. */
    public CompletableFuture<LiveSession> session() {
        start();
        return session;
    }

    /** What is known of a spec; empty before it was looked at. */
    public Optional<Known> known(Path file) {
        return Optional.ofNullable(known.get(file));
    }

    /** Adds a listener; it is told of what is found from now on. */
    public void listen(Listener listener) {
        listeners.addIfAbsent(listener);
    }

    /** Takes it off again. */
    public void forget(Listener listener) {
        listeners.remove(listener);
    }

    void opened(Path file, int version, String text) {
        session().thenAccept(one -> one.open(file, version, text));
    }

    void changed(Path file, int version, String text) {
        session().thenAccept(one -> one.change(file, version, old -> text));
    }

    void closed(Path file) {
        session().thenAccept(one -> one.close(file));
    }

    void changedOnDisk(Path file) {
        if (session.isDone())
            session.thenAccept(one -> one.changedOnDisk(file));
    }

    private synchronized void start() {
        if (started)
            return;
        started = true;
        Thread.ofPlatform().daemon().name("Setting up the language").start(() -> {
            try {
                session.complete(new LiveSession(new Ear(), fault -> ILog.get().error("The language met a fault of its own", fault)));
            } catch (RuntimeException | LinkageError e) {
                ILog.get().error("The language could not be set up", e);
                session.completeExceptionally(e);
            }
        });
    }

    /** Hears what the session finds, on its own thread. */
    private final class Ear implements LiveSession.Listener {

        @Override
        public void found(Checked checked, int version, boolean complete) {
            Path file = checked.file();
            boolean fresh = complete && !checked.hasErrors();
            Known before = known.get(file);
            Known now = new Known(checked, version, complete, fresh || before == null ? checked.plans() : before.plans());
            known.put(file, now);
            listeners.forEach(one -> one.found(file, now));
        }

        @Override
        public void closed(Path file) {
            known.remove(file);
        }
    }
}
