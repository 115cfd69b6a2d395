package mouldwright.services;

import com.google.inject.Injector;
import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.FileVisitOption;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mouldwright.project.ContentSource;
import mouldwright.project.Project;
import mouldwright.project.ProjectFiles;
import mouldwright.project.ReadResult;
import org.eclipse.emf.common.util.URI;
import org.eclipse.xtext.resource.XtextResource;
import org.eclipse.xtext.resource.XtextResourceSet;

/** The specs and libraries of a project and of its library folders. */
public final class ProjectTexts {

    /** Files and folders looked at; a project has some dozens. */
    private static final int MOST = 20_000;
    private static final int DEEPEST = 12;
    private static final Pattern HEADER = Pattern.compile("(?m)^\\s*library\\s+([\\w.]+)");

    private final Injector injector;
    private final Project project;
    private final ContentSource source;
    private final Set<Path> open;
    private final XtextResourceSet set;

    /** @param open files that are open in editors, which may be on no disk yet */
    ProjectTexts(Injector injector, Project project, ContentSource source, Set<Path> open) {
        this.injector = injector;
        this.project = project;
        this.source = source;
        this.open = open;
        this.set = LanguageSetup.resources(injector);
    }

    /** The texts by file, sorted, as far as they are wanted and can be read. */
    public Map<Path, String> texts(Predicate<String> wanted) {
        Map<Path, String> texts = new LinkedHashMap<>();
        List<Path> folders = new ArrayList<>(List.of(project.root()));
        folders.addAll(project.libraries());
        for (Path folder : folders) {
            ProjectFiles files = new ProjectFiles(new Project(folder, List.of(), project.settings(), List.of()), source, ProjectFiles.DEFAULT_LIMIT);
            for (Path file : specs(folder, open)) {
                String relative = folder.relativize(file).toString().replace(folder.getFileSystem().getSeparator(), "/");
                if (files.resolve(relative) instanceof ReadResult.Text(String text, Path place) && wanted.test(text) && Nesting.finding(file, text).isEmpty()) {
                    texts.putIfAbsent(file, text);
                }
            }
        }
        return texts;
    }

    /** Models of the texts that are wanted, in one set. */
    public List<XtextResource> models(Predicate<String> wanted) {
        List<XtextResource> models = new ArrayList<>();
        texts(wanted).forEach((file, text) -> {
            XtextResource known = (XtextResource) set.getResource(URI.createFileURI(file.toString()), false);
            models.add(known == null ? LoadedSpec.parse(set, file, text) : known);
        });
        return models;
    }

    /** The model of one file; empty if it cannot be read. */
    public Optional<XtextResource> model(Path file) {
        XtextResource known = (XtextResource) set.getResource(URI.createFileURI(file.toString()), false);
        if (known != null) {
            return Optional.of(known);
        }
        return SpecFile.read(project, file, source) instanceof ReadResult.Text(String text, Path place) && Nesting.finding(file, text).isEmpty()
                ? Optional.of(LoadedSpec.parse(set, file, text)) : Optional.empty();
    }

    /** Names of the libraries a spec of the project could use. */
    public List<String> libraryNames() {
        TreeSet<String> names = new TreeSet<>();
        texts(text -> text.contains("library")).values().forEach(text -> {
            Matcher header = HEADER.matcher(text);
            if (header.find()) {
                names.add(header.group(1));
            }
        });
        return List.copyOf(names);
    }

    /** The project. */
    public Project project() {
        return project;
    }

    private static List<Path> specs(Path folder, Set<Path> open) {
        TreeSet<Path> specs = new TreeSet<>(open.stream().filter(file -> file.startsWith(folder) && file.toString().endsWith(ProjectFiles.SUFFIX)).toList());
        try {
            Files.walkFileTree(folder, EnumSet.noneOf(FileVisitOption.class), DEEPEST, new Finder(specs));
        } catch (IOException | SecurityException e) {
            // A folder that cannot be listed has nothing to offer; what is named in a text is still read.
            return List.copyOf(specs);
        }
        return List.copyOf(specs);
    }

    /** Looks for specs, not into hidden folders and not without end. */
    private static final class Finder extends SimpleFileVisitor<Path> {
        private final TreeSet<Path> specs;
        private int seen;

        Finder(TreeSet<Path> specs) {
            this.specs = specs;
        }

        @Override
        public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
            Path name = folder.getFileName();
            return name != null && name.toString().startsWith(".") ? FileVisitResult.SKIP_SUBTREE : goOn();
        }

        @Override
        public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            if (file.toString().endsWith(ProjectFiles.SUFFIX) && attributes.isRegularFile()) {
                specs.add(file);
            }
            return goOn();
        }

        @Override
        public FileVisitResult visitFileFailed(Path file, IOException e) {
            return goOn();
        }

        private FileVisitResult goOn() {
            return ++seen > MOST ? FileVisitResult.TERMINATE : FileVisitResult.CONTINUE;
        }
    }
}
