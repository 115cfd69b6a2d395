package mouldwright.plan;

import java.util.List;

/** A length of timber to cut for the frame. Lengths in metres.
 *  @param key      by which it is known, such as {@code strongback.rail}
 *  @param name     in words
 *  @param width    across
 *  @param depth    upright
 *  @param length   to cut
 *  @param quantity how many alike
 *  @param marks    squared across it */
public record Member(String key, String name, double width, double depth, double length, int quantity, List<Mark> marks) {

    /** A line squared across a member.
     *  @param name of the station whose plate stands to it
     *  @param at   from its forward end, metres */
    public record Mark(String name, double at) { }

    /** Copies its list. */
    public Member {
        marks = List.copyOf(marks);
    }
}
