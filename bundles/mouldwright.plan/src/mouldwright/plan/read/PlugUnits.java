package mouldwright.plan.read;

import java.util.Optional;
import mouldwright.model.Plug;
import mouldwright.units.Dimension;
import mouldwright.units.Unit;
import mouldwright.units.Units;

/** The unit of lengths written without one. */
public final class PlugUnits {

    private PlugUnits() { }

    /** @param plug  the plug the length stands in, or null in a library
     *  @return the plug's units; millimetres where it says nothing or nothing that is a length */
    public static Unit of(Plug plug) {
        Optional<Unit> own = plug == null || plug.getUnits() == null ? Optional.empty() : Units.find(plug.getUnits());
        return own.filter(unit -> unit.dimension().equals(Dimension.LENGTH)).orElseGet(() -> Units.find("mm").orElseThrow());
    }
}
