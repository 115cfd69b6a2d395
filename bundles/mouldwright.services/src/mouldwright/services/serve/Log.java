package mouldwright.services.serve;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;

/** Faults of the program, written to standard error where that is asked for. Standard output carries the protocol and nothing else. */
record Log(PrintStream err, boolean wanted) {

    void fault(Throwable fault) {
        // A refusal is an answer.
        if (wanted && !(fault instanceof ResponseErrorException)) {
            StringWriter trace = new StringWriter();
            fault.printStackTrace(new PrintWriter(trace));
            err.print("mouldwright: internal fault: " + trace);
            err.flush();
        }
    }
}
