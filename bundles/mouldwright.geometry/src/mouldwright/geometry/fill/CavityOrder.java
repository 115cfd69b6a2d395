package mouldwright.geometry.fill;

import java.util.List;
import java.util.OptionalDouble;
import mouldwright.geometry.offset.BuildUp;
import mouldwright.geometry.plane.Outline;

/** A bay to be filled with foam.
 *
 *  @param foreX     forward end of its clear length, metres aft
 *  @param aftX      after end of its clear length, metres aft
 *  @param buildUp   what is taken off the surface
 *  @param overfill  by how much the form stands off the foam line in the section plane, metres; not on bare stretches
 *  @param edges     plate edges at the ends of the clear length, over which only the overfill runs
 *  @param shell     thickness of the shell round a packed pocket, in the section plane, metres; empty if poured solid
 *  @param backbones lengthwise members that pass through, as outlines in the section plane */
public record CavityOrder(double foreX, double aftX, BuildUp buildUp, double overfill, List<PlateEdge> edges, OptionalDouble shell,
                          List<Outline> backbones) {

    /** The edge of a plate, or of the part of it that is counted to this bay.
     *
     *  @param x     where the overfill over it is measured, metres aft
     *  @param width along the body, metres
     *  @param share of it that grows with the thickness of the plate: metres of width for each metre of thickness */
    public record PlateEdge(double x, double width, double share) { }

    /** Keeps its own copies. */
    public CavityOrder {
        edges = List.copyOf(edges);
        backbones = List.copyOf(backbones);
    }

    /** A bay whose overfill ends at its plates. */
    public CavityOrder(double foreX, double aftX, BuildUp buildUp, double overfill, OptionalDouble shell, List<Outline> backbones) {
        this(foreX, aftX, buildUp, overfill, List.of(), shell, backbones);
    }
}
