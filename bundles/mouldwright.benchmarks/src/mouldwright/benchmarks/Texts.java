package mouldwright.benchmarks;

import com.google.inject.Injector;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import mouldwright.language.PlugStandaloneSetup;
import mouldwright.language.plan.NodePlaces;
import mouldwright.language.plan.Plans;
import mouldwright.model.Document;
import mouldwright.model.Plug;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.read.Reading;
import mouldwright.plan.read.SpecReader;
import mouldwright.plan.stage.Planner;
import mouldwright.plan.stage.Stage;
import mouldwright.plan.stage.Stages;
import org.apache.log4j.Level;
import org.apache.log4j.Logger;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;

/** Reads texts with the language set up once. Texts that are on no disk lie beside the examples, whose libraries they use. */
final class Texts {
    /** Folder of the examples; the benchmarks are run from the root of the repository. */
    private static final Path EXAMPLES = Path.of(System.getProperty("mouldwright.examples", "examples")).toAbsolutePath();
    private static final String CANOPY = "rain-canopy/canopy.plug";

    private final Injector injector;

    Texts() {
        Logger.getRootLogger().setLevel(Level.OFF);
        injector = new PlugStandaloneSetup().createInjectorAndDoEMFRegistration();
    }

    /** The text of the example. */
    static String canopy() {
        try {
            return Files.readString(EXAMPLES.resolve(CANOPY));
        } catch (IOException e) {
            throw new UncheckedIOException("run from the root of the repository, or name the examples' folder with -Dmouldwright.examples", e);
        }
    }

    /** Parses and links lazily, as on each pause of typing. */
    XtextResource parse(String text) {
        URI uri = URI.createFileURI(EXAMPLES.resolve("rain-canopy/measured.plug").toString());
        XtextResource resource = (XtextResource) injector.getInstance(XtextResourceSet.class).createResource(uri);
        try {
            resource.load(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), Map.of(XtextResource.OPTION_ENCODING, "UTF-8"));
        } catch (IOException e) {
            throw new UncheckedIOException("memory refused to be read", e);
        }
        return resource;
    }

    /** The only plug of a text, names resolved. */
    Plug plug(String text) {
        XtextResource resource = parse(text);
        EcoreUtil.resolveAll(resource);
        if (!resource.getErrors().isEmpty())
            throw new IllegalStateException(resource.getErrors().getFirst().toString());
        return Plans.plugs((Document) resource.getContents().getFirst()).getFirst();
    }

    /** Estimates: reads the model into a spec and plans it. */
    static BuildPlan estimate(Plug plug) {
        Reading reading = new SpecReader(new NodePlaces()).read(plug, List.of());
        return new Planner().plan(reading.spec().orElseThrow(), () -> false);
    }

    /** The same with shape, frame, fill and skin alone, the stages a builder begins with. */
    static BuildPlan estimateFirstStages(Plug plug) {
        Reading reading = new SpecReader(new NodePlaces()).read(plug, List.of());
        List<Stage> first = Stages.all().stream().filter(stage -> List.of("shape", "frame", "fill", "skin").contains(stage.name())).toList();
        return new Planner(first).plan(reading.spec().orElseThrow(), () -> false);
    }
}
