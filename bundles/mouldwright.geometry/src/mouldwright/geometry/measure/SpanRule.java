package mouldwright.geometry.measure;

import java.util.function.BooleanSupplier;
import java.util.concurrent.CancellationException;
import mouldwright.geometry.curve.Kronrod;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Slice;

/** Quadrature along a body: span by span of the loft, where its splines are smooth. */
public final class SpanRule {
    private final Loft loft;
    private final BooleanSupplier cancelled;

    /** @param cancelled asked before each span */
    public SpanRule(Loft loft, BooleanSupplier cancelled) {
        this.loft = loft;
        this.cancelled = cancelled;
    }

    /** What is done with a section. */
    @FunctionalInterface
    public interface Visitor {
        /** @param slice the section
         *  @param high  its weight in the higher order, in the loft's own parameter, metres
         *  @param low   its weight in the lower order */
        void visit(Slice slice, double high, double low);
    }

    /** Visits the sections of a rule from one x to another, forward to aft; a part past an end of the body is left out.
     *  @throws CancellationException once cancelled */
    public void visit(double fromX, double toX, Visitor visitor) {
        double from = Math.max(Math.min(fromX, toX), loft.startX()), to = Math.min(Math.max(fromX, toX), loft.endX());
        for (int span = 0; span < loft.spans(); span++) {
            double a = loft.stations().get(span), b = loft.stations().get(span + 1);
            if (a >= to || b <= from)
                continue;
            if (cancelled.getAsBoolean())
                throw new CancellationException();
            double low = from <= a ? 0 : loft.shareInSpan(span, from), high = to >= b ? 1 : loft.shareInSpan(span, to);
            double length = loft.parameterLength(span) * (high - low);
            for (int k = 0; k < Kronrod.SIZE; k++)
                visitor.visit(loft.inSpan(span, low + (high - low) * Kronrod.node(k)), Kronrod.high(k) * length,
                        Kronrod.low(k) * length);
        }
    }
}
