package mouldwright.plan.read;

import org.eclipse.emf.ecore.EObject;

/** Reads the tables and drawings a spec takes sections from. The language gives one, which keeps to the project. */
@FunctionalInterface
public interface SectionFiles {

    /** What came of reading a file. */
    sealed interface Content { }

    /** Its text. */
    record Text(String text) implements Content { }

    /** No text, and why, with the name of the file. */
    record Unread(String message) implements Content { }

    /** Reads a file.
     *  @param where the part of the model that names it
     *  @param name  as written there */
    Content read(EObject where, String name);

    /** For models that are in no file. */
    SectionFiles NONE = (where, name) -> new Unread("\"" + name + "\" is not read: this text is not in a file, so it has no project");
}
