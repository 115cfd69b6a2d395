package mouldwright.cli;

/** Ctrl-C while something long is done: it is asked to come to an end, and what it has by then is still printed, since the process waits for the thread that works. */
final class Interruption implements AutoCloseable {

    private final Thread worker = Thread.currentThread();
    private final Thread hook = new Thread(this::end, "interruption");
    private volatile boolean happened;

    private Interruption() { }

    /** Begins to listen; close it when the work is done. */
    static Interruption awaited() {
        Interruption interruption = new Interruption();
        Runtime.getRuntime().addShutdownHook(interruption.hook);
        return interruption;
    }

    /** Whether somebody asked for an end. */
    boolean happened() {
        return happened;
    }

    private void end() {
        happened = true;
        try {
            worker.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Listens no more; once interrupted the process waits on, and ends when the worker does. */
    @Override
    public void close() {
        if (!happened) {
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                happened = true; // the end has begun just now, and the hook waits already
            }
        }
    }
}
