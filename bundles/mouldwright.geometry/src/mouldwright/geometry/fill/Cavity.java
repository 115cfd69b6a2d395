package mouldwright.geometry.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import mouldwright.geometry.curve.Lobatto;
import mouldwright.geometry.loft.Loft;
import mouldwright.geometry.loft.Side;
import mouldwright.geometry.measure.Measured;
import mouldwright.geometry.offset.FoamLine;
import mouldwright.geometry.offset.FoamSection;
import mouldwright.geometry.offset.Layer;
import mouldwright.geometry.offset.MovedLine;
import mouldwright.geometry.plane.ConvexClip;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.Region;

/** What is poured into a bay: over its clear length the foam line grown by the overfill, less the pocket inside the shell,
 *  less the backbones; and over the edges of its plates the ring between foam line and overfill. Long work ends with a CancellationException once it is cancelled. */
public final class Cavity {
    private final Loft loft;
    private final CavityOrder order;
    private final List<ConvexClip> backbones;
    private final List<Cut> cuts = new ArrayList<>();
    private int clear;

    /** A section of the cavity with its weights in two quadrature orders, metres; those of the clear length come before those of the
     *  plate edges. */
    private record Cut(double high, double low, MovedLine whole, CavitySection poured, double area, CavitySection kept, double net, double pocket) { }

    private Cavity(Loft loft, CavityOrder order, BooleanSupplier cancelled) {
        this.loft = loft;
        this.order = order;
        this.backbones = ConvexClip.covering(order.backbones());
        double from = Math.max(order.foreX(), loft.startX()), to = Math.min(order.aftX(), loft.endX());
        if (!(from < to))
            return;
        List<Double> borders = borders(from, to);
        for (int i = 0; i + 1 < borders.size(); i++)
            addCuts(borders.get(i), borders.get(i + 1), cancelled);
        clear = cuts.size();
        if (order.overfill() > 0)
            for (CavityOrder.PlateEdge edge : order.edges())
                cuts.add(ring(edge));
    }

    /** Measures a cavity.
     *  @param loft      the body, scaled for shrink already
     *  @param order     what is wanted; a length past an end of the body is left out
     *  @param cancelled asked per section */
    public static Cavity of(Loft loft, CavityOrder order, BooleanSupplier cancelled) {
        return new Cavity(loft, order, cancelled);
    }

    /** Where the section's area changes abruptly or bends: stations of the loft and ends of layers. */
    private List<Double> borders(double from, double to) {
        TreeSet<Double> borders = new TreeSet<>(List.of(from, to));
        borders.addAll(loft.stations());
        for (Layer layer : order.buildUp().layers())
            borders.addAll(List.of(layer.fromX(), layer.toX()));
        return List.copyOf(borders.subSet(from, true, to, true));
    }

    private void addCuts(double from, double to, BooleanSupplier cancelled) {
        for (int k = 0; k < Lobatto.SIZE; k++) {
            if (cancelled.getAsBoolean())
                throw new CancellationException();
            double x = k == Lobatto.SIZE - 1 ? to : from + (to - from) * Lobatto.node(k);
            cuts.add(cut(x, x == to ? Side.FORWARD : Side.AFT, Lobatto.high(k) * (to - from), Lobatto.low(k) * (to - from)));
        }
    }

    private Cut cut(double x, Side side, double high, double low) {
        FoamSection foam = FoamSection.of(loft, x, side, order.buildUp(), FoamLine.CHORD);
        MovedLine whole = foam.grown(order.overfill());
        MovedLine pocket = order.shell().isPresent() ? foam.within(order.shell().getAsDouble()) : MovedLine.nothing();
        CavitySection poured = CavitySection.of(whole, pocket, backbones);
        CavitySection kept = order.overfill() == 0 ? poured : CavitySection.of(foam.foam(), pocket, backbones);
        return new Cut(high, low, whole, poured, poured.area(), kept, kept.area(), pocket.region().area());
    }

    /** Over a plate's edge stands the overfill alone: all of it is carved off again. Plates are thin, so one section at their
     *  middle serves. */
    private Cut ring(CavityOrder.PlateEdge edge) {
        FoamSection foam = FoamSection.of(loft, edge.x(), Side.AFT, order.buildUp(), FoamLine.CHORD);
        MovedLine whole = foam.grown(order.overfill());
        CavitySection ring = CavitySection.of(whole, foam.foam(), backbones);
        return new Cut(edge.width(), edge.width(), whole, ring, ring.area(), new CavitySection(backbones), 0, 0);
    }

    private List<Cut> clear() {
        return cuts.subList(0, clear);
    }

