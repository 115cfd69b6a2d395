package mouldwright.cli;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import mouldwright.services.ProcessIo;

/** Where the command line starts. */
public final class Main {

    private static final int BUFFER = 1 << 16;

    private Main() { }

    /** Runs a command and ends the process with its exit code.
     *  @param arguments as the shell gives them */
    public static void main(String[] arguments) {
        ProcessIo io = new ProcessIo(utf8(FileDescriptor.out), utf8(FileDescriptor.err), System.in, Path.of(""), isTerminal(), System.getenv());
        int code = new Cli().run(io, arguments);
        Runtime.getRuntime().halt(code);
    }

    /** UTF-8 whatever the locale. */
    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(new java.io.BufferedOutputStream(new FileOutputStream(descriptor), BUFFER), false, StandardCharsets.UTF_8);
    }

    /** From Java 22 on there is a console in a pipe too, and it has to be asked. */
    private static boolean isTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }
}
