package mouldwright.cli;

/** The command was used wrongly; the message says how, for the one who typed it. */
final class WrongUsage extends RuntimeException {

    private static final long serialVersionUID = 1;

    WrongUsage(String message) {
        super(message);
    }
}
