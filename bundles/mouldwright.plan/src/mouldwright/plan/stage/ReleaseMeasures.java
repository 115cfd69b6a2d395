package mouldwright.plan.stage;

/** Kept when the figures of the release make sense.
 *  @param coats how many there are in all */
public record ReleaseMeasures(int coats) { }
