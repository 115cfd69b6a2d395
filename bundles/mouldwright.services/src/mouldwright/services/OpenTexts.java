package mouldwright.services;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.UnaryOperator;

/** The texts open in editors, as they were last typed. Safe for several threads. */
final class OpenTexts {

    /**
     * An open text.
     *
     * @param version of the editor; a later text has a higher one
     * @param text    as typed
     */
    record OpenText(int version, String text) { }

    private final Map<Path, OpenText> texts = new ConcurrentHashMap<>();

    void open(Path file, int version, String text) {
        texts.put(file, new OpenText(version, text));
    }

    /** Changes a text; one that is not open is left alone.
     *  @return whether it is open */
    boolean change(Path file, int version, UnaryOperator<String> edit) {
        return texts.computeIfPresent(file, (path, old) -> new OpenText(version, edit.apply(old.text()))) != null;
    }

    boolean close(Path file) {
        return texts.remove(file) != null;
    }

    Optional<OpenText> find(Path file) {
        return Optional.ofNullable(texts.get(file));
    }

    /** The files that are open, sorted; some may be on no disk yet. */
    Set<Path> files() {
        return new TreeSet<>(texts.keySet());
    }

    /** What a source of contents is asked for. */
    Optional<String> text(Path file) {
        return find(file).map(OpenText::text);
    }
}
