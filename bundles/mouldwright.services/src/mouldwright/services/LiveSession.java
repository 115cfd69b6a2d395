package mouldwright.services;

import com.google.inject.Injector;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import mouldwright.language.plan.Plans;
import mouldwright.plan.read.Reading;
import mouldwright.project.ContentSource;
import mouldwright.project.DiskSource;
import mouldwright.project.OverlaySource;
import mouldwright.project.Project;
import mouldwright.services.OpenTexts.OpenText;

/**
 * Specs open in editors. Texts are taken at once, on the thread that brings them. Everything that touches a model happens on one thread, the
 * desk, and is short there; plans are worked out on another from what was read of the model, and the latest version wins. Findings are told twice:
 * those of the text, then all of them.
 */
public final class LiveSession implements AutoCloseable {

    /** Bytes of stack asked for: that of a main thread, so that an open text may be nested as deeply as one on the command line. */
    private static final long STACK = 8L << 20;

    /** Who is told what was found; called on the desk. */
    public interface Listener {

        /**
         * Findings of a version.
         *
         * @param checked  with the findings so far
         * @param version  of the text they are about
         * @param complete whether those of the plans are among them
         */
        void found(Checked checked, int version, boolean complete);

        /** A text was let go: nothing is found in it any more. */
        void closed(Path file);
    }

    private final OpenTexts texts = new OpenTexts();
    private final ContentSource source = new OverlaySource(texts::text, new DiskSource());
    private final Injector injector = LanguageSetup.over(source);
    private final Map<Path, LiveSpec> specs = new TreeMap<>();
    private final ExecutorService desk = thread("mouldwright desk");
    private final ExecutorService planning = thread("mouldwright planning");
    private final Listener listener;
    private final Consumer<Throwable> faults;

    /**
     * A session without texts.
     *
     * @param faults takes faults of the program itself, after which the session goes on
     */
    public LiveSession(Listener listener, Consumer<Throwable> faults) {
        this.listener = listener;
        this.faults = faults;
    }

    private static ExecutorService thread(String name) {
        return Executors.newSingleThreadExecutor(work -> {
            Thread thread = new Thread(null, work, name, STACK);
            thread.setDaemon(true);
            return thread;
        });
    }

    /** Takes a text. @param file absolute and normal */
    public void open(Path file, int version, String text) {
        texts.open(file, version, text);
        post(() -> {
            specs.putIfAbsent(file, new LiveSpec(injector, source, texts, file));
            changed(file);
        });
    }

    /** Changes an open text. */
    public void change(Path file, int version, UnaryOperator<String> edit) {
        if (texts.change(file, version, edit)) {
            post(() -> changed(file));
        }
    }

    /** Lets a text go; from now on its file is what lies on the disk. */
    public void close(Path file) {
        if (texts.close(file)) {
            post(() -> {
                LiveSpec gone = specs.remove(file);
                if (gone != null) {
                    gone.callOff();
                    gone.waiting().forEach(one -> one.cancel(false));
                    listener.closed(file);
                }
                changed(file);
            });
        }
    }

    /** A file changed on the disk, or came, or went. */
    public void changedOnDisk(Path file) {
        post(() -> changed(file));
    }

    /** The text an editor holds, as last typed. */
    public Optional<String> text(Path file) {
        return texts.text(file);
    }

    /** Where files are read: open texts first. */
    public ContentSource source() {
        return source;
    }

    /**
     * Asks about an open spec, read in its latest version.
     *
     * @param question asked on the desk; has to be short
     * @return its answer; empty if the spec is not open or cannot be followed. May be cancelled as long as it waits
     */
    public <T> CompletableFuture<Optional<T>> ask(Path file, Function<LiveSpec, T> question) {
        CompletableFuture<Optional<T>> answer = new CompletableFuture<>();
        run(desk, answer, () -> {
            if (!answer.isDone()) {
                LiveSpec spec = specs.get(file);
                boolean there = spec != null && refreshed(spec);
                answer.complete(there && spec.resource().isPresent() ? Optional.ofNullable(question.apply(spec)) : Optional.empty());
            }
        });
        return answer;
    }

