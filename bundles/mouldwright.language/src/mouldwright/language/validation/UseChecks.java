package mouldwright.language.validation;

import com.google.inject.Inject;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import mouldwright.language.linking.Libraries;
import mouldwright.model.Document;
import mouldwright.model.LibraryHeader;
import mouldwright.model.Material;
import mouldwright.model.PlugPackage;
import mouldwright.model.Use;
import mouldwright.project.Project;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.validation.Check;

/** Libraries are used for something, by names of their own, and their figures are looked at again when they should be. */
public class UseChecks extends Concern {

	static final String UNUSED = "MW931";
	static final String ALIAS = "MW932";
	static final String CALLED = "MW933";
	static final String REVIEW = "MW934";

	@Inject
	private Libraries libraries;
	@Inject
	private Clock clock;

	/** Told only where all names are known: one that is not may be what the library is for. */
	@Check
	public void isUsed(Document document) {
		if (document.getUses().isEmpty() || !(document.eResource() instanceof XtextResource text) || text.getParseResult().hasSyntaxErrors())
			return;
		Set<Resource> named = new HashSet<>();
		for (var all = document.eAllContents(); all.hasNext();)
			for (EObject to : all.next().eCrossReferences()) {
				if (to.eIsProxy())
					return;
				named.add(to.eResource());
			}
		for (Use use : document.getUses())
			if (use.getLibrary() != null && libraries.find(document.eResource(), use.getLibrary()) instanceof Libraries.Found.Loaded(Document library)
					&& !library.getHeaders().isEmpty() && !named.contains(library.eResource()))
				warning("nothing of " + use.getLibrary() + " is used here", use, null, UNUSED, "take it out");
	}

	@Check
	public void aliasesDiffer(Document document) {
		Map<String, Use> seen = new HashMap<>();
		for (Use use : document.getUses())
			if (use.getAlias() != null && seen.putIfAbsent(use.getAlias(), use) != null)
				fault("`" + use.getAlias() + "` stands for " + seen.get(use.getAlias()).getLibrary() + " already", use, PlugPackage.Literals.USE__ALIAS, ALIAS);
	}

	/** A library is found by the name of its file. */
	@Check
	public void isCalledAsItsFile(LibraryHeader header) {
		if (header.getName() == null || !header.eResource().getURI().isFile())
			return;
		Path file = Path.of(header.eResource().getURI().toFileString()).toAbsolutePath().normalize();
		Path root = Project.of(file).root().toAbsolutePath().normalize();
		String own = header.getName().replace('.', '/') + ".plug";
		if (!file.startsWith(root) || file.endsWith(own))
			return;
		String path = root.relativize(file).toString().replace('\\', '/');
		warning("this library calls itself " + header.getName() + ", and lies in " + path, header, PlugPackage.Literals.LIBRARY_HEADER__NAME, CALLED,
				"write `" + path.substring(0, path.length() - ".plug".length()).replace('/', '.') + "`");
	}

	@Check
	public void isReviewed(Material material) {
		if (material.getReview() != null && WordChecks.exists(material.getReview()) && LocalDate.parse(material.getReview()).isBefore(LocalDate.now(clock)))
			info("the figures of " + material.getName() + " should have been looked at again by " + material.getReview(), material, PlugPackage.Literals.MATERIAL__REVIEW, REVIEW,
					"compare them with the supplier's sheet, and state the next `review`");
	}
}
