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
    /** Fewer sheets first, then less of the last one, then less of all. */
    static final Comparator<Layout> BETTER = Comparator.<Layout>comparingInt(layout -> layout.sheets.size())
            .thenComparingInt(layout -> layout.sheets.isEmpty() ? 0 : layout.sheets.getLast().reach())
            .thenComparingLong(layout -> layout.sheets.stream().mapToLong(SheetFilling::reach).sum());

    /** What is laid, and by what rule.
     *  @param sequence of the parts, by index
     *  @param favour   what makes a place good */
    record Plan(int[] sequence, SheetFilling.Favour favour) { }

    /** Lays all parts; empty if stopped before the last.
     *  @param plan   the sequence
     *  @param known  a layout; as long as both plans agree its places are taken over, being what a search would find
     *  @param shapes of each part, each of which fits an empty sheet
     *  @param length of a sheet inside its margin, units
     *  @param width  the same across */
    static Optional<Layout> of(Plan plan, Optional<Layout> known, List<List<Silhouette>> shapes, int length, int width, BooleanSupplier cancelled) {
        List<SheetFilling> sheets = new ArrayList<>();
        int[] laid = new int[plan.sequence.length];
        int agreed = known.map(layout -> layout.replay(plan, sheets, laid, length, width)).orElse(0);
        for (int k = agreed; k < laid.length; k++) {
            if (cancelled.getAsBoolean())
                return Optional.empty();
            int index = plan.sequence[k], sheet = 0;
            while (sheet < sheets.size() && !sheets.get(sheet).take(index, shapes.get(index), plan.favour))
                sheet++;
            if (sheet == sheets.size()) {
                sheets.add(new SheetFilling(length, width));
                sheets.getLast().take(index, shapes.get(index), plan.favour);
            }
            laid[k] = sheet;
        }
        return Optional.of(new Layout(plan, sheets, laid));
    }

    /** @return how many parts were taken over */
    private int replay(Plan other, List<SheetFilling> into, int[] where, int length, int width) {
        if (plan.favour != other.favour)
            return 0;
        int differ = Arrays.mismatch(plan.sequence, other.sequence), agreed = differ < 0 ? laid.length : differ;
        int[] next = new int[sheets.size()];
        for (int k = 0; k < agreed; k++) {
            int sheet = laid[k];
            if (sheet == into.size())
                into.add(new SheetFilling(length, width));
            into.get(sheet).lay(sheets.get(sheet).laid().get(next[sheet]++));
            where[k] = sheet;
        }
        return agreed;
    }
}
