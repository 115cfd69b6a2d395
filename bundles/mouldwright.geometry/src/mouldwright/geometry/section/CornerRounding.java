package mouldwright.geometry.section;

import java.util.List;
import mouldwright.geometry.curve.ArcCurve;

/** Rounds a corner by the arc that touches both sides: its centre lies at the radius from both, found by Newton's method from
 *  where it would lie between straight sides. */
final class CornerRounding {
    /** Below this turn, radians, there is no corner to round. */
    private static final double NO_TURN = 1e-6;
    private static final int ROUNDS = 50;

    private final List<OutlinePoint> points;
    private final List<SectionFault> faults;

    CornerRounding(List<OutlinePoint> points, List<SectionFault> faults) {
        this.points = points;
        this.faults = faults;
    }

    /** A place on one side of the corner with the centre of a circle that touches there. */
    private static final class Touch {
        final double[] p = new double[6];
        final PointGroup group;
        final double offset;                        // radius, positive to the left
        double t;
        double speed;

        Touch(PointGroup group, double t, double offset) {
            this.group = group;
            this.offset = offset;
            go(t);
        }

        void go(double to) {
            t = to;
            group.curve().at(t, p);
            speed = Math.hypot(p[2], p[3]);
        }

        double centreY() { return p[0] - offset * p[3] / speed; }

        double centreZ() { return p[1] + offset * p[2] / speed; }

        /** How fast the centre moves along the tangent as t grows. */
        double rate() {
            double curvature = (p[2] * p[5] - p[3] * p[4]) / (speed * speed * speed);
            return speed * (1 - offset * curvature);
        }

        double angle() { return Math.atan2(p[1] - centreZ(), p[0] - centreY()); }
    }

    void between(PointGroup a, PointGroup b) {
        int corner = a.lastPoint();
        double radius = points.get(corner).radius();
        if (radius == 0 || a.consumed() || b.consumed())
            return;
        Touch end = new Touch(a, a.to(), 0), start = new Touch(b, b.from(), 0);
        double turn = Math.atan2(end.p[2] * start.p[3] - end.p[3] * start.p[2],
                end.p[2] * start.p[2] + end.p[3] * start.p[3]);
        if (Math.abs(turn) < NO_TURN)
            return;
        double offset = Math.copySign(radius, turn);
        double back = radius * Math.tan(Math.abs(turn) / 2);
        Touch left = new Touch(a, Math.max(a.from(), a.to() - back / end.speed), offset);
        Touch right = new Touch(b, Math.min(b.to(), b.from() + back / start.speed), offset);
        boolean met = false;
        for (int round = 0; round < ROUNDS && !met; round++) {
            double missY = left.centreY() - right.centreY(), missZ = left.centreZ() - right.centreZ();
            met = Math.hypot(missY, missZ) <= 1e-11 * radius;
            if (!met)
                step(left, right, missY, missZ);
        }
        boolean fits = met && left.t < a.to() && right.t > b.from() && left.t >= a.from() && right.t <= b.to();
        if (!fits) {
            faults.add(new SectionFault.RadiusDoesNotFit(corner, radius,
                    Math.min(a.chordLength(), b.chordLength()) / Math.tan(Math.abs(turn) / 2)));
            return;
        }
        double from = left.angle(), sweep = sweep(from, right.angle(), turn);
        double middle = from + sweep / 2;
        a.roundEnd(left.t, arc(left, radius, from, middle), turn > 0);
        b.roundStart(right.t, arc(left, radius, middle, from + sweep), turn > 0);
        if (a.consumed() || b.consumed())
            faults.add(new SectionFault.RadiusDoesNotFit(corner, radius,
                    Math.min(a.chordLength(), b.chordLength()) / 2 / Math.tan(Math.abs(turn) / 2)));
    }

    private static void step(Touch left, Touch right, double missY, double missZ) {
        double ay = left.p[2] / left.speed * left.rate(), az = left.p[3] / left.speed * left.rate();
        double by = -right.p[2] / right.speed * right.rate(), bz = -right.p[3] / right.speed * right.rate();
        double determinant = ay * bz - az * by;
        double low = left.group.from(), high = right.group.to();
        double dl = (-missY * bz + missZ * by) / determinant, dr = (-ay * missZ + az * missY) / determinant;
        left.go(Math.clamp(finite(left.t + dl, low), low, left.group.to()));
        right.go(Math.clamp(finite(right.t + dr, high), right.group.from(), high));
    }

    private static double finite(double value, double otherwise) {
        return Double.isFinite(value) ? value : otherwise;
    }

    private static double sweep(double from, double to, double turn) {
        double sweep = Math.IEEEremainder(to - from, 2 * Math.PI);
        if (turn > 0 && sweep < 0)
            return sweep + 2 * Math.PI;
        return turn < 0 && sweep > 0 ? sweep - 2 * Math.PI : sweep;
    }

    private static ArcCurve arc(Touch touch, double radius, double a, double b) {
        return new ArcCurve(touch.centreY(), touch.centreZ(), radius, Math.min(a, b), Math.max(a, b));
    }

    /** The corner a half section makes with its mirror image at bottom centre. */
    void atBottomCentre(PointGroup group) {
        atCentreline(group, group.firstPoint(), false);
    }

    /** The corner a half section makes with its mirror image at top centre. */
    void atTopCentre(PointGroup group) {
        atCentreline(group, group.lastPoint(), true);
    }

    private void atCentreline(PointGroup group, int corner, boolean top) {
        double radius = points.get(corner).radius();
        if (radius == 0 || group.consumed())
            return;
        Touch end = new Touch(group, top ? group.to() : group.from(), 0);
        double turn = 2 * Math.atan2(end.p[3], top ? -end.p[2] : end.p[2]);
        if (Math.abs(turn) < NO_TURN)
            return;
        double back = radius * Math.tan(Math.abs(turn) / 2) / end.speed;
        Touch touch = new Touch(group, Math.clamp(end.t + (top ? -back : back), group.from(), group.to()),
                Math.copySign(radius, turn));
        for (int round = 0; round < ROUNDS && Math.abs(touch.centreY()) > 1e-11 * radius; round++) {
            double next = touch.t - touch.centreY() / (touch.p[2] / touch.speed * touch.rate());
            touch.go(Math.clamp(finite(next, end.t), group.from(), group.to()));
        }
        boolean fits = Math.abs(touch.centreY()) <= 1e-9 * radius && touch.t != end.t;
        if (!fits) {
            faults.add(new SectionFault.RadiusDoesNotFit(corner, radius,
                    group.chordLength() / Math.tan(Math.abs(turn) / 2)));
            return;
        }
        double centre = (top == turn > 0 ? 1 : -1) * Math.PI / 2;
        double at = touch.angle();
        if (top) {
            double sweep = sweep(at, centre, turn);
            group.roundEnd(touch.t, arc(touch, radius, at, at + sweep), turn > 0);
        } else {
            double sweep = sweep(centre, at, turn);
            group.roundStart(touch.t, arc(touch, radius, centre, centre + sweep), turn > 0);
        }
        if (group.consumed())
            faults.add(new SectionFault.RadiusDoesNotFit(corner, radius,
                    group.chordLength() / 2 / Math.tan(Math.abs(turn) / 2)));
    }
}
