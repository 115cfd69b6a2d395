package mouldwright.services;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are watched: a change of one of them, and nothing else, ends the wait. */
class DiskChangesTest {

    private static final long PATIENCE = 120;

    @TempDir
    private Path folder;

    private static CompletableFuture<Boolean> waiting(DiskChanges changes, Set<Path> files) {
        CompletableFuture<Boolean> answer = new CompletableFuture<>();
        Thread.ofPlatform().daemon().start(() -> answer.complete(changes.await(files)));
        return answer;
    }

    @Test void aFileThatIsWrittenEndsTheWait() throws Exception {
        Path file = Files.writeString(folder.resolve("box.plug"), "plug Box { }");
        try (DiskChanges changes = new DiskChanges()) {
            changes.note(Set.of(file));
            CompletableFuture<Boolean> answer = waiting(changes, Set.of(file));
            Files.writeString(file, "plug Box { units mm }");
            assertThat(answer.get(PATIENCE, TimeUnit.SECONDS)).isTrue();
        }
    }

    @Test void aFileThatComesOrGoesEndsTheWait() throws Exception {
        Path library = folder.resolve("wood.plug");
        try (DiskChanges changes = new DiskChanges()) {
            changes.note(Set.of(library));
            CompletableFuture<Boolean> came = waiting(changes, Set.of(library));
            Files.writeString(library, "library wood");
            assertThat(came.get(PATIENCE, TimeUnit.SECONDS)).isTrue();
            CompletableFuture<Boolean> went = waiting(changes, Set.of(library));
            Files.delete(library);
            assertThat(went.get(PATIENCE, TimeUnit.SECONDS)).isTrue();
        }
    }

    /** Written between two waits: the second ends at once. */
    @Test void aChangeThatNobodyWaitedForIsNotLost() throws Exception {
        Path file = Files.writeString(folder.resolve("box.plug"), "plug Box { }");
        try (DiskChanges changes = new DiskChanges()) {
            changes.note(Set.of(file));
            Files.writeString(file, "plug Crate { }");
            assertThat(waiting(changes, Set.of(file)).get(PATIENCE, TimeUnit.SECONDS)).isTrue();
        }
    }

    @Test void aNeighbourThatIsWrittenDoesNotCount() throws Exception {
        Path file = Files.writeString(folder.resolve("box.plug"), "plug Box { }");
        try (DiskChanges changes = new DiskChanges()) {
            changes.note(Set.of(file));
            CompletableFuture<Boolean> answer = waiting(changes, Set.of(file));
            Files.writeString(folder.resolve("notes.txt"), "buy mat");
            assertThat(answer).isNotDone();
            Files.writeString(file, "plug Box { units mm }");
            assertThat(answer.get(PATIENCE, TimeUnit.SECONDS)).isTrue();
        }
    }
}
