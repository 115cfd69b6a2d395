package mouldwright.services.serve;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What JSON-RPC 2.0 and the Language Server Protocol 3.17 ask of a server, whatever it serves. The codes are those of the two specifications. */
class ConformanceTest {

    private static final int INVALID_REQUEST = -32600;
    private static final int METHOD_NOT_FOUND = -32601;
    private static final int INVALID_PARAMS = -32602;
    private static final int NOT_INITIALIZED = -32002;

    @Test void aRequestNobodyKnowsIsRefusedAndAnUnknownNotificationIgnored() throws Exception {
        try (Wire wire = new Wire().initialized()) {
            JsonObject answer = wire.send("{'jsonrpc':'2.0','method':'foo/bar'}").send("{'jsonrpc':'2.0','method':'$/foo','params':{}}")
                    .send("{'jsonrpc':'2.0','id':'seven','method':'foo/bar','params':{}}").read();
            assertThat(Wire.errorCode(answer)).isEqualTo(METHOD_NOT_FOUND);
            assertThat(answer.get("id").getAsString()).isEqualTo("seven"); // an id comes back as it was
        }
    }

    @Test void nothingIsAnsweredBeforeInitialize() throws Exception {
        try (Wire wire = new Wire()) {
            JsonObject answer = wire.send("{'jsonrpc':'2.0','id':1,'method':'textDocument/hover','params':{'textDocument':{'uri':'file:///a.plug'},'position':{'line':0,'character':0}}}").read();
            assertThat(Wire.errorCode(answer)).isEqualTo(NOT_INITIALIZED);
            assertThat(wire.initialized()).isNotNull();
        }
    }

    @Test void initializeComesOnce() throws Exception {
        try (Wire wire = new Wire().initialized()) {
            assertThat(Wire.errorCode(wire.send("{'jsonrpc':'2.0','id':1,'method':'initialize','params':{'capabilities':{}}}").read())).isEqualTo(INVALID_REQUEST);
        }
    }

    @Test void parametersThatLackSomethingAreRefused() throws Exception {
        try (Wire wire = new Wire().initialized()) {
            assertThat(Wire.errorCode(wire.send("{'jsonrpc':'2.0','id':1,'method':'textDocument/hover','params':{'textDocument':{'uri':'file:///a.plug'}}}").read())).isEqualTo(INVALID_PARAMS);
        }
    }

    @Test void headersMayBeWrittenInAnyCaseAndWithATypeBeforeTheLength() throws Exception {
        try (Wire wire = new Wire().initialized()) {
            byte[] body = "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"foo/bar\"}".getBytes(StandardCharsets.UTF_8);
            JsonObject answer = wire.bytes("Content-Type: application/vscode-jsonrpc; charset=utf-8\r\nContent-Length: " + body.length + "\r\n\r\n", body).read();
            assertThat(Wire.errorCode(answer)).isEqualTo(METHOD_NOT_FOUND);
        }
    }

    @Test void textsThatAreNotOpenHaveNothingToSay() throws Exception {
        try (Wire wire = new Wire().initialized()) {
            wire.send("{'jsonrpc':'2.0','method':'textDocument/didChange','params':{'textDocument':{'uri':'file:///not/open.plug','version':2},'contentChanges':[{'text':'x'}]}}")
                    .send("{'jsonrpc':'2.0','method':'textDocument/didClose','params':{'textDocument':{'uri':'file:///not/open.plug'}}}");
            for (String uri : new String[] { "file:///not/open.plug", "untitled:Untitled-1", "no uri at all %%" }) {
                JsonObject answer = wire.send("{'jsonrpc':'2.0','id':1,'method':'textDocument/hover','params':{'textDocument':{'uri':'" + uri + "'},'position':{'line':0,'character':0}}}").read();
                assertThat(answer.has("error")).isFalse();
            }
        }
    }

    @Test void anAnswerNobodyAskedForIsIgnored() throws Exception {
        try (Wire wire = new Wire().initialized()) {
            wire.send("{'jsonrpc':'2.0','id':4711,'result':null}");
            assertThat(Wire.errorCode(wire.send("{'jsonrpc':'2.0','id':2,'method':'foo/bar'}").read())).isEqualTo(METHOD_NOT_FOUND);
        }
    }

    @Test void aCancelledRequestIsAnsweredOnce() throws Exception { // whether it was still waiting or done already
        try (Wire wire = new Wire().initialized()) {
            wire.send("{'jsonrpc':'2.0','method':'textDocument/didOpen','params':{'textDocument':{'uri':'file:///a/b.plug','languageId':'plug','version':1,'text':'plug P { }'}}}");
            wire.send("{'jsonrpc':'2.0','id':7,'method':'workspace/executeCommand','params':{'command':'mouldwright.plan','arguments':['file:///a/b.plug']}}")
                    .send("{'jsonrpc':'2.0','method':'$/cancelRequest','params':{'id':7}}").send("{'jsonrpc':'2.0','method':'$/cancelRequest','params':{'id':8}}");
            JsonObject first = wire.read();
            assertThat(first.get("id").getAsInt()).isEqualTo(7);
            assertThat(wire.send("{'jsonrpc':'2.0','id':9,'method':'foo/bar'}").read().get("id").getAsInt()).isEqualTo(9);
        }
    }

    @Test void afterShutdownThereIsOnlyExitWhichEndsWithZero() throws Exception {
        Wire wire = new Wire().initialized();
        assertThat(wire.send("{'jsonrpc':'2.0','id':1,'method':'shutdown'}").read().get("id").getAsInt()).isEqualTo(1);
        assertThat(Wire.errorCode(wire.send("{'jsonrpc':'2.0','id':2,'method':'workspace/symbol','params':{'query':''}}").read())).isEqualTo(INVALID_REQUEST);
        assertThat(wire.send("{'jsonrpc':'2.0','method':'exit'}").code()).isZero();
    }

    @Test void exitWithoutShutdownEndsWithOne() throws Exception {
        assertThat(new Wire().initialized().send("{'jsonrpc':'2.0','method':'exit'}").code()).isEqualTo(1);
        assertThat(new Wire().send("{'jsonrpc':'2.0','method':'exit'}").code()).isEqualTo(1);
    }

    @Test void theServerEndsWithItsInput() throws Exception {
        assertThat(new Wire().initialized().hangUp().code()).isEqualTo(1);
    }

    @Test void theServerEndsWithTheProcessItServes() throws Exception {
        Process gone = new ProcessBuilder("sleep", "0").start();
        long id = gone.pid();
        gone.waitFor();
        Wire wire = new Wire().send("{'jsonrpc':'2.0','id':0,'method':'initialize','params':{'processId':" + id + ",'capabilities':{}}}");
        assertThat(wire.code()).isEqualTo(1);
        Process client = new ProcessBuilder("sleep", "600").start();
        Wire served = new Wire().send("{'jsonrpc':'2.0','id':0,'method':'initialize','params':{'processId':" + client.pid() + ",'capabilities':{}}}");
        served.read();
        client.destroyForcibly();
        assertThat(served.code()).isEqualTo(1);
    }
}
