package mouldwright.services;

/** Codes of the findings that are made here. */
final class Codes {

    /** A file that was not read. */
    static final String UNREAD = "MW990";
    /** A line of the project file. */
    static final String PROJECT = "MW991";
    /** A file with nothing in it. */
    static final String EMPTY = "MW992";
    /** Brackets or blocks too deep to follow. */
    static final String TOO_DEEP = "MW993";

    private Codes() { }
}
