package mouldwright.geometry.nest;

import java.util.List;
import java.util.stream.IntStream;

/** The angles a part may lie at on a sheet, whole degrees counter-clockwise; at 0 its first axis runs along the sheet's length.
 *  @param degrees at least one */
public record Turns(List<Integer> degrees) {
    private static final int FULL = 360, FREE_STEP = 15;

    /** As it is drawn. */
    public static final Turns NONE = new Turns(List.of(0));
    /** Its first axis along the sheet. */
    public static final Turns ALONG = new Turns(List.of(0, 180));
    /** Its first axis across the sheet. */
    public static final Turns ACROSS = new Turns(List.of(90, 270));
    /** Square to the sheet, any of four ways. */
    public static final Turns QUARTERS = new Turns(List.of(0, 90, 180, 270));
    /** All round, every 15 degrees: finer steps cost time and hardly any sheet. */
    public static final Turns FREE = new Turns(IntStream.iterate(0, a -> a < FULL, a -> a + FREE_STEP).boxed().toList());

    /** Copies its list and refuses an empty one. */
    public Turns {
        degrees = List.copyOf(degrees);
        if (degrees.isEmpty())
            throw new IllegalArgumentException("no angle to lie at");
    }
}
