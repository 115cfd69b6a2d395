package mouldwright.project;

/** The family of units a project's papers are written in. */
public enum OutputUnits {
    /** {@code units = metric}. */
    METRIC,
    /** {@code units = us}. */
    US
}
