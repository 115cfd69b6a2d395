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
 *  @param shell     thickness of the shell round a packed pocket, in the section plane, metres; empty if poured solid
 *  @param backbones lengthwise members that pass through, as outlines in the section plane */
public record CavityOrder(double foreX, double aftX, BuildUp buildUp, double overfill, OptionalDouble shell,
                          List<Outline> backbones) {
    /** Keeps its own copy. */
    public CavityOrder { backbones = List.copyOf(backbones); }
}
