package mouldwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import mouldwright.services.ProcessIo;

/** What is left of a fault of the program: a file for those who mend it, and one line for the one who met it. */
final class FaultReport {

    private FaultReport() { }

    static int write(Throwable fault, String[] arguments, ProcessIo io) {
        String where;
        try {
            Path file = Files.createTempFile("mouldwright-fault-", ".txt");
            Files.writeString(file, text(fault, arguments));
            where = "the report is " + file;
        } catch (IOException | SecurityException e) {
            where = "its report could not be written: " + fault;
        }
        io.err().print("mouldwright: internal fault, not of the spec; " + where + "\n");
        return ExitCode.FAULT;
    }

    private static String text(Throwable fault, String[] arguments) {
        StringWriter trace = new StringWriter();
        fault.printStackTrace(new PrintWriter(trace));
        return "mouldwright " + Version.words() + "\narguments " + Arrays.toString(arguments) + "\njava " + System.getProperty("java.version")
                + ", " + System.getProperty("os.name") + " " + System.getProperty("os.arch") + "\n\n" + trace;
    }
}
