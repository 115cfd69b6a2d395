package mouldwright.units;

/** Two amounts were added or compared that do not measure the same thing. */
public final class DimensionMismatch extends Refusal {

    private static final long serialVersionUID = 1L;

    private final transient Dimension left;
    private final transient Dimension right;

    /**
     * A mismatch.
     *
     * @param left  what the first amount measures
     * @param right what the second amount measures
     */
    public DimensionMismatch(Dimension left, Dimension right) {
        super(left.withArticle() + " and " + right.withArticle() + " do not go together");
        this.left = left;
        this.right = right;
    }

    /** What the first amount measures. */
    public Dimension left() {
        return left;
    }

    /** What the second amount measures. */
    public Dimension right() {
        return right;
    }
}