    private Measured sum(ToDoubleFunction<Cut> figure) {
        double high = 0, low = 0;
        for (Cut cut : cuts) {
            double value = figure.applyAsDouble(cut);
            high += cut.high * value;
            low += cut.low * value;
        }
        return new Measured(high, Math.abs(high - low));
    }

    /** Volume with overfill, that over plate edges counted, cubic metres. */
    public Measured poured() {
        return sum(Cut::area);
    }

    /** Volume without overfill, cubic metres. */
    public Measured net() {
        return sum(Cut::net);
    }

    /** What is carved off: poured less net, cubic metres. */
    public Measured trim() {
        return sum(c -> c.area - c.net);
    }

    /** Volume of the pocket to be packed, backbones counted as part of it where they cross it, cubic metres. */
    public Measured pocket() {
        return sum(Cut::pocket);
    }

    /** How fast the volume with overfill changes with what it was measured with. An end that lies past the body moves nothing. */
    public CavityRates rates() {
        return rates(Cut::poured, Cut::area);
    }

    /** How fast what is carved off changes with the same. */
    public CavityRates trimRates() {
        CavityRates poured = rates(), net = rates(Cut::kept, Cut::net);
        return new CavityRates(poured.buildUp() - net.buildUp(), poured.foreEnd() - net.foreEnd(), poured.aftEnd() - net.aftEnd(),
                poured.scale() - net.scale(), poured.plates() - net.plates());
    }

    /** The body carries the clear length along as it grows, but not the width of plate edges. */
    private CavityRates rates(Function<Cut, CavitySection> section, ToDoubleFunction<Cut> area) {
        if (clear == 0)
            return new CavityRates(0, 0, 0, 0, 0);
        double fore = order.foreX() < loft.startX() ? 0 : -area.applyAsDouble(cuts.getFirst());
        double aft = order.aftX() > loft.endX() ? 0 : area.applyAsDouble(cuts.get(clear - 1));
        double scale = sum(c -> section.apply(c).toScale()).value();
        for (Cut cut : clear())
            scale += cut.high * area.applyAsDouble(cut);
        double plates = 0;
        for (int i = clear; i < cuts.size(); i++)
            plates += order.edges().get(i - clear).share() * area.applyAsDouble(cuts.get(i));
        return new CavityRates(sum(c -> section.apply(c).toBuildUp()).value(), fore, aft, scale, plates);
    }

    /** Whether the shell is thicker than the section somewhere, so that no pocket is left there. */
    public boolean pocketCloses() {
        return order.shell().isPresent() && clear().stream().anyMatch(c -> c.pocket == 0);
    }

    /** Whether a shell was asked for and no pocket is left anywhere. */
    public boolean pocketEmpty() {
        return order.shell().isPresent() && clear().stream().allMatch(c -> c.pocket == 0);
    }

    /** From where to where the cavity reaches, overfill counted. */
    public Extent extent(Attitude attitude) {
        double low = Double.POSITIVE_INFINITY, high = Double.NEGATIVE_INFINITY;
        for (Cut cut : cuts) {
            Region region = cut.poured.broken() ? less(cut.whole.region(), Region.EMPTY) : cut.whole.region();
            low = Math.min(low, region.lowest(attitude.upY(), attitude.upZ()));
            high = Math.max(high, -region.lowest(-attitude.upY(), -attitude.upZ()));
        }
        return low <= high ? new Extent(low, high) : new Extent(0, 0);
    }

    /** Volume between two heights along the upward direction, overfill counted, cubic metres. */
    public Measured between(Attitude attitude, double low, double high) {
        return high <= low ? Measured.ZERO : sum(c -> c.poured.areaBetween(attitude, low, high));
    }

    /** Volumes of lifts of equal height from the lowest up. @param lifts how many, 1 or more */
    public List<Measured> lifts(Attitude attitude, int lifts) {
        Extent extent = extent(attitude);
        List<Measured> volumes = new ArrayList<>();
        for (int i = 0; i < lifts; i++)
            volumes.add(between(attitude, extent.low() + extent.height() * i / lifts,
                    i + 1 == lifts ? extent.high() : extent.low() + extent.height() * (i + 1) / lifts));
        return volumes;
    }

    /** The section of the cavity at an x, overfill counted. */
    public Region at(double x) {
        FoamSection foam = FoamSection.of(loft, x, Side.AFT, order.buildUp(), FoamLine.CHORD);
        return less(foam.grown(order.overfill()).region(),
                order.shell().isPresent() ? foam.within(order.shell().getAsDouble()).region() : Region.EMPTY);
    }

    private Region less(Region whole, Region pocket) {
        Region rest = whole.minus(pocket);
        for (Outline backbone : order.backbones())
            rest = rest.minus(Region.of(backbone));
        return rest;
    }
}
