package mouldwright.language.plan;

import com.google.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import mouldwright.check.Catalogue;
import mouldwright.check.Finding;
import mouldwright.model.Declaration;
import mouldwright.model.Document;
import mouldwright.model.Plug;
import mouldwright.model.Survey;
import mouldwright.plan.BuildPlan;
import mouldwright.plan.read.ReadProblem;
import mouldwright.plan.read.Reading;
import mouldwright.plan.read.SpecReader;
import mouldwright.plan.stage.Planner;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.xtext.util.IResourceScopeCache;

/** The build plans of the plugs of a file, worked out once until the text changes, or a table or drawing it names. */
public class Plans {

	/**
	 * What came of a plug.
	 *
	 * @param plan     its plan; empty if it could not be read into a spec
	 * @param problems why it could not
	 * @param findings what the checks found in the plan
	 */
	public record Planned(Optional<BuildPlan> plan, List<ReadProblem> problems, List<Finding> findings) {
	}

	@Inject
	private IResourceScopeCache cache;
	@Inject
	private ProjectSections sections;

	/**
	 * The plan of a plug whose text has no errors.
	 *
	 * @param plug      the plug, with its names resolved
	 * @param cancelled asked often
	 */
	public Planned of(Plug plug, BooleanSupplier cancelled) {
		return cache.get(key(plug), plug.eResource(), () -> plan(reading(plug), cancelled));
	}

	/** Takes a plan worked out elsewhere for the one of a plug, until its text changes. */
	public void keep(Plug plug, Planned planned) {
		cache.get(key(plug), plug.eResource(), () -> planned);
	}

	private Object key(Plug plug) {
		return List.of("plan", EcoreUtil.getURI(plug).fragment(), sections.texts(plug.eResource()));
	}

	/** What a plug and its surveys say, apart from the text and so good for another thread. */
	public Reading reading(Plug plug) {
		return new SpecReader(new NodePlaces(), sections, sections.memo()).read(plug, surveys(plug));
	}

	/**
	 * Plans what was read. Touches no text and no model.
	 *
	 * @param cancelled asked often
	 * @throws java.util.concurrent.CancellationException when cancelled
	 */
	public static Planned plan(Reading reading, BooleanSupplier cancelled) {
		if (reading.spec().isEmpty())
			return new Planned(Optional.empty(), reading.problems(), List.of());
		BuildPlan plan = new Planner().plan(reading.spec().get(), cancelled);
		return new Planned(Optional.of(plan), reading.problems(), Catalogue.examine(plan));
	}

	/** Surveys of a plug in its own file, in the order written. */
	private static List<Survey> surveys(Plug plug) {
		List<Survey> result = new ArrayList<>();
		if (plug.eContainer() instanceof Document document)
			for (Declaration declaration : document.getDeclarations())
				if (declaration instanceof Survey survey && survey.getPlug() == plug)
					result.add(survey);
		return result;
	}

	/** The plugs a file declares, in the order written. */
	public static List<Plug> plugs(Document document) {
		return document.getDeclarations().stream().filter(Plug.class::isInstance).map(Plug.class::cast).toList();
	}
}
