package mouldwright.geometry.fill;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.offset.MovedLine;
import mouldwright.geometry.plane.ConvexClip;
import mouldwright.geometry.plane.Outline;

/** A section of a cavity as rings that count in or out. A pocket lies wholly inside the line it is cut out of, so no overlay is
 *  needed: areas are sums over rings, and what backbones take is what they cut out of each ring. */
final class CavitySection {

    /** @param sign +1 if what it encloses is foam, -1 if it is left out */
    private record Signed(Outline outline, int sign) { }

    private final List<ConvexClip> backbones;
    private final List<Signed> rings = new ArrayList<>();
    private double toBuildUp;
    private double toScale;
    private boolean crossed;                        // whether a backbone reaches past a ring added so far
    private boolean broken;

    CavitySection(List<ConvexClip> backbones) {
        this.backbones = backbones;
    }

    /** @param whole the outer line @param pocket the line of what is left out inside it */
    static CavitySection of(MovedLine whole, MovedLine pocket, List<ConvexClip> backbones) {
        CavitySection section = new CavitySection(backbones);
        section.add(whole, 1);
        section.broken = section.crossed;
        section.add(pocket, -1);
        return section;
    }

    private void add(MovedLine line, int sign) {
        for (MovedLine.Ring ring : line.rings()) {
            int counts = ring.hole() ? -sign : sign;
            rings.add(new Signed(ring.outline(), counts));
            for (ConvexClip backbone : backbones)
                backbone.of(ring.outline()).ifPresent(part -> rings.add(new Signed(part, -counts)));
            answer(ring, counts);
        }
    }

    /** How fast the area changes as the build-up grows and as the body grows about y = z = 0 with all build-up, overfill and
     *  shell as they are: each edge sweeps its length times its speed. The line of an edge lies at its distance from the centre,
     *  which grows with the body, but for what it was moved by. Source: first variation of area; in proportion to all lengths
     *  together an area grows by twice itself. */
    private void answer(MovedLine.Ring ring, int sign) {
        Outline o = ring.outline();
        for (int i = 0, n = o.size(); i < n; i++) {
            int j = i + 1 == n ? 0 : i + 1;
            double clear = sign;
            for (ConvexClip backbone : backbones)
                clear -= sign * backbone.share(o.y(i), o.z(i), o.y(j), o.z(j));
            crossed |= clear != sign;
            double dy = o.y(j) - o.y(i), dz = o.z(j) - o.z(i), length = Math.sqrt(dy * dy + dz * dz);
            toBuildUp -= clear * length * ring.rate()[i];
            toScale += clear * (o.y(i) * dz - o.z(i) * dy - length * ring.spread()[i]);
        }
    }

    double area() {
        double sum = 0;
        for (Signed ring : rings)
            sum += ring.sign * ring.outline.area();
        return sum;
    }

    /** By height along a direction. */
    double areaBetween(Attitude up, double low, double high) {
        double sum = 0;
        for (Signed ring : rings)
            sum += ring.sign * ring.outline.areaBetween(up.upY(), up.upZ(), low, high);
        return sum;
    }

    /** Whether a backbone reaches past the outer line, so that the extent does not follow from that line alone. */
    boolean broken() { return broken; }

    /** Change of the area with the build-up, square metres per metre. */
    double toBuildUp() { return toBuildUp; }

    /** Change of the area with the size of the body, square metres per unit of scale. */
    double toScale() { return toScale; }
}
