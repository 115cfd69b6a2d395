package mouldwright.plan.stage;

/** A bay: the room between two plates, or between a plate and an end of the body that bears none.
 *  @param fore what ends it forward
 *  @param aft  what ends it aft */
public record Bay(Border fore, Border aft) {

    /** @return such as {@code S1-S2} */
    public String name() {
        return fore.name() + "-" + aft.name();
    }

    /** @return the id of one of its figures, such as {@code bay.S1-S2.volume} */
    public String id(String figure) {
        return "bay." + name() + "." + figure;
    }

    /** @return in words */
    public String words() {
        return "bay " + fore.name() + " to " + aft.name();
    }

    /** Whether it lies within a stretch of the body.
     *  @param fromX station line of the part, m
     *  @param toX   station line of the part, m */
    boolean within(double fromX, double toX) {
        return fore.station().x() >= fromX && aft.station().x() <= toX;
    }
}
