package mouldwright.plan.stage;

import java.util.List;
import mouldwright.geometry.crown.Crown;
import mouldwright.geometry.crown.Subdivision;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.measure.AreaSplit;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.measure.Measures;
import mouldwright.geometry.measure.VolumeCentre;
import mouldwright.geometry.offset.BuildUp;
import mouldwright.plan.spec.Station;

/** What is measured on the shape.
 *  @param part      the body as stated, unscaled
 *  @param plug      scaled for shrink
 *  @param scale     of the plug
 *  @param bare      what is not moulded
 *  @param buildUp   what skin and surfacer add, along the plug's x
 *  @param endBuildUp what they add on a moulded end, m
 *  @param borders   what ends the bays, in order
 *  @param bays      in order
 *  @param measures  of the plug, for further areas
 *  @param volume    of the part
 *  @param area      of the part, without end faces
 *  @param stations  each station's section, of the part
 *  @param moulded   moulded end faces of the part
 *  @param crowns    bay by bay, on the plug
 *  @param volumes   bay by bay, of the part */
public record ShapeMeasures(Loft part, Loft plug, double scale, Bare bare, BuildUp buildUp, double endBuildUp,
        List<Border> borders, List<Bay> bays, Measures measures, VolumeCentre volume, AreaSplit area,
        List<AtStation> stations, List<End> moulded, List<BayCrown> crowns, List<Measured> volumes) {

    /** The section at a station.
     *  @param area   m2
     *  @param girth  whole outline, m
     *  @param bevel  largest of the moulded surface, radians; of no meaning for a pointed end
     *  @param pinched whether it is a point or a knife edge */
    public record AtStation(Station station, double area, double girth, double bevel, boolean pinched) { }

    /** A moulded end face.
     *  @param area    of the part, m2
     *  @param breadth of the plug, m
     *  @param height  of the plug, m */
    public record End(Station station, double area, double breadth, double height) { }

    /** How far the surface of a bay stands off the board.
     *  @param division how a stiff board would want it divided */
    public record BayCrown(Crown crown, Subdivision division) { }

    /** Copies its lists. */
    public ShapeMeasures {
        borders = List.copyOf(borders);
        bays = List.copyOf(bays);
        stations = List.copyOf(stations);
        moulded = List.copyOf(moulded);
        crowns = List.copyOf(crowns);
        volumes = List.copyOf(volumes);
    }

    /** Moulded area of the plug, end faces counted, m2. */
    public double mouldedPlugArea() {
        double ends = moulded.stream().mapToDouble(End::area).sum();
        return (area.moulded().value() + ends) * scale * scale;
    }
}
