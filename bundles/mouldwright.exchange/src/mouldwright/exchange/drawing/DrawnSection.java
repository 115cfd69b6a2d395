package mouldwright.exchange.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.exchange.Fault;
import mouldwright.exchange.Faults;
import mouldwright.exchange.SectionPoint;
import mouldwright.units.Unit;

/** Makes a section's outline of what lies on a layer. */
public final class DrawnSection {

    /** How far ends may lie apart and be one, and how far the outline may leave the drawing, metres: what a pencil line hides. */
    public static final double TOLERANCE = 1e-4;

    /** More curves than any section has. */
    private static final int MOST = 20_000;

    /** More points than any section needs, and than a loft should be made of. */
    private static final int MOST_POINTS = 2000;

    private final String name;
    private final double tolerance;
    private final Faults faults = new Faults();

    private DrawnSection(String name, double tolerance) {
        this.name = name;
        this.tolerance = tolerance;
    }

    /** The outline on a layer. Of a half section a straight line on the centreline is left out, and one drawn to port is taken to starboard;
     *  a full section is cut at bottom centre.
     *  @param name      of the layer
     *  @param layer     what lies on it
     *  @param unit      of the drawing
     *  @param full      whether it goes all round
     *  @param tolerance see {@link #TOLERANCE}, metres, positive */
    public static OutlineResult of(String name, Drawing.Layer layer, Unit unit, boolean full, double tolerance) {
        if (!layer.faults().isEmpty())
            return new OutlineResult(List.of(), layer.faults());
        return new DrawnSection(name, tolerance).outline(layer.curves(), unit, full);
    }

    private OutlineResult outline(List<Curve> drawn, Unit unit, boolean full) {
        double metre = unit.factor(), near = tolerance / metre;
        Optional<Chain> chain = drawn.size() > MOST ? none("more than " + MOST + " lines lie on it", "leave the section alone on its layer")
                : full ? whole(drawn, near) : half(drawn, near);
        List<SectionPoint> points = chain.map(found -> new OutlineFit(found, metre, tolerance, full).points()).orElse(List.of());
        if (points.size() > MOST_POINTS)
            none("its outline has " + points.size() + " points, more than " + MOST_POINTS, "draw it with fewer, or of arcs and splines");
        return faults.none() ? new OutlineResult(points, List.of()) : new OutlineResult(List.of(), faults.all());
    }

    private Optional<Chain> none(String message, String remedy) {
        faults.add(new Fault(1, "layer " + name, message, remedy));
        return Optional.empty();
    }

    private Optional<Chain> half(List<Curve> drawn, double near) {
        List<Curve> beside = drawn.stream().filter(curve -> !onCentreline(curve, near)).toList();
        List<Curve> kept = beside.isEmpty() ? drawn : beside;
        double port = kept.stream().mapToDouble(curve -> reach(curve, -1)).max().orElse(0);
        double starboard = kept.stream().mapToDouble(curve -> reach(curve, 1)).max().orElse(0);
        if (port > near && starboard > near)
            return none("it shows both sides, " + Joiner.figure(port) + " to port and " + Joiner.figure(starboard) + " to starboard",
                    "draw the starboard half alone, or state `full sections`");
        List<Curve> turned = port > near ? kept.stream().map(DrawnSection::mirrored).toList() : kept;
        return joined(turned, near).flatMap(chain -> chain.closed()
                ? none("its half outline closes on itself", "let it begin at bottom centre and end at top centre") : Optional.of(upward(chain)));
    }

    private Optional<Chain> joined(List<Curve> curves, double near) {
        Joiner joiner = new Joiner(curves, near);
        if (joiner.isEmpty())
            return none("nothing lies on it", "draw the section there, or name another layer");
        Optional<Chain> chain = joiner.chain();
        return chain.isPresent() ? chain : none(joiner.obstacle(), "close gaps, and take out what is double or beside the outline");
    }

    /** From its lower end; of two at one height from that nearer to the centreline. */
    private static Chain upward(Chain chain) {
        Point a = chain.start(), b = chain.end();
        boolean turned = a.y() != b.y() ? b.y() < a.y() : Math.abs(b.x()) < Math.abs(a.x());
        return turned ? chain.reversed() : chain;
    }

    private static boolean onCentreline(Curve curve, double near) {
        return curve instanceof Straight && Math.abs(curve.start().x()) <= near && Math.abs(curve.end().x()) <= near;
    }

    private static double reach(Curve curve, int side) {
        double most = 0;
        for (int i = 0; i <= 4 * curve.pieces(); i++)
            most = Math.max(most, side * curve.at(i / (4.0 * curve.pieces())).x());
        return most;
    }

    private static Curve mirrored(Curve curve) {
        return new Mirrored(curve);
    }

    private Optional<Chain> whole(List<Curve> drawn, double near) {
        return joined(drawn, near).flatMap(chain -> chain.closed() ? fromBottomCentre(chain.turns() < 0 ? chain.reversed() : chain, near)
                : none("it does not close; its ends are at " + Joiner.words(chain.start()) + " and " + Joiner.words(chain.end()), "draw a full section all round"));
    }

    /** Cut where it crosses the centreline lowest. */
    private Optional<Chain> fromBottomCentre(Chain chain, double near) {
        int best = -1;
        double at = 0, lowest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < chain.curves().size(); i++) {
            Curve curve = chain.curves().get(i);
            int steps = 8 * curve.pieces();
            for (int k = 0; k < steps; k++) {
                double t = Crossings.centreline(curve, (double) k / steps, (k + 1.0) / steps);
                if (!Double.isNaN(t) && curve.at(t).y() < lowest) {
                    lowest = curve.at(t).y();
                    best = i;
                    at = t;
                }
            }
        }
        if (best < 0)
            return none("it does not cross the centreline, which is x = 0 in the drawing", "move it there");
        Curve cut = chain.curves().get(best);
        List<Curve> ordered = new ArrayList<>();
        if (cut.at(at).distance(cut.end()) > near)
            ordered.add(at == 0 ? cut : new Part(cut, at, 1));
        ordered.addAll(chain.curves().subList(best + 1, chain.curves().size()));
        ordered.addAll(chain.curves().subList(0, best));
        if (at > 0 && cut.at(at).distance(cut.start()) > near)
            ordered.add(new Part(cut, 0, at));
        return Optional.of(new Chain(ordered, true));
    }
}