    /** Everything about an open spec, once its latest version is planned; cancelled if it is closed before. */
    public CompletableFuture<Checked> checked(Path file) {
        CompletableFuture<Checked> answer = new CompletableFuture<>();
        run(desk, answer, () -> {
            LiveSpec spec = specs.get(file);
            if (spec == null || !refreshed(spec)) {
                answer.cancel(false);
            } else if (spec.isPlanned()) {
                answer.complete(spec.checked());
            } else {
                spec.waiting().add(answer);
            }
        });
        return answer;
    }

    /** Does something that touches models. */
    public <T> CompletableFuture<T> atDesk(Supplier<T> work) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        run(desk, answer, () -> {
            if (!answer.isDone()) {
                answer.complete(work.get());
            }
        });
        return answer;
    }

    /** The projects of some folders and of all open specs, each once, sorted. To be asked for at the desk. */
    public List<ProjectTexts> projects(List<Path> folders) {
        Map<Path, ProjectTexts> projects = new TreeMap<>();
        folders.forEach(folder -> add(projects, folder.resolve("any.plug")));
        specs.keySet().forEach(file -> add(projects, file));
        return List.copyOf(projects.values());
    }

    private void add(Map<Path, ProjectTexts> projects, Path file) {
        Project project = Project.of(file, source);
        projects.putIfAbsent(project.root(), new ProjectTexts(injector, project, source, texts.files()));
    }

    private void post(Runnable work) {
        run(desk, new CompletableFuture<>(), work);
    }

    /** A fault costs the answer it happened in, and nothing else. */
    private void run(ExecutorService thread, CompletableFuture<?> answer, Runnable work) {
        try {
            thread.execute(() -> {
                try {
                    work.run();
                } catch (CancellationException e) {
                    answer.cancel(false);
                } catch (RuntimeException | Error e) {
                    answer.completeExceptionally(e);
                    faults.accept(e);
                }
            });
        } catch (RejectedExecutionException e) {
            answer.cancel(false);
        }
    }

    private void changed(Path file) {
        for (LiveSpec spec : specs.values()) {
            if (!spec.file().equals(file) && (spec.uses(file) || !file.toString().endsWith(".plug") || spec.hasErrors())) {
                spec.forgetLibraries();
            }
        }
        specs.values().forEach(this::refreshed);
    }

    /** Reads the latest text, if there is a later one than was read. Where several came at once, those between are never read.
     *  @return whether there is one */
    private boolean refreshed(LiveSpec spec) {
        Optional<OpenText> latest = texts.find(spec.file());
        if (latest.isEmpty()) {
            return false;
        }
        if (!spec.isCurrent(latest.get())) {
            spec.read(latest.get());
            tell(spec);
            if (!spec.isPlanned()) {
                plan(spec);
            }
        }
        return true;
    }

    private void plan(LiveSpec spec) {
        List<Reading> readings = spec.readings();
        AtomicBoolean superseded = spec.superseded();
        run(planning, new CompletableFuture<>(), () -> {
            List<Plans.Planned> worked = orTurnedAway(spec, superseded, () -> readings.stream().map(reading -> Plans.plan(reading, superseded::get)).toList());
            post(() -> {
                if (!superseded.get()) {
                    orTurnedAway(spec, superseded, () -> {
                        spec.take(worked);
                        tell(spec);
                        return true;
                    });
                }
            });
        });
    }

    /** Those who wait for a plan that fails are told so. */
    private <T> T orTurnedAway(LiveSpec spec, AtomicBoolean superseded, Supplier<T> work) {
        try {
            return work.get();
        } catch (CancellationException e) {
            throw e;
        } catch (RuntimeException | Error e) {
            post(() -> {
                if (!superseded.get()) {
                    spec.giveUp();
                    spec.waiting().forEach(one -> one.completeExceptionally(e));
                    spec.waiting().clear();
                }
            });
            throw e;
        }
    }

    private void tell(LiveSpec spec) {
        Checked checked = spec.checked();
        listener.found(checked, spec.version(), spec.isPlanned());
        if (spec.isPlanned()) {
            spec.waiting().forEach(one -> one.complete(checked));
            spec.waiting().clear();
        }
    }

    /** Ends the work of the session; what waits for an answer is cancelled. */
    @Override
    public void close() {
        post(() -> specs.values().forEach(spec -> {
            spec.callOff();
            spec.waiting().forEach(one -> one.cancel(false));
        }));
        desk.shutdown();
        planning.shutdown();
    }
}
