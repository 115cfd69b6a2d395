package mouldwright.geometry.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mouldwright.geometry.curve.CurvePart;
import mouldwright.geometry.curve.LineCurve;
import mouldwright.geometry.curve.SuperellipseOctant;

/** Turns each form of a section into a trace, collecting what is wrong with it. */
final class Tracer {
    /** Coordinates beyond this are a slip, not a plug; metres. */
    static final double FARTHEST = 1e6;
    /** Exponents outside make a star or a box no spline along the body could follow. */
    private static final double LEAST_EXPONENT = 0.25, GREATEST_EXPONENT = 200;
    private static final Mark PLAIN = new Mark(Optional.empty(), false);

    private final SectionKind kind;
    private final SectionRules rules;
    private final List<SectionFault> faults;

    Tracer(SectionKind kind, SectionRules rules, List<SectionFault> faults) {
        this.kind = kind;
        this.rules = rules;
        this.faults = faults;
    }

    /** The trace of a form; empty when a fault stands in the way. */
    Optional<Trace> trace(SectionForm form) {
        return switch (form) {
            case SectionForm.Points points -> new PointsTracer(kind, rules, faults).trace(points.points());
            case SectionForm.Superellipse curve -> superellipse(curve);
            case SectionForm.Nose nose -> nose(nose);
            case SectionForm.Scaled scaled -> scaled(scaled);
            case SectionForm.Marked marked -> trace(marked.of())
                    .flatMap(t -> new LinePlacer(kind, faults).place(t, marked.lines()));
        };
    }

    static boolean usable(double coordinate) {
        return Math.abs(coordinate) <= FARTHEST;                    // also false for NaN
    }

    private boolean figure(String what, double value, boolean good) {
        if (!good)
            faults.add(new SectionFault.BadFigure(what, value));
        return good;
    }

    private Optional<Trace> nose(SectionForm.Nose nose) {
        if (!usable(nose.y()) || !usable(nose.z())) {
            faults.add(new SectionFault.NotFinite(0));
            return Optional.empty();
        }
        if (kind == SectionKind.HALF && nose.y() < 0) {
            faults.add(new SectionFault.NegativeHalfBreadth(0, nose.y()));
            return Optional.empty();
        }
        CurvePart point = CurvePart.whole(new LineCurve(nose.y(), nose.z(), nose.y(), nose.z()));
        return Optional.of(new Trace(List.of(new Trace.Piece(List.of(point), false)), List.of(PLAIN, PLAIN),
                SectionShape.POINT));
    }

    private Optional<Trace> superellipse(SectionForm.Superellipse form) {
        boolean good = figure("half-breadth", form.halfBreadth(), form.halfBreadth() > 0 && usable(form.halfBreadth()))
                & figure("height", form.height(), form.height() > 0 && usable(form.height()))
                & figure("exponent", form.exponent(),
                        form.exponent() >= LEAST_EXPONENT && form.exponent() <= GREATEST_EXPONENT)
                & figure("lowest point", form.bottom(), usable(form.bottom()));
        if (!good)
            return Optional.empty();
        double a = form.halfBreadth(), b = form.height() / 2, middle = form.bottom() + b;
        List<CurvePart> parts = new ArrayList<>();
        quarter(parts, form.exponent(), a, -b, middle, false);
        quarter(parts, form.exponent(), a, b, middle, true);
        if (kind == SectionKind.FULL) {
            quarter(parts, form.exponent(), -a, b, middle, false);
            quarter(parts, form.exponent(), -a, -b, middle, true);
        }
        return Optional.of(new Trace(List.of(new Trace.Piece(parts, false)), List.of(PLAIN, PLAIN), SectionShape.BODY));
    }

    /** From the vertical axis to the horizontal one (or back): the octant at the vertical axis as it is, the other with its
     *  coordinates exchanged. */
    private static void quarter(List<CurvePart> parts, double exponent, double a, double b, double middle, boolean back) {
        CurvePart upright = CurvePart.whole(new SuperellipseOctant(exponent)).mapped(a, b, 0, middle);
        CurvePart across = CurvePart.whole(new ExchangedCurve(new SuperellipseOctant(exponent))).mapped(a, b, 0, middle);
        if (back) {
            parts.add(across);
            parts.add(upright.reversed());
        } else {
            parts.add(upright);
            parts.add(across.reversed());
        }
    }

    private Optional<Trace> scaled(SectionForm.Scaled form) {
        boolean good = figure("scale in breadth", form.breadth(), form.breadth() > 0 && usable(form.breadth()))
                & figure("scale in height", form.depth(), form.depth() > 0 && usable(form.depth()))
                & figure("fixed half-breadth", form.aboutY(), usable(form.aboutY()))
                & figure("fixed height", form.aboutZ(), usable(form.aboutZ()))
                & figure("raised", form.raised(), usable(form.raised()));
        Optional<Trace> base = trace(form.of());
        if (!good)
            return Optional.empty();
        return base.map(t -> t.mapped(form.breadth(), form.depth(), form.aboutY() * (1 - form.breadth()),
                form.aboutZ() * (1 - form.depth()) + form.raised()));
    }
}
