package mouldwright.geometry.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import mouldwright.geometry.plane.Outline;
import mouldwright.geometry.plane.PlanePoint;

/** Lays parts on sheets. A layout follows from the sequence the parts are laid in, and sequences are searched: some rules of the trade first (large
 *  before small), then small changes of the best so far, eight at a time on all processors. Which of the eight is kept hangs on
 *  what they are worth alone, so the result is the same on any machine. */
public final class Nester {
    /** Tried together before the best is chosen: fixed, so that the number of processors cannot change the result. */
    private static final int BATCH = 8;
    /** Strips over the width of a sheet while searching, and when what was found is laid once more. */
    private static final int STRIPS = 128, FINE_STRIPS = 640;
    /** Rounds without gain before the changes grow. */
    private static final int PATIENCE = 6;

    private final NestOrder order;
    private final Consumer<NestProgress> progress;
    private final BooleanSupplier cancelled;
    private final List<NestPart> parts = new ArrayList<>();
    private final List<NestPart> tooLarge = new ArrayList<>();
    private final List<SheetSize> stock;

    private List<List<Silhouette>> shapes = List.of();

    private Layout best;
    private int tried;

    private Nester(NestOrder order, Consumer<NestProgress> progress, BooleanSupplier cancelled) {
        this.order = order;
        this.progress = progress;
        this.cancelled = cancelled;
        this.stock = order.sheets().stream().map(sheet -> new SheetSize(units(sheet.length() - 2 * order.margin() + order.kerf()),
                units(sheet.width() - 2 * order.margin() + order.kerf()), sheet.cost())).toList();
    }

    private static int units(double metres) {
        return (int) Math.floor(metres * Silhouette.UNIT + 1e-3);
    }

    /** Lays the parts of an order.
     *  @param progress  told after each round of the search
     *  @param cancelled stops the search, which then gives the best so far; the first layout is always finished */
    public static Nest nest(NestOrder order, Consumer<NestProgress> progress, BooleanSupplier cancelled) {
        return new Nester(order, progress, cancelled).nest();
    }

    private Nest nest() {
        sort();
        shapes = shapes(STRIPS);
        List<Layout.Plan> opening = opening();
        best = Layout.of(opening.getFirst(), Optional.empty(), shapes, stock, () -> false).orElseThrow();
        tried = 1;
        boolean stopped = parts.size() > 1 && !(round(opening.subList(1, Math.min(opening.size(), order.trials()))) && search());
        if (!stopped)
            layFinely();
        List<NestSheet> taken = best.sheets().stream().map(sheet -> order.sheets().get(stock.indexOf(sheet.size()))).toList();
        return new Nest(order, placements(), tooLarge, taken, NestOrder.leastSheets(order, parts), usedLength(), tried, stopped);
    }

    /** Coarse strips lose some millimetres wherever an edge runs along the sheet. */
    private void layFinely() {
        Layout.of(best.plan(), Optional.empty(), shapes(FINE_STRIPS), stock, cancelled).filter(fine -> Layout.BETTER.compare(fine, best) < 0)
                .ifPresent(fine -> best = fine);
    }

    private void sort() {
        for (NestPart part : order.parts())
            (part.turns().degrees().stream().anyMatch(turn -> fits(part, turn)) ? parts : tooLarge).add(part);
    }

    private boolean fits(NestPart part, int turn) {
        return stock.stream().anyMatch(size -> SilhouetteTracer.fits(part, turn, order.kerf(), size.length(), size.width()));
    }

    /** Every part at every angle that fits a sheet; parts alike share their drawings. */
    private List<List<Silhouette>> shapes(int strips) {
        Map<Shape, List<Silhouette>> drawn = new HashMap<>();
        int width = stock.stream().mapToInt(SheetSize::width).min().orElseThrow();
        return parts.stream().map(part -> drawn.computeIfAbsent(Shape.of(part), key -> turned(part, Math.max(1, width / strips)))).toList();
    }

