package mouldwright.geometry.section;

/** How far a given point stands off the curve its neighbours make without it.
 *
 *  @param point which, counted from 0 as given
 *  @param off   distance, metres
 *  @param fairY where the curve without it passes nearest, metres
 *  @param fairZ the same, metres */
public record Standoff(int point, double off, double fairY, double fairZ) { }
