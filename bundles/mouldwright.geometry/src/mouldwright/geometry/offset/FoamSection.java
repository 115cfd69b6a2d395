package mouldwright.geometry.offset;

import java.util.List;
import java.util.ArrayList;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.loft.Slice;

/** The lines of the foam at one x, all moved off one and the same outline of the body. */
public final class FoamSection {
    private final List<Strip> strips;

    private FoamSection(List<Strip> strips) {
        this.strips = strips;
    }

    /** The outline of a section with its build-up.
     *  @param loft    the body, scaled for shrink already
     *  @param x       metres aft
     *  @param side    from which side creases and ends of layers are seen
     *  @param buildUp what is taken off
     *  @param chord   how far straight pieces may leave the outline, metres, positive. An area comes out short of a rounded
     *                 outline's by at most two thirds of this times its girth: at a radius of 300 mm by 0.01 % with 0.02 mm and
     *                 by 0.05 % with 0.1 mm */
    public static FoamSection of(Loft loft, double x, Side side, BuildUp buildUp, double chord) {
        Slice slice = loft.at(x, side);
        return new FoamSection(slice.isDegenerate() ? List.of() : new SkinStrips(slice, buildUp, chord).strips());
    }

    /** The line the foam is carved to. */
    public MovedLine foam() {
        return moved(0, 0);
    }

    /** The same, moved outward by a further amount in the section plane where the body is not bare, corners mitred.
     *  @param growth metres in the section plane, not negative */
    public MovedLine grown(double growth) {
        return moved(growth, 0);
    }

    /** The same, moved inward all round, bare stretches and closures too.
     *  @param depth metres in the section plane, not negative */
    public MovedLine within(double depth) {
        return moved(0, depth);
    }

    private MovedLine moved(double growth, double depth) {
        if (strips.isEmpty())
            return MovedLine.nothing();
        List<Run> runs = new ArrayList<>();
        for (Strip strip : strips)
            runs.add(strip.moved(growth, depth));
        return RingJoiner.join(runs);
    }
}
