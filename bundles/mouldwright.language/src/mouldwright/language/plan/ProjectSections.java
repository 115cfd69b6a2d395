package mouldwright.language.plan;

import com.google.inject.Inject;
import com.google.inject.Singleton;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mouldwright.model.Drawn;
import mouldwright.model.Tabled;
import mouldwright.plan.read.SectionFiles;
import mouldwright.plan.read.SectionMemo;
import mouldwright.project.ContentSource;
import mouldwright.project.Project;
import mouldwright.project.ProjectFiles;
import mouldwright.project.ReadResult;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.xtext.EcoreUtil2;

/** Reads the tables and drawings a spec names, from the folder it lies in and nowhere outside its project. */
@Singleton
public class ProjectSections implements SectionFiles {

	private final SectionMemo memo = new SectionMemo();

	@Inject
	private ContentSource source;

	/** What was read of them before. */
	public SectionMemo memo() {
		return memo;
	}

	@Override
	public Content read(EObject where, String name) {
		return switch (fetch(where.eResource(), name)) {
			case ReadResult.Text text -> new Text(text.text());
			case ReadResult.Refused(ReadResult.Reason reason, String message) ->
				new Unread(message + (reason == ReadResult.Reason.BINARY && where instanceof Drawn ? "; save the drawing as DXF in text (ASCII)" : ""));
		};
	}

	private ReadResult fetch(Resource from, String name) {
		if (from == null || !from.getURI().isFile())
			return new ReadResult.Refused(ReadResult.Reason.BAD_PATH, "\"" + name + "\" is not read: this text is not in a file, so it has no project");
		Path file = Path.of(from.getURI().toFileString());
		return new ProjectFiles(Project.of(file, source), source, ProjectFiles.DEFAULT_LIMIT).beside(file, name);
	}

	/** The texts of the tables and drawings a file names, by absolute path, in the order named; those that cannot be read are left out. */
	public Map<Path, String> texts(Resource resource) {
		Map<Path, String> texts = new LinkedHashMap<>();
		for (String name : names(resource))
			if (fetch(resource, name) instanceof ReadResult.Text text)
				texts.put(text.file(), text.text());
		return texts;
	}

	private static List<String> names(Resource resource) {
		List<String> names = new ArrayList<>();
		for (EObject root : resource.getContents()) {
			EcoreUtil2.getAllContentsOfType(root, Tabled.class).stream().map(Tabled::getFile).forEach(names::add);
			EcoreUtil2.getAllContentsOfType(root, Drawn.class).stream().map(Drawn::getFile).forEach(names::add);
		}
		return names.stream().filter(name -> name != null).distinct().toList();
	}
}
