package mouldwright.geometry.frame;

import java.util.List;
import mouldwright.geometry.plane.Outline;

/** What becomes of an order for a plate. */
public sealed interface PlateResult {
    /** It can be cut. @param plate the plate */
    record Cut(Plate plate) implements PlateResult { }

    /** Nothing is left once the build-up is taken off. @param x station line, metres aft */
    record Vanished(double x) implements PlateResult { }

    /** It falls into pieces once the build-up is taken off. @param x station line @param pieces what is left */
    record Split(double x, List<Outline> pieces) implements PlateResult {
        /** Keeps its own copy. */
        public Split { pieces = List.copyOf(pieces); }
    }

    /** The body is a point or a knife edge there. @param x station line */
    record NoArea(double x) implements PlateResult { }
}
