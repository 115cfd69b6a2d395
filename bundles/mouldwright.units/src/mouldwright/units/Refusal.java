package mouldwright.units;

/**
 * Arithmetic that has no answer. Unchecked, without a stack trace: the caller, who knows the place in the text, turns
 * it into a finding.
 */
public abstract sealed class Refusal extends RuntimeException permits DimensionMismatch, NotANumber {

    private static final long serialVersionUID = 1L;

    Refusal(String message) {
        super(message, null, false, false);
    }
}
