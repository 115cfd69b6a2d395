package mouldwright.geometry.section;

import java.util.Optional;

/** What borders a stretch at one of its ends.
 *
 *  @param line    the longitudinal line there, if any
 *  @param knuckle whether the outline may turn a corner there */
public record Mark(Optional<String> line, boolean knuckle) { }
