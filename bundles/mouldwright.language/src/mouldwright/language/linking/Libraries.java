package mouldwright.language.linking;

import com.google.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import mouldwright.model.Document;
import mouldwright.units.SpellingDistance;
import mouldwright.project.ContentSource;
import mouldwright.project.Project;
import mouldwright.project.ProjectFiles;
import mouldwright.project.ReadResult;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.util.IResourceScopeCache;

/** Finds and loads the libraries a file uses, from its project and the library folders named there, and from nowhere else. */
public class Libraries {

	/** What came of looking for a library. */
	public sealed interface Found {

		/** The library. */
		record Loaded(Document document) implements Found {
		}

		/** No library, and why. */
		record Missing(String message) implements Found {
		}
	}

	/** Larger files are no libraries to be suggested, bytes. */
	private static final long MOST_LOOKED_INTO = 1_000_000;

	/** Two slips of the keyboard, each of which counts two. */
	private static final int MOST_SLIPS = 4;

	@Inject
	private IResourceScopeCache cache;
	@Inject
	private ContentSource source;

	/**
	 * The library a file uses under a name.
	 *
	 * @param from the file that uses it
	 * @param name the library's name, as {@code stock.polyester}
	 */
	public Found find(Resource from, String name) {
		if (from == null)
			return new Found.Missing("no library " + name + ": this text is not in a file, so it has no project");
		return cache.get("library " + name, from, () -> load(from, name));
	}

	/**
	 * The library of the project that declares an entry, whether the file uses it or not.
	 *
	 * @param from the file that names the entry
	 * @param kind its kind as a spec writes it, such as {@code mat}
	 * @param name its name
	 * @return the first by name
	 */
	public Optional<String> declaring(Resource from, String kind, String name) {
		if (from == null || !from.getURI().isFile() || !name.matches("\\w+"))
			return Optional.empty();
		return cache.get("declaring " + kind + " " + name, from, () -> declaring(Path.of(from.getURI().toFileString()), kind, name));
	}

	/** The library of the project whose name is nearest to one that is not there, as long as a slip or two explain it. */
	public Optional<String> like(Resource from, String name) {
		if (from == null || !from.getURI().isFile())
			return Optional.empty();
		List<String> names = cache.get("library names", from, () -> new ProjectFiles(Project.of(Path.of(from.getURI().toFileString()), source), source, MOST_LOOKED_INTO).libraryNames());
		return names.stream().filter(known -> SpellingDistance.between(name, known) <= MOST_SLIPS)
				.min(Comparator.<String>comparingInt(known -> SpellingDistance.between(name, known)).thenComparing(Comparator.naturalOrder()));
	}

	private Optional<String> declaring(Path file, String kind, String name) {
		ProjectFiles files = new ProjectFiles(Project.of(file, source), source, MOST_LOOKED_INTO);
		Pattern entry = Pattern.compile("(?m)^\\s*" + Pattern.quote(kind) + "\\s+" + Pattern.quote(name) + "\\b");
		return files.libraryNames().stream().filter(library -> files.library(library) instanceof ReadResult.Text(String text, Path place) && !place.equals(file)
				&& text.matches("(?s).*?(^|\\n)\\s*library\\s+" + Pattern.quote(library) + "\\b.*") && entry.matcher(text).find()).findFirst();
	}

	private Found load(Resource from, String name) {
		if (!from.getURI().isFile())
			return new Found.Missing("no library " + name + ": this text is not in a file, so it has no project");
		Path file = Path.of(from.getURI().toFileString());
		return switch (new ProjectFiles(Project.of(file, source), source, ProjectFiles.DEFAULT_LIMIT).library(name)) {
			case ReadResult.Refused refused -> new Found.Missing(refused.message());
			case ReadResult.Text text -> document(from.getResourceSet(), text);
		};
	}

	private static Found document(ResourceSet set, ReadResult.Text text) {
		URI uri = URI.createFileURI(text.file().toString());
		Resource resource = set.getResource(uri, false);
		if (resource == null) {
			resource = set.createResource(uri);
			try {
				resource.load(new ByteArrayInputStream(text.text().getBytes(StandardCharsets.UTF_8)), Map.of(XtextResource.OPTION_ENCODING, StandardCharsets.UTF_8.name()));
			} catch (IOException e) {
				throw new UncheckedIOException(e);
			}
		}
		if (resource.getContents().isEmpty() || !(resource.getContents().get(0) instanceof Document document))
			return new Found.Missing("the library's file is empty");
		return new Found.Loaded(document);
	}
}
