package mouldwright.geometry.frame;

import java.util.List;
import java.util.Optional;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.plane.Outline;

/** A plate of sheet standing square to the centreline, its outline smaller than the body by the build-up.
 *
 *  @param x               station line, metres aft
 *  @param otherX          where its other face stands, metres aft
 *  @param thickness       of the sheet, metres
 *  @param side            to which side of the station line it stands
 *  @param cut             cut line in the section plane
 *  @param stationFace     foam line at the face on the station line
 *  @param otherFace       foam line at the other face
 *  @param bevelLine       where a bevelled edge meets the smaller face; empty for square edges
 *  @param bevels          bevel table, going up from bottom centre, starboard first
 *  @param largestBevel    largest bevel of the moulded surface at the station line, radians, not negative
 *  @param gapInPlane      largest gap a square edge leaves, in the section plane: T tan(bevel), metres
 *  @param gapAlongNormal  the same along the normal: T sin(bevel), metres
 *  @param larger          the face whose foam line has the larger area */
public record Plate(double x, double otherX, double thickness, Side side, Outline cut, Outline stationFace,
                    Outline otherFace, Optional<Outline> bevelLine, List<BevelEntry> bevels, double largestBevel,
                    double gapInPlane, double gapAlongNormal, Face larger) {
    /** Keeps its own copy. */
    public Plate { bevels = List.copyOf(bevels); }

    /** The two faces of a plate. */
    public enum Face {
        /** The one on the station line. */
        STATION,
        /** The one a sheet's thickness off it. */
        OTHER
    }

    /** For a plate at an end of the body, whose station face is the outer one: whether the outer face is the larger, so
     *  that square edges would leave the plate short of it all round. */
    public boolean outerFaceLarger() {
        return larger == Face.STATION;
    }
}
