package mouldwright.services;

import java.nio.file.Path;
import java.util.Set;

/** Says when files change. */
@FunctionalInterface
public interface FileChanges {

    /**
     * Waits until one of some files is another than it was when last asked.
     *
     * @param files absolute
     * @return whether to go on: false once nobody wants to know any more
     */
    boolean await(Set<Path> files);
}
