package mouldwright.workbench.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.stream.Collectors;
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
     *  @param plans    the last that could be made, maybe of an older text
     *  @param places   which line made what, of each of those plans
     *  @param revision of the texts those plans are of */
    public record Known(Checked checked, int version, boolean complete, Map<String, BuildPlan> plans, Map<String, Places> places, String revision) {

        /** How the plans stand to the text. */
        public Shown.State state() {
            return checked.hasErrors() ? Shown.State.BROKEN : complete ? Shown.State.CURRENT : Shown.State.BEHIND;
        }
    }

    /** Who wants to know. */
    public interface Listener {
        /** Called on the session's thread, in the order of what was found. */
        void found(Path file, Known known);

        /** Called when a spec was closed: nothing is found in it any more. */
        default void closed(Path file) { }
    }

    private final Map<Path, Known> known = new ConcurrentHashMap<>();
    private final CopyOnWriteArrayList<Listener> listeners = new CopyOnWriteArrayList<>();
    private final List<Consumer<LiveSession>> waiting = new ArrayList<>();
    private Optional<LiveSession> session = Optional.empty();
    private boolean started;

    private LiveSpecs() { }

    /** Those of this workbench. */
    public static LiveSpecs all() {
        return ALL;
    }

    /** Does something with the session: at once if it is there, else as soon as it is, in the order asked for. It must be short.
     *  What is asked of a session that could not be set up is never done. */
    public synchronized void with(Consumer<LiveSession> work) {
        if (session.isPresent()) {
            work.accept(session.get());
            return;
        }
        waiting.add(work);
        if (!started) {
            started = true;
            Thread.ofPlatform().daemon().name("Setting up the language").start(this::setUp);
        }
    }

    private void setUp() {
        try {
            LiveSession made = new LiveSession(new Ear(), fault -> ILog.get().error("The language met a fault of its own", fault));
            synchronized (this) {
                session = Optional.of(made);
                waiting.forEach(one -> one.accept(made));
                waiting.clear();
            }
        } catch (RuntimeException | LinkageError e) {
            ILog.get().error("The language could not be set up", e);
        }
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
        with(one -> one.open(file, version, text));
    }

    void changed(Path file, int version, String text) {
        with(one -> one.change(file, version, old -> text));
    }

    void closed(Path file) {
        with(one -> one.close(file));
    }

    /** A file changed on the disk; of no interest before anything was opened. */
    synchronized void changedOnDisk(Path file) {
        if (started)
            with(one -> one.changedOnDisk(file));
    }

    /** Hears what the session finds, on its own thread. */
    private final class Ear implements LiveSession.Listener {

        @Override
        public void found(Checked checked, int version, boolean complete) {
            Path file = checked.file();
            boolean fresh = complete && !checked.hasErrors();
            Known before = known.get(file);
            Known now = fresh || before == null ? new Known(checked, version, complete, checked.plans(), places(checked), checked.revision())
                    : new Known(checked, version, complete, before.plans(), before.places(), before.revision());
            known.put(file, now);
            listeners.forEach(one -> one.found(file, now));
        }

        private static Map<String, Places> places(Checked checked) {
            return checked.plans().entrySet().stream().collect(Collectors.toMap(Map.Entry::getKey, entry -> new Places(entry.getValue())));
        }

        @Override
        public void closed(Path file) {
            known.remove(file);
            listeners.forEach(one -> one.closed(file));
        }
    }
}
