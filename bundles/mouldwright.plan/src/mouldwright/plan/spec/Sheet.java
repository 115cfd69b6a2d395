package mouldwright.plan.spec;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/** Sheet material for plates.
 *  @param width      m
 *  @param length     m
 *  @param thickness  nominal, m
 *  @param density    kg/m3
 *  @param kerf       of the cut, m
 *  @param margin     left along the edges, m
 *  @param grain      which way its face grain runs
 *  @param also       other sizes it is to be had in */
public record Sheet(String name, Given width, Given length, Given thickness, Given density, Optional<Given> kerf, Optional<Given> margin, Grain grain,
        Stock stock, List<Size> also) implements Material {

    /** Another size of the same sheet.
     *  @param width  m
     *  @param length m
     *  @param price  of one, in the library's currency */
    public record Size(Given width, Given length, OptionalDouble price) { }

    /** To be had in one size. */
    public Sheet(String name, Given width, Given length, Given thickness, Given density, Optional<Given> kerf, Optional<Given> margin, Grain grain, Stock stock) {
        this(name, width, length, thickness, density, kerf, margin, grain, stock, List.of());
    }

    /** All sizes, the usual one first. */
    public List<Size> sizes() {
        List<Size> sizes = new ArrayList<>();
        sizes.add(new Size(width, length, stock.pack().filter(pack -> pack.size().likely() > 0).map(pack -> OptionalDouble.of(pack.price() / pack.size().likely())).orElse(OptionalDouble.empty())));
        sizes.addAll(also);
        return sizes;
    }

    /** Which way the face grain of a sheet runs. */
    public enum Grain {
        /** Not stated: parts are laid without regard to it. */
        ANY,
        /** With the longer side. */
        ALONG,
        /** With the shorter side. */
        ACROSS
    }

    /** The size with most area. */
    public Size largest() {
        return sizes().stream().max(Comparator.comparingDouble(size -> size.width().likely() * size.length().likely())).orElseThrow();
    }

    /** Refuses missing parts. */
    public Sheet {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(grain, "grain");
        also = List.copyOf(also);
    }
}
