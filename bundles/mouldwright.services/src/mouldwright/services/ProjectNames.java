package mouldwright.services;

import java.nio.file.Path;
import mouldwright.project.Project;
import mouldwright.report.PathNames;

/** How a project names its files: from its root, or from the library folder a file lies in, the same on every machine. */
final class ProjectNames {

    private final Project project;

    ProjectNames(Project project) {
        this.project = project;
    }

    String of(Path file) {
        if (file.startsWith(project.root())) {
            return new PathNames(project.root()).of(file);
        }
        return project.libraries().stream().filter(file::startsWith).findFirst().map(folder -> new PathNames(folder).of(file))
                .orElseGet(() -> file.getFileName().toString());
    }
}
