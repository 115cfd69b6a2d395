package mouldwright.plan.spec;

import java.util.Objects;

/** A station: a section square to the centreline.
 *  @param name    its name
 *  @param x       metres aft of the datum
 *  @param form    how the section is stated
 *  @param crease  a crease across the body here
 *  @param plated  a plate stands here; a station that only shapes the body has none
 *  @param origin  where it is declared */
public record Station(String name, double x, Form form, boolean crease, boolean plated, Origin origin) {
    /** Refuses missing parts. */
    public Station {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(form, "form");
        Objects.requireNonNull(origin, "origin");
    }

    /** @return whether the loft rests on this station */
    public boolean shapes() {
        return !(form instanceof Form.Lofted);
    }
}
