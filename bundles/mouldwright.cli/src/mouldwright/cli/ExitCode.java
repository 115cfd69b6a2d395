package mouldwright.cli;

/** What the command line tells the shell. */
public final class ExitCode {

    /** All is well. */
    public static final int FINE = 0;
    /** The spec has errors; or warnings with {@code --strict}; or a file with {@code format --check} is not laid out. */
    public static final int ERRORS = 1;
    /** The command was used wrongly; also where no plug is in the file, or several without {@code --plug}. */
    public static final int USAGE = 2;
    /** A file cannot be read or written. */
    public static final int FILE = 3;
    /** A fault of the program itself. */
    public static final int FAULT = 70;

    private ExitCode() { }
}
