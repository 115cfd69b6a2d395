package mouldwright.geometry.offset;

import java.util.List;
import mouldwright.geometry.loft.Bare;
import mouldwright.geometry.loft.GirthBand;

/** What skin and surfacer add outside the foam: the sum of layers, nothing where the body is bare.
 *
 *  @param layers each a thickness over a part of the surface
 *  @param bare   what gets nothing */
public record BuildUp(List<Layer> layers, Bare bare) {
    /** No build-up at all. */
    public static final BuildUp NONE = new BuildUp(List.of(), Bare.NONE);

    /** Keeps its own copy. */
    public BuildUp { layers = List.copyOf(layers); }

    /** One thickness in metres over everything that is not bare. */
    public static BuildUp uniform(double thickness, Bare bare) {
        return new BuildUp(List.of(new Layer(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY,
                GirthBand.WHOLE, thickness)), bare);
    }
}
