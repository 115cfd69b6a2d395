package mouldwright.geometry.nest;

import java.util.SplittableRandom;

/** Small changes of a plan: two parts change places, a part is laid earlier or later, places are judged another way, or a sheet is begun with another
 *  size. */
final class Change {
    private static final int KINDS = 8;

    private final SplittableRandom random;

    /** @param seed of the search @param number of the change: each draws from numbers of its own, whatever was drawn before */
    Change(long seed, long number) {
        this.random = new SplittableRandom(seed * 1_000_003L + number);
    }

    /** @param stock how many sizes of sheets there are @param sheets the plan took */
    Layout.Plan of(Layout.Plan plan, int strength, int stock, int sheets) {
        int[] sequence = plan.sequence().clone();
        SheetFilling.Favour favour = plan.favour();
        for (int k = 0; k < strength; k++) {
            int from = random.nextInt(sequence.length), to = random.nextInt(sequence.length);
            switch (random.nextInt(KINDS)) {
                case 0 -> favour = SheetFilling.Favour.values()[random.nextInt(SheetFilling.Favour.values().length)];
                case 1, 2, 3 -> {
                    int held = sequence[from];
                    sequence[from] = sequence[to];
                    sequence[to] = held;
                }
                default -> move(sequence, from, to);
            }
        }
        return new Layout.Plan(sequence, favour, stock > 1 && random.nextBoolean() ? sizes(plan, stock, sheets) : plan.sizes());
    }

    /** Another size for one of the sheets. */
    private int[] sizes(Layout.Plan plan, int stock, int sheets) {
        int[] sizes = new int[Math.max(1, sheets) + 1];
        for (int k = 0; k < sizes.length; k++)
            sizes[k] = plan.size(k);
        sizes[random.nextInt(sizes.length)] = random.nextInt(stock);
        return sizes;
    }

    private static void move(int[] sequence, int from, int to) {
        int held = sequence[from];
        if (from < to)
            System.arraycopy(sequence, from + 1, sequence, from, to - from);
        else
            System.arraycopy(sequence, to, sequence, to + 1, from - to);
        sequence[to] = held;
    }
}
