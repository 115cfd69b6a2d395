package mouldwright.services.serve;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiFunction;
import mouldwright.language.ide.SpecView;
import mouldwright.services.LiveSession;
import mouldwright.services.LiveSpec;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentIdentifier;

/** Puts the questions of the protocol to the session. */
record Desk(LiveSession session, Publisher publisher) {

    /** What a question is about.
     *  @param spec      the open text
     *  @param view      its model
     *  @param positions of its text */
    record About(LiveSpec spec, SpecView view, Positions positions) {

        int offset(Position position) {
            return positions.offset(position);
        }
    }

    /** Asks about a text.
     *  @param otherwise the answer where the text is not open, or cannot be followed */
    <T> CompletableFuture<T> ask(TextDocumentIdentifier document, T otherwise, BiFunction<About, Path, T> question) {
        Optional<Path> file = Uris.path(document.getUri());
        if (file.isEmpty()) {
            return CompletableFuture.completedFuture(otherwise);
        }
        CompletableFuture<Optional<T>> asked = session.ask(file.get(), spec -> question.apply(new About(spec, spec.view().orElseThrow(), new Positions(spec.text())), file.get()));
        CompletableFuture<T> answer = asked.thenApply(found -> found.orElse(otherwise));
        answer.whenComplete((value, fault) -> {
            if (answer.isCancelled()) {
                asked.cancel(false);
            }
        });
        return answer;
    }
}