    private List<Silhouette> turned(NestPart part, int strip) {
        List<Silhouette> turned = new ArrayList<>();
        for (int degrees : part.turns().degrees()) {
            if (fits(part, degrees)) {
                Silhouette shape = SilhouetteTracer.trace(part, degrees, order.kerf(), strip);
                if (turned.stream().noneMatch(shape::sameAs))
                    turned.add(shape);
            }
        }
        return turned;
    }

    /** What of a part decides how it lies. */
    private record Shape(List<PlanePoint> outer, List<List<PlanePoint>> openings, Turns turns) {
        static Shape of(NestPart part) {
            return new Shape(part.outer().points(), part.openings().stream().map(Outline::points).toList(), part.turns());
        }
    }

    /** Large before small, by four measures of size, each with two ways of judging a place, all on each size of sheet. */
    private List<Layout.Plan> opening() {
        List<Comparator<Integer>> sizes = List.of(
                Comparator.comparingDouble(i -> -parts.get(i).outer().area()),
                Comparator.comparingDouble(i -> -Math.max(shapes.get(i).getFirst().width, shapes.get(i).getFirst().height)),
                Comparator.comparingDouble(i -> -Math.min(shapes.get(i).getFirst().width, shapes.get(i).getFirst().height)),
                Comparator.comparingDouble(i -> -parts.get(i).outer().length()));
        List<Layout.Plan> plans = new ArrayList<>();
        for (SheetFilling.Favour favour : List.of(SheetFilling.Favour.REACH, SheetFilling.Favour.MIDDLE))
            for (Comparator<Integer> size : sizes)
                for (int sheet = 0; sheet < stock.size(); sheet++)
                    plans.add(new Layout.Plan(IntStream.range(0, parts.size()).boxed().sorted(size.thenComparing(i -> i)).mapToInt(i -> i).toArray(), favour,
                            new int[] { sheet }));
        return plans;
    }

    /** @return false if stopped */
    private boolean search() {
        int barren = 0;
        for (int round = 0; tried < order.trials(); round++) {
            int strength = 1 + barren / PATIENCE;
            List<Layout.Plan> plans = new ArrayList<>();
            for (int k = 0; k < Math.min(BATCH, order.trials() - tried); k++)
                plans.add(new Change(order.seed(), (long) round * BATCH + k).of(best.plan(), strength, stock.size(), best.sheets().size()));
            Layout before = best;
            if (!round(plans))
                return false;
            barren = best == before ? barren + 1 : 0;
        }
        return true;
    }

    /** Tries plans together and keeps the first of the best.
     *  @return false if stopped */
    private boolean round(List<Layout.Plan> plans) {
        Layout known = best;
        List<Optional<Layout>> layouts = IntStream.range(0, plans.size()).parallel()
                .mapToObj(k -> Layout.of(plans.get(k), Optional.of(known), shapes, stock, cancelled)).toList();
        for (int k = 0; k < plans.size(); k++)
            if (layouts.get(k).isPresent()) {
                tried++;
                if (Layout.BETTER.compare(layouts.get(k).get(), best) < 0)
                    best = layouts.get(k).get();
            }
        progress.accept(new NestProgress(tried, Math.max(tried, order.trials()), best.sheets().size(), usedLength()));
        return !cancelled.getAsBoolean();
    }

    private double usedLength() {
        return best.sheets().isEmpty() ? 0 : order.margin() + best.sheets().getLast().reach() / Silhouette.UNIT - order.kerf();
    }

    private List<Placement> placements() {
        List<Placement> placements = new ArrayList<>();
        for (int s = 0; s < best.sheets().size(); s++)
            for (SheetFilling.Spot spot : best.sheets().get(s).laid())
                placements.add(new Placement(s, parts.get(spot.index()), spot.shape().degrees, order.margin() + spot.x() / Silhouette.UNIT + spot.shape().shiftX,
                        order.margin() + spot.y() / Silhouette.UNIT + spot.shape().shiftY));
        return placements;
    }
}
