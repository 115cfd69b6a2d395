package mouldwright.services.serve;

import java.util.Set;
import org.eclipse.lsp4j.jsonrpc.MessageConsumer;
import org.eclipse.lsp4j.jsonrpc.messages.Message;
import org.eclipse.lsp4j.jsonrpc.messages.NotificationMessage;
import org.eclipse.lsp4j.jsonrpc.messages.RequestMessage;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseError;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseErrorCode;
import org.eclipse.lsp4j.jsonrpc.messages.ResponseMessage;

/** Holds the client to the order of the protocol: nothing before {@code initialize}, which comes once, and nothing but {@code exit} after {@code shutdown}. */
final class Gate implements MessageConsumer {

    private static final Set<String> ALWAYS = Set.of("exit", "$/cancelRequest");

    private final MessageConsumer in;
    private final MessageConsumer out;
    private final Ending ending;
    private boolean initialized;

    Gate(MessageConsumer in, MessageConsumer out, Ending ending) {
        this.in = in;
        this.out = out;
        this.ending = ending;
    }

    @Override
    public void consume(Message message) {
        switch (message) {
            case RequestMessage request when !initialized && !request.getMethod().equals("initialize") ->
                    refuse(request, ResponseErrorCode.ServerNotInitialized, "initialize comes first");
            case RequestMessage request when initialized && request.getMethod().equals("initialize") ->
                    refuse(request, ResponseErrorCode.InvalidRequest, "initialize comes once");
            case RequestMessage request when ending.isShutDown() -> refuse(request, ResponseErrorCode.InvalidRequest, "the server is shutting down");
            case NotificationMessage note when (!initialized || ending.isShutDown()) && !ALWAYS.contains(note.getMethod()) -> { }
            case RequestMessage request -> {
                initialized |= request.getMethod().equals("initialize");
                in.consume(request);
            }
            default -> in.consume(message);
        }
    }

    private void refuse(RequestMessage request, ResponseErrorCode code, String why) {
        ResponseMessage response = new ResponseMessage();
        response.setRawId(request.getRawId());
        response.setError(new ResponseError(code, why, null));
        out.consume(response);
    }
}
