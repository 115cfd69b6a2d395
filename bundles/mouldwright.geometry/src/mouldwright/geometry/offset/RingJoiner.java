package mouldwright.geometry.offset;

import java.util.Arrays;
import java.util.List;
import mouldwright.geometry.plane.PlanePoint;
import mouldwright.geometry.plane.Region;
import mouldwright.geometry.plane.WoundRegion;

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

    private final List<Run> runs;
    private double[] y = new double[256];
    private double[] z = new double[256];
    private double[] rate = new double[256];        // of the edge that leads on from a corner
    private double[] spread = new double[256];
    private int size;

    private RingJoiner(List<Run> runs) {
        this.runs = runs;
    }

    static MovedLine join(List<Run> runs) {
        return new RingJoiner(runs).join();
    }

    private MovedLine join() {
        for (int i = 0; i < runs.size(); i++) {
            Run run = runs.get(i), next = runs.get((i + 1) % runs.size());
            for (int k = 0; k < run.last(); k++)
                add(run.my()[k], run.mz()[k], 0.5 * (run.strip().rate()[k] + run.strip().rate()[k + 1]),
                        0.5 * (run.spread()[k] + run.spread()[k + 1]));
            corner(run, next);
        }
        while (size > 1 && y[size - 1] == y[0] && z[size - 1] == z[0])
            size--;
        return cleaned();
    }

    private MovedLine cleaned() {
        boolean out = runs.stream().allMatch(Run::staysOut);
        double[] ringY = Arrays.copyOf(y, size), ringZ = Arrays.copyOf(z, size);
        WoundRegion wound = WoundRegion.of(ringY, ringZ, this::clear, !out);
        Region region = wound.region().withoutCrumbs(CRUMB);
        return new MovedLine(out ? region.largest() : region, wound.edges(), ringY, ringZ, rate, spread);
    }

    /** Whether a place lies as far inside the outline as each run is moved in. What is narrower than the skin on both sides can
     *  turn over twice and come out the right way round; only its distance gives it away. */
    private boolean clear(PlanePoint place) {
        for (Run run : runs)
            if (!run.clears(place, SHORT))
                return false;
        return true;
    }

    /** @param edgeRate @param edgeSpread of the edge that leads on from here: how fast it moves inward with the build-up, and
     *  outward if all it is moved by grows in proportion */
    private void add(double cornerY, double cornerZ, double edgeRate, double edgeSpread) {
        if (size > 0 && y[size - 1] == cornerY && z[size - 1] == cornerZ)
            size--;
        if (size == y.length) {
            y = Arrays.copyOf(y, 2 * size);
            z = Arrays.copyOf(z, 2 * size);
            rate = Arrays.copyOf(rate, 2 * size);
            spread = Arrays.copyOf(spread, 2 * size);
        }
        y[size] = cornerY;
        z[size] = cornerZ;
        rate[size] = edgeRate;
        spread[size++] = edgeSpread;
    }

    /** From the last place of a run to the first of the next. */
    private void corner(Run a, Run b) {
        Strip from = a.strip(), to = b.strip();
        int last = a.last();
        double ay = from.ty()[last], az = from.tz()[last], by = to.ty()[0], bz = to.tz()[0];
        double sine = ay * bz - az * by, turn = Math.abs(sine) < 1e-3 && ay * by + az * bz > 0 ? sine : Math.atan2(sine, ay * by + az * bz);
        if (turn > NO_TURN && turn < SHARPEST && mitre(a, b, sine))
            return;
        if (turn < -NO_TURN && a.lastOut() < 0)
            arc(a, b, turn);
        else
            straight(a, b);
    }

    /** Both ends move square to their runs; what this moves the edge between them is the mean of what shows across it. */
    private void straight(Run a, Run b) {
        Strip from = a.strip(), to = b.strip();
        int last = a.last();
        double dy = b.my()[0] - a.my()[last], dz = b.mz()[0] - a.mz()[last], length = Math.sqrt(dy * dy + dz * dz);
        double onA = length == 0 ? 0 : 0.5 * (dy * from.ty()[last] + dz * from.tz()[last]) / length;
        double onB = length == 0 ? 0 : 0.5 * (dy * to.ty()[0] + dz * to.tz()[0]) / length;
        add(a.my()[last], a.mz()[last], onA * from.rate()[last] + onB * to.rate()[0], onA * a.spread()[last] + onB * b.spread()[0]);
    }

    /** Where the two moved lines overlap they are cut later; where one falls short it is drawn out past the other, and where
     *  both do, to where they meet.
     *  @return whether they are joined so */
    private boolean mitre(Run a, Run b, double sine) {
        Strip from = a.strip(), to = b.strip();
        int last = a.last();
        double ay = from.ty()[last], az = from.tz()[last], by = to.ty()[0], bz = to.tz()[0];
        double gapY = b.my()[0] - a.my()[last], gapZ = b.mz()[0] - a.mz()[last];
        double onA = (gapY * bz - gapZ * by) / sine, onB = (ay * gapZ - az * gapY) / sine;
        double reachY = a.my()[last] + onA * ay - from.y()[last], reachZ = a.mz()[last] + onA * az - from.z()[last];
        double longest = LONGEST * Math.max(Math.abs(a.lastOut()), Math.abs(b.firstOut()));
        if (reachY * reachY + reachZ * reachZ > longest * longest || onA <= 0 && onB <= 0)
            return false;
        double share = onA >= 0 && onB >= 0 ? 1 : 1.5;
        if (onA > 0)
            add(a.my()[last], a.mz()[last], from.rate()[last], a.spread()[last]);
        if (onA >= 0)
            add(a.my()[last] + share * onA * ay, a.mz()[last] + share * onA * az, to.rate()[0], b.spread()[0]);
        else {
            add(a.my()[last], a.mz()[last], from.rate()[last], a.spread()[last]);
            add(b.my()[0] - share * onB * by, b.mz()[0] - share * onB * bz, to.rate()[0], b.spread()[0]);
        }
        return true;
    }

    private void arc(Run a, Run b, double turn) {
        int last = a.last();
        int steps = (int) Math.ceil(-turn / ARC_STEP);
        double inY = -a.strip().tz()[last], inZ = a.strip().ty()[last];         // inward: to the left of the way round
        double to = Math.max(0, -b.firstOut());
        for (int k = 0; k < steps; k++) {
            double w = (double) k / steps, c = Math.cos(turn * w), s = Math.sin(turn * w), half = w + 0.5 / steps;
            double r = -a.lastOut() * (1 - w) + to * w;
            add(a.strip().y()[last] + r * (c * inY - s * inZ), a.strip().z()[last] + r * (s * inY + c * inZ),
                    a.strip().rate()[last] * (1 - half) + b.strip().rate()[0] * half, a.spread()[last] * (1 - half) + b.spread()[0] * half);
        }
    }
}
