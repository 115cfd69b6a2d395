package mouldwright.services.serve;

import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.UnaryOperator;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.jsonrpc.MessageConsumer;
import org.eclipse.lsp4j.jsonrpc.RemoteEndpoint;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.validation.ReflectiveMessageValidator;
import org.eclipse.lsp4j.services.LanguageClient;

/** Serves one client over a pair of streams until it goes. */
public final class StdioServer {

    /** Kept, so that it is not forgotten with its level. */
    private static final Logger PROTOCOL = Logger.getLogger("org.eclipse.lsp4j");

    private StdioServer() { }

    /**
     * Serves.
     *
     * @param in      messages of the client
     * @param out     messages to it, and nothing else
     * @param err     takes faults of the program, if they are wanted
     * @param logging whether they are
     * @return what the process is to end with: 0 after a shutdown, 1 otherwise
     */
    public static int serve(InputStream in, OutputStream out, PrintStream err, boolean logging) {
        PROTOCOL.setLevel(Level.OFF);
        Log log = new Log(err, logging);
        Ending ending = new Ending();
        SpecServer server = new SpecServer(log, ending);
        ExecutorService reading = Executors.newCachedThreadPool(work -> {
            Thread thread = new Thread(work, "mouldwright protocol");
            thread.setDaemon(true);
            return thread;
        });
        Launcher<LanguageClient> launcher = new Launcher.Builder<LanguageClient>().setLocalService(server).setRemoteInterface(LanguageClient.class)
                .setInput(in).setOutput(out).setExecutorService(reading).setExceptionHandler(fault -> error(fault, log)).wrapMessages(gates(ending, log)).create();
        server.connect(launcher.getRemoteProxy());
        Future<Void> listening = launcher.startListening();
        reading.execute(() -> {
            try {
                listening.get();
            } catch (InterruptedException | ExecutionException | CancellationException e) {
                // However the input ended, it did.
            }
            ending.exit();
        });
        int code = ending.await();
        server.close();
        reading.shutdown();
        return code;
    }

    /** Messages that come in are held to the protocol by a gate that can answer; what goes wrong with one on its way out is a fault of ours. */
    private static UnaryOperator<MessageConsumer> gates(Ending ending, Log log) {
        AtomicReference<MessageConsumer> out = new AtomicReference<>();
        return consumer -> {
            if (consumer instanceof RemoteEndpoint) {
                return new Gate(new ReflectiveMessageValidator(consumer), out.get(), ending);
            }
            out.set(message -> {
                try {
                    consumer.consume(message);
                } catch (RuntimeException fault) {
                    log.fault(fault);
                    throw fault;
                }
            });
            return out.get();
        };
    }

    /** What a client is told of a fault: one line, and never where in the program it was. */
    private static ResponseError error(Throwable fault, Log log) {
        Throwable cause = fault;
        while (cause instanceof CompletionException || cause instanceof ExecutionException || cause instanceof InvocationTargetException) {
            cause = cause.getCause();
        }
        return switch (cause) {
            case ResponseErrorException refusal -> refusal.getResponseError();
            case CancellationException gone -> new ResponseError(ResponseErrorCode.RequestCancelled, "the request was cancelled", null);
            case null, default -> {
                log.fault(fault);
                yield new ResponseError(ResponseErrorCode.InternalError, "internal fault, not of the spec", null);
            }
        };
    }
}
