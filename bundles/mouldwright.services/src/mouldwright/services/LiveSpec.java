package mouldwright.services;

import com.google.inject.Injector;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;
import mouldwright.language.plan.Plans;
import mouldwright.model.Plug;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.read.Reading;
import mouldwright.project.ContentSource;
import mouldwright.project.Project;
import mouldwright.services.OpenTexts.OpenText;
import mouldwright.language.ide.SpecView;
import mouldwright.report.TextFinding;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;

/**
 * A text open in an editor, with the model of its last version and the last plans that came out of it. Belongs to the desk of its
 * {@link LiveSession}: nothing of it may be touched by another thread.
 */
public final class LiveSpec {

    private final Injector injector;
    private final ContentSource source;
    private final OpenTexts open;
    private final Path file;
    private XtextResourceSet set;
    private LibraryFindings libraries;
    private Examination examination;
    private OpenText current;
    private boolean planned;
    private AtomicBoolean superseded = new AtomicBoolean();
    private Map<String, BuildPlan> lastPlans = Map.of();
    private final List<CompletableFuture<Checked>> waiting = new ArrayList<>();

    LiveSpec(Injector injector, ContentSource source, OpenTexts open, Path file) {
        this.injector = injector;
        this.source = source;
        this.open = open;
        this.file = file;
        forgetLibraries();
    }

    /** So that all is read anew. */
    void forgetLibraries() {
        set = LanguageSetup.resources(injector);
        libraries = new LibraryFindings();
        current = null;
    }

    boolean isCurrent(OpenText text) {
        return text == current;
    }

    /** Reads a version and looks at its text; whatever is being planned of an older one is called off. */
    void read(OpenText text) {
        callOff();
        current = text;
        planned = true;
        examine();
        if (examination.spec().isPresent() && !examination.spec().get().usesAllThatIsLoaded()) {
            forgetLibraries();
            current = text;
            examine();
        }
        planned = !examination.canBePlanned();
    }

    private void examine() {
        set.getResources().removeIf(resource -> resource.getURI().toFileString().equals(file.toString()));
        examination = new Examination(injector, Project.of(file, source), file, current.text(), () -> false);
        try {
            examination.examineText(set, libraries);
        } catch (RuntimeException | StackOverflowError e) {
            // A fault of the program: nothing is known of this version rather than something of another one.
            examination = new Examination(injector, Project.of(file, source), file, current.text(), () -> false);
            set = LanguageSetup.resources(injector);
            libraries = new LibraryFindings();
            throw e;
        }
    }

    void callOff() {
        superseded.set(true);
        superseded = new AtomicBoolean();
    }

    AtomicBoolean superseded() {
        return superseded;
    }

    /** Whether both passes are done. */
    boolean isPlanned() {
        return planned;
    }

    /** What its plugs say, by their place in the file. */
    List<Reading> readings() {
        return examination.spec().orElseThrow().plugs().stream().map(injector.getInstance(Plans.class)::reading).toList();
    }

    /** Takes the plans of {@link #readings()} and looks at them. */
    void take(List<Plans.Planned> worked) {
        List<Plug> plugs = examination.spec().orElseThrow().plugs();
        Plans plans = injector.getInstance(Plans.class);
        for (int i = 0; i < plugs.size(); i++) {
            plans.keep(plugs.get(i), worked.get(i));
        }
        examination.examinePlans();
        planned = true;
        Map<String, BuildPlan> fresh = new LinkedHashMap<>();
        worked.forEach(one -> one.plan().ifPresent(plan -> fresh.put(plan.plug(), plan)));
        lastPlans = fresh;
    }

    /** Of this version there will be no plan. */
    void giveUp() {
        planned = true;
    }

    List<CompletableFuture<Checked>> waiting() {
        return waiting;
    }

    boolean uses(Path other) {
        return set.getResources().stream().anyMatch(resource -> other.toString().equals(resource.getURI().toFileString()));
    }

    /** Whether it lacks something another file might bring. */
    boolean hasErrors() {
        return examination != null && checked().hasErrors();
    }

    /** The file, absolute and normal. */
    public Path file() {
        return file;
    }

    /** The version that was read. */
    public int version() {
        return current.version();
    }

    /** Its text. */
    public String text() {
        return current.text();
    }

    /** What was found in it so far. */
    public Checked checked() {
        return examination.checked();
    }

    /** The model of its text; none where it is nested too deeply to be read. */
    public Optional<XtextResource> resource() {
        return examination.spec().map(LoadedSpec::resource);
    }

    /** It as the services of the language see it; none where it is nested too deeply to be read. */
    public Optional<SpecView> view() {
        return resource().map(resource -> new SpecView(resource, lastPlans, checked().findings().stream().map(TextFinding::code).collect(Collectors.toSet()),
                () -> projectTexts().libraryNames()));
    }

    /** The last plans that could be made, by plug; while something is mended they are those from before. */
    public Map<String, BuildPlan> lastPlans() {
        return lastPlans;
    }

    /** Its text in the one layout, or why it has none. */
    public Layout laidOut() {
        return new LayoutWriter(injector).layOut(file, text());
    }

    /** The texts of its project in memory together, open ones as they are typed, for questions that go beyond one text. */
    public ProjectTexts projectTexts() {
        return new ProjectTexts(injector, examination.checked().project(), source, open.files());
    }

    /** A part of the language. */
    public <T> T part(Class<T> type) {
        return injector.getInstance(type);
    }
}
