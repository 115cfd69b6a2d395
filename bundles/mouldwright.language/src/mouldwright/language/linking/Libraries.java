package mouldwright.language.linking;

import com.google.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import mouldwright.model.Document;
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
