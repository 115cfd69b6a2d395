package mouldwright.project;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Files as open editors show them, and the rest from another source. An open text counts as its file's, saved or not.
 */
public final class OverlaySource implements ContentSource {

    private final Function<Path, Optional<String>> open;
    private final ContentSource rest;

    /**
     * Lays open texts over a source.
     *
     * @param open the text an editor holds for an absolute, normal path; empty if none has it open
     * @param rest for all other files
     */
    public OverlaySource(Function<Path, Optional<String>> open, ContentSource rest) {
        this.open = open;
        this.rest = rest;
    }

    @Override
    public List<Path> list(Path folder, String suffix) {
        return rest.list(folder, suffix);
    }

    @Override
    public Content fetch(Path file, Path within, long limit) {
        Optional<String> text = open.apply(file);
        if (text.isEmpty()) {
            return rest.fetch(file, within, limit);
        }
        byte[] bytes = text.get().getBytes(StandardCharsets.UTF_8);
        return bytes.length > limit
                ? new NotFound(ReadResult.Reason.TOO_LARGE, "it is larger than " + limit / 1_000_000.0 + " MB")
                : new Found(bytes, file);
    }
}
