package mouldwright.geometry.nest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Parts laid one after the other, each on the first sheet with room for it.
 *  @param plan   by which they were laid
 *  @param sheets in the order they were begun
 *  @param laid   the sheet of each part, in the plan's sequence */
record Layout(Plan plan, List<SheetFilling> sheets, int[] laid) {
    /** Less cost first, then fewer sheets, then less of the last one, then less of all. */
    static final Comparator<Layout> BETTER = Comparator.<Layout>comparingDouble(layout -> layout.sheets.stream().mapToDouble(sheet -> sheet.size().cost()).sum())
            .thenComparingInt(layout -> layout.sheets.size())
            .thenComparingInt(layout -> layout.sheets.isEmpty() ? 0 : layout.sheets.getLast().reach())
            .thenComparingLong(layout -> layout.sheets.stream().mapToLong(SheetFilling::reach).sum());

    /** What is laid, and by what rule.
     *  @param sequence of the parts, by index
     *  @param favour   what makes a place good
     *  @param sizes    index of the size to begin each sheet with; the last holds for all after it */
    record Plan(int[] sequence, SheetFilling.Favour favour, int[] sizes) {
        int size(int sheet) {
            return sizes[Math.min(sheet, sizes.length - 1)];
        }
    }

    /** Lays all parts; empty if stopped before the last.
     *  @param plan   the sequence
     *  @param known  a layout; as long as both plans agree its places are taken over, being what a search would find
     *  @param shapes of each part, each of which fits an empty sheet
     *  @param stock  sizes of sheets */
    static Optional<Layout> of(Plan plan, Optional<Layout> known, List<List<Silhouette>> shapes, List<SheetSize> stock, BooleanSupplier cancelled) {
        List<SheetFilling> sheets = new ArrayList<>();
        int[] laid = new int[plan.sequence.length];
        int agreed = known.map(layout -> stock.size() > 1 ? 0 : layout.replay(plan, sheets, laid)).orElse(0);
        for (int k = agreed; k < laid.length; k++) {
            if (cancelled.getAsBoolean())
                return Optional.empty();
            int index = plan.sequence[k], sheet = 0;
            while (sheet < sheets.size() && !sheets.get(sheet).take(index, shapes.get(index), plan.favour))
                sheet++;
            if (sheet == sheets.size())
                sheets.add(begun(index, plan, sheet, shapes, stock));
            laid[k] = sheet;
        }
        if (stock.size() > 1)
            sheets.replaceAll(sheet -> smaller(sheet, plan, shapes, stock));
        return Optional.of(new Layout(plan, sheets, laid));
    }

    /** A sheet with its first part: of the size planned, or else the first that has room for it. */
    private static SheetFilling begun(int index, Plan plan, int sheet, List<List<Silhouette>> shapes, List<SheetSize> stock) {
        SheetFilling planned = new SheetFilling(stock.get(plan.size(sheet)));
        if (planned.take(index, shapes.get(index), plan.favour))
            return planned;
        for (SheetSize size : stock) {
            SheetFilling other = new SheetFilling(size);
            if (other.take(index, shapes.get(index), plan.favour))
                return other;
        }
        throw new IllegalStateException("part " + index + " fits no sheet");
    }

    /** The same parts on the cheapest size that holds them all. */
    private static SheetFilling smaller(SheetFilling sheet, Plan plan, List<List<Silhouette>> shapes, List<SheetSize> stock) {
        SheetFilling best = sheet;
        for (SheetSize size : stock)
            if (size.cost() < best.size().cost()) {
                SheetFilling other = new SheetFilling(size);
                if (sheet.laid().stream().allMatch(spot -> other.take(spot.index(), shapes.get(spot.index()), plan.favour)))
                    best = other;
            }
        return best;
    }

    /** @return how many parts were taken over */
    private int replay(Plan other, List<SheetFilling> into, int[] where) {
        if (plan.favour != other.favour)
            return 0;
        int differ = Arrays.mismatch(plan.sequence, other.sequence), agreed = differ < 0 ? laid.length : differ;
        int[] next = new int[sheets.size()];
        for (int k = 0; k < agreed; k++) {
            int sheet = laid[k];
            if (sheet == into.size())
                into.add(new SheetFilling(sheets.get(sheet).size()));
            into.get(sheet).lay(sheets.get(sheet).laid().get(next[sheet]++));
            where[k] = sheet;
        }
        return agreed;
    }
}
