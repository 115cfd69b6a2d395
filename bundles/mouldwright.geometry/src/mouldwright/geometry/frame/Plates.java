package mouldwright.geometry.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthRange;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;
import mouldwright.geometry.loft.SurfacePlace;
import mouldwright.geometry.loft.SurfacePoint;
import mouldwright.geometry.offset.FoamLine;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.Region;

/** Makes plates from a body. */
public final class Plates {
    /** Areas closer than this share are a tie: what rounding makes of equal sections. */
    private static final double TIE = 1e-9;
    /** How far chords may leave the outline where bevels are sought, as a share of the half girth. */
    private static final double CHORD = 1e-4;
    private static final int TABLE_PARTS = 4;
    /** Pieces below this share of the largest come from rounding, not from the shape. */
    private static final double CRUMB = 1e-4;

    private Plates() { }

    /** Makes one plate.
     *  @param loft  the body, scaled for shrink already
     *  @param order what is wanted; a face past an end of the body is taken at the end */
    public static PlateResult make(Loft loft, PlateOrder order) {
        double x = order.x(), otherX = x + order.side().sign() * order.thickness();
        Side inside = order.side(), opposite = inside == Side.AFT ? Side.FORWARD : Side.AFT;
        if (loft.at(x, inside).isDegenerate())
            return new PlateResult.NoArea(x);
        Region station = FoamLine.at(loft, x, inside, order.buildUp());
        Region other = FoamLine.at(loft, otherX, opposite, order.buildUp());
        Region cut = order.edges() == EdgeForm.SQUARE ? station.intersection(other) : station.union(other);
        cut = cut.withoutCrumbs(CRUMB);
        if (station.isEmpty() || other.isEmpty() || cut.isEmpty())
            return new PlateResult.Vanished(x);
        for (Region region : List.of(station, other, cut))
            if (region.pieces().size() > 1)
                return new PlateResult.Split(x, region.pieces());
        return new PlateResult.Cut(plate(loft, order, otherX, cut, station, other));
    }

    private static Plate plate(Loft loft, PlateOrder order, double otherX, Region cut, Region station, Region other) {
        Slice slice = loft.at(order.x(), order.side());
        Bare bare = order.buildUp().bare();
        double bevel = largestBevel(slice, bare);
        Outline stationFace = station.pieces().getFirst(), otherFace = other.pieces().getFirst();
        boolean stationLarger = station.area() > other.area() * (1 + TIE);
        Optional<Outline> line = order.edges() == EdgeForm.SQUARE ? Optional.empty()
                : Optional.of(stationLarger ? otherFace : stationFace);
        return new Plate(order.x(), otherX, order.thickness(), order.side(), cut.pieces().getFirst(), stationFace, otherFace,
                line, table(slice, bare), bevel, order.thickness() * Math.tan(bevel), order.thickness() * Math.sin(bevel),
                stationLarger ? Plate.Face.STATION : Plate.Face.OTHER);
    }

    private static List<BevelEntry> table(Slice slice, Bare bare) {
        List<BevelEntry> table = new ArrayList<>();
        for (int s = 0; s < slice.stretches(); s++)
            for (int k = 0; k <= TABLE_PARTS; k++) {
                double u = (double) k / TABLE_PARTS;
                SurfacePlace place = slice.place(s, u);
                SurfacePoint p = slice.point(s, u);
                table.add(new BevelEntry(place, p.y(), p.z(), p.bevel(), slice.isBare(place, bare)));
            }
        return table;
    }

    /** To which side each plate stands: the first aft, the last forward, the others toward the neighbour of larger area,
     *  a tie aft.
     *  @param loft     the body
     *  @param stations station lines, metres aft, increasing, pointed ends among them */
    public static List<Side> sides(Loft loft, List<Double> stations) {
        List<Double> areas = stations.stream().map(x -> loft.at(x).area()).toList();
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < stations.size(); i++) {
            boolean first = i == 0, last = i == stations.size() - 1;
            boolean forward = !first && (last || areas.get(i - 1) > areas.get(i + 1) * (1 + TIE));
            sides.add(forward ? Side.FORWARD : Side.AFT);
        }
        return sides;
    }

    /** Clear length of a bay between two station lines.
     *  @param length between the station lines, metres
     *  @param foreThickness of the forward plate, metres @param foreSide to which side it stands
     *  @param aftThickness  of the after plate, metres   @param aftSide  to which side it stands
     *  @return L - T [forward plate stands aft] - T [after plate stands forward], metres */
    public static double clearLength(double length, double foreThickness, Side foreSide, double aftThickness, Side aftSide) {
        return length - (foreSide == Side.AFT ? foreThickness : 0) - (aftSide == Side.FORWARD ? aftThickness : 0);
    }

    /** Largest bevel of the moulded surface at a station, radians, not negative. */
    public static double largestBevel(Loft loft, double x, Side side, Bare bare) {
        return largestBevel(loft.at(x, side), bare);
    }

    private static double largestBevel(Slice slice, Bare bare) {
        double largest = 0;
        for (int s = 0; s < slice.stretches(); s++)
            for (double u : slice.chords(new GirthRange(s, 0, 1), CHORD * slice.girth() / 2))
                if (!slice.isBare(slice.place(s, u), bare))
                    largest = Math.max(largest, Math.abs(slice.point(s, u).bevel()));
        return largest;
    }
}
