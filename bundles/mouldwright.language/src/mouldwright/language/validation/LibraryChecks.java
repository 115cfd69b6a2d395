package mouldwright.language.validation;

import com.google.inject.Inject;
import java.util.ArrayDeque;
import java.util.Deque;
import mouldwright.language.linking.Libraries;
import mouldwright.model.Document;
import mouldwright.model.Include;
import mouldwright.model.LibraryHeader;
import mouldwright.model.PlugPackage;
import mouldwright.model.Schedule;
import mouldwright.model.Step;
import mouldwright.model.Use;
import org.eclipse.xtext.validation.Check;

/** Libraries are there, of the version named, and schedules do not include themselves. */
public class LibraryChecks extends Concern {

	static final String MISSING = "MW911";
	static final String VERSION = "MW912";
	static final String CIRCLE = "MW913";
	static final String HEADERS = "MW914";

	@Inject
	private Libraries libraries;

	@Check
	public void isThere(Use use) {
		if (use.getLibrary() == null)
			return;
		switch (libraries.find(use.eResource(), use.getLibrary())) {
			case Libraries.Found.Missing missing -> fault(missing.message(), use, PlugPackage.Literals.USE__LIBRARY, MISSING,
					libraries.like(use.eResource(), use.getLibrary()).map(name -> new String[] { "write `" + name + "`" }).orElse(new String[0]));
			case Libraries.Found.Loaded loaded -> header(use, loaded.document());
		}
	}

	private void header(Use use, Document library) {
		if (library.getHeaders().isEmpty()) {
			fault("the file of " + use.getLibrary() + " does not say that it is a library", use, PlugPackage.Literals.USE__LIBRARY, MISSING,
					"begin it with `library " + use.getLibrary() + "`");
			return;
		}
		LibraryHeader header = library.getHeaders().get(0);
		if (use.getVersion() != null && !use.getVersion().equals(header.getVersion()))
			warning(use.getLibrary() + " is version " + (header.getVersion() == null ? "(none)" : header.getVersion()) + ", " + use.getVersion() + " is asked for", use,
					PlugPackage.Literals.USE__VERSION, VERSION);
	}

	@Check
	public void oneHeader(Document document) {
		for (LibraryHeader second : document.getHeaders().stream().skip(1).toList())
			fault("a file holds one library", second, PlugPackage.Literals.LIBRARY_HEADER__NAME, HEADERS);
	}

	@Check
	public void notInACircle(Include include) {
		Schedule start = (Schedule) include.eContainer();
		if (include.getSchedule() == null || include.getSchedule().eIsProxy())
			return;
		Deque<Schedule> path = new ArrayDeque<>();
		boolean circle = start == include.getSchedule() || leadsTo(include.getSchedule(), start, path);
		if (circle && path.stream().allMatch(other -> isBefore(start, other)))
			fault("`" + start.getName() + "` includes itself" + (start == include.getSchedule() ? "" : " by way of `" + include.getSchedule().getName() + "`"), include,
					PlugPackage.Literals.INCLUDE__SCHEDULE, CIRCLE);
	}

	/** So that a circle is told once, at the first of its schedules. */
	private static boolean isBefore(Schedule first, Schedule other) {
		return first.eContainer() != other.eContainer() || first.eContainer().eContents().indexOf(first) <= other.eContainer().eContents().indexOf(other);
	}

	private static boolean leadsTo(Schedule from, Schedule target, Deque<Schedule> path) {
		if (path.contains(from))
			return false;
		path.push(from);
		for (Step step : from.getSteps())
			if (step instanceof Include include && include.getSchedule() != null && !include.getSchedule().eIsProxy()
					&& (include.getSchedule() == target || leadsTo(include.getSchedule(), target, path)))
				return true;
		path.pop();
		return false;
	}
}
