package mouldwright.check;

/** What a fix declares because the spec names none. */
final class Declared {

    /** Where its figures come from. */
    static final String SOURCE = "typical, replace with your supplier's";

    private Declared() { }
}
