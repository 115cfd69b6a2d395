package mouldwright.services.serve;

import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/** How the server ends: when it is told to, when its input ends, or when the process that started it is gone. */
final class Ending {

    private final CompletableFuture<Integer> code = new CompletableFuture<>();
    private volatile boolean shutDown;

    /** Whether the client has asked to shut down. */
    boolean isShutDown() {
        return shutDown;
    }

    void shutDown() {
        shutDown = true;
    }

    /** Ends: 0 after a shutdown, 1 otherwise, as the protocol has it. */
    void exit() {
        code.complete(shutDown ? 0 : 1);
    }

    /** Ends with the process of the client, which may die without a word; at once if it is gone already. */
    void watch(Optional<Integer> process) {
        process.ifPresent(id -> ProcessHandle.of(id).ifPresentOrElse(alive -> alive.onExit().thenRun(this::exit), this::exit));
    }

    /** Waits for the end.
     *  @return what the process ends with */
    int await() {
        return code.join();
    }
}
