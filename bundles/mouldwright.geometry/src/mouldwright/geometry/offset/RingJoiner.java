package mouldwright.geometry.offset;

import java.util.ArrayList;
import java.util.List;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;

/** Joins moved runs to a ring: convex corners mitre, re-entrant ones moved inward are joined by an arc round the corner, and
 *  what crosses is cut away. What is moved nowhere inward cannot fall apart, and
 *  what is moved inward has no holes, since skin reaches in from the outline. */
final class RingJoiner {
    /** Turns below half a degree are joined straight. */
    private static final double NO_TURN = Math.toRadians(0.5);
    /** Sharper turns than this are not mitred: the tip would run away. */
    private static final double SHARPEST = Math.toRadians(150);
    /** A mitre reaches no further from its corner than this many offsets. */
    private static final double LONGEST = 8;
    /** Share of an offset a place may be short of it by rounding and by chords. */
    private static final double SHORT = 1e-3;
    private static final double ARC_STEP = Math.toRadians(5);
    /** Pieces and holes below this share of the largest come from rounding, not from the shape. */
    private static final double CRUMB = 1e-4;

    private final List<double[]> ring = new ArrayList<>();

    static Region join(List<Run> runs) {
        RingJoiner joiner = new RingJoiner();
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i);
            for (int k = 0; k <= run.last(); k++)
                joiner.add(run.my()[k], run.mz()[k]);
            joiner.corner(run, runs.get((i + 1) % runs.size()));
        }
        double[] y = joiner.ring.stream().mapToDouble(p -> p[0]).toArray();
        double[] z = joiner.ring.stream().mapToDouble(p -> p[1]).toArray();
        Region joined = Region.wound(y, z, p -> clear(runs, p)).withoutCrumbs(CRUMB);
        return runs.stream().allMatch(Run::staysOut) ? joined.largest() : joined.withoutHoles();
    }

    /** Whether a place lies as far inside the outline as each run is moved in. What is narrower than the skin on both sides can
     *  turn over twice and come out the right way round; only its distance gives it away. */
    private static boolean clear(List<Run> runs, PlanePoint place) {
        return runs.stream().allMatch(run -> run.clears(place, SHORT));
    }

    private void add(double y, double z) {
        if (ring.isEmpty() || ring.getLast()[0] != y || ring.getLast()[1] != z)
            ring.add(new double[] { y, z });
    }

    private void corner(Run a, Run b) {
        int last = a.last();
        double ay = a.ty()[last], az = a.tz()[last], by = b.ty()[0], bz = b.tz()[0];
        double sine = ay * bz - az * by, turn = Math.atan2(sine, ay * by + az * bz);
        if (turn > NO_TURN && turn < SHARPEST)
            mitre(a, b, sine);
        else if (turn < -NO_TURN && a.lastOut() < 0)
            arc(a, b, turn);
    }

    /** Where the two moved lines overlap they are cut later; where one falls short it is drawn out past the other, and where
     *  both do, to where they meet. */
    private void mitre(Run a, Run b, double sine) {
        int last = a.last();
        double ay = a.ty()[last], az = a.tz()[last], by = b.ty()[0], bz = b.tz()[0];
        double gapY = b.my()[0] - a.my()[last], gapZ = b.mz()[0] - a.mz()[last];
        double onA = (gapY * bz - gapZ * by) / sine, onB = (ay * gapZ - az * gapY) / sine;
        double meetY = a.my()[last] + onA * ay, meetZ = a.mz()[last] + onA * az;
        double reach = Math.hypot(meetY - a.y()[last], meetZ - a.z()[last]);
        if (reach > LONGEST * Math.max(Math.abs(a.lastOut()), Math.abs(b.firstOut())))
            return;
        if (onA >= 0 && onB >= 0)
            add(meetY, meetZ);
        else if (onA > 0)
            add(a.my()[last] + 1.5 * onA * ay, a.mz()[last] + 1.5 * onA * az);
        else if (onB > 0)
            add(b.my()[0] - 1.5 * onB * by, b.mz()[0] - 1.5 * onB * bz);
    }

    private void arc(Run a, Run b, double turn) {
        int last = a.last();
        int steps = (int) Math.ceil(-turn / ARC_STEP);
        double inY = -a.tz()[last], inZ = a.ty()[last];         // inward: to the left of the way round
        double to = Math.max(0, -b.firstOut());
        for (int k = 1; k < steps; k++) {
            double w = (double) k / steps, c = Math.cos(turn * w), s = Math.sin(turn * w);
            double r = -a.lastOut() * (1 - w) + to * w;
            add(a.y()[last] + r * (c * inY - s * inZ), a.z()[last] + r * (s * inY + c * inZ));
        }
    }
}
