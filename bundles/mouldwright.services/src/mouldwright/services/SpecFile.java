package mouldwright.services;

import java.nio.file.Path;
import mouldwright.project.ContentSource;
import mouldwright.project.Project;
import mouldwright.project.ProjectFiles;
import mouldwright.project.ReadResult;

/** Reading a spec through its project. */
final class SpecFile {

    private SpecFile() { }

    /** The text of a spec, or why it is not read. @param file absolute and normal */
    static ReadResult read(Project project, Path file, ContentSource source) {
        if (!file.startsWith(project.root()) || file.equals(project.root())) {
            return new ReadResult.Refused(ReadResult.Reason.FOLDER, "it is a folder");
        }
        String relative = project.root().relativize(file).toString().replace(file.getFileSystem().getSeparator(), "/");
        ReadResult result = new ProjectFiles(project, source, ProjectFiles.DEFAULT_LIMIT).resolve(relative);
        if (result instanceof ReadResult.Text && !relative.endsWith(ProjectFiles.SUFFIX)) {
            return new ReadResult.Refused(ReadResult.Reason.BAD_PATH,
                    "\"" + file.getFileName() + "\" is no spec by its name, which would end in " + ProjectFiles.SUFFIX);
        }
        return result;
    }
}
