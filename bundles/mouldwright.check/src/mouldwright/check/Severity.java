package mouldwright.check;

/** How much a finding matters. */
public enum Severity {
    /** No figures can be given. */
    ERROR,
    /** It can be built, with trouble. */
    WARNING,
    /** Good to know. */
    INFO
}
