package mouldwright.units;

/** A result that is no usable number: a division by zero, an overflow, or a sum of temperature readings. */
public final class NotANumber extends Refusal {

    private static final long serialVersionUID = 1L;

    /**
     * A refusal.
     *
     * @param message what was asked and why it has no answer
     */
    public NotANumber(String message) {
        super(message);
    }

    static double unlessFinite(double value, String asked) {
        if (!Double.isFinite(value)) {
            throw new NotANumber(asked + " is too large to work with");
        }
        return value;
    }
}
