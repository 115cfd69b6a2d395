package mouldwright.services.serve;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** The bare wire to a server: messages as JSON-RPC 2.0 has them, headers as LSP 3.17 does, written here by hand. */
final class Wire implements AutoCloseable {

    private final PipedOutputStream toServer = new PipedOutputStream();
    private final InputStream fromServer;
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final CompletableFuture<Integer> code;

    Wire() {
        try {
            PipedInputStream serverIn = new PipedInputStream(toServer, 1 << 16);
            PipedOutputStream serverOut = new PipedOutputStream();
            fromServer = new PipedInputStream(serverOut, 1 << 20);
            code = CompletableFuture.supplyAsync(() -> StdioServer.serve(serverIn, serverOut, new PrintStream(err, true, StandardCharsets.UTF_8), true));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Wire initialized() {
        send("{'jsonrpc':'2.0','id':0,'method':'initialize','params':{'processId':null,'rootUri':null,'capabilities':{}}}");
        read();
        return send("{'jsonrpc':'2.0','method':'initialized','params':{}}");
    }

    /** Sends a message; its single quotes stand for double ones. */
    Wire send(String message) {
        byte[] body = message.replace('\'', '"').getBytes(StandardCharsets.UTF_8);
        return bytes("Content-Length: " + body.length + "\r\n\r\n", body);
    }

    Wire bytes(String header, byte[] body) {
        try {
            toServer.write(header.getBytes(StandardCharsets.US_ASCII));
            toServer.write(body);
            toServer.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** The next answer, past notifications and requests of the server. */
    JsonObject read() {
        while (true) {
            JsonObject message = inTime();
            if (!message.has("method")) {
                return message;
            }
        }
    }

    /** A server that does not answer fails the test; it does not hold it up for ever. */
    private JsonObject inTime() {
        try {
            return CompletableFuture.supplyAsync(this::message).get(300, TimeUnit.SECONDS);
        } catch (InterruptedException | java.util.concurrent.ExecutionException | java.util.concurrent.TimeoutException e) {
            throw new IllegalStateException("the server does not answer", e);
        }
    }

    private JsonObject message() {
        try {
            StringBuilder header = new StringBuilder();
            while (header.indexOf("\r\n\r\n") < 0) {
                int c = fromServer.read();
                if (c < 0) {
                    throw new IllegalStateException("the server has gone: " + err.toString(StandardCharsets.UTF_8));
                }
                header.append((char) c);
            }
            int length = Integer.parseInt(header.toString().replaceAll("(?s).*Content-Length: (\\d+)\r\n.*", "$1"));
            return JsonParser.parseString(new String(fromServer.readNBytes(length), StandardCharsets.UTF_8)).getAsJsonObject();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static int errorCode(JsonObject answer) {
        return answer.getAsJsonObject("error").get("code").getAsInt();
    }

    /** Ends the input. */
    Wire hangUp() {
        try {
            toServer.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** What the server ends with. */
    int code() throws Exception {
        return code.get(120, TimeUnit.SECONDS);
    }

    @Override
    public void close() throws Exception {
        hangUp();
        code();
    }
}
